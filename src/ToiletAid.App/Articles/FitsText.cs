using System.Text.Json;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Articles;

/// <summary>The verdict on an article, as lines to be read aloud and as data.</summary>
/// <param name="knowledge">Names.</param>
public sealed class FitsText(KnowledgeBase knowledge)
{
    private readonly TraitText _traits = new(knowledge);

    /// <summary>The verdict, in lines, the verdict first.</summary>
    /// <param name="result">What can be said.</param>
    public IEnumerable<string> Lines(ArticleResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var verdict = result.Outlook.Verdict;
        yield return result.Outlook.IsCertain ? Spoken.Capital(Verdict(verdict)) : $"Not certain. If the rest is as usual in its kind, {Verdict(verdict)}";
        foreach (string line in verdict.Fit == ArticleFit.DoesNotFit ? WhyNot(result) : How(result))
        {
            yield return line;
        }

        foreach (string line in Rest(result))
        {
            yield return line;
        }

        if (verdict.Fit != ArticleFit.DoesNotFit)
        {
            yield return "Hear the warnings of this kind with toiletaid rank, and try it dry and clothed first.";
        }
    }

    /// <summary>The same as data.</summary>
    /// <param name="json">Where it goes, inside an object.</param>
    /// <param name="result">What can be said.</param>
    public void Write(Utf8JsonWriter json, ArticleResult result)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(result);
        var verdict = result.Outlook.Verdict;
        json.WriteString("kind", result.Facts.Kind.Id);
        json.WriteString("verdict", Words.Of(verdict.Fit));
        json.WriteBoolean("certain", result.Outlook.IsCertain);
        json.WriteStrings("with", verdict.With);
        json.WriteBoolean("againstTheBody", verdict.AgainstTheBody);
        json.WriteString("plan", verdict.Plan is { } plan ? PlanText.Name(plan) : null);
        json.WriteNumber("usableShare", Math.Round(verdict.UsableShare, 4));
        json.WriteBoolean("comesFirst", result.ComesFirst);
        json.WriteStrings("reasons", verdict.Reasons.Select(r => r.Rule.Id));
        Write(json, "wouldFit", result.WouldFit);
        Write(json, "wouldFitTogether", result.Together);
        json.WriteStrings("known", result.Traits.Where(result.Facts.Knows).Select(TraitText.Id));
        json.WriteStrings("canChange", result.Outlook.CanChange.Select(TraitText.Id));
        json.WriteString("next", result.Outlook.Next is { } next ? TraitText.Id(next) : null);
        json.WriteStrings("text", Lines(result));
    }

    private void Write(Utf8JsonWriter json, string name, IEnumerable<ArticleChange> changes)
    {
        json.WriteStartArray(name);
        foreach (var change in changes)
        {
            json.WriteStartObject();
            json.WriteString("trait", TraitText.Id(change.Trait));
            json.WriteString("text", Change(change));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private string Verdict(ArticleVerdict verdict) => verdict.Fit switch
    {
        ArticleFit.Fits => "it fits.",
        ArticleFit.DoesNotFit => "it does not fit.",
        _ when verdict.With.IsEmpty => "it fits, if paper is let go by pressing it against thigh, hip or seat.",
        _ => $"it fits with {verdict.With.Select(AddOn).Humanize("and")}.",
    };

    private IEnumerable<string> How(ArticleResult result)
    {
        var verdict = result.Outlook.Verdict;
        yield return $"Use it so: {Way(verdict.Plan!)}.";
        if (verdict.AgainstTheBody && !verdict.With.IsEmpty)
        {
            yield return "Paper is let go by pressing it against thigh, hip or seat.";
        }

        bool isSure = verdict.UsableShare >= knowledge.Evidence.Value(EvidenceIds.ReachSureShare);
        yield return $"It works for {SlotText.OfHundred(verdict.UsableShare)} of 100 people who would give these answers{(isSure ? string.Empty : ", so this is not sure")}.";
        yield return result.ComesFirst ? "With it, this kind comes first."
            : result.First is { } first && first.Aid.KindId != result.Facts.Kind.Id ? $"Another kind comes first: {PlanText.Lower(first.Aid.Name)}."
            : "With it, another kind comes first: it is not as good as its kind usually is.";
    }

    private IEnumerable<string> WhyNot(ArticleResult result)
    {
        var verdict = result.Outlook.Verdict;
        foreach (var reason in verdict.Reasons.Take(2))
        {
            yield return AdviceText.Sentence(reason);
        }

        if (verdict.Reasons.IsEmpty)
        {
            yield return $"Only {SlotText.OfHundred(verdict.UsableShare)} of 100 people who would give these answers could use it.";
        }

        if (result.WouldFit.IsEmpty)
        {
            yield return result.Together.IsEmpty ? "No single thing about it that was looked at would make it fit." : "It would fit if two things were different together:";
        }
        else
        {
            yield return result.WouldFit.Length == 1 ? "It would fit if one thing were different:" : "It would fit if any one of these were different:";
        }

        int number = 0;
        foreach (var change in result.WouldFit.Concat(result.Together))
        {
            yield return $"{++number}. {Change(change)}";
        }
    }

    private string Change(ArticleChange change)
    {
        if (change.Needed is not { } needed)
        {
            return _traits.Sentence(new(change.Trait, true) { Fails = 0 });
        }

        var unit = TraitText.UnitOf(change.Trait);
        bool more = needed > change.Is!.Value;
        string by = Spoken.Amount(Math.Round(unit.FromSi(Math.Abs(needed - change.Is.Value)), 1), unit);
        return $"{_traits.Sentence(new(change.Trait, true) { AtLeast = more, Limit = needed, Fails = 0 }).TrimEnd('.')}: {by} {(more ? "more" : "less")} than this.";
    }

    /// <summary>What was not found out, and what was taken for it.</summary>
    private IEnumerable<string> Rest(ArticleResult result)
    {
        string[] taken = [.. result.Traits.Where(result.Facts.NotKnown.Contains).Select(t => Taken(result.Facts, t))];
        if (taken.Length > 0)
        {
            yield return $"Not known, and taken from its kind: {taken.Humanize("and")}.";
        }

        if (!result.Outlook.IsCertain)
        {
            yield return $"This can still change it: {result.Outlook.CanChange.Take(4).Select(t => PlanText.Lower(_traits.Name(t))).Humanize("and")}.";
        }
        else if (result.Traits.Any(t => !result.Facts.Knows(t) && !result.Facts.NotKnown.Contains(t)))
        {
            yield return $"{(taken.Length > 0 ? "All else that was not measured" : "What was not measured")} was tried over the range of its kind and beyond, and did not change this.";
        }
    }

    private string Taken(ArticleFacts facts, ArticleTrait trait)
    {
        string name = PlanText.Lower(_traits.Name(trait));
        if (trait.Number(facts.Kind) is not { } range)
        {
            return $"{name}, {(trait.Has(facts.Kind) == true ? "yes" : "no")}";
        }

        Unit unit = TraitText.UnitOf(trait);
        return $"{name}, {Spoken.Number(unit.FromSi(range.Low))} to {Spoken.Amount(unit.FromSi(range.High), unit)}";
    }

    private static string Way(Plan plan) => PlanText.Name(plan)[plan.Aid.Name.Length..].TrimStart(',', ' ');

    private string AddOn(string id) => PlanText.Lower(knowledge.Catalogue.AddOns.First(a => a.Id == id).Name);
}
