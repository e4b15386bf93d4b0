using System.Text.Json;
using System.Text.Json.Serialization;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Files;

/// <summary>Reads <c>{"value":38,"low":33,"high":43,"unit":"cm","basis":"estimate","source":"…"}</c> into SI. Without low and high the number is taken as exact.</summary>
internal sealed class SourcedConverter : JsonConverter<Sourced>
{
    public override Sourced Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            throw new JsonException("a number here needs value, unit, basis and source");
        }

        double? value = null, low = null, high = null;
        string? unit = null, source = null;
        Basis? basis = null;
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string? name = reader.GetString();
            reader.Read();
            switch (name)
            {
                case "value": value = reader.GetDouble(); break;
                case "low": low = reader.GetDouble(); break;
                case "high": high = reader.GetDouble(); break;
                case "unit": unit = reader.GetString(); break;
                case "basis": basis = Words.Find<Basis>(reader.GetString()); break;
                case "source": source = reader.GetString(); break;
                default: throw new JsonException($"{name} is not known here; use value, low, high, unit, basis and source");
            }
        }

        return Make(value, low, high, unit, basis, source);
    }

    public override void Write(Utf8JsonWriter writer, Sourced value, JsonSerializerOptions options) =>
        throw new NotSupportedException("numbers with a source are only read");

    private static Sourced Make(double? value, double? low, double? high, string? unit, Basis? basis, string? source)
    {
        if (value is not { } v || basis is not { } b || string.IsNullOrWhiteSpace(source) || unit is null)
        {
            throw new JsonException("a number here needs value, unit, basis (published, common-practice, estimate, from-memory, decision or measured) and source");
        }

        if (Units.Find(unit) is not { } u)
        {
            throw new JsonException($"{unit} is not a unit that is known here");
        }

        double lo = low ?? v, hi = high ?? v;
        if (!(lo <= v && v <= hi))
        {
            throw new JsonException($"low {lo} and high {hi} must enclose value {v}");
        }

        return new(u.ToSi(v), u.ToSi(lo), u.ToSi(hi), b, source);
    }
}
