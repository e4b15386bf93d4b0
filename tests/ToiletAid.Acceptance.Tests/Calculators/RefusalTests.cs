namespace ToiletAid.Acceptance.Tests.Calculators;

public sealed class RefusalTests
{
    public static TheoryData<string, string> Refused => new()
    {
        { "grip", "--age: It is missing. The norm depends on age, so give it, such as --age 74." },
        { "grip|--age|74|--grip|11 cm", "--grip: 11 centimetres is a length, but grip is a force. Type grip like this: 45 kilograms-force." },
        { "grip|--age|740", "--age: 740 years is out of range for age. Give a number from 16 to 110 years." },
        { "grip|--age|74|--sex|woman", "--sex: woman is not an answer, use female, male or unstated." },
        { "grip|--age|74|--grasp|2", "--grasp: 2 is not an answer, use fine-pinch, whole-hand, press-with-palm-or-fist, press-with-forearm or none." },
        { "grip|--age|74|--aid|grabber", "--aid: grabber is not in the catalogue, use by-hand, long-clamp, short-soft, paddle-lock, tongs, loop-wrap, squeeze-wash, spray-wash, hose-wash, seat-wash, seat-wash-dry, wipe-moist or helper-wipe." },
        { "grip|--age|74|--add-on|hand-cuff", "--add-on: An add-on needs an aid. Give --aid too." },
        { "grip|--age|74|--aid|by-hand|--add-on|hand-cuff", "--add-on: hand-cuff does not combine with by-hand, use raised-seat-with-cut-out, footstool, fixed-rail, skin-mirror, prepared-paper." },
        { "paper", "--sheets: It is missing. Give --sheets and --folds, or --aid." },
        { "paper|--sheets|4", "--folds: It is missing. Give --sheets and --folds, or --aid." },
        { "paper|--sheets|0|--folds|2", "--sheets: 0 is out of range for sheets. Give a number from 1 to 60." },
        { "paper|--sheets|4.5|--folds|2", "--sheets: Sheets is counted in whole numbers. Did you mean 4 or 5?" },
        { "paper|--sheets|4|--folds|9", "--folds: 9 is out of range for folds. Give a number from 0 to 4." },
        { "paper|--aid|paddle-lock|--stool|8", "--stool: 8 is not an answer, use 1, 2, 3, 4, 5, 6 or 7." },
        { "paper|--aid|spray-wash", "--aid: spray-wash takes no paper. Use one of by-hand, long-clamp, short-soft, paddle-lock, tongs, loop-wrap, helper-wipe." },
        { "paper|--sheets|4|--folds|2|--girth|9 m", "--girth: 9 metres is out of range for girth. Did you mean 9 centimetres?" },
        { "water", "--reservoir: It is missing. Give --reservoir and --flow, or --aid." },
        { "water|--reservoir|180 ml|--flow|0", "--flow: 0 millilitres a second is out of range for flow. Give a number from 0.1 to 500 millilitres a second." },
        { "water|--aid|spray-wash|--hot|-5 C", "--hot: -5 degrees Celsius is out of range for hot water. Give a number from 0 to 100 degrees Celsius." },
        { "water|--aid|spray-wash|--hot|10 C|--cold|20 C", "--hot: The hot water is colder than the cold water. Measure both, or change them round." },
        { "water|--aid|tongs", "--aid: tongs uses no water. Use one of squeeze-wash, spray-wash, hose-wash, seat-wash, seat-wash-dry." },
        { "reach|--stature|172 m", "--stature: 172 metres is out of range for stature. Did you mean 172 centimetres?" },
        { "reach|--mass|400 kg", "--mass: 400 kilograms is out of range for mass. Did you mean 400 pounds?" },
        { "reach|--stature|90 cm", "--stature: 90 centimetres is out of range for stature. Give a number from 120 to 220 centimetres." },
        { "reach|--stature|NaN", "--stature: That is not a number with a unit. Type stature like this: 170 centimetres." },
        { "reach|--shoulder-extension|200", "--shoulder-extension: 200 degrees is out of range for shoulder extension. Give a number from 0 to 80 degrees." },
        { "reach|--lean|sideways", "--lean: sideways is not an answer, use forward, to-a-side, both or not-at-all, or a number of degrees." },
        { "reach|--precautions|sternal,knee", "--precautions: knee is not an answer, use hip-flexion-limit, hip-extension-limit, no-twisting-or-bending, brittle-bones, sternal, shoulder-surgery, no-weight-through-the-hand, no-weight-on-a-leg, no-strong-grip, dysreflexia-risk, dizzy-when-leaning, allergy-latex, allergy-silicone, allergy-nickel, allergy-wipes or none." },
        { "reach|--approach|above", "--approach: above is not an approach, use behind, front or side." },
        { "reach|--posture|reclined|--approach|behind|--draws|0|--picture|never.svg", "--picture: There is no way to the skin in this posture, so there is nothing to draw. Try another posture." },
        { "reach|--draws|0|--picture|no-such-folder/reach.svg", "--picture: no-such-folder/reach.svg could not be written, its folder does not exist." },
        { "reach|--draws|0|--picture|", "--picture: The file could not be written, that is not a file name." },
        { "reach|--draws|5000", "--draws: 5000 is out of range for draws. Give a number from 0 to 4096." },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_refused_option_is_told_by_name_with_the_fix(string arguments, string sentence)
    {
        var (code, output, error) = Cli.Run("", ["calc", .. arguments.Split('|')]);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Equal(sentence, error.TrimEnd('\n'));
    }

    [Fact]
    public void Every_refused_option_is_told_one_a_line()
    {
        var (code, _, error) = Cli.Run("", "calc", "reach", "--stature", "172 m", "--mass", "foo", "--sex", "x");

        Assert.Equal(2, code);
        Assert.Equal(["--stature", "--mass", "--sex"], error.TrimEnd('\n').Split('\n').Select(line => line.Split(':')[0]));
    }

    [Theory]
    [InlineData("calc")]
    [InlineData("calc", "fly")]
    [InlineData("calc", "grip", "--age", "74", "--format", "csv")]
    [InlineData("calc", "grip", "--agee", "74")]
    [InlineData("calc", "grip", "--age")]
    public void Wrong_usage_is_one_line_and_exit_two(params string[] arguments)
    {
        var (code, output, error) = Cli.Run("", arguments);

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }
}
