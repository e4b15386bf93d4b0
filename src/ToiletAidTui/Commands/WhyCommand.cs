using System.CommandLine;
using System.CommandLine.Completions;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Explains the ranking of one saved profile.</summary>
internal static class WhyCommand
{
    internal static Command Define(Terminal terminal)
    {
        var path = ProfileArgument.One();
        var aid = new Option<string?>("--aid") { HelpName = "ID", Description = "Id of a kind of aid, to hear why it is not first and what would put it there." };
        aid.CompletionSources.Add(_ => BuiltIn.Aids().Aids.Select(a => new CompletionItem(a.Id)));
        var aids = StockOption.Define();
        var format = Formats.Option(Formats.Text, Formats.Json);
        var command = new Command("why", "Say why the first plan is first, why another is not, and what would change it.") { path, aid, format, aids, ClinicOption.Define() };
        command.SetAction(parsed => OneProfile.With(terminal, parsed.GetValue(path)!, parsed.GetValue(aids), (knowledge, profile) =>
        {
            string? wanted = parsed.GetValue(aid);
            if (wanted is not null && knowledge.Catalogue.Aids.All(a => a.Id != wanted))
            {
                terminal.Error.WriteLine($"{wanted} is not a kind of aid, use one of {string.Join(", ", knowledge.Catalogue.Aids.Select(a => a.Id))}.");
                return ExitCode.WrongUsage;
            }

            Explain(terminal, knowledge, profile, wanted, parsed.GetValue(format) == Formats.Json);
            return ExitCode.Good;
        }));
        return command;
    }

    private static void Explain(Terminal terminal, KnowledgeBase knowledge, Profile profile, string? aid, bool json)
    {
        using var notice = WorkNotice.Of(terminal);
        var advisor = new Advisor(knowledge, AllCores.Advice);
        var explainer = new Explainer(knowledge, advisor);
        var text = new ExplainText(knowledge);
        var known = profile.Latest.Answers;
        var advice = advisor.Advise(known);
        string? about = aid ?? advice.Ranked.FirstOrDefault()?.Plan.Aid.Id;
        var whyNot = about is null || !advice.Stops.IsEmpty || advice.Ranked.FirstOrDefault()?.Plan.Aid is { } top && (about == top.Id || about == top.KindId) ? null : explainer.WhyNot(known, about);
        var counterfactuals = advice.Ranked.IsEmpty ? [] : explainer.Counterfactuals(known);
        string[] why = [.. about is null || !advice.Stops.IsEmpty ? new AdviceText(knowledge).Lines(advice, known, 1) : text.Why(advice, about)];
        notice?.Dispose();
        if (json)
        {
            WriteJson(terminal, knowledge, profile, advice, about, why, whyNot, counterfactuals);
            return;
        }

        var lines = terminal.Results;
        lines.Lines(why);
        lines.Lines(whyNot is null ? [] : text.WhyNot(whyNot));
        lines.Lines(advice.Ranked.IsEmpty ? [] : text.Counterfactuals(counterfactuals).Concat(ClinicText.Used(knowledge)));
    }

    private static void WriteJson(Terminal terminal, KnowledgeBase knowledge, Profile profile, Advice advice, string? about, string[] why, WhyNot? whyNot, IReadOnlyCollection<Counterfactual> counterfactuals)
    {
        terminal.Output.WriteLine(JsonText.Of(JsonText.Indented, json =>
        {
            json.WriteStartObject();
            json.WriteString("person", profile.Person);
            ClinicText.Write(json, knowledge);
            AdviceJson.Stop(json, advice.Stops);
            json.WriteString("aid", about);
            json.WriteStrings("why", why);
            json.WriteStartArray("whatWouldPutItFirst");
            foreach (var change in whyNot?.Changes ?? [])
            {
                Change(json, change, null);
            }

            json.WriteEndArray();
            json.WriteNumber("changesTried", whyNot?.Tried ?? 0);
            json.WriteStartArray("whatWouldChangeTheFirstPlace");
            foreach (var counterfactual in counterfactuals)
            {
                Change(json, counterfactual.Change, counterfactual.First);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }));
    }

    private static void Change(Utf8JsonWriter json, AnswerChange change, string? first)
    {
        json.WriteStartObject();
        json.WriteString("question", change.Question.Id);
        json.WriteString("from", change.From is null ? null : Said(change, change.From));
        json.WriteString("to", Said(change, change.To));
        if (first is not null)
        {
            json.WriteString("first", first);
        }

        json.WriteEndObject();
    }

    private static string Said(AnswerChange change, AnswerValue value) => ToiletAid.App.Sessions.AnswerWording.Of(change.Question, value);
}
