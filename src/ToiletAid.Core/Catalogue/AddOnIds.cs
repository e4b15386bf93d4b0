#pragma warning disable CS1591 // the data say what each of them means
namespace ToiletAid.Core.Catalogue;

/// <summary>Add-ons that code names, held against the data when these are loaded (<c>NamedIds</c>).</summary>
public static class AddOnIds
{
    private static readonly List<string> Named = [];

    public static readonly AddOnId Footstool = Id("footstool");
    public static readonly AddOnId PreparedPaper = Id("prepared-paper");
    public static readonly AddOnId SkinMirror = Id("skin-mirror");

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<string> All => Named;

    private static AddOnId Id(string id)
    {
        Named.Add(id);
        return new(id);
    }
}
