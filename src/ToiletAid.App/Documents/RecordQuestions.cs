using System.Collections.Immutable;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Sessions;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Documents;

/// <summary>Questions and answers as Questionnaire and QuestionnaireResponse. An answer in its own unit stands in an item of its own,
/// because an item of FHIR R4 takes either a coded choice or a quantity.</summary>
/// <param name="json">Where it is written.</param>
/// <param name="about">The visit.</param>
internal sealed class RecordQuestions(Utf8JsonWriter json, Case about)
{
    private const string Amount = ".amount";
    private const string AbsentReason = "http://hl7.org/fhir/StructureDefinition/data-absent-reason";

    private readonly QuestionSet _questions = about.Knowledge.Questions;

    /// <summary>Id of the questionnaire: it changes when a question does.</summary>
    internal static string Id { get; } = RecordIds.Named("questionnaire/" + KnowledgeVersion.Knowledge);

    internal void Questionnaire()
    {
        json.StartResource("Questionnaire", Id, "en-GB");
        json.WriteString("url", "urn:uuid:" + Id);
        json.WriteString("version", $"{KnowledgeVersion.Program}+{KnowledgeVersion.Knowledge}");
        json.WriteString("title", about.Words.Text("note.title"));
        json.WriteString("status", "active");
        json.WriteStartArray("subjectType");
        json.WriteStringValue("Patient");
        json.WriteEndArray();
        json.WriteStartArray("item");
        foreach (var question in _questions.All)
        {
            Item(question);
        }

        json.WriteEndArray();
        json.EndResource();
    }

    private void Item(Question question)
    {
        if (question.Kind is QuestionKind.Choice or QuestionKind.Many)
        {
            Start(question.Id, question.Prompt, "choice");
            json.WriteBoolean("repeats", question.Kind == QuestionKind.Many);
            json.WriteStartArray("answerOption");
            foreach (var option in question.Options)
            {
                json.WriteStartObject();
                Coding(question, option.Id);
                json.WriteEndObject();
            }

            if (question.Kind == QuestionKind.Many)
            {
                json.WriteStartObject();
                None(question);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }
        else if (question.Kind == QuestionKind.Number)
        {
            Start(question.Id, question.Prompt, "quantity");
            json.WriteEndObject();
        }
        else
        {
            Start(question.Id, question.Prompt, "group");
            json.WriteStartArray("item");
            bool order = question.Kind == QuestionKind.Order;
            foreach (var (id, label) in order ? question.Options.Select(o => (o.Id, o.Label)) : question.Parts.Select(p => (p.Id, p.Label)))
            {
                Start($"{question.Id}.{id}", label, order ? "integer" : "quantity");
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        if (question is { Kind: QuestionKind.Choice, Number: not null })
        {
            Start(question.Id + Amount, question.Prompt, "quantity");
            json.WriteEndObject();
        }
    }

    private void Start(string id, string text, string type)
    {
        json.WriteStartObject();
        json.WriteString("linkId", id);
        json.WriteString("text", text);
        json.WriteString("type", type);
    }

    internal void Response(string id)
    {
        json.StartResource("QuestionnaireResponse", id, "en-GB");
        json.WriteString("questionnaire", "urn:uuid:" + Id);
        json.WriteString("status", "completed");
        json.Subject(about.Person);
        json.WriteString("authored", IsoDay.Of(about.Session.Date));
        json.WriteStartArray("item");
        foreach (var question in _questions.All)
        {
            if (about.Session.Answers[question.Id] is { } answer)
            {
                Answered(question, answer.Value);
            }
        }

        json.WriteEndArray();
        json.EndResource();
    }

    private void Answered(Question question, AnswerValue value)
    {
        json.WriteStartObject();
        json.WriteString("linkId", value is AnswerValue.Number && question.Kind == QuestionKind.Choice ? question.Id + Amount : question.Id);
        json.WriteString("text", question.Prompt);
        switch (value)
        {
            case AnswerValue.Choice choice:
                Answers([choice.Option], o => Coding(question, o));
                break;
            case AnswerValue.Many { Options.IsEmpty: true }:
                Answers([question], None);
                break;
            case AnswerValue.Many many:
                Answers(many.Options, o => Coding(question, o));
                break;
            case AnswerValue.Number number:
                Answers([number], n => Quantity(n.Amount, n.Unit));
                break;
            case AnswerValue.Parts parts:
                Group(question.Parts.Where(p => parts.Amounts.ContainsKey(p.Id)).Select(p => (p.Id, p.Label)), id => Quantity(parts.Amounts[id], parts.Unit), question.Id);
                break;
            case AnswerValue.Order order:
                var ranks = order.Groups.SelectMany((g, rank) => g.Select(o => (Id: o, Rank: rank + 1))).ToDictionary(r => r.Id, r => r.Rank, StringComparer.Ordinal);
                Group(question.Options.Where(o => ranks.ContainsKey(o.Id)).Select(o => (o.Id, o.Label)), id => json.WriteNumber("valueInteger", ranks[id]), question.Id);
                break;
            default:
                WithoutAnswer("asked-unknown");
                break;
        }

        json.WriteEndObject();
    }

    /// <summary>Asked, and without an answer: said, so that it is not taken for a question that was never asked.</summary>
    private void WithoutAnswer(string reason)
    {
        json.WriteStartArray("extension");
        json.WriteStartObject();
        json.WriteString("url", AbsentReason);
        json.WriteString("valueCode", reason);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private void Group(IEnumerable<(string Id, string Label)> items, Action<string> write, string question)
    {
        var all = items.ToImmutableArray();
        if (all.IsEmpty)
        {
            WithoutAnswer("not-performed");
            return;
        }

        json.WriteStartArray("item");
        foreach (var (id, label) in all)
        {
            json.WriteStartObject();
            json.WriteString("linkId", $"{question}.{id}");
            json.WriteString("text", label);
            Answers([id], write);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void Answers<T>(IEnumerable<T> values, Action<T> write)
    {
        json.WriteStartArray("answer");
        foreach (var value in values)
        {
            json.WriteStartObject();
            write(value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>"None of them" is an answer, and for safety questions the one that matters.</summary>
    private void None(Question question)
    {
        json.WriteStartObject("valueCoding");
        json.Coding(FhirJson.Ours, question.Id + ".none", AnswerWording.Of(question, new AnswerValue.Many([])));
        json.WriteEndObject();
    }

    private void Coding(Question question, string option)
    {
        json.WriteStartObject("valueCoding");
        json.Coding(FhirJson.Ours, $"{question.Id}.{option}", AnswerWording.Of(question, new AnswerValue.Choice(option)));
        json.WriteEndObject();
    }

    private void Quantity(double amount, string symbol) => json.Quantity("valueQuantity", amount, symbol, Units.Find(symbol)!.Name);
}
