using System.Diagnostics;
using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Benchmarks;

/// <summary>Every demo interview answer by answer: how long ranking, reasons and the next question take after each, on one core.</summary>
/// <remarks>A percentile over different answers is wanted here, not a mean over one, so it is measured by hand. Compare numbers of one run only.</remarks>
internal static class RerankPercentiles
{
    private const int Rounds = 5;

    internal static void Run(string folder)
    {
        var knowledge = BuiltIn.Knowledge();
        var reader = new ProfileFile(knowledge.Questions);
        var sessions = Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(f => reader.Read(f).Value!.Latest).ToList();
        Run("while asking", knowledge, sessions, AdviceSettings.WhileAsking);
        Run("with all persons of the result", knowledge, sessions, new());
    }

    private static void Run(string settings, KnowledgeBase knowledge, List<Session> sessions, AdviceSettings advice)
    {
        List<double> whole = [], planning = [];
        for (int round = 0; round < Rounds; round++)
        {
            whole.Clear();
            planning.Clear();
            foreach (var session in sessions)
            {
                Walk(knowledge, session, advice, whole, planning);
            }
        }

        Print($"{settings}: rank, reasons and next question", whole);
        Print($"{settings}: next question alone", planning);
    }

    private static void Walk(KnowledgeBase knowledge, Session session, AdviceSettings settings, List<double> whole, List<double> planning)
    {
        var advisor = new Advisor(knowledge, settings);
        var planner = new QuestionPlanner(knowledge);
        var answers = Answers.None;
        advisor.Advise(answers);
        while (planner.Open(session.Depth, answers) is [var next, ..])
        {
            answers = answers.With(next.Id, session.Answers[next.Id] ?? new(new AnswerValue.NotKnown(), null));
            long start = Stopwatch.GetTimestamp();
            advisor.Advise(answers);
            long ranked = Stopwatch.GetTimestamp();
            planner.Open(session.Depth, answers);
            whole.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            planning.Add(Stopwatch.GetElapsedTime(ranked).TotalMilliseconds);
        }
    }

    private static void Print(string what, List<double> milliseconds)
    {
        milliseconds.Sort();
        double At(double share) => milliseconds[(int)Math.Min(milliseconds.Count - 1, Math.Ceiling(share * milliseconds.Count) - 1)];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{what}: {milliseconds.Count} answers, median {At(0.5):F1} ms, 90th percentile {At(0.9):F1} ms, 99th {At(0.99):F1} ms, longest {milliseconds[^1]:F1} ms"));
    }
}
