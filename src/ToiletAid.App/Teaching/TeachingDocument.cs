using System.Collections.Immutable;
using Humanizer;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.App.Pictures;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Teaching;

namespace ToiletAid.App.Teaching;

/// <summary>Kinds of aid side by side, for teaching a person, a family or a student.</summary>
/// <param name="knowledge">Everything known beforehand.</param>
public sealed class TeachingDocument(KnowledgeBase knowledge)
{
    private readonly TeachingWords _words = TeachingWords.Load();
    private readonly TeachingFile _counted = TeachingFile.Load();
    private readonly KindRules _rules = new(knowledge);

    /// <summary>The document.</summary>
    /// <param name="kinds">The kinds, 1 to 4.</param>
    /// <param name="about">A person with the advice on them; null for nobody.</param>
    /// <param name="english">Language of the document.</param>
    public Document Make(ImmutableArray<Aid> kinds, (Profile Profile, Advice Advice)? about, English english)
    {
        ArgumentNullException.ThrowIfNull(english);
        string title = $"Who might choose which: {kinds.Select(a => PlanText.Lower(a.Name)).Humanize("and")}";
        IEnumerable<Block> blocks = about is { Advice.Stops: { IsEmpty: false } stops } person
            ? Stopped(person.Profile, stops, english)
            :
            [
                .. about is { } seen ? Person(kinds, seen.Profile, seen.Advice, english) : [],
                .. kinds.SelectMany(What),
                .. Each("For whom it is good", kinds, GoodFor),
                .. Section("For whom it is not", NotFor(kinds)),
                new Block.Heading("What the design means"),
                new Block.SideBySide([.. kinds.Select(a => Spoken.Capital(_words.Name(a)))], new KindFeatures(knowledge.Evidence).Of(kinds)),
                .. Each("What to practise first", kinds, a => FirstPractice.Of(a, _words.Name(a))),
                .. TakeCare(kinds),
                .. Foot(kinds),
            ];
        return new Document(title, english.Tag, LargePrint: false, [.. blocks]).In(english);
    }

    private static Block.Heading Of(Profile profile, English english) => new($"For {profile.Person}, by the visit of {english.Date(profile.Latest.Date)}");

    /// <summary>Who must see a doctor today is taught no aid.</summary>
    private static IEnumerable<Block> Stopped(Profile profile, ImmutableArray<Finding> stops, English english) =>
        [Of(profile, english), .. stops.Select(s => new Block.Paragraph(PlainRules.Of(s, toHelper: false), Urgent: true))];

    private IEnumerable<Block> Person(ImmutableArray<Aid> kinds, Profile profile, Advice advice, English english)
    {
        var text = new ForThisPerson(_words, advice, profile.Latest.Answers);
        return [Of(profile, english), new Block.Points([.. kinds.Select(text.Of)]), .. ClinicText.Used(knowledge).Select(l => new Block.Paragraph(l))];
    }

    private IEnumerable<Block> What(Aid aid)
    {
        yield return new Block.Heading(aid.Name);
        yield return new Block.Paragraph($"{aid.Summary} Here it is called {_words.Name(aid)}.");
        yield return new Block.Picture(AidPicture.Drawing(aid) with { Title = "Its shape" });
    }

    /// <summary>
    /// A section with the lines of each kind, which name it. A heading of its own in each section would be the same line again,
    /// and a reader that says what changed on the screen leaves such lines out.
    /// </summary>
    private static IEnumerable<Block> Each(string heading, ImmutableArray<Aid> kinds, Func<Aid, IEnumerable<string>> lines) =>
        Section(heading, kinds.SelectMany(lines));

    private static IEnumerable<Block> Section(string heading, IEnumerable<string> lines) =>
        lines.ToImmutableArray() is { IsEmpty: false } told ? [new Block.Heading(heading), new Block.Points(told)] : [];

    /// <summary>What is said to people with each kind; what goes for several of them is said once.</summary>
    private IEnumerable<Block> TakeCare(ImmutableArray<Aid> kinds)
    {
        var said = kinds.SelectMany(a => Cautions(a).Select(c => (Kind: a, Caution: c))).GroupBy(c => c.Caution, c => c.Kind)
            .GroupBy(c => c.ToImmutableArray(), c => c.Key, new SameKinds()).OrderByDescending(g => g.Key.Length).ThenBy(g => kinds.IndexOf(g.Key[0])).ToList();
        if (said.Count == 0)
        {
            yield break;
        }

        yield return new Block.Heading("Take care");
        foreach (var group in said)
        {
            if (kinds.Length > 1)
            {
                yield return new Block.Heading($"With {group.Key.Select(_words.Name).Humanize("and")}", 3);
            }

            yield return new Block.Points([.. group]);
        }
    }

    private IEnumerable<string> GoodFor(Aid aid)
    {
        if (Counted(aid) is not { } counted)
        {
            return [$"Nothing was counted for {_words.Name(aid)}: it is the clinic's own."];
        }

        string name = _words.Name(aid);
        return [.. new TeachingText(_words).GoodFor(name, counted, _counted.People), TeachingText.Overall(name, counted, _counted.People)];
    }

    private IEnumerable<string> NotFor(ImmutableArray<Aid> kinds)
    {
        var text = new TeachingText(_words);
        var ruled = kinds.Select(a => (Kind: a, Name: _words.Name(a), Rules: _rules.RulesOut(a).ToImmutableArray())).ToList();
        return [.. text.AlwaysRuledOut(ruled.Select(r => (r.Name, (IReadOnlyCollection<KindRule>)r.Rules))), .. ruled.SelectMany(r => text.NotFor(r.Name, Counted(r.Kind), r.Rules))];
    }

    private IEnumerable<string> Cautions(Aid aid) => _rules.Cautions(aid).Select(new TeachingText(_words).Caution);

    private KindTeaching? Counted(Aid aid) => _counted.Kinds.FirstOrDefault(k => k.Kind == aid.Id);

    private static IEnumerable<Block> Foot(ImmutableArray<Aid> kinds)
    {
        yield return new Block.Heading("Where this comes from");
        string guessed = kinds.Any(a => a.Mass.Basis == Basis.Estimate) ? " Many numbers of these kinds are guesses until the aid in hand is measured." : string.Empty;
        yield return new Block.Paragraph($"The rules and the shape come from the data of the program.{guessed}");
        yield return new Block.Paragraph("Who suits which was counted over made-up people, with the built-in data. Each was given the advice that a real person would get. Real people may differ.");
        yield return new Block.Paragraph("This is for teaching. It does not choose for one person. The therapist does that with them.");
    }

    private sealed class SameKinds : IEqualityComparer<ImmutableArray<Aid>>
    {
        public bool Equals(ImmutableArray<Aid> one, ImmutableArray<Aid> other) => one.SequenceEqual(other);

        public int GetHashCode(ImmutableArray<Aid> kinds) => kinds.Length;
    }
}
