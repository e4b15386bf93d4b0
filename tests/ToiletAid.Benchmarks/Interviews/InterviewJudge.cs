using System.Diagnostics;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>Plays interviews with simulated people and judges what they come to under all answers.</summary>
internal static class InterviewJudge
{
    internal static void Run(Arguments arguments)
    {
        var builtIn = BuiltIn.Knowledge();
        var numbers = builtIn.Evidence.Ids.ToDictionary(id => id.Text, id => builtIn.Evidence[id], StringComparer.Ordinal);
        foreach (var (id, value) in arguments.Numbers)
        {
            // A misspelt one would be measured as if nothing were changed.
            numbers[id] = builtIn.Evidence[new(id)] with { Value = value, Low = value, High = value };
        }

        var knowledge = builtIn with { Evidence = new(numbers) };
        var people = SimulatedPerson.Of(knowledge, knowledge.People, arguments.Seed, arguments.People).ToList();
        Print($"seed {arguments.Seed}, {people.Count} people, of whom {people.Count(p => p.First is null)} have no plan under all answers");
        foreach (var depth in arguments.Depths)
        {
            if (arguments.Curve > 0)
            {
                LossCurve.Print(knowledge, people, depth, arguments.Curve, arguments.Seed);
            }
            else
            {
                Play(knowledge, people, depth);
            }
        }
    }

    private static void Play(KnowledgeBase knowledge, List<SimulatedPerson> people, Depth depth)
    {
        var advisor = new Advisor(knowledge, new());
        var planner = QuestionPlanner.For(knowledge);
        List<double> asked = [], times = [], tiers = [];
        Reliability reliability = new(), raw = new(), shortlist = new(), counted = new();
        Tally byAdvice = new(), byOutlook = new();
        var ends = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var forbidden = new SortedDictionary<string, int>(StringComparer.Ordinal);
        int inTier = 0, judged = 0;
        foreach (var person in people)
        {
            var (answers, outlook) = Play(planner, depth, person, times);
            ends[Words.Of(outlook.Enough)] = ends.GetValueOrDefault(Words.Of(outlook.Enough)) + 1;
            asked.Add(answers.Ids.Count());
            if (person.First is null)
            {
                continue;
            }

            var advice = advisor.Advise(answers);
            byAdvice.Add(person, advice.Ranked.IsEmpty ? null : advice.Ranked[0].Plan);
            byOutlook.Add(person, outlook.First?.Id, false);
            if (!advice.Ranked.IsEmpty && person.Forbids(advice.Ranked[0].Plan.Aid.Id) is { } why)
            {
                forbidden[why] = forbidden.GetValueOrDefault(why) + 1;
            }

            if (!advice.Ranked.IsEmpty)
            {
                bool came = advice.Ranked[0].Plan.Aid.Id == person.First;
                shortlist.Add(advice.Held, came);
                counted.Add(advice.Ranked[0].FirstShare, came);
            }

            judged++;
            tiers.Add(outlook.Tier.Length);
            inTier += outlook.Tier.Any(a => a.Id == person.First) ? 1 : 0;
            reliability.Add(outlook.Share, outlook.First?.Id == person.First);
            raw.Add(outlook.RawShare, outlook.First?.Id == person.First);
        }

        Array.ForEach([asked, times, tiers], l => l.Sort());
        Print($"{Words.Of(depth)}");
        Print($"  questions: median {At(asked, 0.5)}, 90th percentile {At(asked, 0.9)}, most {asked[^1]}; ended by {string.Join(", ", ends.Select(e => $"{e.Key} {e.Value}"))}");
        Print($"  first place of the advice: {byAdvice}");
        Print($"  first kind of the outlook: {byOutlook}");
        Print($"  first places that are ruled out: {string.Join("; ", forbidden.Select(f => $"{f.Key}, {f.Value}"))}");
        Print($"  tier: median {At(tiers, 0.5)}, mean {tiers.Average():F2}; holds the first kind in {100.0 * inTier / judged:F1} of 100");
        Print($"  from an answer to the next question: median {At(times, 0.5):F1} ms, 99th percentile {At(times, 0.99):F1} ms, longest {times[^1]:F1} ms");
        Print(reliability, raw, shortlist, counted);
    }

    private static void Print(Reliability outlook, Reliability raw, Reliability shortlist, Reliability counted)
    {
        Print($"  said against came true:");
        Print(outlook, "the same before calibration", raw);
        Print($"  what the shortlist says of its first place:");
        Print(shortlist, "its counted share", counted);
    }

    private static void Print(Reliability said, string name, Reliability before)
    {
        said.Print();
        Print($"  {name}:");
        before.Print();
        Print($"  calibration: {before.Rising()}");
    }

    private static (Answers Answers, Outlook Outlook) Play(QuestionPlanner planner, Depth depth, SimulatedPerson person, List<double> times)
    {
        var answers = Answers.None;
        while (true)
        {
            long start = Stopwatch.GetTimestamp();
            var outlook = planner.OutlookFor(depth, answers);
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            if (outlook.Next.IsEmpty)
            {
                return (answers, outlook);
            }

            answers = answers.With(outlook.Next[0].Id, person.Answer(outlook.Next[0].Id));
        }
    }

    internal static double At(List<double> sorted, double share) => sorted[(int)Math.Min(sorted.Count - 1, Math.Ceiling(share * sorted.Count) - 1)];

    internal static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
