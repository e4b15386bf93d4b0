using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ToiletAid.App.Files;
using ToiletAid.App.Typed;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Wording;

/// <summary>A clinic's own coefficients as sentences to be read aloud.</summary>
/// <param name="knowledge">Names of the kinds.</param>
public sealed class ClinicText(KnowledgeBase knowledge)
{
    /// <summary>That a clinic's own values are used; nothing where they are not.</summary>
    /// <param name="knowledge">What the result rests on.</param>
    public static IEnumerable<string> Used(KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        if (knowledge.Clinic is not { } clinic)
        {
            yield break;
        }

        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"This clinic's own values are used, learnt from trials with {clinic.People} people, checksum {clinic.Checksum}. This is evidence from a small sample.");
        if (clinic.Data != KnowledgeVersion.Knowledge)
        {
            yield return "They were learnt with different built-in values from those of this version. Save them again with toiletaid outcomes.";
        }
    }

    /// <summary>Writes that a clinic's own values are used, as a member clinic; nothing where they are not.</summary>
    /// <param name="json">Where it goes.</param>
    /// <param name="knowledge">What the result rests on.</param>
    public static void Write(Utf8JsonWriter json, KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(knowledge);
        if (Json(knowledge) is { } clinic)
        {
            json.WritePropertyName("clinic");
            clinic.WriteTo(json);
        }
    }

    /// <summary>The same as an object; null where built-in values are used alone.</summary>
    internal static JsonObject? Json(KnowledgeBase knowledge) =>
        knowledge.Clinic is { } clinic ? new() { ["checksum"] = clinic.Checksum, ["people"] = clinic.People, ["tries"] = clinic.Tries } : null;

    /// <summary>Everything that was learnt, a few sentences for each kind.</summary>
    /// <param name="clinic">The coefficients.</param>
    public IEnumerable<string> Lines(ClinicCoefficients clinic)
    {
        ArgumentNullException.ThrowIfNull(clinic);
        return clinic.Kinds.SelectMany(k => k.Shifts.Select(Why).Prepend(Why(k)));
    }

    /// <summary>Why a kind has its factor.</summary>
    /// <param name="kind">What was learnt of it.</param>
    public string Why(KindCoefficients kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        string name = kind.Aid is null ? "Every other kind" : knowledge.Catalogue.Aids.FirstOrDefault(a => a.Id == kind.Aid)?.Name ?? kind.Aid;
        string seen = kind.People == 0
            ? "was not tried, so its values follow the kinds that were."
            : string.Create(CultureInfo.InvariantCulture, $"failed with {kind.Failed} of {kind.People} people, where {kind.Expected:0.#} were predicted.");
        return string.Create(CultureInfo.InvariantCulture, $"{name} {seen} {(kind.Factor == 1 ? "Its values stay the same." : $"Its values are multiplied by {kind.Factor:0.00}, in 80 of 100 cases between {kind.Range.Low:0.00} and {kind.Range.High:0.00}.")}");
    }

    /// <summary>Why a criterion is moved.</summary>
    /// <param name="shift">What was learnt of it.</param>
    public static string Why(CriterionShift shift)
    {
        ArgumentNullException.ThrowIfNull(shift);
        string name = PlanText.Of(shift.Criterion), by = Spoken.Number(Math.Round(Math.Abs(shift.By) * 100, 1));
        string move = by == "0" ? "Nothing is changed." : $"{by} of 100 are {(shift.By > 0 ? "added" : "taken off")}.";
        return shift.People == 0
            ? $"{name} was not seen, so it follows the other kinds. {move}"
            : $"{name} was {SlotText.OfHundred(shift.Seen)} of 100 on average with {shift.People.ToString(CultureInfo.InvariantCulture)} people, where {SlotText.OfHundred(shift.Predicted)} were predicted. {move}";
    }
}
