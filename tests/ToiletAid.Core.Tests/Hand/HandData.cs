using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Hand;

/// <summary>The built-in data and random people, shared by the tests of the hand.</summary>
internal static class HandData
{
    public const double NewtonsInKilogram = 9.80665;

    public static readonly HandModel Model = BuiltInNorms.HandModel();

    private static readonly CatalogueFile File = BuiltIn.Load("aids.json", KnowledgeJson.Default.CatalogueFile);

    public static readonly Aid[] Aids = [.. File.Aids];

    public static readonly AddOn[] AddOns = [.. File.AddOns];

    public static readonly Gen<HandFacts> People =
        Gen.Select(
            Gen.Select(Gen.Double[18, 104], Gen.Enum<Sex>(), Gen.Enum<Grasp>(), Gen.Enum<HowObtained>(), Gen.Int[1, 2]),
            Gen.Select(Gen.Enum<Dexterity>(), Gen.Enum<Tremor>(), Gen.Double[0.5, 8]),
            Gen.Select(Force(600), Force(150), Gen.Bool, Gen.Double[10, 200]),
            (a, b, c) => new HandFacts
            {
                AgeYears = a.Item1,
                Sex = a.Item2,
                BestGrasp = a.Item3,
                GraspObtained = a.Item4,
                HandsFree = a.Item5,
                Dexterity = b.Item1,
                Tremor = b.Item2,
                CleansPerDay = b.Item3,
                GripNewtons = c.Item1,
                PinchNewtons = c.Item2,
                PegSeconds = c.Item3 ? c.Item4 : null,
            });

    public static readonly Gen<(Aid Aid, AddOn[] AddOns)> Plans =
        Gen.Select(Gen.OneOf(Aids), Gen.Int[0, 255], (aid, bits) =>
            (aid, AddOns.Where((a, i) => (bits & (1 << i)) != 0 && aid.AddOns.Contains(a.Id)).ToArray()));

    public static Aid Aid(string id) => Aids.Single(a => a.Id == id);

    public static AddOn AddOn(string id) => AddOns.Single(a => a.Id == id);

    public static HandFacts Usual { get; } = new()
    {
        AgeYears = 67.5,
        Sex = Sex.Female,
        BestGrasp = Grasp.FinePinch,
        HandsFree = 2,
        CleansPerDay = 2,
    };

    public static HandlingAssessment Assess(Aid aid, AddOn[] addOns, HandFacts person, double u = 0.5) =>
        Model.Assess(aid, addOns, person, Model.Capacity(person), u);

    private static Gen<double?> Force(double most) => Gen.Select(Gen.Bool, Gen.Double[0, most], (known, newtons) => known ? newtons : (double?)null);
}
