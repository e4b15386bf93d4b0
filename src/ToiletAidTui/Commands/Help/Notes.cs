using System.Collections.Frozen;
using System.Collections.Immutable;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands.Help;

/// <summary>The notes on every command. What a command takes stands in its definition; help, man page and completion are all made of these two.</summary>
internal static class Notes
{
    private static readonly string[] Modes = [EnvironmentVariables.Mode, EnvironmentVariables.Accessible, EnvironmentVariables.Terminal, EnvironmentVariables.NoColour, EnvironmentVariables.DataHome, EnvironmentVariables.ConfigHome];
    private static readonly string[] Data = [EnvironmentVariables.DataHome];
    private static readonly int[] OnlyUsage = [ExitCode.Good, ExitCode.WrongUsage];
    private static readonly int[] WithStops = [ExitCode.Good, ExitCode.WrongUsage, ExitCode.InputRefused, ExitCode.Interrupted, ExitCode.Ended, ExitCode.HungUp];

    /// <summary>The commands by what they are for, in the order in which help names them.</summary>
    internal static readonly ImmutableArray<Topic> Topics =
    [
        new("One person", "assess", "trial", "why", "next", "look-for", "fits", "compare", "report"),
        new("Many people", "rank", "whatif", "outcomes", "caseload", "panel", "simulate"),
        new("Calculators and data", "calc", "questions", "aids", "explain"),
        new("Keeping profiles", "protect", "unprotect", "change-passphrase", "erase"),
        new("The program", "settings", "accessibility", "about", "completion", "man"),
    ];

