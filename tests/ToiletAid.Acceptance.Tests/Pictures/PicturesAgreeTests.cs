using System.Globalization;
using System.Text.RegularExpressions;
using ToiletAid.App.Documents;
using ToiletAid.App.Files;
using ToiletAid.App.Pictures;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Acceptance.Tests.Pictures;

/// <summary>Picture, its alternative text and the words of the sheet show the same posture, way, helper and aid, for the plans of simulated people.</summary>
public sealed partial class PicturesAgreeTests(ITestOutputHelper output)
{
    private static readonly KnowledgeBase Knowledge = BuiltIn.Knowledge();
    private static readonly DocumentData Words = DocumentData.Load();
    private static readonly AdviceSettings Few = new() { ValueDraws = 8, WeightDraws = 100 };

    [Fact]
    public void Pictures_and_words_agree_for_plans_of_simulated_people() => Check(60);

    [Fact]
    [Trait("Speed", "Slow")]
    public void Pictures_and_words_agree_for_two_thousand_plans() => Check(2000);

    /// <summary>Lengths that the figure shares with the body data, of the middle of women and men 170 cm tall.</summary>
    [Fact]
    public void The_figure_has_the_lengths_of_the_body_data()
    {
        var person = new ReachPerson { AgeYears = 40, Stature = new ReachInput(FigureBody.Stature / 100), Mass = new ReachInput(68) };
        var report = ReachAnalysis.Analyse(Knowledge.Body, person, new ReachSettings { Draws = 0, Postures = [Posture.Seated], Approaches = [Approach.Behind] });
        Assert.Equal(FigureBody.ShoulderAboveHip, 100 * report.Body.ShoulderAboveHip, 0.51);
        Assert.Equal(FigureBody.UpperArm, 100 * report.Body.UpperArm, 0.51);
        Assert.Equal(FigureBody.Forearm, 100 * report.Body.Forearm, 0.51);

        // The body data reckon to the middle of the wiping face, 2 cm before the fingertips.
        Assert.Equal(FigureBody.HandBeyondGrip, (100 * report.HandReach) + 2, 0.51);
        Assert.Equal(FigureBody.HalfHips, 100 * report.Body.PelvisBreadth / 2, 1.5);
        Assert.Equal(FigureBody.HalfShoulders, 100 * report.Body.ShoulderFromMidline, 1.5);
    }

    [Fact]
    public void Every_step_of_a_handled_aid_that_is_easier_seen_than_said_has_its_own_drawing()
    {
        var about = Papers.About("k-014-stiff-shoulder");
        var setup = new SetupText(about.Chosen!, about.Session.Answers, Knowledge, SetupReader.Person);
        var drawings = StepDrawings.Of(about.Chosen!, about.Session.Answers, setup, toHelper: false);
        var drawn = setup.Each().Zip(drawings, (s, d) => (s.Act, Picture: d is null ? null : new SeenPicture(d).Kind)).Where(p => p.Picture is not null);
        Assert.Equal(
            [(SetupAct.FoldPaper, "fold"), (SetupAct.LoadPaper, "load"), (SetupAct.CheckHold, "hold"), (SetupAct.BringToSkin, "way"), (SetupAct.LetGo, "let-go"), (SetupAct.WashUp, "wash")],
            drawn);
    }

    private void Check(int plans)
    {
        var simulator = new PeopleSimulator(Knowledge, BuiltIn.People());
        var advisor = new Advisor(Knowledge, Few);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        int count = 0;
        for (int i = 0; count < plans; i++)
        {
            var session = simulator.Make(TestRun.Seed, i, i % 2 == 0 ? Depth.Full : Depth.Quick, new(2026, 3, 9)).Latest;
            var advice = advisor.Advise(session.Answers);
            foreach (var ranked in advice.Ranked)
            {
                foreach (bool toHelper in (bool[])[false, true])
                {
                    One(session, advice, ranked, toHelper);
                }

                string key = $"{ranked.Plan.Posture}, {ranked.Plan.Approach?.ToString() ?? "no way"}, {(ranked.Plan.Aid.Method == Core.Catalogue.MethodKind.Helper ? "helper" : "alone")}";
                seen[key] = seen.GetValueOrDefault(key) + 1;
                count++;
            }
        }

        foreach (var (key, times) in seen.OrderBy(s => s.Key, StringComparer.Ordinal))
        {
            output.WriteLine($"{key}: {times}");
        }

        output.WriteLine($"{count} plans, each on two sheets");
    }

