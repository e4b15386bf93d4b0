using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>Reads the trials of a visit and notes what is wrong with them.</summary>
/// <param name="knowledge">What trials can find.</param>
internal sealed class TrialReader(TrialKnowledge knowledge)
{
    /// <summary>Longest try that is taken, minutes.</summary>
    internal const double MostMinutes = 240;

    /// <summary>The most effort.</summary>
    internal const int MostEffort = 10;

    private const int LongestId = 64;

    /// <summary>The trials at this place; those with a fault are left out.</summary>
    internal ImmutableArray<Trial> Read(JsonWalker at) => [.. at.Items().Select(Trial).OfType<Trial>()];

    private Trial? Trial(JsonWalker at)
    {
        at.OnlyMembers("plan", "predicted", "before", "goal", "runs");
        var plan = at.Required("plan") is { } p ? Plan(p) : null;
        var predicted = at.Member("predicted") is { } q ? Predicted(q) : null;
        string? before = OneOf(at, "before", knowledge.Levels), goal = OneOf(at, "goal", knowledge.Levels.RemoveAll(l => l.NotTried));
        ImmutableArray<TrialRun> runs = at.Required("runs") is { } list ? [.. list.Items().Select(Run).OfType<TrialRun>()] : [];
        if (runs.IsEmpty)
        {
            at.Fault("no-run", "there is no run, add one or leave the trial out");
        }

        return plan is null || runs.IsEmpty ? null : new() { Plan = plan, Predicted = predicted, Before = before, Goal = goal, Runs = runs };
    }

    private static TriedPlan? Plan(JsonWalker at)
    {
        at.OnlyMembers("aid", "addOns", "companion", "approach", "posture", "variant");
        string? aid = at.Required("aid") is { } a ? Id(a) : null;
        ImmutableArray<string> addOns = at.Member("addOns") is { } list ? [.. list.Items().Select(Id).OfType<string>()] : [];
        string? companion = at.Member("companion") is { } c ? Id(c) : null;
        var approach = at.Member("approach") is { } w ? Word<Approach>(w) : null;
        var posture = at.Required("posture") is { } p ? Word<Posture>(p) : null;
        return aid is null || posture is null ? null : new(aid, addOns, companion, approach, posture.Value, at.Member("variant") is { } v ? Id(v) : null);
    }

    private static TrialPrediction? Predicted(JsonWalker at)
    {
        string[] words = [.. Words.All<Criterion>()];
        string independence = Words.Of(Criterion.Independence);
        at.OnlyMembers(words);
        double?[] criteria = [.. words.Select(w => (w == independence ? at.Member(w) : at.Required(w)) is null ? null : Number(at, w, 1))];

        // Before independence was told apart, a handling of 0 said that another person does it.
        criteria[(int)Criterion.Independence] ??= at.Member(independence) is null ? criteria[(int)Criterion.Handling] > 0 ? 1 : 0 : null;
        return criteria.Contains(null) ? null : new([.. criteria.Select(c => c!.Value)]);
    }

    private TrialRun? Run(JsonWalker at)
    {
        at.OnlyMembers("kind", "level", "cleanliness", "minutes", "effort", "problems");
        var kind = at.Required("kind") is { } k ? Word<RunKind>(k) : null;
        string? cleanliness = OneOf(at, "cleanliness", knowledge.Cleanliness);
        if (kind == RunKind.Dry && cleanliness is not null)
        {
            at.Member("cleanliness")!.Value.Fault("dry-run", "a dry run cleans nothing, leave cleanliness out");
        }

        ImmutableArray<string> problems = at.Member("problems") is { } list ? [.. list.Items().Select(i => OneOf(i, knowledge.Problems)).OfType<string>()] : [];
        return kind is not { } known ? null : new()
        {
            Kind = known,
            Level = OneOf(at, "level", knowledge.Levels),
            Cleanliness = cleanliness,
            Minutes = Number(at, "minutes", MostMinutes),
            Effort = (int?)Number(at, "effort", MostEffort, whole: true),
            Problems = [.. knowledge.Problems.Select(p => p.Id).Where(problems.Contains)],
        };
    }

    /// <summary>An id of a kind of aid: one that the catalogue lacks may be of a clinic's own stock, so only its look is checked.</summary>
    private static string? Id(JsonWalker at)
    {
        if (at.Text() is not { } id)
        {
            return null;
        }

        if (id.Length is > 0 and <= LongestId && id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
        {
            return id;
        }

        at.Fault("unknown-id", $"{at.Quote()} is not an id, use the id of a kind of aid such as long-clamp");
        return null;
    }

    private static string? OneOf(JsonWalker at, string member, ImmutableArray<TrialFinding> known) => at.Member(member) is { } m ? OneOf(m, known) : null;

    private static string? OneOf(JsonWalker at, ImmutableArray<TrialFinding> known)
    {
        if (at.Text() is not { } id || known.Any(k => k.Id == id))
        {
            return at.Element.ValueKind == JsonValueKind.String ? at.Element.GetString() : null;
        }

        at.Fault("unknown-word", $"{at.Quote()} is not known here, use {string.Join(", ", known.Select(k => k.Id))}");
        return null;
    }

    private static T? Word<T>(JsonWalker at)
        where T : struct, Enum
    {
        if (at.Text() is not { } word)
        {
            return null;
        }

        if (Words.Find<T>(word) is not { } found)
        {
            at.Fault("unknown-word", $"{at.Quote()} is not known here, use {string.Join(", ", Words.All<T>())}");
            return null;
        }

        return found;
    }

    private static double? Number(JsonWalker at, string member, double most, bool whole = false)
    {
        if (at.Member(member) is not { } m)
        {
            return null;
        }

        if (m.Element.ValueKind == JsonValueKind.Number && m.Element.TryGetDouble(out double number) && number >= 0 && number <= most && (!whole || number == Math.Floor(number)))
        {
            return number;
        }

        m.Fault("out-of-range", string.Create(CultureInfo.InvariantCulture, $"{m.Quote()} should be a {(whole ? "whole " : string.Empty)}number from 0 to {most} without quotes"));
        return null;
    }
}
