#pragma warning disable CS1591 // the data say what each of them means
using ToiletAid.Core.Ids;

namespace ToiletAid.Core.Catalogue;

/// <summary>Add-ons that code names, held against the data when these are loaded (<c>NamedIds</c>).</summary>
public static class AddOnIds
{
    private static readonly IdTable<AddOnId> Named = new();

    public static readonly AddOnId Footstool = Id("footstool");
    public static readonly AddOnId PreparedPaper = Id("prepared-paper");
    public static readonly AddOnId SkinMirror = Id("skin-mirror");

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<AddOnId> All => Named.All;

    private static AddOnId Id(string id) => Named.Add(new(id));
}
