using System.Text.RegularExpressions;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Wording;

/// <summary>The brief result keeps its bounds for anybody, not only for people whose texts somebody has read.</summary>
public sealed class BriefTextTests
{
    private static readonly AdviceSettings Few = new() { ValueDraws = 8, WeightDraws = 400 };

    private static IEnumerable<(Answers Known, Advice Advice, IReadOnlyList<BriefPart> Parts)> People(int count)
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        var advisor = new Advisor(Cases.Knowledge, Few);
        var text = new BriefText(Cases.Knowledge);
        for (int i = 0; i < count; i++)
        {
            var known = simulator.Make(7, i, i % 2 == 0 ? Depth.Full : Depth.Quick, new(2026, 3, 9)).Latest.Answers;
            var advice = advisor.Advise(known);
            yield return (known, advice, text.Of(advice, known));
        }
    }

    [Fact]
    public void At_most_eight_sentences_and_ninety_words_and_the_plan_within_forty()
    {
        foreach (var (_, advice, parts) in People(120).Where(p => p.Advice.Stops.IsEmpty))
        {
            string all = string.Join(' ', parts.Select(p => p.Sentence));
            Assert.True(parts.Count <= 8, all);
            Assert.True(BriefText.Words(all) <= 90, all);
            Assert.True(parts.TakeWhile(p => p.Topic != BriefTopic.Plan).Sum(p => BriefText.Words(p.Sentence)) <= 40, all);
            Assert.Contains(parts, p => p.Topic == BriefTopic.Plan);
            Assert.Contains(parts, p => p.Topic == BriefTopic.Next);
            Assert.True(advice.Ranked.IsEmpty || parts.Any(p => p.Topic == BriefTopic.Certainty), all);
        }
    }

    [Fact]
    public void Every_part_is_one_sentence_with_one_stop_at_its_end()
    {
        foreach (var (_, _, parts) in People(60).Where(p => p.Advice.Stops.IsEmpty && !p.Advice.Ranked.IsEmpty))
        {
            Assert.All(parts, p => Assert.Matches("^[A-Z][^.]*(?:[0-9]\\.[0-9][^.]*)*\\.$", p.Sentence));
        }
    }

    [Fact]
    public void No_reason_compares_two_equal_numbers()
    {
        foreach (var (_, _, parts) in People(120))
        {
            foreach (string reason in parts.Where(p => p.Topic == BriefTopic.Reason).Select(p => p.Sentence))
            {
                string[] numbers = [.. Regex.Matches(reason, @"\d+(?:\.\d+)?", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Select(m => m.Value)];
                Assert.True(numbers.Distinct().Count() == numbers.Length || numbers.Length > 2, reason);
            }
        }
    }
}