    private static void One(Session session, Advice advice, RankedPlan ranked, bool toHelper)
    {
        var about = new Case
        {
            Knowledge = Knowledge,
            Words = Words,
            Person = "S-001",
            Session = session,
            Notes = [],
            Advice = advice,
            Settings = Few,
            Chosen = ranked,
            English = English.Of("en-GB", Words),
        };
        string label = ranked.Plan.Key;
        var sheet = VisitDocuments.Sheet(about, toHelper, inPictures: false);
        Assert.Equal(!toHelper && session.Answers.Choice(QuestionIds.Steps) == "one" && session.Answers.Choice(QuestionIds.Sight) != "none", VisitDocuments.Sheet(about, toHelper).Blocks.Any(b => b is Block.Steps { Large: true }));
        if (!toHelper)
        {
            Large(about, ranked);
        }

        var steps = sheet.Blocks.OfType<Block.Steps>().SelectMany(s => s.Items.Select((text, i) => (Text: text, Drawing: s.Drawings.ElementAtOrDefault(i)))).ToList();
        string all = string.Join(' ', steps.Select(s => s.Text)), whole = string.Join('\n', PlainDocument.Lines(sheet));
        var drawn = steps.Where(s => s.Drawing is not null).Select(s => (s.Text, Drawing: s.Drawing!, Seen: new SeenPicture(s.Drawing!))).ToList();
        var ways = drawn.Where(d => d.Seen.Kind == "way").ToList();
        var reaches = ranked.Plan is { Aid.Reach: Core.Catalogue.ReachKind.None, Companion: { } companion } ? companion : ranked.Plan.Aid;
        Assert.Equal(reaches == ranked.Plan.Aid ? 1 : 2, ways.Count);
        var way = ways[0];

        string posture = PostureOf(all);
        Assert.True(Shows(way.Seen, posture), $"{label}: the words say {posture}, the picture shows {PostureOf(way.Seen)}. {all}");
        Assert.True(posture == PostureOf(way.Drawing.Description), $"{label}: the words say {posture}, the alternative text {PostureOf(way.Drawing.Description)}");
        Leans(label, all, posture, way.Seen);

        bool helped = CarerCleans().IsMatch(all);
        Assert.True(helped == way.Seen.HasHelper, $"{label}: helper in words {helped}, in the picture {way.Seen.HasHelper}");
        Assert.True(helped == way.Drawing.Description.Contains("gloved hand", StringComparison.Ordinal), $"{label}: {way.Drawing.Description}");

        if (ranked.Plan.Approach is not null)
        {
            string approach = ApproachOf(way.Text);
            Assert.True(approach == ApproachOf(way.Seen), $"{label}: the words say {approach}, the picture shows {ApproachOf(way.Seen)}. {way.Text}");
            Assert.True(approach == ApproachOf(way.Drawing.Description), $"{label}: the words say {approach}, the alternative text {way.Drawing.Description}");
        }

        // Every picture shows a method of this plan, and the sheet names it as the words of the documents do.
        Assert.Equal(reaches.Id, way.Seen.Aid);
        Assert.Equal(ranked.Plan.Aid.Id, ways[^1].Seen.Aid);
        if (ranked.Plan.Approach is not null)
        {
            string what = reaches.Reach switch { Core.Catalogue.ReachKind.Handle => "aid", Core.Catalogue.ReachKind.Jet => "washer", _ => "hand" };
            Assert.Contains(what == "washer" ? "nozzle" : what, way.Text, StringComparison.Ordinal);
            Assert.Contains($"how the {what} comes", way.Drawing.Description, StringComparison.Ordinal);
        }

        Assert.All(drawn.Where(d => d.Seen.Aid is not null), d => Assert.Contains(d.Seen.Aid, ranked.Plan.Methods.Select(m => m.Id)));
        Assert.Contains((toHelper ? Words.AidsForHelper.GetValueOrDefault(ranked.Plan.Aid.Id) : null) ?? Words.Aids[ranked.Plan.Aid.Id], whole, StringComparison.OrdinalIgnoreCase);
        Assert.All(drawn, d => Assert.EndsWith(".", d.Drawing.Description, StringComparison.Ordinal));
        Assert.All(drawn, d => Assert.NotEmpty(d.Drawing.Title));
        Assert.All(drawn.Where(d => d.Seen.Kind == "fold"), d => Folds(d.Text, d.Drawing));
    }

