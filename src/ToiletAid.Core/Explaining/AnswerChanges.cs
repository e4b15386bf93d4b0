using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.Core.Explaining;

/// <summary>The changes of one answer that are worth looking at.</summary>
internal static class AnswerChanges
{
    /// <summary>What nobody can change and nobody should be told to: who the person is, and red flags.</summary>
    private static readonly string[] Fixed = ["age", "sex", "stature", "red-flags", "feeling-since", "conditions", "precaution-side", "priorities", "budget", "cleans"];

    /// <summary>Questions whose options stand in order, so that the next one is a smaller change than the one after it.</summary>
    private static readonly string[] Ordered =
        ["carry", "reach-behind", "reach-front", "grasp", "dexterity", "tremor", "feeling", "steps", "sight", "water", "helper", "hands-free", "stool", "skin"];

    /// <summary>Every change of one answer, in the order of the questions.</summary>
    internal static IEnumerable<AnswerChange> Of(KnowledgeBase knowledge, Answers known) => knowledge.Questions.All
        .Where(q => !Fixed.Contains(q.Id) && OpenQuestions.IsRelevant(q, known))
        .SelectMany(q => q.Kind switch
        {
            QuestionKind.Choice => Choices(q, known),
            QuestionKind.Many => Toggles(q, known),
            QuestionKind.Number when known[q.Id]?.Value is AnswerValue.Number n => Numbers(knowledge, q, n),
            QuestionKind.Parts when known[q.Id]?.Value is AnswerValue.Parts p => Joints(knowledge, q, p),
            _ => [],
        });

    /// <summary>How many options one answer is away from another; null where the options have no order, or these are no options.</summary>
    internal static int? Steps(Question q, AnswerValue from, AnswerValue to) =>
        Ordered.Contains(q.Id) && from is AnswerValue.Choice a && to is AnswerValue.Choice b
            ? Math.Abs(q.Options.IndexOf(q.FindOption(a.Option)!) - q.Options.IndexOf(q.FindOption(b.Option)!))
            : null;

    private static IEnumerable<AnswerChange> Choices(Question q, Answers known)
    {
        var from = known[q.Id]?.Value;
        int at = from is AnswerValue.Choice c ? q.Options.IndexOf(q.FindOption(c.Option)!) : -1;
        for (int i = 0; i < q.Options.Length; i++)
        {
            if (i != at)
            {
                yield return new(q, from, new AnswerValue.Choice(q.Options[i].Id), at >= 0 && Ordered.Contains(q.Id) ? Math.Abs(i - at) : 1);
            }
        }
    }

    private static IEnumerable<AnswerChange> Toggles(Question q, Answers known)
    {
        var chosen = known.Many(q.Id) ?? [];
        foreach (var option in q.Options)
        {
            bool has = chosen.Contains(option.Id);
            yield return new(
                q, known[q.Id]?.Value, new AnswerValue.Many([.. q.Options.Where(o => o == option ? !has : chosen.Contains(o.Id)).Select(o => o.Id)]), 1);
        }
    }

    /// <summary>A measured number moved by as much as measuring it twice may move it, down and up, no further than the question takes.</summary>
    private static IEnumerable<AnswerChange> Numbers(KnowledgeBase knowledge, Question q, AnswerValue.Number n)
    {
        if (knowledge.Evidence.Find("error." + q.Id) is not { } error)
        {
            yield break;
        }

        var unit = Units.Find(n.Unit)!;
        double step = unit.FromSi(knowledge.Evidence.Value(error)) - unit.FromSi(0);
        foreach (int sign in (int[])[-1, 1])
        {
            double moved = Within(q.Number!, n.Unit, Math.Round(n.Amount + (sign * step), 1));
            if (moved != n.Amount)
            {
                yield return new(q, n, n with { Amount = moved }, 1);
            }
        }
    }

    private static IEnumerable<AnswerChange> Joints(KnowledgeBase knowledge, Question q, AnswerValue.Parts p)
    {
        // Rounded so far that whole degrees stay whole, and no further, because the unit may be radians.
        double error = Math.Round(Units.Find(p.Unit)!.FromSi(knowledge.Evidence.Value(EvidenceIds.ErrorJoints)), 6);
        return from part in p.Amounts
               from sign in (int[])[-1, 1]
               let moved = Within(q.Parts.First(x => x.Id == part.Key).Number, p.Unit, part.Value + (sign * error))
               where moved != part.Value
               select new AnswerChange(q, p, p with { Amounts = p.Amounts.SetItem(part.Key, moved) }, 1);
    }

    /// <summary>What the question takes of an amount: nobody is told of an answer that could not be given.</summary>
    private static double Within(NumberSpec spec, string unit, double amount)
    {
        double low = spec.Low, high = spec.High;
        if (unit != spec.Units[0])
        {
            Unit first = Units.Find(spec.Units[0])!, used = Units.Find(unit)!;
            (low, high) = (used.FromSi(first.ToSi(low)), used.FromSi(first.ToSi(high)));
        }

        return Math.Clamp(amount, low, high);
    }
}
