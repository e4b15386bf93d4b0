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
                .. Each("For whom it is not", kinds, NotFor),
                new Block.Heading("What the design means"),
                new Block.SideBySide([.. kinds.Select(a => Spoken.Capital(_words.Name(a)))], new KindFeatures(knowledge.Evidence).Of(kinds)),
                .. Each("What to practise first", kinds, a => FirstPractice.Of(a, _words.Name(a))),
                .. Each("Take care", kinds, Cautions),
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

    /// <summary>A section with a part for each kind, which the lines of one kind alone do not need.</summary>
    private static IEnumerable<Block> Each(string heading, ImmutableArray<Aid> kinds, Func<Aid, IEnumerable<string>> lines) =>
        kinds.Select(a => (a.Name, Lines: lines(a).ToImmutableArray())).Where(k => !k.Lines.IsEmpty).ToList() is { Count: > 0 } told
            ? [new Block.Heading(heading), .. told.SelectMany(k => (Block[])[.. kinds.Length > 1 ? (Block[])[new Block.Heading(k.Name, 3)] : [], new Block.Points(k.Lines)])]
            : [];

    private IEnumerable<string> GoodFor(Aid aid)
    {
        if (Counted(aid) is not { } counted)
        {
            return [$"Nothing was counted for {_words.Name(aid)}: it is the clinic's own."];
        }

        string name = _words.Name(aid);
        return [.. new TeachingText(_words).GoodFor(name, counted, _counted.People), TeachingText.Overall(name, counted, _counted.People)];
    }

    private IEnumerable<string> NotFor(Aid aid) => new TeachingText(_words).NotFor(_words.Name(aid), Counted(aid), [.. _rules.RulesOut(aid)]);

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
}
