using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>One visit.</summary>
/// <param name="Date">Day of the visit.</param>
/// <param name="Depth">How much was asked.</param>
/// <param name="Answers">What was answered.</param>
public sealed record Session(DateOnly Date, Depth Depth, Answers Answers)
{
    /// <summary>Plans that were tried at this visit. A visit may hold only these.</summary>
    public ImmutableArray<Trial> Trials { get => field.IsDefault ? [] : field; init; }

    /// <summary>What the therapist noted in words of their own, a line each; see <see cref="NoteLine"/>. No computation reads it.</summary>
    public ImmutableArray<string> Note { get => field.IsDefault ? [] : field; init; }

    /// <summary>True for a visit that was written into the profile after one of a later day: what it found is older than that.</summary>
    public bool IsLate { get; init; }

    /// <summary>True when something was noted, but nothing answered and nothing tried: then it can change no advice.</summary>
    public bool IsNoteOnly => !Note.IsEmpty && Trials.IsEmpty && !Answers.Ids.Any();
}
