using System.CommandLine;
using ToiletAid.App.Articles;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Says what an article must be like to suit the person of one saved profile.</summary>
internal static class LookForCommand
{
    internal static Command Define(Terminal terminal)
    {
        var path = ProfileArgument.One();
        var plan = new Option<int?>("--plan") { HelpName = "N", Description = "Place of the plan in the shortlist. The first of which something is bought if left out." };
        var aids = StockOption.Define();
        var format = Formats.Option(Formats.Text, Formats.Json);
        var command = new Command("look-for", "Say what to look for in a shop or cupboard, and how to check it with a ruler and two scales.") { path, plan, format, aids, ClinicOption.Define() };
        command.SetAction(parsed => OneProfile.With(terminal, parsed.GetValue(path)!, parsed.GetValue(aids), (knowledge, profile) =>
            Tell(terminal, knowledge, profile, parsed.GetValue(plan), parsed.GetValue(format) == Formats.Json)));
        return command;
    }

    private static int Tell(Terminal terminal, KnowledgeBase knowledge, Profile profile, int? place, bool json)
    {
        using var notice = WorkNotice.Of(terminal);
        var advisor = new Advisor(knowledge, AllCores.Advice);
        var known = profile.Latest.Answers;
        var advice = advisor.Advise(known);
        if (advice.Stops.IsEmpty && place is { } p && (p < 1 || p > advice.Ranked.Length))
        {
            notice?.Dispose();
            terminal.Error.WriteLine(advice.Ranked.IsEmpty ? "No plan can be offered, so --plan cannot name one." : $"There is no place {p}, use a number from 1 to {advice.Ranked.Length}.");
            return ExitCode.WrongUsage;
        }

        var ranked = !advice.Stops.IsEmpty ? null : place is { } at ? advice.Ranked[at - 1] : LookForText.Usual(advice);
        var demand = ranked is null ? null : new ArticleSearch(knowledge, advisor).Of(known, ranked.Plan, ranked.Rank == 1);
        notice?.Dispose();
        var text = new LookForText(knowledge);
        if (json)
        {
            terminal.Output.WriteLine(JsonText.Of(JsonText.Indented, writer =>
            {
                writer.WriteStartObject();
                writer.WriteString("person", profile.Person);
                ClinicText.Write(writer, knowledge);
                AdviceJson.Stop(writer, advice.Stops);
                if (demand is not null)
                {
                    text.Write(writer, ranked!, demand);
                }

                writer.WriteEndObject();
            }));
            return ExitCode.Good;
        }

        terminal.Results.Lines(!advice.Stops.IsEmpty ? AdviceText.Stop(advice.Stops) : text.Told(advice, ranked, demand).Concat(ClinicText.Used(knowledge)));
        return ExitCode.Good;
    }
}
