using System.Collections.Immutable;

namespace ToiletAid.Core.Knowledge;

/// <summary>What a clinic learnt from its own trials, over the built-in values. It holds no person.</summary>
public sealed record ClinicCoefficients
{
    private readonly Dictionary<string, KindCoefficients> _byAid = [];

    /// <summary>The first digits of the checksum of its file; empty before it is saved.</summary>
    public string Checksum { get; init; } = string.Empty;

    /// <summary>How many people it rests on.</summary>
    public required int People { get; init; }

    /// <summary>How many first tries of a kind it rests on.</summary>
    public required int Tries { get; init; }

    /// <summary>Which built-in data it was fitted to.</summary>
    public required string Data { get; init; }

    /// <summary>Kinds with enough people of their own, by id, and last the one for every other kind.</summary>
    public required ImmutableArray<KindCoefficients> Kinds
    {
        get;
        init
        {
            field = value;

            // Anew, since a copy of the record begins with what is kept here.
            _byAid = value.Where(k => k.Aid is not null).ToDictionary(k => k.Aid!, StringComparer.Ordinal);
        }
    }

    /// <summary>What holds for a kind.</summary>
    /// <param name="aid">Id of the kind.</param>
    public KindCoefficients Of(string aid) => _byAid.GetValueOrDefault(aid) ?? Kinds[^1];

    /// <summary>How likely a kind is to work in this clinic, from how likely it was predicted to.</summary>
    /// <param name="aid">Id of the kind.</param>
    /// <param name="predicted">Predicted share, between 0 and 1.</param>
    public double Works(string aid, double predicted) => Math.Min(1, predicted * Of(aid).Factor);

    /// <summary>Puts it over the predicted value of a plan that the person can use, on one criterion.</summary>
    /// <param name="aid">Id of the kind.</param>
    /// <param name="criterion">The criterion.</param>
    /// <param name="predicted">Predicted value, between 0 and 1.</param>
    public double Apply(string aid, Criterion criterion, double predicted)
    {
        var kind = Of(aid);
        foreach (var shift in kind.Shifts)
        {
            predicted = shift.Criterion == criterion ? Math.Clamp(predicted + shift.By, 0, 1) : predicted;
        }

        return Math.Min(1, predicted * kind.Factor);
    }

    /// <summary>The same on every criterion.</summary>
    /// <param name="aid">Id of the kind.</param>
    /// <param name="predicted">Values in the order of the criteria; replaced.</param>
    public void Apply(string aid, Span<double> predicted)
    {
        for (int c = 0; c < predicted.Length; c++)
        {
            predicted[c] = Apply(aid, (Criterion)c, predicted[c]);
        }
    }
}
