using System.Text.Json;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Hand;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Files;

/// <summary>The built-in norms, and the numbers that the assessment of the hand rests on.</summary>
public static class BuiltInNorms
{
    /// <summary>Norms of the hand.</summary>
    /// <exception cref="JsonException">The file is not as it should be.</exception>
    public static HandNorms Hand() => Norms(BuiltIn.Load("norms.json", KnowledgeJson.Default.NormsFile));

    /// <summary>The numbers of <see cref="HandCoefficients"/>, by id.</summary>
    /// <exception cref="JsonException">The file is not as it should be.</exception>
    public static NumberTable HandNumbers() => new(BuiltIn.Load("hand.json", KnowledgeJson.Default.EvidenceFile).Numbers);

    /// <summary>Everything that the assessment of the hand needs.</summary>
    /// <exception cref="JsonException">A file is not as it should be.</exception>
    public static HandModel HandModel() => new(Hand(), new HandCoefficients(HandNumbers()));

    /// <summary>Reads norms from text.</summary>
    /// <exception cref="JsonException">The text is not as it should be.</exception>
    internal static HandNorms ParseNorms(string json) =>
        Norms(JsonSerializer.Deserialize(json, KnowledgeJson.Default.NormsFile) ?? throw new JsonException("norms are missing"));

    private static HandNorms Norms(NormsFile file) => new(Percentiles(file.Grip), Means(file.PalmarPinch), Means(file.NineHolePeg));

    private static NormTable Percentiles(PercentileNormFile file)
    {
        var unit = Known(file.Unit);
        return Checked(() => new NormTable(
            file.Percentiles.AsSpan(), file.Rows.Select(r => r with { Values = [.. r.Values.Select(unit.ToSi)] }), file.Basis, file.Source));
    }

    private static NormTable Means(MeanNormFile file)
    {
        var unit = Known(file.Unit);
        return Checked(() => NormTable.OfMeans(
            file.Rows.Select(r => r with { Mean = unit.ToSi(r.Mean), Sd = unit.ToSi(r.Sd) }), file.Basis, file.Source));
    }

    private static Unit Known(string symbol) => Units.Find(symbol) ?? throw new JsonException($"{symbol} is not a unit that is known here");

    private static NormTable Checked(Func<NormTable> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException fault)
        {
            throw new JsonException(fault.Message, fault);
        }
    }
}
