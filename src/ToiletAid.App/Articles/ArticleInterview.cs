using System.Collections.Immutable;
using System.Globalization;
using ToiletAid.App.Sessions;
using ToiletAid.App.Stock;
using ToiletAid.App.Typed;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Articles;

/// <summary>Is this article right? First its kind, then what is most decisive for this person, one question at a time, until the verdict is certain.</summary>
public sealed class ArticleInterview : IMeasuring
{
    private readonly KnowledgeBase _knowledge;
    private readonly Advisor _advisor;
    private readonly Answers _known;
    private readonly Advice _advice;
    private readonly TraitText _traits;
    private readonly ImmutableArray<Aid> _kinds;
    private readonly Stack<ArticleFacts?> _before = [];
    private ArticleFitter? _fitter;
    private ArticleFacts? _facts;
    private ArticleOutlook? _outlook;

    /// <summary>Makes ready.</summary>
    /// <param name="knowledge">Kinds and words.</param>
    /// <param name="advisor">Ranks, with the same knowledge.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="advice">The advice on them; it has no red flag.</param>
    public ArticleInterview(KnowledgeBase knowledge, Advisor advisor, Answers known, Advice advice)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        ArgumentNullException.ThrowIfNull(advice);
        _knowledge = knowledge;
        _advisor = advisor;
        _known = known;
        _advice = advice;
        _traits = new(knowledge);

