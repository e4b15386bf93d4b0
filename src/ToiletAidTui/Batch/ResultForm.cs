using System.Globalization;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Batch;

/// <summary>How results are written: each by itself, on any thread, and what stands around and between them.</summary>
internal abstract class ResultForm
{
    internal static ResultForm Of(string format, Terminal terminal, KnowledgeBase knowledge, int top, bool isBrief, bool resumed) => format switch
    {
        Formats.Json => new JsonArray(knowledge, top),
        Formats.Ndjson => new JsonLines(knowledge, top),
        Formats.Csv => new ResultTable(top, withHeader: !resumed, knowledge.Clinic?.Checksum),
        _ => new Prose(terminal, new(knowledge), top, isBrief, resumed),
    };

    /// <summary>One result; needs no other.</summary>
    internal abstract string Of(Profile profile, Advice advice);

    /// <summary>What stands before a result.</summary>
    internal virtual string Before(bool first) => string.Empty;

    /// <summary>What stands after the last.</summary>
    internal virtual string After(bool any) => string.Empty;

    /// <summary>How the output of a resumed run goes with that of the stopped one, as <see cref="BatchRun"/> says it.</summary>
    internal virtual string Join => BatchRun.AddIt;

    private static string Serialise(JsonWriterOptions options, Profile profile, Advice advice, int top, KnowledgeBase knowledge, BriefText brief)
    {
        return JsonText.Of(options, json => AdviceJson.Write(json, profile.Person, profile.Latest, advice, top, knowledge, brief));
    }

    private sealed class Prose(Terminal terminal, AdviceText text, int top, bool isBrief, bool resumed) : ResultForm
    {
        internal override string Of(Profile profile, Advice advice)
        {
            using var written = new StringWriter(CultureInfo.InvariantCulture) { NewLine = "\n" };
            var lines = new SpeechLines(written, terminal.OutputIsTerminal ? terminal.Width : 0);
            lines.Line($"Person {profile.Person}, {IsoDay.Of(profile.Latest.Date)}, {Words.Of(profile.Latest.Depth)} depth.");
            lines.Lines(profile.LateFlags.Select(s => $"A red flag was written down afterwards, for the visit of {IsoDay.Of(s.Date)}."));
            lines.Lines(isBrief ? text.Brief(advice, profile.Latest.Answers) : text.Lines(advice, profile.Latest.Answers, top));
            return written.ToString();
        }

        internal override string Before(bool first) => first && !resumed ? string.Empty : "\n";
    }

    private sealed class JsonArray(KnowledgeBase knowledge, int top) : ResultForm
    {
        private readonly BriefText _brief = new(knowledge);

        internal override string Of(Profile profile, Advice advice) => Serialise(JsonText.Indented, profile, advice, top, knowledge, _brief);

        internal override string Before(bool first) => first ? "[\n" : ",\n";

        internal override string After(bool any) => any ? "\n]\n" : "[]\n";

        internal override string Join => ". Its output is a list of its own";
    }

    private sealed class JsonLines(KnowledgeBase knowledge, int top) : ResultForm
    {
        private readonly BriefText _brief = new(knowledge);

        internal override string Of(Profile profile, Advice advice) => Serialise(JsonText.OneLine, profile, advice, top, knowledge, _brief) + "\n";
    }
}
