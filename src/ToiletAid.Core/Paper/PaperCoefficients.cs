using System.Collections.Immutable;
using ToiletAid.Core.Evidence;

namespace ToiletAid.Core.Paper;

/// <summary>The numbers that the use of paper rests on, taken from the evidence by id; a missing one fails at once.</summary>
public sealed class PaperCoefficients
{
    private const int StoolTypes = 7;
    private readonly ImmutableArray<StoolPaper> _stool;

    /// <summary>Takes the numbers.</summary>
    /// <param name="table">Evidence with every entry that starts with "paper.".</param>
    /// <param name="stool">Paper by stool type, one row for each type from 1 to 7, in order.</param>
    /// <exception cref="KeyNotFoundException">An entry is missing.</exception>
    /// <exception cref="ArgumentException">Rows are not types 1 to 7, or layers or loads are not above 0.</exception>
    public PaperCoefficients(NumberTable table, ImmutableArray<StoolPaper> stool)
    {
        bool complete = stool.Length == StoolTypes && stool.Select((row, i) => row.Type == i + 1 && row is { Layers: > 0, Loads: > 0 }).All(good => good);
        _stool = complete ? stool : throw new ArgumentException("one row for each stool type from 1 to 7 is needed", nameof(stool));
        Sheet = new(table.Value("paper.sheet-length"), table.Value("paper.sheet-width"), (int)table.Value("paper.plies"));
        SheetsOnRoll = table.Value("paper.sheets-on-roll");
        WrapsToHold = table.Value("paper.wraps-to-hold");
        TuckMetres = table.Value("paper.tuck");
        PadMetres = table.Value("paper.pad-length");
        MostFolds = (int)table.Value("paper.most-folds");
        MostSheets = (int)table.Value("paper.most-sheets");
    }

    /// <summary>The usual sheet.</summary>
    public PaperSheet Sheet { get; init; }

    /// <summary>Sheets on a roll.</summary>
    public double SheetsOnRoll { get; init; }

    /// <summary>Times that paper must go round a head to hold by itself.</summary>
    public double WrapsToHold { get; }

    /// <summary>Paper tucked in at each end, m.</summary>
    public double TuckMetres { get; }

    /// <summary>Least length of a pad, m.</summary>
    public double PadMetres { get; }

    /// <summary>Most times that a strip is folded in half to make it thicker.</summary>
    internal int MostFolds { get; }

    /// <summary>Most sheets in a strip that is folded by hand.</summary>
    internal int MostSheets { get; }

    /// <summary>The paper for a Bristol stool type.</summary>
    /// <param name="type">1 to 7.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="type"/> is not 1 to 7.</exception>
    public StoolPaper For(int type) => type is >= 1 and <= StoolTypes
        ? _stool[type - 1]
        : throw new ArgumentOutOfRangeException(nameof(type), type, "not a stool type from 1 to 7");
}
