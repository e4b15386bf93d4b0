using System.Text.RegularExpressions;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Wording;

/// <summary>No sentence about a plan tells the person's own hands what they cannot do: bring paper to the skin, lift a fold, or hold on.</summary>
public sealed partial class HandTaskTests
{
    private static readonly AdviceSettings Few = new() { ValueDraws = 4, WeightDraws = 50, AsksGrip = false };

    /// <summary>Hands that get to the skin on no way, or take up no paper, each with skin that the words speak of.</summary>
    public static TheoryData<string, string, string> Hands
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (string hand in (string[])["grasp=press-with-forearm", "grasp=press-with-palm-or-fist", "grasp=none", "reach=short"])
            {
                data.Add(hand, "skin", "pressure-injury");
                data.Add(hand, "skin", "radiotherapy");
                data.Add(hand, "conditions", "prolapse");
                data.Add(hand, "conditions", "swelling-or-skin-folds");
                data.Add(hand, "posture", "half-standing");
                data.Add(hand, "lean", "forward");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Hands))]
    public void A_hand_that_cannot_is_told_who_does_it(string hand, string question, string option)
    {
        string[] parts = hand.Split('=');
        var cannot = hand == "reach=short"
            ? Cases.Able.Choose("reach-behind", "not-past-the-hip").Choose("reach-front", "not-past-mid-thigh")
            : Cases.Able.Choose(parts[0], parts[1]);
        var person = question == "conditions" ? cannot.Mark(question, option) : cannot.Choose(question, option);

        Assert.Empty(Told(person, new Advisor(Cases.Knowledge, Few).Advise(person)));
        Assert.NotEmpty(Told(person, new Advisor(Cases.Knowledge, Few).Advise(Able(person))));
    }

    [Fact]
    public void Nor_is_anybody_who_is_simulated()
    {
        var simulator = new PeopleSimulator(Cases.Knowledge, BuiltIn.People());
        var advisor = new Advisor(Cases.Knowledge, Few);
        int cannot = 0;
        for (int i = 0; i < TestRun.Times(1500, 150); i++)
        {
            var answers = simulator.Make(23, i, Depth.Full, new(2026, 3, 9)).Sessions[0].Answers.Without(QuestionIds.Stature).Without(QuestionIds.Mass).Without(QuestionIds.Joints);
            if (Pats(answers) && Holds(answers))
            {
                continue;
            }

            cannot++;
            Assert.Empty(Told(answers, advisor.Advise(answers)));
        }

        Assert.True(cannot > 20, $"{cannot} people");
    }

    /// <summary>The same person with hands that can, so that the words for able hands are seen to be found.</summary>
    private static Answers Able(Answers person) =>
        person.Choose("grasp", "fine-pinch").Choose("dexterity", "usual").Choose("reach-behind", "waist-or-above").Choose("reach-front", "past-the-groin");

    private static bool Pats(Answers a) => !(a.Choice((QuestionId)QuestionIds.Grasp) is "press-with-forearm" or "press-with-palm-or-fist" or "none"
        || (a.Choice((QuestionId)QuestionIds.ReachBehind) == "not-past-the-hip" && a.Choice((QuestionId)QuestionIds.ReachFront) is "not-past-mid-thigh" or "groin"));

    private static bool Holds(Answers a) => a.Choice((QuestionId)QuestionIds.Grasp) is not ("press-with-forearm" or "press-with-palm-or-fist" or "none");

    /// <summary>Sentences that tell these hands what they cannot do.</summary>
    private static List<string> Told(Answers hands, Advice advice)
    {
        var told = new List<string>();
        foreach (var plan in advice.Ranked.Where(p => !p.Plan.Methods.Any(m => m.Method == MethodKind.Helper)))
        {
            bool tool = plan.Plan.Methods.Any(m => m.Method == MethodKind.Wipe && m.Reach == ReachKind.Handle) || plan.Plan.Methods.Any(m => m.Reach == ReachKind.BareHand);
            string[] cautions = [.. plan.Cautions.SelectMany(c => (string?[])[AdviceText.Sentence(c), c.Rule.Brief, c.Rule.Person]).OfType<string>()];
            string[] steps = [.. new SetupText(plan, hands, Cases.Knowledge).Steps(), .. new SetupText(plan, hands, Cases.Knowledge, SetupReader.Person).Steps()];
            foreach (string sentence in cautions.Concat(steps).Concat(advice.ForEveryPlan.Select(AdviceText.Sentence)).SelectMany(t => t.Split(". ")))
            {
                if ((!Pats(hands) && !tool && AtTheSkin().IsMatch(sentence) && !ByAnother().IsMatch(sentence)) || (!Holds(hands) && HoldOn().IsMatch(sentence)))
                {
                    told.Add($"{plan.Plan.Key}: {sentence}");
                }
            }
        }

        return told;
    }

    [GeneratedRegex(@"\b(pats?|lay|lift)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AtTheSkin();

    [GeneratedRegex(@"\b(somebody|someone|carer|helper)\b|This hand cannot", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ByAnother();

    [GeneratedRegex(@"(?<!cannot )\bhold (on|something|the rail)\b|fixed to hold", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HoldOn();
}
