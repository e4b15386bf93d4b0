using System.Diagnostics;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.Core;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Explaining;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>Plays interviews with simulated people and judges what they come to under all answers.</summary>
internal static class InterviewJudge
{
    internal static void Run(Arguments arguments)
    {
        var knowledge = BuiltIn.Knowledge();
        var people = SimulatedPerson.Of(knowledge, BuiltIn.People(), arguments.Seed, arguments.People).ToList();
        foreach (var depth in arguments.Depths)
        {
            Play(knowledge, people, depth);
        }
    }

    private static void Play(Knowledge knowledge, List<SimulatedPerson> people, Depth depth)
    {
        var advisor = new Advisor(knowledge, new());
        var planner = QuestionPlanner.For(knowledge);
        List<double> asked = [], times = [], losses = [];
        int same = 0, topTwo = 0, ruledOut = 0, wrongPosture = 0, anotherWay = 0, offered = 0;
        foreach (var person in people)
        {
            var answers = Answers.None;
            int count = 0;
            while (true)
            {
                long start = Stopwatch.GetTimestamp();
                var open = planner.Open(depth, answers);
                times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
                if (open.IsEmpty)
                {
                    break;
                }

                answers = answers.With(open[0].Id, person.Answer(open[0].Id));
                count++;
            }

            asked.Add(count);
            var advice = advisor.Advise(answers);
            if (person.First is null || advice.Ranked.IsEmpty)
            {
                continue;
            }

            offered++;
            var first = advice.Ranked[0].Plan;
            same += first.Aid.Id == person.First ? 1 : 0;
            topTwo += person.Place(first.Aid.Id) <= 2 ? 1 : 0;
            ruledOut += person.IsRuledOut(first.Aid.Id) ? 1 : 0;
            wrongPosture += person.IsWrongPosture(first) ? 1 : 0;
            anotherWay += person.IsAnotherWay(first) ? 1 : 0;
            losses.Add(person.Loss(first.Aid.Id));
        }

        asked.Sort();
        times.Sort();
        Print($"{Words.Of(depth)}: {people.Count} people, {offered} of them with a plan both ways");
        Print($"  questions: median {At(asked, 0.5)}, 90th percentile {At(asked, 0.9)}, most {asked[^1]}");
        Print($"  same first kind {Share(same)}, in the top two {Share(topTwo)}, ruled out {Share(ruledOut)}, posture not the person's {Share(wrongPosture)}, another way {Share(anotherWay)}");
        Print($"  mean loss {losses.Average():F4}");
        Print($"  next question: median {At(times, 0.5):F1} ms, 99th percentile {At(times, 0.99):F1} ms, longest {times[^1]:F1} ms");

        string Share(int count) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * count / offered:F1} of 100");
    }

    private static double At(List<double> sorted, double share) => sorted[(int)Math.Min(sorted.Count - 1, Math.Ceiling(share * sorted.Count) - 1)];

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
