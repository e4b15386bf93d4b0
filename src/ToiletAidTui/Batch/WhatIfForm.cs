using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Explaining;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Batch;

/// <summary>Writes what moved: people as they come, counts at the end.</summary>
internal abstract class WhatIfForm(TextWriter output, bool onlyCounts)
{
    protected TextWriter Output { get; } = output;

    protected bool OnlyCounts { get; } = onlyCounts;

    internal static WhatIfForm Of(string format, Terminal terminal, string change, bool onlyCounts, bool resumed) => format switch
    {
        Formats.Json => new JsonObject(terminal.Output, change, onlyCounts),
        Formats.Csv => new Table(terminal.Output, onlyCounts, resumed),
        _ => new Prose(terminal, change, onlyCounts),
    };

    internal abstract void Begin();

    internal abstract void Person(string person, FirstPlaceMove move);

    internal abstract void End(WhatIfTally tally);

    /// <summary>How the output of a resumed run goes with that of the stopped one, as <see cref="BatchRun"/> says it.</summary>
    internal virtual string Join => ". It counts only the rest, so add its counts to these";

    private sealed class Prose(Terminal terminal, string change, bool onlyCounts) : WhatIfForm(terminal.Output, onlyCounts)
    {
        private readonly SpeechLines _lines = terminal.Results;

        internal override void Begin() => _lines.Line($"What if: {change}.");

        internal override void Person(string person, FirstPlaceMove move)
        {
            if (!OnlyCounts && move.IsChanged)
            {
                _lines.Line(WhatIfText.Person(person, move));
            }
        }

        internal override void End(WhatIfTally tally) => _lines.Lines(WhatIfText.Summary(tally));
    }

    private sealed class Table(TextWriter output, bool onlyCounts, bool resumed) : WhatIfForm(output, onlyCounts)
    {
        // Ids, codes and words hold no comma and no quote, so nothing needs quoting.
        internal override void Begin() => Output.Write(OnlyCounts ? "what,id,before,after\n" : resumed ? string.Empty : "person,before,after,changed,why\n");

        internal override string Join => OnlyCounts ? base.Join : BatchRun.AddIt;

        internal override void Person(string person, FirstPlaceMove move)
        {
            if (!OnlyCounts)
            {
                Output.Write($"{person},{move.Before?.Plan.Aid.Id},{move.After?.Plan.Aid.Id},{(move.IsChanged ? "yes" : "no")},{(move.IsChanged ? WhatIfTally.Why(move) : string.Empty)}\n");
            }
        }

        internal override void End(WhatIfTally tally)
        {
            if (OnlyCounts)
            {
                Write("aid", tally.Kinds);
                Write("companion", tally.Companions);
                Write("add-on", tally.AddOns);
            }
        }

        private void Write(string what, IEnumerable<(string Id, long Before, long After)> counts)
        {
            foreach (var (id, before, after) in counts)
            {
                Output.Write($"{what},{id},{before},{after}\n");
            }
        }
    }

    private sealed class JsonObject(TextWriter output, string change, bool onlyCounts) : WhatIfForm(output, onlyCounts)
    {
        private bool _any;

        internal override void Begin() => Output.Write($$"""{"change":"{{JsonEncodedText.Encode(change, JsonText.OneLine.Encoder)}}","people":[""");

        internal override void Person(string person, FirstPlaceMove move)
        {
            if (!OnlyCounts)
            {
                Output.Write(_any ? ",\n" : "\n");
                Output.Write(Text(json =>
                {
                    json.WriteString("person", person);
                    json.WriteString("before", move.Before?.Plan.Aid.Id);
                    json.WriteString("after", move.After?.Plan.Aid.Id);
                    json.WriteBoolean("changed", move.IsChanged);
                    json.WriteString("why", move.IsChanged ? WhatIfTally.Why(move) : null);
                }));
                _any = true;
            }
        }

        internal override void End(WhatIfTally tally) => Output.Write("],\n\"summary\":" + Text(json =>
        {
            json.WriteNumber("people", tally.People);
            json.WriteNumber("changed", tally.Changed);
            json.WriteNumber("stopped", tally.Stopped);
            Counts(json, "aids", tally.Kinds);
            Counts(json, "companions", tally.Companions);
            Counts(json, "addOns", tally.AddOns);
            json.WriteStartArray("moves");
            foreach (var (from, to, people, why) in tally.Moves)
            {
                json.WriteStartObject();
                json.WriteString("from", from.Length == 0 ? null : from);
                json.WriteString("to", to.Length == 0 ? null : to);
                json.WriteNumber("people", people);
                json.WriteStartObject("why");
                foreach (var (reason, count) in why)
                {
                    json.WriteNumber(reason, count);
                }

                json.WriteEndObject();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }) + "}\n");

        private static void Counts(Utf8JsonWriter json, string name, IEnumerable<(string Id, long Before, long After)> counts)
        {
            json.WriteStartArray(name);
            foreach (var (id, before, after) in counts)
            {
                json.WriteStartObject();
                json.WriteString("id", id);
                json.WriteNumber("before", before);
                json.WriteNumber("after", after);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        private static string Text(Action<Utf8JsonWriter> members)
        {
            return JsonText.Of(JsonText.OneLine, json =>
            {
                json.WriteStartObject();
                members(json);
                json.WriteEndObject();
            });
        }
    }
}
