using System.Collections.Immutable;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Outcomes;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Outcomes;

/// <summary>Tries in few words.</summary>
internal static class Clinic
{
    private static readonly TrialFinding CouldNotHold = Cases.Knowledge.Trials.Problems.Single(p => p.Id == "could-not-hold");

    internal static FirstTry Try(string aid, double works, bool fails, double predicted = 0.8, double? cleaning = null, Answers? known = null)
    {
        double[] criteria = [.. Enumerable.Repeat(predicted, Enum.GetValues<Criterion>().Length)];
        criteria[(int)Criterion.Reach] = works;
        double?[] seen = new double?[criteria.Length];
        seen[(int)Criterion.Cleaning] = fails ? null : cleaning;
        return new()
        {
            Aid = aid,
            Predicted = TrialPrediction.Of(criteria),
            Decided = RunKind.Real,
            Findings = new(true, fails ? [CouldNotHold] : [], [.. seen]),
            Problems = [],
            Known = known ?? Answers.None,
        };
    }

    internal static PersonOutcome Person(params ImmutableArray<FirstTry> tries) => new(tries, 0, "03", "05", "05", 14);

    internal static OutcomeTally Tally(IEnumerable<FirstTry> tries)
    {
        var tally = new OutcomeTally(Cases.Knowledge);
        foreach (var tried in tries)
        {
            tally.Add(Person(tried));
        }

        return tally;
    }

    internal static IEnumerable<FirstTry> Of(string aid, int people, int failed, double works = 0.8, double? cleaning = null) =>
        Enumerable.Range(0, people).Select(i => Try(aid, works, i < failed, cleaning: cleaning));
}
