using System.Globalization;
using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.Benchmarks.Interviews;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Benchmarks.Estimates;

/// <summary>How many first places another value of each estimate would change: simulated people who answered everything are ranked again with the
/// estimate at either end of its range, all else and all draws as they were.</summary>
internal static class EstimateSweep
{
    internal static void Run(Arguments arguments)
    {
        var knowledge = BuiltIn.Knowledge();
        var data = new RangedData(knowledge);
        var people = People(knowledge, arguments);
        var settings = new AdviceSettings { AsksGrip = false, ReachesKept = Math.Max(256, people.Length) };
        string?[] before = Firsts(new(knowledge, settings), people);
        int few = arguments.Screen > 0 ? Math.Min(arguments.Screen, people.Length) : people.Length;
        var moved = Sweep(data.Estimates, few);
        Print(moved, few, before.Take(few).Count(f => f is not null));
        if (few < people.Length)
        {
            Print(Sweep([.. ByMoved(moved).Select(m => m.Estimate)], people.Length), people.Length, before.Count(f => f is not null));
        }

        Moved[] Sweep(IReadOnlyList<Estimate> estimates, int first)
        {
            var found = new Moved[estimates.Count];
            Parallel.For(
                0,
                found.Length,
                new() { MaxDegreeOfParallelism = arguments.Jobs },
                () => new Advisor(knowledge, settings),
                (i, _, advisor) =>
                {
                    bool[]? Changed(double end) => EstimateSweep.Changed(data, estimates[i], end, advisor, people[..first], before);
                    found[i] = new(estimates[i], Changed(estimates[i].Low), Changed(estimates[i].High));
                    return advisor;
                },
                _ => { });
            return found;
        }
    }

    private static Answers[] People(KnowledgeBase knowledge, Arguments arguments)
    {
        var simulator = new PeopleSimulator(knowledge, knowledge.People);
        var advisor = new Advisor(knowledge, new());
        return [.. Enumerable.Range(0, int.MaxValue).Select(n => simulator.Make(arguments.Seed, n, Depth.Full, new(2026, 1, 1)).Latest.Answers).Where(a => advisor.Stops(a).IsEmpty).Take(arguments.People)];
    }

    private static string?[] Firsts(Advisor advisor, Answers[] people) => [.. people.Select(p => advisor.First(p)?.Aid.KindId)];

    /// <summary>Of each person, whether another kind comes first; null where the data would contradict themselves.</summary>
    private static bool[]? Changed(RangedData data, Estimate estimate, double end, Advisor builtIn, Answers[] people, string?[] before)
    {
        if (end == estimate.Value)
        {
            return new bool[people.Length];
        }

        try
        {
            string?[] after = Firsts(builtIn.With(data.With(estimate, end)), people);
            return [.. after.Zip(before, (a, b) => a != b)];
        }
        catch (Exception e) when (e is JsonException or ArgumentException)
        {
            return null;
        }
    }

    private static IEnumerable<Moved> ByMoved(Moved[] moved) =>
        moved.Where(m => m.Either > 0).OrderByDescending(m => m.Either).ThenBy(m => m.Estimate.File, StringComparer.Ordinal).ThenBy(m => m.Estimate.At);

    private static void Print(Moved[] moved, int people, int offered)
    {
        var moving = ByMoved(moved).ToList();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""
            {people} people, {offered} of them offered something; first places that change, of 100 people
            | estimate | basis | low | value | high | unit | at low | at high | at either |
            |---|---|---|---|---|---|---|---|---|
            """));
        foreach (var move in moving)
        {
            var e = move.Estimate;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {e.File}: {e.Place} | {e.Basis} | {e.Low} | {e.Value} | {e.High} | {e.Unit} | {Share(move.Low)} | {Share(move.High)} | {Of100(move.Either)} |"));
        }

        int refused = moved.Count(m => m.Low is null || m.High is null);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{moved.Length} numbers with a range that were not published; {moving.Count} change a first place, {moved.Length - moving.Count} none; {refused} cannot stand at an end beside the others"));
        string Of100(int count) => (100.0 * count / people).ToString("0.#", CultureInfo.InvariantCulture);
        string Share(bool[]? changed) => changed is null ? "-" : Of100(changed.Count(c => c));
    }

    private sealed record Moved(Estimate Estimate, bool[]? Low, bool[]? High)
    {
        internal int Either => Enumerable.Range(0, (Low ?? High)?.Length ?? 0).Count(p => Low?[p] == true || High?[p] == true);
    }
}
