using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Advising;

/// <summary>Answers and advice in few words, for the tests.</summary>
internal static class Cases
{
    internal static readonly KnowledgeBase Knowledge = BuiltIn.Knowledge();

    /// <summary>The same with every kind as it usually is.</summary>
    internal static readonly KnowledgeBase AsUsual = Knowledge with { Catalogue = new([.. Knowledge.Catalogue.Aids.Select(a => a with { Variants = [] })], Knowledge.Catalogue.AddOns) };

    internal static readonly Core.Safety.HazardTable Hazards = new(Knowledge.Rules, Knowledge.Questions, Knowledge.Evidence);

    /// <summary>Few draws: these tests look at what is offered and ruled out, which rests on the middle case.</summary>
    internal static readonly AdviceSettings Quick = new() { ValueDraws = 16, WeightDraws = 200 };

    /// <summary>Somebody who needs no aid.</summary>
    internal static Answers Able { get; } = Answers.None
        .Choose("age", 45).Choose("sex", "male").Choose("place", "own-toilet").Choose("posture", "seated").Choose("lean", "both")
        .Choose("hands-free", "two").Choose("reach-behind", "waist-or-above").Choose("grasp", "fine-pinch").Choose("dexterity", "usual")
        .Choose("tremor", "none").Choose("feeling", "usual").Choose("skin", "sound").Choose("bleeding", "no").Choose("sore-when-wiped", "no")
        .Choose("stool", "4").Choose("deep", "no").Choose("infection", "no").Choose("steps", "four-or-more").Choose("sight", "enough")
        .Choose("water", "basin-in-reach").Choose("socket", "yes").Choose("fixtures", "yes").Choose("drain", "mains").Choose("helper", "always").Choose("method", "either")
        .Mark("red-flags").Mark("precautions").Mark("conditions");

    internal static Answers Choose(this Answers answers, string question, string option) =>
        answers.With(new(question), new(new AnswerValue.Choice(option), HowObtained.Observed));

    internal static Answers Choose(this Answers answers, string question, double amount, string? unit = null) =>
        answers.With(new(question), new(new AnswerValue.Number(amount, unit ?? Knowledge.Questions[new(question)].Number!.Units[0]), HowObtained.Measured));

    internal static Answers Mark(this Answers answers, string question, params ImmutableArray<string> options) =>
        answers.With(new(question), new(new AnswerValue.Many(options), HowObtained.Reported));

    internal static Advice Advice(this Answers answers) => new Advisor(Knowledge, Quick).Advise(answers);

    internal static IEnumerable<string> Offered(this Advice advice) => advice.Ranked.Select(r => r.Plan.Aid.Id);

    internal static string? WhyNot(this Advice advice, string aid) => advice.RuledOut.FirstOrDefault(r => r.Aid.Id == aid)?.Reasons[0].Rule.Id;

    internal static IEnumerable<string> CautionsOf(this Advice advice, string aid) =>
        advice.Ranked.Single(r => r.Plan.Aid.Id == aid).Cautions.Select(c => c.Rule.Id);

    internal static RankedPlan Place(this Advice advice, string aid) => advice.Ranked.Single(r => r.Plan.Aid.Id == aid);
}
