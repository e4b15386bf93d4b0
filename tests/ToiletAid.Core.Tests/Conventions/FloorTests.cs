using ToiletAid.Core.Knowledge;

namespace ToiletAid.Core.Tests.Conventions;

public sealed class FloorTests
{
    private static readonly Floors Core = new(
        typeof(KnowledgeBase).Assembly,
        "ToiletAid.Core",
        "Ids", "Quantities", "Evidence", "Randomness", "Statistics",
        "Person", "Interview", "Catalogue", "Reach", "Hand", "Paper", "Water", "Cost",
        "Knowledge", "Plans", "Safety", "Ranking", "Simulation", "Advising", "Outcomes", "Panels", "Asking", "Explaining", "Fitting", "Comparing", "Teaching");

    [Fact]
    public void Every_folder_of_core_is_a_floor() => Assert.Empty(Core.Unlisted());

    [Fact]
    public void No_floor_of_core_uses_a_higher_one() => Assert.Empty(Core.Upward());

    [Fact]
    public void Ranking_is_mathematics_and_knows_neither_plans_nor_persons() => Assert.Equal(["Randomness"], Core.UsedBy("Ranking"));
}
