using System.Diagnostics;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.Benchmarks.Interviews;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Benchmarks;

/// <summary>Needed lengths of the drawn persons of simulated people as the program computes them, against the solver that looks at every start for
/// every person: how long each takes, and how far lengths and shares differ.</summary>
/// <remarks>What is longer than the longest way counts as that: both say that there is none. One core; compare times of one run only.</remarks>
internal static class ReachJudge
{
    private const int Draws = 64;
    private const int Rounds = 60;
    private const double Tolerance = 1e-5;

    /// <summary>Lengths at which shares are compared, m without stroke: the bare hand, and what aids give.</summary>
    private static readonly double[] Lengths = [0.03, 0.12, 0.18, 0.24, 0.30, 0.38, 0.46];

    /// <summary>Random shares of each range, besides the solver's own starts.</summary>
    private static readonly JointVector[] Starts = MakeStarts();

    private static Tally[] WarmUp => [.. Enum.GetValues<Approach>().Select(a => new Tally(a))];

    internal static void Run(Arguments arguments)
    {
        var knowledge = BuiltIn.Knowledge();
        var simulator = new PeopleSimulator(knowledge, knowledge.People);
        var tallies = Enum.GetValues<Approach>().Select(a => new Tally(a)).ToArray();
        for (int number = -1; number < arguments.People; number++)
        {
            // The first one is solved twice, so that no code is made ready while time is taken.
            var answers = simulator.Make(arguments.Seed, Math.Max(number, 0), Depth.Full, new(2026, 1, 1)).Latest.Answers;
            var person = AnswerMapping.Reach(answers);
            var study = new ReachStudy(knowledge.Body, person, Draws, seed: 20260101);
            foreach (var posture in PlanSpace.Postures(answers))
            {
                foreach (var tally in number < 0 ? WarmUp : tallies)
                {
                    tally.Add(knowledge.Body.Model, study, [.. person.Precautions], posture);
                }
            }
        }

        foreach (var tally in tallies)
        {
            tally.Print();
        }
    }

    private static JointVector[] MakeStarts()
    {
        var stream = new RandomDraws(1, 0);
        var starts = new JointVector[120];
        foreach (ref JointVector start in starts.AsSpan())
        {
            for (int i = 0; i < JointVector.Count; i++)
            {
                start[i] = stream.NextUniform();
            }
        }

        return starts;
    }

    private sealed class Tally(Approach approach)
    {
        private readonly List<double> _longer = [];
        private readonly List<double> _shares = [];
        private readonly List<double> _middle = [];
        private double _bias;
        private TimeSpan _whole;
        private TimeSpan _every;

        internal void Add(ReachNumbers numbers, ReachStudy study, ReachPrecaution[] precautions, Posture posture)
        {
            long start = Stopwatch.GetTimestamp();
            var need = study.Solve(posture, approach);
            _whole += Stopwatch.GetElapsedTime(start);
            if (!need.Allowed)
            {
                return;
            }

            double longest = study.Middle.Body.LongestWay;
            _middle.Add(Math.Min(need.MiddleLength - need.Stroke, longest) - Every(numbers, study.Middle, precautions, posture));
            double[] every = new double[Draws], program = new double[Draws];
            start = Stopwatch.GetTimestamp();
            for (int i = 0; i < Draws; i++)
            {
                every[i] = Every(numbers, study.Persons[i], precautions, posture);
            }

            _every += Stopwatch.GetElapsedTime(start);
            for (int i = 0; i < Draws; i++)
            {
                program[i] = Math.Min(need.Draws[i] - need.Stroke, study.Persons[i].Body.LongestWay);
                _longer.Add(program[i] - every[i]);
            }

            double[] differences = [.. Lengths.Select(l => (double)(program.Count(w => w <= l) - every.Count(w => w <= l)) / Draws)];
            _shares.Add(differences.Max(Math.Abs));
            _bias += differences.Average();
        }

        internal void Print()
        {
            double Over(double length) => 100.0 * _longer.Count(l => l > length) / _longer.Count;
            double Differ(double share) => 100.0 * _shares.Count(s => s > share) / _shares.Count;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"""
                {approach}: {_shares.Count} ways of {Draws} persons; {_whole.TotalMicroseconds / _longer.Count:F1} us a person with the middle one, {_every.TotalMicroseconds / _longer.Count:F1} us searched through
                  of 100 middle persons, longer by over 3 mm {100.0 * _middle.Count(l => l > 3e-3) / _middle.Count:F1}, over 8 mm {100.0 * _middle.Count(l => l > 8e-3) / _middle.Count:F1}, shorter by over 3 mm {100.0 * _middle.Count(l => l < -3e-3) / _middle.Count:F1}
                  of 100 lengths, longer by over 1 mm {Over(1e-3):F1}, over 3 mm {Over(3e-3):F1}, over 8 mm {Over(8e-3):F1}, shorter by over 3 mm {100.0 * _longer.Count(l => l < -3e-3) / _longer.Count:F1}
                  of 100 ways, largest difference of a share over 2 in 100 {Differ(0.02):F1}, over 5 in 100 {Differ(0.05):F1}; mean of the largest {100 * _shares.Average():F2}, mean difference {100 * _bias / _shares.Count:F2} in 100
                """));
        }

        private double Every(ReachNumbers numbers, in PersonDraw person, ReachPrecaution[] precautions, Posture posture)
        {
            if (PostureSetting.Prepare(numbers, numbers.Postures[(int)posture], approach, in person, precautions, out JointBox box, out Scene scene) is not null)
            {
                return person.Body.LongestWay;
            }

            var objective = new ReachObjective(in person.Body, in scene);
            double way = ReachSolver.Solve(in objective, in box, approach, out JointVector _);
            var descents = new Descent[Starts.Length];
            for (int i = 0; i < Starts.Length; i++)
            {
                descents[i].Pose = box.At(in Starts[i]);
            }

            FourMinimiser.Of(in objective, in box).Descend(descents, Rounds, Tolerance);
            return Math.Min(Math.Min(way, descents.Min(d => d.Value)), person.Body.LongestWay);
        }
    }
}
