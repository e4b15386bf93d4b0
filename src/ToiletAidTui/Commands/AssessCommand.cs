using System.CommandLine;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Defines the interview's command.</summary>
internal static class AssessCommand
{
    internal static Command Define(Terminal terminal)
    {
        var depth = new Option<string>("--depth") { Description = "How much is asked: quick, full, measured.", DefaultValueFactory = _ => Words.Of(Depth.Quick) };
        depth.AcceptOnlyFromAmong([.. Words.All<Depth>()]);
        var save = new Option<string?>("--save") { HelpName = "FILE", Description = "File to save the answers in, or the code of a person in the folder of profiles. An existing profile gets one more visit." };
        var folder = FolderOption.Define();
        var person = new Option<string?>("--person") { HelpName = "CODE", Description = "Code of the person, never a name. Needed for a new file. Asked for if left out." };
        var date = DayOption.Define("visit");
        var late = new Option<bool>("--late") { Description = "Take a day before the last visit of the profile, for a visit that is written up late." };
        var top = Formats.Top();
        var aids = StockOption.Define();
        var answers = new Argument<string[]>("ANSWERS") { Arity = ArgumentArity.ZeroOrMore, Description = "Answers already known, each as question=answer, such as behind=cleft. Ids may be shortened." };
        var command = new Command("assess", "Ask the questions and read out the ranked shortlist.") { answers, depth, save, folder, person, date, late, top, aids, ClinicOption.Define() };
        var mode = new ModeOptions();
        mode.AddTo(command);
        command.SetAction(parsed =>
        {
            if (DayOption.Of(terminal, parsed.GetValue(date)) is not { } day)
            {
                return ExitCode.WrongUsage;
            }

            if (parsed.GetValue(person) is { } code && PersonCode.Fault(code) is { } fault)
            {
                terminal.Error.WriteLine($"The value of --person {fault}.");
                return ExitCode.WrongUsage;
            }

            if (mode.Choose(parsed, terminal) is not { } interfaceMode)
            {
                return ExitCode.WrongUsage;
            }

            string? typedFile = parsed.GetValue(save), who = parsed.GetValue(person), file = null;
            if (typedFile is { Length: 0 })
            {
                terminal.Error.WriteLine("The value of --save is empty. Give a file or the code of a person.");
                return ExitCode.WrongUsage;
            }

            if (typedFile is not null && (file = FolderOption.Resolve(terminal, typedFile, parsed.GetValue(folder))) is null)
            {
                return ExitCode.InputRefused;
            }

            if (file != typedFile)
            {
                who ??= typedFile;
            }

            return new Assessment(terminal, interfaceMode, Words.Find<Depth>(parsed.GetValue(depth))!.Value, file, who, day, parsed.GetValue(late), parsed.GetValue(top), parsed.GetValue(aids)) { Given = parsed.GetValue(answers) ?? [] }.Run();
        });
        return command;
    }
}
