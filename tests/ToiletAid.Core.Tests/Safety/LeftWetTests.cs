using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>A wash leaves water. Where the hand cannot pat, that takes another person, which counts, and nobody is asked for who is never there.</summary>
public sealed class LeftWetTests
{
    [Fact]
    public void What_another_person_has_to_pat_is_not_done_alone_and_nobody_is_asked_who_is_never_there()
    {
        var advisor = new Advisor(Cases.Knowledge, new() { ValueDraws = 12, WeightDraws = 50, AsksGrip = false });
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        int patted = 0, alone = 0;
        for (int i = 0; i < TestRun.Times(1000, 80); i++)
        {
            var answers = simulator.Make(91, i, Depth.Full, new(2026, 3, 9)).Sessions[0].Answers;
            foreach (var plan in advisor.Advise(answers).Ranked.Where(p => !p.HandPats))
            {
                var wet = plan.Cautions.FirstOrDefault(c => c.Rule.Id == "wet-skin" || c.Rule.Id == RuleIds.AirOnBrokenSkin);
                if (wet is null || plan.Plan.Methods.Any(m => m.Method == MethodKind.Wipe))
                {
                    continue;
                }

                double independence = plan.Criteria[(int)Criterion.Independence];
                Assert.True(independence <= 0.4, $"person {i}: {plan.Plan.Key} is done alone to {independence}");
                patted++;
                if (answers.Choice(QuestionIds.Helper) == "never")
                {
                    Assert.DoesNotContain("omebody", wet.Rule.Text + wet.Rule.Brief + wet.Rule.Person, StringComparison.Ordinal);
                    Assert.Contains("towel", wet.Rule.Brief, StringComparison.Ordinal);
                    alone++;
                }
            }
        }

        Assert.True(patted > 10 && alone > 2, $"{patted} patted by another person, {alone} with nobody there");
    }
}