    private static void Folds(string text, Drawing drawing)
    {
        var seen = new SeenPicture(drawing);
        Assert.Matches($"\\b{seen.Paper.Sheets} sheets?\\b", text);
        Assert.Contains(seen.Paper.Sheets == 1 ? "One sheet" : $"{seen.Paper.Sheets} sheets", drawing.Description, StringComparison.Ordinal);
        Assert.Equal(FoldsOf(text), seen.Paper.Folds);
        Assert.Equal(FoldsOf(drawing.Description), seen.Paper.Folds);
    }

    /// <summary>The sheet in pictures: every step has its own, with few words, and nothing of the care that the words ask for is lost.</summary>
    private static void Large(Case about, RankedPlan ranked)
    {
        string label = ranked.Plan.Key;
        var sheet = VisitDocuments.Sheet(about, toHelper: false, inPictures: true);
        var steps = Assert.Single(sheet.Blocks.OfType<Block.Steps>());
        var setup = new SetupText(ranked, about.Session.Answers, Knowledge, SetupReader.Person);
        Assert.Equal(setup.Steps().Count, steps.Items.Length);
        Assert.All(steps.Items.Zip(steps.Drawings), step =>
        {
            Assert.NotNull(step.Second);
            Assert.InRange(step.First.Split(' ').Length, 2, 17);
            Assert.EndsWith(".", step.Second.Description, StringComparison.Ordinal);
        });
        string whole = string.Join('\n', PlainDocument.Lines(sheet));
        Assert.All(ranked.Cautions, c => Assert.Contains(PlainRules.Of(c, toHelper: false), whole, StringComparison.Ordinal));
        Assert.DoesNotContain("Look at the sheet", whole, StringComparison.Ordinal);

        int at = setup.Each().ToList().FindIndex(s => s.Act == SetupAct.TakePosture);
        string words = steps.Items[at], posture = PostureOf(words);
        var seen = new SeenPicture(steps.Drawings[at]!);
        Assert.Equal("posture", seen.Kind);
        Assert.True(Shows(seen, posture), $"{label}: {words} The picture shows {PostureOf(seen)}.");
        Assert.True(posture == PostureOf(steps.Drawings[at]!.Description), $"{label}: {words} {steps.Drawings[at]!.Description}");
        Assert.False(seen.HasHelper);
        if (seen.View == "side" && posture == "seated")
        {
            var (least, most) = words.Contains("Hands on", StringComparison.Ordinal) ? (20, 40) : words.Contains("Elbows on", StringComparison.Ordinal) ? (30, 70)
                : words.Contains("forward a little", StringComparison.Ordinal) ? (10, 30) : words.Contains("forward slowly", StringComparison.Ordinal) ? (30, 50) : (-10, 10);
            Assert.True(seen.TrunkLean >= least && seen.TrunkLean <= most, $"{label}: {words} The trunk leans {seen.TrunkLean:0} degrees.");
        }

        Assert.All(steps.Items.Zip(steps.Drawings).Where(s => new SeenPicture(s.Second!).Kind == "fold"), s => Folds(s.First, s.Second!));
    }

    private static void Leans(string label, string words, string posture, SeenPicture seen)
    {
        var said = ForwardLean().Match(words);
        if (seen.View == "above" && said.Success)
        {
            Assert.True(IsAbout(seen.TrunkLean + 90, said), $"{label}: lying, the trunk bends {seen.TrunkLean + 90:0} degrees, the words say {said.Value}");
        }

        if (seen.View == "side" && posture is "seated")
        {
            bool forward = LeansForward().IsMatch(words);
            bool agrees = (said.Success && IsAbout(seen.TrunkLean, said)) || (forward && Math.Abs(seen.TrunkLean - 40) <= 10) || (!said.Success && !forward && Math.Abs(seen.TrunkLean) <= 10);
            Assert.True(agrees, $"{label}: the trunk leans {seen.TrunkLean:0} degrees. {words}");
        }

        if (seen.View == "behind" && SideLean().Match(words) is { Success: true } side && seen.PelvisLift < 2)
        {
            int toward = side.Groups["side"].Value.StartsWith("side", StringComparison.Ordinal) ? 1 : -1;
            Assert.True(Math.Sign(seen.TrunkLean) == toward * seen.ArmSide, $"{label}: the trunk leans {seen.TrunkLean:0} with the arm on {seen.ArmSide}. {words}");
        }
    }

