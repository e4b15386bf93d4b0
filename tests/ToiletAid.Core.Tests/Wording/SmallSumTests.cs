using ToiletAid.App.Calculators;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Wording;

/// <summary>What is counted once is said in the singular, and the same time until a burn reads the same wherever it stands.</summary>
public sealed class SmallSumTests
{
    [Theory]
    [InlineData(1, "at 1 clean a day")]
    [InlineData(1.04, "at 1 clean a day")]
    [InlineData(1.5, "at 1.5 cleans a day")]
    [InlineData(0, "at 0 cleans a day")]
    public void Cleans_are_counted_as_they_read(double cleans, string said) => Assert.Contains(said, Paper(1, cleans), StringComparison.Ordinal);

    [Fact]
    public void One_of_a_thing_is_singular()
    {
        string said = Paper(1, 0.82);

        Assert.Contains("11.4 centimetres long, 1 layer, 2 plies.", said, StringComparison.Ordinal);
        Assert.Contains("In a month: 1 roll of 200 sheets.", said, StringComparison.Ordinal);
    }

    /// <summary>Between the rows of the burn table at 48.88 and 51 degrees, 49 is 4 minutes 45 seconds: the minutes alone, and never more.</summary>
    [Theory]
    [InlineData(285, "4 minutes")]
    [InlineData(299.9, "4 minutes")]
    [InlineData(300, "5 minutes")]
    [InlineData(119.9, "119 seconds")]
    [InlineData(17, "17 seconds")]
    [InlineData(7200, "2 hours")]
    public void A_time_until_a_burn_is_rounded_down(double seconds, string said) => Assert.Equal(said, Spoken.Time(seconds));

    private static string Paper(int sheets, double cleans) =>
        string.Join('\n', new PaperCalculation(Cases.Knowledge, new(PaperHold.Pad, sheets, 0), 4, cleans).Lines());
}
