namespace ToiletAid.Core.Person;

/// <summary>Id of a question. Those that code names stand in <see cref="QuestionIds"/>, the others come with the data.</summary>
/// <param name="Text">The id as the data have it.</param>
public readonly record struct QuestionId(string Text)
{
    /// <summary>The id where any question can stand.</summary>
    public static implicit operator string(QuestionId id) => id.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
