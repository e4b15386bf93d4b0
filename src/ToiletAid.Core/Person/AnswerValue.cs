using System.Collections.Immutable;

namespace ToiletAid.Core.Person;

/// <summary>What was answered.</summary>
public abstract record AnswerValue
{
    private AnswerValue()
    {
    }

    /// <summary>Asked, and not known.</summary>
    public sealed record NotKnown : AnswerValue;

    /// <summary>One option.</summary>
    /// <param name="Option">Its id.</param>
    public sealed record Choice(string Option) : AnswerValue;

    /// <summary>Any number of options; empty means none of them.</summary>
    /// <param name="Options">Their ids, in the order of the question.</param>
    public sealed record Many(ImmutableArray<string> Options) : AnswerValue;

    /// <summary>A number in the unit in which it was given.</summary>
    /// <param name="Amount">The number as entered.</param>
    /// <param name="Unit">Symbol of the unit as entered.</param>
    public sealed record Number(double Amount, string Unit) : AnswerValue;

    /// <summary>A number for some of the parts.</summary>
    /// <param name="Amounts">Numbers by part, in the unit in which they were given.</param>
    /// <param name="Unit">Symbol of the unit as entered.</param>
    public sealed record Parts(ImmutableSortedDictionary<string, double> Amounts, string Unit) : AnswerValue;

    /// <summary>Groups of options, most important first; options of one group are equal; options left out have no place.</summary>
    /// <param name="Groups">The groups.</param>
    public sealed record Order(ImmutableArray<ImmutableArray<string>> Groups) : AnswerValue;
}
