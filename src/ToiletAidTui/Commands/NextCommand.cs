using System.CommandLine;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Says which question to ask next for a saved profile.</summary>
internal static class NextCommand
{
    internal static Command Define(Terminal terminal)
    {
        var path = ProfileArgument.One();
        var depth = new Option<string?>("--depth") { Description = "How much may be asked: quick, full, measured. That of the latest visit if left out." };
        depth.AcceptOnlyFromAmong([.. Words.All<Depth>()]);
        var aids = StockOption.Define();
        var format = Formats.Option(Formats.Text, Formats.Json);
        var command = new Command("next", "Say which question to ask next, and whether any can still change the result.") { path, depth, format, aids, ClinicOption.Define() };
        command.SetAction(parsed => OneProfile.With(terminal, parsed.GetValue(path)!, parsed.GetValue(aids), (knowledge, profile) =>
        {
            using var notice = WorkNotice.Of(terminal);
            var session = profile.Latest;
            var advisor = new Advisor(knowledge, AllCores.Advice with { AsksGrip = false });
            var outlook = QuestionPlanner.For(knowledge).OutlookFor(Words.Find<Depth>(parsed.GetValue(depth)) ?? session.Depth, session.Answers, judgeEarly: true);
            var advice = advisor.Advise(session.Answers);
            notice?.Dispose();
            if (parsed.GetValue(format) == Formats.Json)
            {
                WriteJson(terminal, knowledge, profile, advice, outlook);
            }
            else
            {
                terminal.Results.Lines(advice.Stops.IsEmpty ? ExplainText.Next(outlook, advice).Concat(ClinicText.Used(knowledge)) : AdviceText.Stop(advice.Stops));
            }

            return ExitCode.Good;
        }));
        return command;
    }

    private static void WriteJson(Terminal terminal, KnowledgeBase knowledge, Profile profile, Advice advice, Outlook outlook)
    {
        terminal.Output.WriteLine(JsonText.Of(JsonText.Indented, json =>
        {
            json.WriteStartObject();
            json.WriteString("person", profile.Person);
            ClinicText.Write(json, knowledge);
            AdviceJson.Stop(json, advice.Stops);
            json.WriteStrings("next", outlook.Next.Select(q => q.Id.Text));
            json.WriteString("enough", Words.Of(outlook.Enough));
            json.WriteString("first", outlook.First?.Id);
            json.WriteNumber("firstShare", Math.Round(outlook.Share, 2));
            json.WriteStrings("asGoodAsEqual", outlook.Offered(advice).Select(a => a.Id));
            json.WriteString("deciding", outlook.Deciding?.Id);
            json.WriteNumber("lossLeft", Math.Round(outlook.LossLeft, 4));
            json.WriteStartArray("values");
            foreach (var value in outlook.Values)
            {
                json.WriteStartObject();
                json.WriteString("question", value.Question.Id);
                json.WriteNumber("gain", Math.Round(value.Gain, 4));
                json.WriteNumber("tellsApart", Math.Round(value.Decides, 4));
                json.WriteNumber("changeShare", Math.Round(value.ChangeShare, 2));
                json.WriteBoolean("mustBeAsked", value.MustBeAsked);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }));
    }
}