    /// <summary>Hands come to rest on the knees at about 30 degrees, elbows from 40 on; a little is about 20.</summary>
    private static bool IsAbout(double degrees, Match said) => said.Groups["how"].Value switch
    {
        "a little" => Math.Abs(degrees - 20) <= 10,
        "until your hands" => Math.Abs(degrees - 30) <= 10,
        _ => degrees is >= 30 and <= 70,
    };

    private static string PostureOf(string words) =>
        words.Contains("ie on your side", StringComparison.Ordinal) || words.Contains("ies on the side", StringComparison.Ordinal) ? "side-lying"
        : LiesBack().IsMatch(words) ? "reclined"
        : HalfUp().IsMatch(words) ? "half-standing"
        : Stands().IsMatch(words) ? "standing"
        : Sits().IsMatch(words) ? "seated" : "nothing";

    /// <summary>From behind, knees that are half bent look like straight ones.</summary>
    private static bool Shows(SeenPicture seen, string posture) =>
        PostureOf(seen) == posture || (seen.View == "behind" && posture == "half-standing" && PostureOf(seen) == "standing");

    private static string PostureOf(SeenPicture seen) => seen switch
    {
        { Support: "bed-from-above", View: "above" } => Math.Abs(seen.TrunkLean + 90) < 45 ? "side-lying" : "nothing",
        { View: "behind" } => seen.HipHeight > 1.8 ? "standing" : "seated",
        { TrunkLean: < -25 } => "reclined",
        { Support: "bed" or "tilted-chair" } => "seated",
        { ThighDrop: > 75 } => "standing",
        { ThighDrop: > 30 } => "half-standing",
        { ThighDrop: > -15 } => "seated",
        _ => "nothing",
    };

    private static string ApproachOf(string words) =>
        words.Contains("from behind", StringComparison.Ordinal) && !words.Contains("from the side", StringComparison.Ordinal) && !words.EndsWith("from the front.", StringComparison.Ordinal) ? "behind"
        : words.Contains("from the front", StringComparison.Ordinal) ? "front"
        : FromSide().IsMatch(words) ? "side" : "nothing";

    private static string ApproachOf(SeenPicture seen)
    {
        var (before, head) = seen.ArrowStart;
        return seen.View == "behind" ? seen.PelvisLift > 2 ? "side" : "behind"
            : seen.View == "above" && head > Math.Abs(before) ? "side"
            : before > 0 ? "front" : "behind";
    }

    private static int FoldsOf(string words) =>
        words.Contains("half once", StringComparison.Ordinal) ? 1 : words.Contains("half twice", StringComparison.Ordinal) ? 2
        : HalfTimes().Match(words) is { Success: true } m ? int.Parse(m.Groups["times"].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex("half (?<times>[0-9]+) times", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HalfTimes();

    [GeneratedRegex("Lean forward (?<how>a little|until your hands|until your elbows)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ForwardLean();

    [GeneratedRegex("to the (?<side>side of the hand that cleans|other side)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SideLean();

    [GeneratedRegex("lean forward slowly|leans forward", RegexOptions.None, 1000)]
    private static partial Regex LeansForward();

    [GeneratedRegex("Lie back|lies back", RegexOptions.None, 1000)]
    private static partial Regex LiesBack();

    [GeneratedRegex("[Rr]ise halfway|half up", RegexOptions.None, 1000)]
    private static partial Regex HalfUp();

    [GeneratedRegex("Stand and (hold|lean)|person stands at", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Stands();

    [GeneratedRegex(@"\bSit\b|person sits", RegexOptions.None, 1000)]
    private static partial Regex Sits();

    [GeneratedRegex("from that side|from the side", RegexOptions.None, 1000)]
    private static partial Regex FromSide();

    [GeneratedRegex("(carer|helper) (asks|puts on|cleans)|You clean|Ask first", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CarerCleans();
}
