using System.Text;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Simulation;

namespace ToiletAid.Acceptance.Tests.Outcomes;

/// <summary>Invented people with whom something was tried: tongs fail twice as often as predicted, the others as predicted.</summary>
internal static class TriedPeople
{
    private static readonly string[] Kinds = ["tongs", "long-clamp", "paddle-lock"];

    /// <summary>People, one profile a line.</summary>
    internal static string Lines(int people, ulong seed = 5)
    {
        var knowledge = BuiltIn.Knowledge();
        var simulator = new PeopleSimulator(knowledge, BuiltIn.People());
        var writer = new ProfileWriter(knowledge.Questions);
        var random = new RandomDraws(seed, 1);
        var lines = new StringBuilder();
        for (int i = 0; i < people; i++)
        {
            var person = simulator.Make(seed, i, Depth.Quick, new(2026, 1, 1));
            string kind = Kinds[i % Kinds.Length];
            double works = 0.6 + (0.3 * random.NextUniform());
            bool fails = random.NextUniform() < (kind == "tongs" ? 2 : 1) * (1 - works);
            var trial = new Trial
            {
                Plan = new(kind, [], null, Approach.Behind, Posture.Seated),
                Predicted = TrialPrediction.Of([works, 0.8, 0.8, 0.9, 0.9, 0.6, 0.5, 0.7, 1]),
                Before = "03",
                Goal = "05",
                Runs = [new() { Kind = RunKind.Real, Level = fails ? "03" : "05", Cleanliness = fails ? null : "traces", Problems = fails ? ["could-not-hold"] : [] }],
            };
            var tried = new Session(new DateOnly(2026, 2, 1).AddDays(i % 100), Depth.Quick, Answers.None) { Trials = [trial] };
            lines.Append(Encoding.UTF8.GetString(writer.Line(person with { Sessions = [.. person.Sessions, tried] }))).Append('\n');
        }

        return lines.ToString();
    }
}
