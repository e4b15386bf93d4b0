using System.Text.Json.Nodes;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Calculators;

/// <summary>A folded strip of paper: how it sits, whether it is enough, and how much paper goes in a month.</summary>
public sealed class PaperCalculation : Calculation
{
    private readonly PaperCoefficients _coefficients;
    private readonly PaperUse _use;
    private readonly int _stool;
    private readonly FoldedStrip _strip;
    private readonly PaperCover _cover;
    private readonly PaperNeed _need;

    /// <summary>Computes.</summary>
    /// <param name="knowledge">Coefficients.</param>
    /// <param name="use">The strip, and how it is held.</param>
    /// <param name="stool">Usual Bristol stool type, 1 to 7.</param>
    /// <param name="cleansPerDay">Cleans a day; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Sheets, folds, stool type or cleans are out of range.</exception>
    public PaperCalculation(KnowledgeBase knowledge, PaperUse use, int stool, double cleansPerDay)
    {
        _coefficients = knowledge.Paper;
        _use = use;
        _stool = stool;
        _strip = FoldedStrip.Of(use.Sheets, use.Folds, _coefficients.Sheet);
        _cover = PaperCover.Of(_strip, use, _coefficients);
        _need = PaperNeed.Of(use, stool, cleansPerDay, _coefficients);
    }

    private bool IsEnough => _need.IsEnough && _need.Strip == _strip;

    /// <inheritdoc/>
    public override IEnumerable<string> Lines()
    {
        yield return $"{Folded(_strip)}: {Length(_strip)} long, {"layer".ToQuantity(_strip.Layers)}, {"ply".ToQuantity(_strip.Plies)}.";
        yield return $"Sheets are taken as {Length(_coefficients.Sheet.LengthMetres)} long with {"ply".ToQuantity(_coefficients.Sheet.Plies)}. Measure one.";
        if (_cover.Wraps is { } wraps)
        {
            yield return $"It goes round the head {Counted(wraps, "time")}. On the wiping face lie {"layer".ToQuantity(_cover.FaceLayers)}.";
        }
        else
        {
            yield return $"As a pad it has {"layer".ToQuantity(_cover.FaceLayers)} on the wiping face.";
        }

        yield return Holds();
        yield return Enough();
        if (_need.IsEnough)
        {
            yield return $"For one clean: {"load".ToQuantity(_need.LoadsPerClean)}, {"sheet".ToQuantity(_need.SheetsPerClean)}.";
            yield return $"To prepare for a week at {Counted(_need.CleansPerDay, "clean")} a day: {"load".ToQuantity(_need.ToPrepare(SetupText.DaysAhead))}.";
            yield return $"In a month: {Counted(_need.RollsPerMonth, "roll")} of {Number(_need.SheetsOnRoll, 0)} sheets.";
        }

        yield return "Layers and pieces by stool type are estimates. A trial is a better guide.";
        yield return AdviceText.Limits;
    }

    /// <inheritdoc/>
    public override JsonObject Json() => new()
    {
        ["hold"] = Words.Of(_use.Hold),
        ["headGirthMetres"] = JsonText.Rounded(_use.HeadGirth?.Value),
        ["stoolType"] = _stool,
        ["strip"] = Strip(_strip),
        ["wraps"] = JsonText.Rounded(_cover.Wraps),
        ["coverage"] = JsonText.Rounded(_cover.Coverage),
        ["faceLayers"] = _cover.FaceLayers,
        ["holds"] = _cover.Holds,
        ["enough"] = IsEnough,
        ["needed"] = !_need.IsEnough ? null : new JsonObject
        {
            ["strip"] = Strip(_need.Strip),
            ["loadsPerClean"] = _need.LoadsPerClean,
            ["sheetsPerClean"] = _need.SheetsPerClean,
            ["loadsPerWeek"] = _need.ToPrepare(SetupText.DaysAhead),
            ["rollsPerMonth"] = JsonText.Rounded(_need.RollsPerMonth),
        },
    };

    /// <summary>A number that need not be whole, with its word: one where the number reads 1.</summary>
    private static string Counted(double number, string word) => Number(number) is var n && n == "1" ? $"1 {word}" : $"{n} {word.Pluralize()}";

    private static JsonObject Strip(FoldedStrip strip) => new()
    {
        ["sheets"] = strip.Sheets,
        ["folds"] = strip.Folds,
        ["lengthMetres"] = JsonText.Rounded(strip.LengthMetres),
        ["layers"] = strip.Layers,
        ["plies"] = strip.Plies,
    };

    private string Holds()
    {
        if (_cover.Holds)
        {
            return "It should hold. Test it with a firm pull before use.";
        }

        return _use.Hold switch
        {
            PaperHold.Wrap => $"It will not hold: paper must go round {Number(_coefficients.WrapsToHold)} times. Take a longer strip.",
            PaperHold.Tuck => $"It will not hold: both ends need {Length(_coefficients.TuckMetres)} to be tucked in. Take a longer strip.",
            _ => $"It is too short to be held: a pad needs {Length(_coefficients.PadMetres)}. Take more sheets or fold once less.",
        };
    }

    private string Enough()
    {
        string type = $"stool type {_stool}";
        if (IsEnough)
        {
            return $"For {type} that is enough: {_coefficients.For(_stool).Layers} layers are needed.";
        }

        return _need.IsEnough
            ? $"For {type} take {Folded(_need.Strip)}, {Length(_need.Strip)} long: {_coefficients.For(_stool).Layers} layers must lie on the wiping face, and the strip must hold."
            : $"For {type} no strip that can be folded by hand is enough. Fold it once less, or choose another head.";
    }

    private static string Folded(FoldedStrip strip)
    {
        string times = strip.Folds switch { 0 => "not folded", 1 => "folded in half once", 2 => "folded in half twice", var n => $"folded in half {n} times" };
        return $"{"sheet".ToQuantity(strip.Sheets)} {times}";
    }

    private static string Length(FoldedStrip strip) => Length(strip.LengthMetres);

    private static string Length(double metres) => $"{Number(metres * 100)} centimetres";
}