    /// <summary>By the words after the name of the program; empty for the program by itself.</summary>
    internal static readonly FrozenDictionary<string, CommandNotes> All = new Dictionary<string, CommandNotes>
    {
        [""] = new(
            new Example("begin, with a menu", ""),
            new Example("ask about ten questions and save the answers", "assess --save K-014"),
            new Example("read out the shortlist of a saved profile", "rank k-014.json"))
        { Variables = Modes, ExitCodes = WithStops, TakesPassphrase = true },
        ["assess"] = new(
            new Example("ask about ten questions and keep the answers under a code", "assess --save K-014"),
            new Example("ask everything, goniometer and dynamometer too, line by line", "assess --depth measured --linear --save k-014.json"))
        { Variables = Modes, ExitCodes = WithStops, TakesPassphrase = true },
        ["rank"] = new(
            new Example("read out the three best plans", "rank k-014.json"),
            new Example("score a folder as a table", "rank profiles --format csv"),
            new Example("score people that another program makes", "rank - --format ndjson --rejects refused.ndjson"))
        { ExitCodes = WithStops, TakesPassphrase = true },
        ["simulate"] = new(new Example("make a thousand invented people", "simulate --people 1000 --seed 7")) { ExitCodes = WithStops },
        ["whatif"] = new(
            new Example("count who would get what from the clinic's own aids", "whatif profiles --change aids=stock.json --summary"),
            new Example("see what other priorities would change", "whatif people.ndjson --change priorities=skin,reach=handling"))
        { ExitCodes = WithStops, TakesPassphrase = true },
        ["outcomes"] = new(
            new Example("hear how the clinic's own trials came out", "outcomes profiles"),
            new Example("learn from them, with a picture", "outcomes profiles --save our-clinic.json --picture outcomes.svg"))
        { ExitCodes = WithStops, TakesPassphrase = true },
        ["caseload"] = new(new Example("list who is due this week and what is in use", "caseload profiles")) { ExitCodes = WithStops, TakesPassphrase = true },
        ["panel"] = new(
            new Example("make twelve cases for raters", "panel --people 12 --seed 3 --out panel"),
            new Example("say how two raters agree with each other and with the tool", "panel panel --ratings first.csv second.csv"))
        { ExitCodes = WithStops },
        ["why"] = new(
            new Example("hear why the first plan is first", "why k-014.json"),
            new Example("hear what would put another kind of aid first", "why k-014.json --aid tongs"))
        { TakesPassphrase = true },
        ["next"] = new(new Example("hear which question is worth asking next", "next k-014.json")) { TakesPassphrase = true },
        ["look-for"] = new(
            new Example("hear what to look for in a shop", "look-for k-014.json"),
            new Example("hear it for the second plan", "look-for k-014.json --plan 2"))
        { TakesPassphrase = true },
        ["fits"] = new(
            new Example("be asked about the article in your hand", "fits k-014.json"),
            new Example("give what you measured, and keep it", "fits k-014.json short-soft length=16 one-hand-load=yes --save stock.json"))
        { TakesPassphrase = true },
        ["compare"] = new(
            new Example("compare the last two visits", "compare k-014.json"),
            new Example("compare visits 1 and 3, measured by the same person, with a picture", "compare k-014.json --from 1 --to 3 --rater same --picture change.svg"))
        { TakesPassphrase = true },
        ["trial"] = new(
            new Example("be asked how a try went", "trial k-014.json"),
            new Example("record a dry try in one line", "trial k-014.json --plan 1 --before 03 --goal 06 --dry-level 06 --dry-minutes 4 --dry-effort 2 --dry-problems none --real no"))
        { TakesPassphrase = true },
        ["report"] = new(
            new Example("read the clinic note", "report k-014.json"),
            new Example("make a sheet for the person to print", "report k-014.json --kind sheet --for person --format html --out sheet.html"),
            new Example("make data for the record system", "report k-014.json --kind record --out record.json"))
        { TakesPassphrase = true },
        ["questions"] = new(
            new Example("read the questions with how to find out", "questions"),
            new Example("get the JSON Schema of a profile", "questions --format schema"))
        { ExitCodes = OnlyUsage },
        ["aids"] = new(
            new Example("read the kinds of aid", "aids"),
            new Example("draw the shape of one kind", "aids --aid long-clamp --picture clamp.svg"),
            new Example("begin a file of the clinic's own aids", "aids --format json")),
        ["explain"] = new(
            new Example("teach about two kinds side by side", "explain tongs short-soft"),
            new Example("hear what three would mean for one person", "explain by-hand long-clamp seat-wash k-014.json"),
            new Example("make a page to print, with pictures", "explain tongs short-soft --format html --out kinds.html"))
        { TakesPassphrase = true },
        ["aids check"] = new(new Example("check the clinic's own aids", "aids check stock.json")),
        ["aids measure"] = new(new Example("measure the aid in your hand", "aids measure --save stock.json")),
        ["calc"] = new(
            new Example("see what an aid needs from a hand", "calc grip --age 74 --grip 11kg --aid long-clamp"),
            new Example("fold paper", "calc paper --aid paddle-lock"))
        { ExitCodes = OnlyUsage },
        ["calc grip"] = new(
            new Example("see how a hand stands against its norm", "calc grip --age 74 --sex female --grip 11kg"),
            new Example("see whether it can work an aid", "calc grip --age 74 --grip 11kg --aid long-clamp --add-on hand-cuff"))
        { ExitCodes = OnlyUsage },
        ["calc paper"] = new(
            new Example("see how paper sits on an aid", "calc paper --aid paddle-lock --stool 5 --cleans 2"),
            new Example("try another fold", "calc paper --sheets 8 --folds 2 --girth 9cm"))
        { ExitCodes = OnlyUsage },
        ["calc water"] = new(new Example("mix warm water for a hand-held wash", "calc water --aid spray-wash --hot 60C --cold 10C --feeling none")) { ExitCodes = OnlyUsage },
        ["calc reach"] = new(new Example("see how long an aid must be for a stiff shoulder", "calc reach --stature 170cm --mass 72kg --shoulder-extension 15 --internal-rotation 20")) { ExitCodes = OnlyUsage },
        ["settings"] = new(
            new Example("read the settings and where each comes from", "settings"),
            new Example("keep linear mode from now on", "settings --set mode=linear"))
        { Variables = [EnvironmentVariables.Mode, EnvironmentVariables.ConfigHome], ExitCodes = OnlyUsage },
        ["accessibility"] = new(new Example("hear how it works with speech and braille", "accessibility")) { ExitCodes = OnlyUsage },
        ["about"] = new(
            new Example("hear versions, licences and what the numbers rest on", "about"),
            new Example("read the publications", "about --sources"))
        { ExitCodes = OnlyUsage },
        ["completion"] = new(new Example("complete with Tab in bash, from its file .bashrc", "completion bash")) { ExitCodes = OnlyUsage },
        ["man"] = new(
            new Example("write the manual page, to a file such as toiletaid.1", "man"),
            new Example("read the whole manual", "man --format text"))
        { ExitCodes = OnlyUsage },
        ["protect"] = new(new Example("protect the profile of K-014", "protect K-014")) { Variables = Data, TakesPassphrase = true },
        ["unprotect"] = new(new Example("take the passphrase off the profile of K-014", "unprotect K-014")) { Variables = Data, TakesPassphrase = true },
        ["change-passphrase"] = new(new Example("give the profile of K-014 another passphrase", "change-passphrase K-014")) { Variables = Data, TakesPassphrase = true },
        ["erase"] = new(new Example("erase the profile of K-014, after being asked", "erase K-014")) { Variables = Data },
    }.ToFrozenDictionary();
}
