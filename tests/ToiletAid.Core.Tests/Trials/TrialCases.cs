using System.Collections.Immutable;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Trials;

/// <summary>Plans and trials in few words.</summary>
internal static class TrialCases
{
    internal static Plan Plan(string aid, string? companion = null, Approach? approach = Approach.Behind, Posture posture = Posture.Seated, params string[] addOns) => new()
    {
        Aid = Aid(aid),
        AddOns = [.. Cases.Knowledge.Catalogue.AddOns.Where(a => addOns.Contains(a.Id))],
        Companion = companion is null ? null : Aid(companion),
        Approach = approach,
        Posture = posture,
    };

    internal static TrialRun Run(RunKind kind, string? level = null, string? cleanliness = null, int? effort = null, params string[] problems) =>
        new() { Kind = kind, Level = level, Cleanliness = cleanliness, Effort = effort, Problems = [.. problems] };

    /// <summary>A try in which all went well.</summary>
    internal static TrialRun Good(RunKind kind) => Run(kind, "06", kind == RunKind.Real ? "clean" : null, 2);

    /// <summary>A try in which the used paper could not be let go of.</summary>
    internal static TrialRun FailedRelease(RunKind kind) => Run(kind, "05", null, 3, "could-not-let-go");

    internal static PastTrial Of(Plan plan, params TrialRun[] runs) => new(new DateOnly(2026, 3, 16), new() { Plan = TriedPlan.Of(plan), Runs = [.. runs] });

    /// <summary>What is believed of a plan with these predicted values and this variance on every criterion.</summary>
    internal static double[] Believed(Plan plan, double[] predicted, double variance, params PastTrial[] trials)
    {
        double[] values = [.. predicted];
        TrialEvidence.Of(Cases.Knowledge, [.. trials], _ => [.. predicted.Select(_ => variance)])?.Update(plan, values);
        return values;
    }

    private static Aid Aid(string id) => Cases.Knowledge.Catalogue.Aids.Single(a => a.Id == id);
}
