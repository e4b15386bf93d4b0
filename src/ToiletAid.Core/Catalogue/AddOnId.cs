namespace ToiletAid.Core.Catalogue;

/// <summary>Id of an add-on that code names. All of them stand in <see cref="AddOnIds"/>.</summary>
/// <param name="Text">The id as the data have it.</param>
public readonly record struct AddOnId(string Text)
{
    /// <summary>The id where any of its kind can stand.</summary>
    public static implicit operator string(AddOnId id) => id.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
