using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.People;

/// <summary>One person of people.md.</summary>
internal sealed record NamedPerson(string Name, Answers Answers, ImmutableArray<string> Must, ImmutableArray<string> Never, string Why)
{
    internal static ImmutableArray<NamedPerson> Read(string path) =>
        [.. File.ReadAllText(path).ReplaceLineEndings("\n").Split("\n## ").Skip(1).Select(One)];

    private static NamedPerson One(string text)
    {
        string[] lines = text.Split('\n');
        ImmutableArray<string> After(string head) => [.. lines.Where(l => l.StartsWith(head, StringComparison.Ordinal)).Select(l => l[head.Length..].Trim())];
        var answers = Cases.Able;
        foreach (string change in After("But:").SelectMany(b => b.Split(' ')))
        {
            answers = Change(answers, change);
        }

        return new(lines[0], answers, After("Must:"), After("Never:"), string.Concat(After("Why:")));
    }

    private static Answers Change(Answers answers, string change)
    {
        string[] parts = change.Split('=');
        var question = Cases.Knowledge.Questions[new(parts[0])];
        if (parts[1] == "?")
        {
            return answers.With(question.Id, new(new AnswerValue.NotKnown(), null));
        }

        AnswerValue value = question.Kind switch
        {
            QuestionKind.Choice => new AnswerValue.Choice(question.FindOption(parts[1])!.Id),
            QuestionKind.Many => new AnswerValue.Many([.. parts[1].Split('+').Select(o => question.FindOption(o)!.Id)]),
            QuestionKind.Order => new AnswerValue.Order([[.. parts[1].Split('+')]]),
            _ => new AnswerValue.Number(
                double.Parse(string.Concat(parts[1].TakeWhile(c => char.IsAsciiDigit(c) || c == '.')), CultureInfo.InvariantCulture),
                string.Concat(parts[1].SkipWhile(c => char.IsAsciiDigit(c) || c == '.')) is { Length: > 0 } unit ? unit : question.Number!.Units[0]),
        };
        return answers.With(question.Id, new(value, question.Usually));
    }
}
