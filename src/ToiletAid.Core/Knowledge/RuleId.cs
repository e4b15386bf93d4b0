namespace ToiletAid.Core.Knowledge;

/// <summary>Id of a rule that code names. All of them stand in <see cref="RuleIds"/>.</summary>
/// <param name="Text">The id as the data have it.</param>
public readonly record struct RuleId(string Text)
{
    /// <summary>The id where any of its kind can stand.</summary>
    public static implicit operator string(RuleId id) => id.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
