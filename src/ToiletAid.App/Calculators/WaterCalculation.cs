using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.App.Wording;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Quantities;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Water;

namespace ToiletAid.App.Calculators;

/// <summary>Spray time, weight and warm water of a washing aid.</summary>
public sealed class WaterCalculation : Calculation
{
    private readonly KnowledgeBase _knowledge;
    private readonly WaterSettings _settings;
    private readonly SprayTime _spray;
    private readonly double _limit;
    private readonly double _wish;
    private readonly WaterMix? _mix;
    private readonly double _hot;
    private readonly double _cold;

    /// <summary>Computes.</summary>
    /// <param name="knowledge">Limits and supplies.</param>
    /// <param name="settings">What is asked; the hot one of <see cref="Supplies"/> is not below the cold one.</param>
    /// <exception cref="ArgumentException">A flow, a volume or a temperature is out of range.</exception>
    public WaterCalculation(KnowledgeBase knowledge, WaterSettings settings)
    {
        _knowledge = knowledge;
        _settings = settings;
        _spray = SprayTime.Of(settings.Use, settings.EmptyKilograms ?? 0);
        _limit = knowledge.Water.LimitCelsius(!settings.FeelsHeat);
        _wish = settings.Target ?? Math.Min(knowledge.Water.UsualTargetCelsius, _limit);
        (_hot, _cold) = Supplies(knowledge, settings);
        _mix = settings.Use is { CanBeWarm: true, LimitsTemperature: false }
            ? WaterMix.Of(_wish, _limit, _hot, _cold, settings.Use.Reservoir?.Value ?? settings.Use.PerClean.Value)
            : null;
    }

    /// <summary>The supplies that a mix is computed with.</summary>
    /// <param name="knowledge">The usual supplies.</param>
    /// <param name="settings">The supplies as measured at the tap, °C, where they are given; no order of the two is asked for here.</param>
    /// <returns>Hot and cold supply, °C. What was not given is <see cref="WaterCoefficients.HotSupplyCelsius"/> or <see cref="WaterCoefficients.ColdSupplyCelsius"/>,
    /// whose sources stand in supplies.json.</returns>
    public static (double Hot, double Cold) Supplies(KnowledgeBase knowledge, WaterSettings settings) =>
        (settings.Hot ?? knowledge.Water.HotSupplyCelsius, settings.Cold ?? knowledge.Water.ColdSupplyCelsius);

    /// <inheritdoc/>
    public override IEnumerable<string> Lines() =>
    [
        .. _settings.Aid is { } aid ? [$"Aid: {aid}."] : (string[])[],
        .. SprayLines(),
        .. _mix is { } mix ? MixLines(mix) : NoMixLines(),
        AdviceText.Limits,
    ];

    /// <inheritdoc/>
    public override JsonObject Json() => new()
    {
        ["gentleSecondsPerFilling"] = JsonText.Rounded(_spray.GentleSecondsPerFilling),
        ["strongSecondsPerFilling"] = JsonText.Rounded(_spray.StrongSecondsPerFilling),
        ["gentleSecondsPerClean"] = JsonText.Rounded(_settings.KnowsOneClean ? _spray.GentleSecondsPerClean : null),
        ["strongSecondsPerClean"] = JsonText.Rounded(_settings.KnowsOneClean ? _spray.StrongSecondsPerClean : null),
        ["refillsPerClean"] = JsonText.Rounded(_settings.KnowsOneClean ? _spray.RefillsPerClean : null),
        ["fullKilograms"] = JsonText.Rounded(_settings.EmptyKilograms is null ? null : _spray.FullKilograms),
        ["limitCelsius"] = JsonText.Rounded(_limit),
        ["mix"] = _mix is not { } mix ? null : new JsonObject
        {
            ["hotSupplyCelsius"] = JsonText.Rounded(_hot),
            ["coldSupplyCelsius"] = JsonText.Rounded(_cold),
            ["wishCelsius"] = JsonText.Rounded(_wish),
            ["celsius"] = JsonText.Rounded(mix.Celsius),
            ["hotMillilitres"] = JsonText.Rounded(mix.HotCubicMetres * 1e6),
            ["coldMillilitres"] = JsonText.Rounded(mix.ColdCubicMetres * 1e6),
            ["hotParts"] = mix.Parts.Hot,
            ["coldParts"] = mix.Parts.Cold,
            ["celsiusOfParts"] = JsonText.Rounded(mix.Parts.Celsius),
            ["loweredToLimit"] = mix.IsLoweredToLimit,
            ["outOfReach"] = mix.IsOutOfReach,
            ["aboveLimit"] = mix.IsAboveLimit,
        },
        ["burns"] = JsonText.Nodes(BurningTemperatures().Select(Burn)),
        ["cautions"] = JsonText.Texts(Cautions()),
    };

    private JsonObject Burn(double celsius)
    {
        var burn = _knowledge.Water.Burns.At(celsius);
        return new() { ["celsius"] = JsonText.Rounded(celsius), ["bound"] = Core.Person.Words.Of(burn.Bound), ["seconds"] = JsonText.Rounded(burn.Seconds) };
    }

