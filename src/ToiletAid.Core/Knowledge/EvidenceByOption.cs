using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Knowledge;

/// <summary>Entries of the evidence of which there is one for each option of a question.</summary>
public sealed class EvidenceByOption
{
    private readonly string _front;

    internal EvidenceByOption(string front, QuestionId question, params ImmutableArray<OptionId> without)
    {
        _front = front;
        Question = question;
        Without = without;
    }

    /// <summary>The question.</summary>
    internal QuestionId Question { get; }

    /// <summary>Options that have no entry.</summary>
    internal ImmutableArray<OptionId> Without { get; }

    /// <summary>The entry of an option.</summary>
    /// <param name="option">An option of the question, but one without entry.</param>
    public EvidenceId this[string option] => new(_front + option);
}
