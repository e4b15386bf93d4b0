using System.Globalization;
using System.Text;
using System.Text.Json;
using nietras.SeparatedValues;
using ToiletAid.App.Wording;
using ToiletAid.Core;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;
using ToiletAid.Core.Ranking;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Writes results one after another in the chosen form.</summary>
internal abstract class ResultWriter(TextWriter output) : IDisposable
{
    protected TextWriter Output { get; } = output;

    internal static ResultWriter Of(string format, Terminal terminal, Knowledge knowledge, int top) => format switch
    {
        Formats.Json => new JsonArray(terminal.Output, knowledge, top),
        Formats.Ndjson => new JsonLines(terminal.Output, knowledge, top),
        Formats.Csv => new Table(terminal.Output, top),
        _ => new Prose(terminal, new(knowledge), top),
    };

    internal abstract void Write(Profile profile, Advice advice);

    public abstract void Dispose();

    private static string Serialise(JsonWriterOptions options, Profile profile, Advice advice, int top, Knowledge knowledge)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, options))
        {
            AdviceJson.Write(json, profile.Person, profile.Latest, advice, top, knowledge);
        }

        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length);
    }

    private sealed class Prose(Terminal terminal, AdviceText text, int top) : ResultWriter(terminal.Output)
    {
        private readonly SpeechLines _lines = new(terminal.Output, terminal.OutputIsTerminal ? terminal.Width : 0);
        private bool _any;

        internal override void Write(Profile profile, Advice advice)
        {
            if (_any)
            {
                _lines.Line(string.Empty);
            }

            _any = true;
            _lines.Line($"Person {profile.Person}, {profile.Latest.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}, {Words.Of(profile.Latest.Depth)} depth.");
            _lines.Lines(text.Lines(advice, profile.Latest.Answers, top));
        }

        public override void Dispose() => Output.Flush();
    }

    private sealed class JsonArray(TextWriter output, Knowledge knowledge, int top) : ResultWriter(output)
    {
        private bool _any;

        internal override void Write(Profile profile, Advice advice)
        {
            Output.Write(_any ? ",\n" : "[\n");
            Output.Write(Serialise(AdviceJson.Indented, profile, advice, top, knowledge));
            _any = true;
        }

        public override void Dispose() => Output.Write(_any ? "\n]\n" : "[]\n");
    }

    private sealed class JsonLines(TextWriter output, Knowledge knowledge, int top) : ResultWriter(output)
    {
        internal override void Write(Profile profile, Advice advice) =>
            Output.Write(Serialise(AdviceJson.OneLine, profile, advice, top, knowledge) + "\n");

        public override void Dispose() => Output.Flush();
    }

    private sealed class Table : ResultWriter
    {
        private readonly int _top;
        private readonly SepWriter _table;

        internal Table(TextWriter output, int top)
            : base(output)
        {
            _top = top;
            _table = Sep.New(',').Writer(o => o with { Escape = true, CultureInfo = CultureInfo.InvariantCulture }).To(output, leaveOpen: true);
        }

        internal override void Write(Profile profile, Advice advice)
        {
            if (advice.Ranked.IsEmpty)
            {
                Row(profile, advice, null);
            }

            foreach (var plan in advice.Ranked.Where(p => p.BeatenBy is null).Take(_top))
            {
                Row(profile, advice, plan);
            }
        }

        public override void Dispose() => _table.Dispose();

        private void Row(Profile profile, Advice advice, RankedPlan? ranked)
        {
            using var row = _table.NewRow();
            row["person"].Set(profile.Person);
            row["date"].Set(profile.Latest.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            row["stop"].Set(string.Join(' ', advice.Stops.Select(s => s.Rule.Id)));
            row["rank"].Set(ranked?.Rank.ToString(CultureInfo.InvariantCulture) ?? string.Empty);
            row["aid"].Set(ranked?.Plan.Aid.Id ?? string.Empty);
            row["addOns"].Set(ranked is null ? string.Empty : string.Join(' ', ranked.Plan.AddOns.Select(a => a.Id)));
            row["companion"].Set(ranked?.Plan.Companion?.Id ?? string.Empty);
            row["approach"].Set(ranked?.Plan.Approach is { } approach ? Words.Of(approach) : string.Empty);
            row["posture"].Set(ranked is null ? string.Empty : Words.Of(ranked.Plan.Posture));
            row["value"].Set(Number(ranked?.Value));
            row["firstShare"].Set(Number(ranked?.FirstShare));
            foreach (var criterion in Enum.GetValues<Criterion>())
            {
                row[Words.Of(criterion)].Set(Number(ranked?.Criteria[(int)criterion]));
            }

            row["cautions"].Set(ranked is null ? string.Empty : string.Join(' ', ranked.Cautions.Select(c => c.Rule.Id)));
        }

        private static string Number(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture) ?? string.Empty;
    }
}