    private IEnumerable<string> SprayLines()
    {
        bool oneFlow = _settings.Use.GentleFlow.Value == _settings.Use.StrongFlow.Value;
        if (_spray is { GentleSecondsPerFilling: { } gentle, StrongSecondsPerFilling: { } strong })
        {
            yield return oneFlow
                ? $"One filling sprays for {Seconds(gentle)}."
                : $"One filling sprays for {Seconds(gentle)} at the gentle strength and {Seconds(strong)} at the strong one.";
        }

        if (_settings.KnowsOneClean)
        {
            string fill = _settings.Use.Reservoir is null ? string.Empty
                : _spray.RefillsPerClean == 0 ? " One filling is enough."
                : $" It must be filled again {(_spray.RefillsPerClean == 1 ? "once" : $"{_spray.RefillsPerClean} times")}.";
            yield return $"One clean takes {Millilitres(_settings.Use.PerClean.Value)}, about {Seconds(_spray.GentleSecondsPerClean)}{(oneFlow ? string.Empty : " at the gentle strength")}.{fill}";
        }

        if (_settings is { EmptyKilograms: > 0, Use.Reservoir: not null })
        {
            yield return $"Full, it weighs {Number(_spray.FullKilograms * 1000, 0)} grams.";
        }
    }

    private IEnumerable<string> MixLines(WaterMix mix)
    {
        if (mix.IsLoweredToLimit)
        {
            yield return $"{Celsius(_wish)} is too warm. The limit here is {Celsius(_limit)}, so the recipe is for that.";
        }

        if (mix.IsAboveLimit)
        {
            yield return $"Even the cold water is above the limit of {Celsius(_limit)}. Do not wash with it.";
        }
        else if (mix.Parts.Hot == 0 && mix.IsOutOfReach && mix.Celsius > Math.Min(_wish, _limit))
        {
            yield return $"The cold water is {Celsius(mix.Celsius)}, warmer than was asked for. Use it alone.";
        }
        else
        {
            string hot = Millilitres(mix.HotCubicMetres), cold = Millilitres(mix.HotCubicMetres + mix.ColdCubicMetres - Floor(mix.HotCubicMetres));
            yield return mix.IsOutOfReach
                ? $"The hot water is too cool for that. Hot water alone gives {Celsius(mix.Celsius)}."
                : $"Pour in {cold} of cold water first, then {hot} of hot water. That gives {Celsius(mix.Celsius)}.";
            yield return $"In parts: {mix.Parts.Hot} hot to {mix.Parts.Cold} cold gives {Celsius(mix.Parts.Celsius)}.";
        }

        string asUsual = ", as usual,";
        yield return $"This applies to a hot tap of {Celsius(_hot)}{(_settings.Hot is null ? asUsual : string.Empty)} and a cold one of {Celsius(_cold)}{(_settings.Cold is null ? asUsual.TrimEnd(',') : string.Empty)}.";
        if (_settings.Hot is null || _settings.Cold is null)
        {
            yield return "Measure the water at the tap.";
        }

        if (!_settings.FeelingIsGiven)
        {
            yield return "Skin sensation was not given, so the lower limit applies.";
        }

        foreach (string line in BurnLines().Concat(Cautions()))
        {
            yield return line;
        }
    }

    private IEnumerable<string> NoMixLines()
    {
        yield return _settings.Use.LimitsTemperature
            ? $"The aid sets the temperature itself. Set it to no more than {Celsius(_limit)}, and measure the water once with a thermometer."
            : "The water is as cold as the tap gives it.";
    }

    private IEnumerable<string> BurnLines()
    {
        foreach (double celsius in BurningTemperatures())
        {
            var burn = _knowledge.Water.Burns.At(celsius);
            string time = burn.Bound switch
            {
                BurnBound.LessThan => $"in less than {Spoken.Time(burn.Seconds)}",
                BurnBound.MoreThan => $"after more than {Spoken.Time(burn.Seconds)}",
                _ => $"in about {Spoken.Time(burn.Seconds)}",
            };
            yield return $"Water of {Celsius(celsius)} burns adult skin {time}, and frail or numb skin sooner.";
        }
    }

    /// <summary>Temperatures named by the person or the tap that can burn.</summary>
    private IEnumerable<double> BurningTemperatures() => _mix is null ? []
        : new[] { _wish, _hot, _cold }.Where(c => c > _limit).Distinct().Order().Where(c => _knowledge.Water.Burns.At(c).Bound != BurnBound.MoreThan || c == _wish);

    private IEnumerable<string> Cautions()
    {
        if (_mix is null)
        {
            yield break;
        }

        var limit = new Slot("limit", _limit, Dimension.Temperature);
        double example = _knowledge.Evidence.Value(EvidenceIds.ScaldExample);
        yield return "Caution. " + (_settings.FeelsHeat
            ? SlotText.Fill(_knowledge.Rules[RuleIds.WarmWater].Text, [limit])
            : SlotText.Fill(
                _knowledge.Rules[RuleIds.Scald].Text,
                [limit, new Slot("example", example, Dimension.Temperature), new Slot("burn", _knowledge.Water.Burns.At(example).Seconds, Dimension.Time)]));
    }

    private static double Floor(double cubicMetres) => Math.Floor((cubicMetres * 1e6) + 1e-6) / 1e6;
}
