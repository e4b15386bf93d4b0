using ToiletAid.App.Files;
using ToiletAid.App.Typed;

namespace ToiletAid.App.Stock;

/// <summary>What is plausible for the numbers of an aid, from ranges.json.</summary>
public static class StockRanges
{
    private static readonly RangesFile Ranges = BuiltIn.Load("ranges.json", KnowledgeJson.Default.RangesFile);

    /// <summary>The range of a member of a catalogue file.</summary>
    internal static RangesFileMember Member(string name) => Ranges.Catalogue[name];

    /// <summary>Error of a tool, SI, or a share of the value.</summary>
    internal static double Error(string tool) => Ranges.Errors[tool].Value;

    /// <summary>A number to be typed, with its range and its units.</summary>
    /// <param name="range">Name of the range.</param>
    /// <param name="name">What is asked for, in lower case.</param>
    /// <exception cref="KeyNotFoundException">There is no such range.</exception>
    public static QuantityQuestion Typed(string range, string name) => QuantityQuestion.Of(name, Ranges.Measured[range].Low, Ranges.Measured[range].High, Ranges.Measured[range].Units);

    /// <summary>The lowest and the highest of a whole number in a catalogue file.</summary>
    /// <exception cref="KeyNotFoundException">There is no such member.</exception>
    public static (int Low, int High) Count(string member) => ((int)Member(member).Low, (int)Member(member).High);
}
