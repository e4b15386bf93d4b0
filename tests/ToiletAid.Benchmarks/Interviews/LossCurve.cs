using System.Globalization;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;

namespace ToiletAid.Benchmarks.Interviews;

/// <summary>Mean loss after each question: asked by what the answers are worth, by a fixed list, and in random order. The choice is made alike in all three.</summary>
internal static class LossCurve
{
    internal static void Print(KnowledgeBase knowledge, List<SimulatedPerson> people, Depth depth, int questions, ulong seed)
    {
        var planner = QuestionPlanner.For(knowledge);
        var start = planner.OutlookFor(depth, Answers.None, judgeEarly: true);
        string[] safety = [.. knowledge.Questions.All.Where(q => q.Opening && q.Safety).Select(q => q.Id.Text)];
        string[] list = [.. safety, .. start.Values.Select(v => v.Question.Id.Text).Except(safety)];
        Console.WriteLine($"{Words.Of(depth)}: mean loss after each question; fixed list by value at the start: {string.Join(", ", list.Take(questions))}");
        var judged = people.Where(p => p.First is not null).ToList();
        double[] worth = Curve(judged, (_, answers) => planner.OutlookFor(depth, answers, judgeEarly: true).Values is var values && safety.FirstOrDefault(s => answers[new(s)] is null) is { } first ? first : values.FirstOrDefault()?.Question.Id);
        double[] fixedList = Curve(judged, (_, answers) => Open(answers).OrderBy(q => Array.IndexOf(list, q)).FirstOrDefault());
        double[] random = Curve(judged, (person, answers) => safety.FirstOrDefault(s => answers[new(s)] is null) ?? Open(answers).OrderBy(q => Draw(person, q)).FirstOrDefault());
        for (int k = 0; k <= questions; k++)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {k,2}: by value {worth[k]:F4}, fixed list {fixedList[k]:F4}, random order {random[k]:F4}"));
        }

        IEnumerable<string> Open(Answers answers) => OpenQuestions.Open(knowledge.Questions, depth, answers).Select(q => q.Id.Text);

        double Draw(int person, string question) =>
            new RandomDraws(seed, ((ulong)person << 32) | (uint)Array.IndexOf(list, question)).NextUniform();

        double[] Curve(List<SimulatedPerson> all, Func<int, Answers, string?> next)
        {
            double[] losses = new double[questions + 1];
            for (int i = 0; i < all.Count; i++)
            {
                var answers = Answers.None;
                for (int k = 0; k <= questions; k++)
                {
                    var first = planner.OutlookFor(depth, answers, judgeEarly: true).First;
                    losses[k] += (first is null ? all[i].Advice.Ranked[0].Value : all[i].Loss(first.Id)) / all.Count;
                    if (next(i, answers) is { } question)
                    {
                        answers = answers.With(new(question), all[i].Answer(question));
                    }
                }
            }

            return losses;
        }
    }
}
