using System.Xml.Linq;
using ToiletAid.App.Files;
using ToiletAid.App.Pictures;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Acceptance.Tests.Pictures;

public sealed class ReachPictureTests
{
    private static readonly BodyTables Tables = BuiltIn.Knowledge().Body;

    /// <summary>Stature 172 cm, body mass index 24, 40 years.</summary>
    private static readonly ReachPerson Reference = new()
    {
        Sex = Sex.Male,
        AgeYears = 40,
        Stature = new ReachInput(1.72),
        Mass = new ReachInput(24 * 1.72 * 1.72),
        Lean = Lean.Both,
    };

    private static readonly ReachReport Report = ReachAnalysis.Analyse(
        Tables,
        Reference with { Behind = LandmarkBehind.OuterButtock, Front = LandmarkFront.Groin },
        new ReachSettings { Draws = 32, Postures = [Posture.Seated] });

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_picture_is_a_document_with_title_and_description()
    {
        ReachNeed need = Report.Need(Posture.Seated, Approach.Behind);
        XElement root = XDocument.Parse(ReachPicture.Svg(Report, need, WorkingHand.Right)).Root!;
        Assert.Equal(Svg + "svg", root.Name);
        Assert.Equal("Reach from behind, seated", root.Element(Svg + "title")!.Value);
        Assert.Equal(string.Join(' ', ReachDescription.Sentences(Report, need, WorkingHand.Right)), root.Element(Svg + "desc")!.Value);
        string[] labels = [.. root.Descendants(Svg + "text").Select(t => t.Value)];
        foreach (string label in new[] { "From the side", "From behind", "grip", "elbow", "shoulders", "target", "seat" })
        {
            Assert.Contains(label, labels, StringComparer.Ordinal);
        }
    }

    [Fact]
    public void The_picture_has_a_head_a_seat_with_its_opening_and_a_scale()
    {
        ReachNeed need = Report.Need(Posture.Seated, Approach.Behind);
        XElement root = XDocument.Parse(ReachPicture.Svg(Report, need, WorkingHand.Right)).Root!;
        XElement[] Parts(string name) => [.. root.Descendants().Where(e => e.Attribute("data-part")?.Value == name)];
        double[] heads = [.. Parts("head").Select(h => (double)h.Attribute("cy")!)];
        XElement[] seats = Parts("seat");
        double gap = (double)seats[1].Attribute("x")! - (double)seats[0].Attribute("x")! - (double)seats[0].Attribute("width")!;
        double scale = Parts("scale").Single().Attribute("d")!.Value.Split(' ') is [_, var from, _, _, var to] ? Number(to) - Number(from) : 0;

        Assert.Equal(2, heads.Length);
        Assert.All(heads, y => Assert.InRange(y, 30, 330 - (320 * need.Sketch!.Neck.Z)));
        Assert.Equal(4, seats.Length);
        Assert.Equal(need.Sketch!.Opening.Behind + need.Sketch.Opening.Before, gap / (scale / 0.4), 0.005);
        Assert.Contains("40 cm", root.Descendants(Svg + "text").Select(t => t.Value), StringComparer.Ordinal);

        static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_left_hand_is_drawn_as_the_mirror_image()
    {
        ReachNeed need = Report.Need(Posture.Seated, Approach.Behind);
        double[] right = Dots(WorkingHand.Right), left = Dots(WorkingHand.Left);
        for (int i = 0; i < right.Length; i++)
        {
            double centre = i < right.Length / 2 ? 210 : 630;
            Assert.Equal(right[i] - centre, centre - left[i], 0.11);
        }

        double[] Dots(WorkingHand hand) =>
            [.. XDocument.Parse(ReachPicture.Svg(Report, need, hand)).Descendants(Svg + "circle").Select(c => (double)c.Attribute("cx")!)];
    }

    [Fact]
    public void The_arm_is_drawn_as_long_as_it_is()
    {
        ReachSketch sketch = Report.Need(Posture.Seated, Approach.Front).Sketch!;
        Assert.Equal(Report.Body.UpperArm, Distance(sketch.Shoulder, sketch.Elbow), 1e-12);
        Assert.Equal(Report.Body.Forearm, Distance(sketch.Elbow, sketch.Grip), 1e-12);

        static double Distance(SketchPoint a, SketchPoint b) =>
            Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)) + ((a.Z - b.Z) * (a.Z - b.Z)));
    }

    [Fact]
    public void The_words_can_be_heard() =>
        Assert.All(
            Report.Needs.SelectMany(n => ReachDescription.Sentences(Report, n, WorkingHand.Left)),
            sentence =>
            {
                Assert.EndsWith(".", sentence, StringComparison.Ordinal);
                Assert.True(sentence.Split(' ').Length <= 20, sentence);
                Assert.All(sentence, c => Assert.True(char.IsAsciiLetterOrDigit(c) || c is ' ' or ',' or '.', sentence));
            });

    [Fact]
    public void The_words_of_the_reference_person_are_the_approved_ones() =>
        Golden.Match(
            string.Join('\n', Report.Needs.SelectMany(n => ReachDescription.Sentences(Report, n, WorkingHand.Right).Append(string.Empty))),
            "reach-description.txt");

    [Fact]
    public void A_forbidden_posture_is_said_and_not_drawn()
    {
        ReachReport report = ReachAnalysis.Analyse(
            Tables,
            Reference with { Precautions = [ReachPrecaution.Sternal] },
            new ReachSettings { Draws = 0, Postures = [Posture.Seated], Approaches = [Approach.Behind] });
        Assert.Contains(
            "This posture is not used for this person.",
            ReachDescription.Sentences(report, report.Needs[0], WorkingHand.Right),
            StringComparer.Ordinal);
        Assert.Throws<ArgumentException>(() => ReachPicture.Svg(report, report.Needs[0], WorkingHand.Right));
    }
}
