namespace ToiletAid.Core.Person;

/// <summary>Id of an option that code names, with its question. All of them stand in <see cref="OptionIds"/>.</summary>
/// <param name="Question">Id of the question.</param>
/// <param name="Text">The id as the data have it.</param>
public readonly record struct OptionId(QuestionId Question, string Text)
{
    /// <inheritdoc/>
    public override string ToString() => Text;
}