        // Kinds of the shortlist first: what the therapist holds is most often one of those.
        var ranked = advice.Ranked.Select(r => r.Plan.Aid.KindId).ToList();
        _kinds = [.. Kinds(knowledge).OrderBy(a => ranked.IndexOf(a.Id) is >= 0 and var at ? at : int.MaxValue)];
    }

    /// <inheritdoc/>
    public int Position => _before.Count;

    /// <inheritdoc/>
    public bool IsDone => _outlook is { Next: null };

    /// <inheritdoc/>
    public int Count => _facts is { } facts ? facts.Numbers.Count + facts.Features.Count : 0;

    /// <inheritdoc/>
    public string Wanted => _outlook?.Next is not { } next ? $"Number from 1 to {_kinds.Length}"
        : next.IsNumber ? $"{Spoken.Capital(Number(next).Asked.Units[0].Name)}, or unknown"
        : "yes or no, or unknown";

    /// <summary>The kinds that can be chosen, those of the shortlist first.</summary>
    public ImmutableArray<Aid> Choices => _kinds;

    /// <summary>What is known so far; null before the kind is.</summary>
    public ArticleFacts? Facts => _facts;

    /// <summary>Every kind of which something is bought and that is built in, so that it can be kept as a stock.</summary>
    /// <param name="knowledge">The kinds.</param>
    public static IEnumerable<Aid> Kinds(KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        var builtIn = Files.BuiltIn.Aids().Aids.Select(a => a.Id).ToHashSet(StringComparer.Ordinal);
        return knowledge.Catalogue.Aids.Where(a => ArticleTrait.IsArticle(a) && builtIn.Contains(a.Id));
    }

    /// <inheritdoc/>
    public IEnumerable<string> Asking() => _outlook?.Next is not { } next
        ? ["Which kind does it resemble most?", .. _kinds.Select((a, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {a.Name}"))]
        : next.IsNumber ? [$"{_traits.Name(next)}. Measure it with {Number(next).Tool}."]
        : [$"{_traits.Name(next)}?"];

    /// <inheritdoc/>
    public IEnumerable<string> Help() => _outlook?.Next is not { } next ? ["What cannot be found out is taken to be as in that kind."]
        : next.IsNumber ? [Number(next).How, $"Type the number with its unit if it is not {Number(next).Asked.Units[0].Name}."]
        : [_traits.Check(next), "Type yes or no."];

    /// <inheritdoc/>
    public Reply Submit(string text)
    {
        string typed = (text ?? string.Empty).Trim();
        if (_outlook?.Next is not { } next)
        {
            var kind = int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                ? _kinds.ElementAtOrDefault(number - 1) : Named(typed);
            return kind is null ? new(false, $"Type the number of a kind, 1 to {_kinds.Length}, or its name.", Wanted) : Taken(new(kind), $"Kind: {PlanLower(kind)}.");
        }

        return Read(_facts!, next, typed, out string? fault) is { } facts ? Taken(facts, Said(facts, next)) : new(false, fault!, Wanted);
    }

    /// <summary>The kind of an id, of a name, or of the only name that begins so; null where there is none.</summary>
    private Aid? Named(string typed)
    {
        Aid[] exact = [.. _kinds.Where(a => a.Id.Equals(typed, StringComparison.OrdinalIgnoreCase) || a.Name.Equals(typed, StringComparison.OrdinalIgnoreCase))];
        Aid[] found = exact.Length > 0 || typed.Length == 0 ? exact : [.. _kinds.Where(a => a.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase))];
        return found.Length == 1 ? found[0] : null;
    }

    /// <inheritdoc/>
    public Reply Unknown() => _outlook?.Next is not { } next
        ? new(false, "The kind must be chosen. Type its number.", Wanted)
        : Taken(_facts!.Without(next), "Not known, taken as in its kind.");

    /// <inheritdoc/>
    public bool Back()
    {
        if (!_before.TryPop(out var before))
        {
            return false;
        }

        Set(before);
        return true;
    }

    /// <inheritdoc/>
    public IEnumerable<string> Summary() => _facts is not { } facts ? []
        : _fitter!.Traits.Where(facts.Knows).Select(t => Said(facts, t));

    /// <summary>Takes the kind and what was typed for it in a command, such as short-soft length=16.</summary>
    /// <param name="words">The kind, then what is known, each as name=value.</param>
    /// <returns>Why not, one sentence; null when all was taken.</returns>
    public string? Give(IEnumerable<string> words)
    {
        ArgumentNullException.ThrowIfNull(words);
        foreach (string word in words)
        {
            int equals = word.IndexOf('=', StringComparison.Ordinal);
            if (equals < 0)
            {
                if (_facts is not null || !Submit(word).Accepted)
                {
                    return _facts is not null ? $"{word} is a second kind, give one, and what you measured as name=value" : $"{word} is not a kind that is bought, use one of {string.Join(", ", _kinds.Select(k => k.Id))}";
                }

                continue;
            }

            if (_facts is null)
            {
                return "The kind must come first, such as short-soft length=16";
            }

            string name = word[..equals], value = word[(equals + 1)..];
            if (_fitter!.Traits.FirstOrDefault(t => TraitText.Id(t) == name) is not { } trait)
            {
                return $"{name} is nothing that this kind has, use one of {string.Join(", ", _fitter.Traits.Select(TraitText.Id))}";
            }

            string? fault = null;
            var facts = value.Equals("unknown", StringComparison.OrdinalIgnoreCase) ? _facts.Without(trait) : Read(_facts, trait, value, out fault);
            if (facts is null)
            {
                return $"{name}: {fault!.TrimEnd('.')}";
            }

            Set(facts);
        }

        return null;
    }

    /// <summary>The verdict as far as it goes; null before the kind is known.</summary>
    public ArticleResult? Result()
    {
        if (_facts is not { } facts)
        {
            return null;
        }

        var single = _fitter!.WouldFit(facts);
        return new(facts, _outlook!)
        {
            WouldFit = single,
            Together = single.IsEmpty ? _fitter.WouldFitTogether(facts) : [],
            ComesFirst = _outlook!.Verdict.Fit != ArticleFit.DoesNotFit && _fitter.ComesFirst(facts),
            First = _advice.Ranked.FirstOrDefault()?.Plan,
            Traits = _fitter.Traits,
        };
    }

    private static string PlanLower(Aid kind) => Wording.PlanText.Lower(kind.Name);

    private static ArticleFacts? Read(ArticleFacts facts, ArticleTrait trait, string typed, out string? fault)
    {
        fault = null;
        if (trait.IsNumber)
        {
            var read = QuantityReader.Read(typed, Number(trait).Asked);
            fault = read.Refusal;
            return read.Quantity is { } quantity ? facts.With(trait, quantity.Si) : null;
        }

        switch (typed.ToLowerInvariant())
        {
            case "yes" or "y": return facts.With(trait, true);
            case "no" or "n": return facts.With(trait, false);
            default:
                fault = "Type yes or no.";
                return null;
        }
    }

    private static Measurement Number(ArticleTrait trait) => Measurements.Of(trait);

    private Reply Taken(ArticleFacts facts, string text)
    {
        _before.Push(_facts);
        Set(facts);
        return new(true, text);
    }

    private void Set(ArticleFacts? facts)
    {
        _fitter = facts is null ? null : _fitter is not null && _facts?.Kind == facts.Kind ? _fitter : new(_knowledge, _advisor, _known, facts.Kind);
        _facts = facts;
        _outlook = facts is null ? null : _fitter!.OutlookFor(facts);
    }

    private string Said(ArticleFacts facts, ArticleTrait trait) => trait.IsNumber
        ? $"{_traits.Name(trait)}: {Spoken.Amount(TraitText.UnitOf(trait).FromSi(facts.Numbers[trait]), TraitText.UnitOf(trait))}."
        : $"{_traits.Name(trait)}: {(facts.Features[trait] ? "yes" : "no")}.";
}
