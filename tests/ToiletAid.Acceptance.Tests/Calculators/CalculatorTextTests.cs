namespace ToiletAid.Acceptance.Tests.Calculators;

public sealed class CalculatorTextTests
{
    [Theory]
    [InlineData("grip-and-aid", "grip", "--age", "74", "--sex", "female", "--grip", "11 kg", "--aid", "long-clamp")]
    [InlineData("grip-one-hand-free", "grip", "--age", "81", "--sex", "male", "--grip", "4 kg", "--hands-free", "one", "--dexterity", "cannot", "--aid", "short-soft")]
    [InlineData("grip-cuff", "grip", "--age", "40", "--grasp", "press-with-palm-or-fist", "--aid", "paddle-lock", "--add-on", "hand-cuff")]
    [InlineData("paper-aid", "paper", "--aid", "paddle-lock", "--stool", "5", "--cleans", "2")]
    [InlineData("paper-pad", "paper", "--sheets", "4", "--folds", "2")]
    [InlineData("paper-too-short", "paper", "--sheets", "4", "--folds", "2", "--girth", "9 cm", "--stool", "6")]
    [InlineData("water-aid", "water", "--aid", "spray-wash")]
    [InlineData("water-too-warm", "water", "--reservoir", "180 ml", "--flow", "4 ml/s", "--per-clean", "400 ml", "--hot", "150 F", "--cold", "10 C", "--target", "48 C", "--feeling", "none")]
    [InlineData("water-cool-tap", "water", "--aid", "squeeze-wash", "--hot", "30 C", "--cold", "8 C", "--feeling", "usual")]
    [InlineData("water-seat", "water", "--aid", "seat-wash-dry")]
    [InlineData("reach-stiff", "reach", "--stature", "172 cm", "--mass", "70 kg", "--posture", "seated", "--shoulder-extension", "15", "--internal-rotation", "20", "--lean", "forward", "--draws", "200")]
    [InlineData("reach-does-not-fit", "reach", "--stature", "5 ft 3 in", "--mass", "150 kg", "--sex", "female", "--age", "70", "--reach-behind", "waist-or-above", "--shoulder-extension", "0", "--internal-rotation", "0", "--precautions", "sternal", "--draws", "200")]
    public void A_calculation_reads_as_approved(string name, params string[] arguments)
    {
        var (code, output, error) = Cli.Run("", ["calc", .. arguments]);

        Assert.Equal((0, ""), (code, error));
        Golden.Match(output, name + ".txt");
    }

    [Theory]
    [InlineData("grip", "--age", "74")]
    [InlineData("paper", "--aid", "tongs")]
    [InlineData("water", "--aid", "spray-wash")]
    [InlineData("reach", "--stature", "160 cm", "--draws", "20")]
    public void The_limits_of_the_tool_are_always_said(params string[] arguments) =>
        Assert.EndsWith(App.Wording.AdviceText.Limits + "\n", Cli.Run("", ["calc", .. arguments]).Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("--aid", "spray-wash")]
    [InlineData("--reservoir", "180 ml", "--flow", "4 ml/s", "--target", "70 C", "--feeling", "usual")]
    public void Warm_water_never_comes_without_a_caution(params string[] arguments) =>
        Assert.Contains("\nCaution. ", Cli.Run("", ["calc", "water", .. arguments]).Output, StringComparison.Ordinal);
}
