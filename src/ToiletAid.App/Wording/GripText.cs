using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Wording;

/// <summary>How much the first place depends on a grip that was not measured, in words and as JSON.</summary>
public static class GripText
{
    /// <summary>Two or three sentences.</summary>
    public static IEnumerable<string> Lines(GripDependence grip, RankedPlan first)
    {
        yield return "Grip was not measured.";
        bool weak = Stays(grip.WithWeak, first), strong = Stays(grip.WithStrong, first);
        if (weak && strong)
        {
            yield return "It makes no difference to the first place.";
            yield break;
        }

        if (!weak)
        {
            yield return $"With a weak hand for that age, {Spoken.Force(grip.WeakNewtons)}, {Would(grip.WithWeak)}. Measure the grip.";
        }

        if (!strong)
        {
            yield return $"With a strong hand for that age, {Spoken.Force(grip.StrongNewtons)}, {Would(grip.WithStrong)}. Measure the grip.";
        }
    }

    /// <summary>The same as an object; null when there is nothing to say.</summary>
    public static void Write(Utf8JsonWriter json, string name, GripDependence? grip, RankedPlan first)
    {
        if (grip is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteBoolean("firstPlaceStays", Stays(grip, first));
        json.WriteRounded("weakNewtons", grip.WeakNewtons);
        json.WriteString("firstWithWeak", grip.WithWeak?.Aid.Id);
        json.WriteRounded("strongNewtons", grip.StrongNewtons);
        json.WriteString("firstWithStrong", grip.WithStrong?.Aid.Id);
        json.WriteEndObject();
    }

    /// <summary>True where neither a weak nor a strong grip would put another kind first.</summary>
    internal static bool Stays(GripDependence grip, RankedPlan first) => Stays(grip.WithWeak, first) && Stays(grip.WithStrong, first);

    private static bool Stays(Plan? plan, RankedPlan first) => plan?.Aid.KindId == first.Plan.Aid.KindId;

    private static string Would(Plan? plan) => plan is null
        ? "no plan could be offered"
        : $"the first place would be {PlanText.Lower(PlanText.Name(plan))}";
}
