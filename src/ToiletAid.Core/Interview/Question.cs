using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Interview;

/// <summary>One question of the interview.</summary>
public sealed record Question
{
    /// <summary>Stable id, kebab-case.</summary>
    public required QuestionId Id { get; init; }

    /// <summary>Topic under which it is asked.</summary>
    public required string Topic { get; init; }

    /// <summary>The question, one sentence.</summary>
    public required string Prompt { get; init; }

    /// <summary>What it asks for, as a noun phrase in small letters that can end a list, such as grip strength.</summary>
    public required string Name { get; init; }

    /// <summary>Shape of the answer.</summary>
    public required QuestionKind Kind { get; init; }

    /// <summary>Depths at which it is asked.</summary>
    public required ImmutableArray<Depth> Depths { get; init; }

    /// <summary>How to observe or measure the answer.</summary>
    public required string Observe { get; init; }

    /// <summary>Why it matters.</summary>
    public required string Why { get; init; }

    /// <summary>Options; empty for a plain number.</summary>
    public ImmutableArray<Option> Options { get => field.IsDefault ? [] : field; init; }

    /// <summary>Numbers taken, or null.</summary>
    public NumberSpec? Number { get; init; }

    /// <summary>Parts; empty but for that kind.</summary>
    public ImmutableArray<Part> Parts { get => field.IsDefault ? [] : field; init; }

    /// <summary>Conditions, all of which must hold for it to be asked.</summary>
    public ImmutableArray<Clause> AskWhen { get => field.IsDefault ? [] : field; init; }

    /// <summary>How the answer is usually obtained, unless the therapist says otherwise.</summary>
    public required HowObtained Usually { get; init; }

    /// <summary>True when it is asked whatever else is known.</summary>
    public bool Safety { get; init; }

    /// <summary>True when the answer rests on seeing, telling or measuring and so may be one step off; false for wishes and for facts such as plumbing.</summary>
    public bool MayBeWrong { get; init; }

    /// <summary>True when nothing sensible can be worked out without it, so that it is asked before the others are judged.</summary>
    public bool Opening { get; init; }

    /// <summary>How much it takes to find out, against a question that is asked and answered: a measurement takes more.</summary>
    public double Effort { get => field > 0 ? field : 1; init; }

    /// <summary>What of the set-up depends on it: paper, way, supplies, or whether the first plan reaches; null for nothing.</summary>
    public string? SetsUp { get; init; }

    /// <summary>True for a wish of the person: while none is stated there is none, so it is assumed and not drawn.</summary>
    public bool Preference { get; init; }

    /// <summary>What is assumed, and said to be assumed, while the answer is not known: an option's id or a number in the first unit; null where nothing is.</summary>
    public string? Assume { get; init; }

    /// <summary>The option called <paramref name="id"/>, or null.</summary>
    public Option? FindOption(string id) => Options.FirstOrDefault(o => o.Id == id) ?? Options.FirstOrDefault(o => o.Was is { } was && was.Contains(id));
}
