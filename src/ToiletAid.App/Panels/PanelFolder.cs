using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Sessions;
using ToiletAid.App.Typed;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Panels;

/// <summary>The folder of a panel: cases for the tool, pages for raters without the tool's answer, and an empty form.</summary>
/// <param name="knowledge">Questions and kinds of aid.</param>
public sealed class PanelFolder(KnowledgeBase knowledge)
{
    /// <summary>File with the cases, one a line.</summary>
    public const string Cases = "cases.ndjson";

    /// <summary>The empty form.</summary>
    public const string Form = "form.csv";

    /// <summary>What raters read first.</summary>
    public const string Instructions = "instructions.txt";

    /// <summary>The first row of a form.</summary>
    internal const string Header = "case,kind,place";

    /// <summary>Ids of the kinds that are ranked, in the order of their names, which tells nothing of the tool's order.</summary>
    public ImmutableArray<string> Kinds { get; } = [.. knowledge.Catalogue.Aids.OrderBy(a => a.Name, StringComparer.Ordinal).Select(a => a.Id)];

    /// <summary>Writes the folder.</summary>
    /// <param name="folder">Where to; made where it is not there.</param>
    /// <param name="people">One for each case.</param>
    /// <exception cref="IOException">It could not be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public void Write(string folder, IReadOnlyList<Profile> people)
    {
        ArgumentNullException.ThrowIfNull(people);
        Directory.CreateDirectory(folder);
        var writer = new ProfileWriter(knowledge.Questions);
        Put(Cases, string.Concat(people.Select(p => Encoding.UTF8.GetString(writer.Line(p)) + "\n")));
        Put(Form, string.Concat(people.SelectMany(p => Kinds.Select(k => $"{p.Person},{k},\n")).Prepend(Header + "\n")));
        Put(Instructions, string.Concat(Read(people.Count).Select(l => l + "\n")));
        foreach (var person in people)
        {
            Put($"case-{person.Person}.txt", string.Concat(Page(person).Select(l => l + "\n")));
        }

        void Put(string name, string text) => WholeFile.Write(Path.Combine(folder, name), Encoding.UTF8.GetBytes(text));
    }

    private IEnumerable<string> Page(Profile person)
    {
        yield return $"Case {person.Person}. An invented person.";
        var known = person.Latest.Answers;
        foreach (var topic in knowledge.Questions.All.Where(q => known.Knows(q.Id)).GroupBy(q => q.Topic))
        {
            yield return string.Empty;
            yield return $"{Spoken.Capital(topic.Key)}.";
            foreach (var question in topic)
            {
                yield return $"{question.Prompt} {Spoken.Capital(AnswerWording.Of(question, known[question.Id]!.Value))}.";
            }
        }

        string[] open = [.. knowledge.Questions.All.Where(q => known[q.Id] is { Value: AnswerValue.NotKnown }).Select(q => q.Prompt)];
        if (open.Length > 0)
        {
            yield return string.Empty;
            yield return $"Asked and not known: {string.Join(' ', open)}";
        }
    }

    private IEnumerable<string> Read(int cases)
    {
        yield return $"You are asked to rank kinds of aid for {cases.ToString(CultureInfo.InvariantCulture)} invented people. Work alone and do not talk about the cases until all forms are in.";
        yield return "Read a case page, then fill the column place of the form for that case: 1 for the kind that you would try first, 2 for the second, and so on.";
        yield return "Kinds that you hold to be equal get the same place. Leave the place of a kind empty that does not suit this person.";
        yield return "Save the form under a name of your own as comma separated text. Write no name of a person into it.";
        yield return string.Empty;
        yield return "Ids of the kinds:";
        foreach (string id in Kinds)
        {
            yield return $"{id}: {knowledge.Catalogue.Aids.First(a => a.Id == id).Name}.";
        }
    }
}
