using System.Globalization;
using System.Text.Json;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>Writes a profile as JSON: questions in the order in which they are asked, so that the same answers give the same bytes.</summary>
/// <param name="questions">The questions.</param>
public sealed class ProfileWriter(QuestionSet questions)
{
    /// <summary>Writes the profile to <paramref name="stream"/>, with a last line end.</summary>
    public void Write(Profile profile, Stream stream)
    {
        Write(profile, revision: 0, stream, JsonText.Indented);
        stream.WriteByte((byte)'\n');
    }

    /// <summary>The profile in one line, without its end.</summary>
    internal byte[] Line(Profile profile)
    {
        using var stream = new MemoryStream();
        Write(profile, revision: 0, stream, JsonText.OneLine);
        return stream.ToArray();
    }

    /// <summary>The profile as the store keeps it, with revision and hash.</summary>
    internal byte[] Sealed(Profile profile, int revision)
    {
        using var stream = new MemoryStream();
        Write(profile, revision, stream, JsonText.Indented);
        stream.WriteByte((byte)'\n');
        return ContentHash.Seal(stream.GetBuffer().AsSpan(0, (int)stream.Length));
    }

    /// <summary>A session alone, to tell whether two are the same.</summary>
    internal string Text(Session session) => JsonText.Of(JsonText.Indented, json => Session(json, session));

    private void Write(Profile profile, int revision, Stream stream, JsonWriterOptions options)
    {
        using var json = new Utf8JsonWriter(stream, options);
        json.WriteStartObject();
        json.WriteNumber("format", ProfileReader.Format);
        if (revision > 0)
        {
            json.WriteNumber("revision", revision);
        }

        json.WriteString("person", profile.Person);
        json.WriteStartArray("sessions");
        foreach (var session in profile.Sessions)
        {
            Session(json, session);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Session(Utf8JsonWriter json, Session session)
    {
        json.WriteStartObject();
        json.WriteString("date", IsoDay.Of(session.Date));
        json.WriteString("depth", Words.Of(session.Depth));
        if (session.IsLate)
        {
            json.WriteBoolean("late", true);
        }

        json.WriteStartObject("answers");
        foreach (var question in questions.All)
        {
            if (session.Answers[question.Id] is { } answer)
            {
                json.WriteStartObject(question.Id);
                json.WritePropertyName("value");
                Value(json, answer.Value);
                if (answer.How is { } how)
                {
                    json.WriteString("how", Words.Of(how));
                }

                json.WriteEndObject();
            }
        }

        json.WriteEndObject();
        TrialWriter.Write(json, session.Trials);
        if (!session.Note.IsEmpty)
        {
            json.WritePropertyName("note");
            List(json, session.Note);
        }

        json.WriteEndObject();
    }

    private static void Value(Utf8JsonWriter json, AnswerValue value)
    {
        switch (value)
        {
            case AnswerValue.Choice choice when int.TryParse(choice.Option, NumberStyles.None, CultureInfo.InvariantCulture, out int n):
                json.WriteNumberValue(n);
                break;
            case AnswerValue.Choice choice:
                json.WriteStringValue(choice.Option);
                break;
            case AnswerValue.Many many:
                List(json, many.Options);
                break;
            case AnswerValue.Number number:
                json.WriteNumberValue(number.Amount);
                json.WriteString("unit", number.Unit);
                break;
            case AnswerValue.Parts parts:
                json.WriteStartObject();
                foreach (var (id, amount) in parts.Amounts)
                {
                    json.WriteNumber(id, amount);
                }

                json.WriteEndObject();
                json.WriteString("unit", parts.Unit);
                break;
            case AnswerValue.Order order:
                json.WriteStartArray();
                foreach (var group in order.Groups)
                {
                    List(json, group);
                }

                json.WriteEndArray();
                break;
            default:
                json.WriteStringValue(AnswerReader.NotKnown);
                break;
        }
    }

    private static void List(Utf8JsonWriter json, IEnumerable<string> items)
    {
        json.WriteStartArray();
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }
}
