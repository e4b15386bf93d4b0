using ToiletAid.App.Typed;

namespace ToiletAid.Core.Tests.Typed;

internal static class Questions
{
    public static readonly QuantityQuestion Stature = QuantityQuestion.Of("stature", 50, 250, "cm", "m", "in", "ft");
    public static readonly QuantityQuestion Mass = QuantityQuestion.Of("body weight", 20, 400, "kg", "lb", "st");
    public static readonly QuantityQuestion Grip = QuantityQuestion.Of("grip", 0, 100, "kgf", "lbf", "N");
    public static readonly QuantityQuestion Water = QuantityQuestion.Of("water temperature", 0, 60, "C", "F");
    public static readonly QuantityQuestion Flexion = QuantityQuestion.Of("shoulder flexion", 0, 190, "deg");
    public static readonly QuantityQuestion Peg = QuantityQuestion.Of("peg test time", 5, 600, "s", "min");
    public static readonly QuantityQuestion Reservoir = QuantityQuestion.Of("reservoir", 20, 3000, "ml", "l", "m3");
    public static readonly QuantityQuestion Flow = QuantityQuestion.Of("flow", 0.5, 500, "ml/s", "l/min");
    public static readonly QuantityQuestion AidMass = QuantityQuestion.Of("weight of the aid", 5, 3000, "g", "kg", "oz", "lb");
    public static readonly QuantityQuestion Age = QuantityQuestion.Of("age", 1, 120, "years");
    public static readonly QuantityQuestion Cleans = QuantityQuestion.Of("cleans a day", 0, 30, "a-day") with { IsCount = true };
    public static readonly QuantityQuestion Price = QuantityQuestion.Of("price", 0, 100000, "money");

    public static readonly QuantityQuestion[] All =
        [Stature, Mass, Grip, Water, Flexion, Peg, Reservoir, Flow, AidMass, Age, Cleans, Price];

    public static QuantityQuestion Named(string name) => All.Single(q => q.Name == name);
}
