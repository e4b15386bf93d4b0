namespace ToiletAid.Core.Person;

/// <summary>Id of a question whose options are the members of an enum.</summary>
/// <typeparam name="T">The enum; its words are the options.</typeparam>
/// <param name="Text">The id as the data have it.</param>
public readonly record struct ChoiceId<T>(string Text)
    where T : struct, Enum
{
    /// <summary>The id where any question can stand.</summary>
    public static implicit operator QuestionId(ChoiceId<T> id) => new(id.Text);

    /// <summary>The id as a text.</summary>
    public static implicit operator string(ChoiceId<T> id) => id.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
