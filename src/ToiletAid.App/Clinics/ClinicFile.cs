using System.Text.Json;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Statistics;

namespace ToiletAid.App.Clinics;

/// <summary>A clinic's own coefficients as a file: written with a checksum and the reason for each number, read strictly.</summary>
public static class ClinicFile
{
    /// <summary>The format number that this program writes and reads.</summary>
    internal const int Format = 1;

    /// <summary>What the member <c>holds</c> says, so that no other file is taken for one.</summary>
    internal const string Holds = "clinic-coefficients";

    /// <summary>Largest file that is read, bytes; the program's own are a hundredth of it.</summary>
    internal const int MostBytes = 1024 * 1024;

    private const int DigitsShown = 12;

    /// <summary>The file, one member a line, with its checksum.</summary>
    /// <param name="clinic">The coefficients.</param>
    /// <param name="knowledge">Names of the kinds.</param>
    public static byte[] Write(ClinicCoefficients clinic, KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(clinic);
        var text = new ClinicText(knowledge);
        string json = JsonText.Of(JsonText.Indented, json =>
        {
            json.WriteStartObject();
            json.WriteNumber("format", Format);
            json.WriteString("holds", Holds);
            json.WriteString("data", clinic.Data);
            json.WriteNumber("people", clinic.People);
            json.WriteNumber("tries", clinic.Tries);
            json.WriteStartArray("kinds");
            foreach (var kind in clinic.Kinds)
            {
                Kind(json, kind, text);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });
        return ContentHash.Seal(System.Text.Encoding.UTF8.GetBytes(json + "\n"));
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Path of a regular file.</param>
    /// <param name="knowledge">Limits.</param>
    public static Checked<ClinicCoefficients> Read(string path, KnowledgeBase knowledge)
    {
        ArgumentNullException.ThrowIfNull(knowledge);
        var read = RegularFile.Read(path, MostBytes, "file of a clinic's own values");
        return read.TryGet(out byte[]? bytes) ? new ClinicReader(knowledge).Read(bytes) : Checked<ClinicCoefficients>.Bad(read.Issues);
    }

    /// <summary>The first digits of a checksum, as they are read out.</summary>
    internal static string Shown(string hash) => hash[(hash.IndexOf(':', StringComparison.Ordinal) + 1)..][..DigitsShown];

    private static void Kind(Utf8JsonWriter json, KindCoefficients kind, ClinicText text)
    {
        json.WriteStartObject();
        json.WriteString("aid", kind.Aid);
        json.WriteNumber("people", kind.People);
        json.WriteNumber("failed", kind.Failed);
        json.WriteNumber("expected", kind.Expected);
        json.WriteNumber("factor", kind.Factor);
        Range(json, kind.Range);
        json.WriteString("why", text.Why(kind));
        json.WriteStartArray("shifts");
        foreach (var shift in kind.Shifts)
        {
            json.WriteStartObject();
            json.WriteString("criterion", Words.Of(shift.Criterion));
            json.WriteNumber("people", shift.People);
            json.WriteNumber("predicted", shift.Predicted);
            json.WriteNumber("seen", shift.Seen);
            json.WriteNumber("by", shift.By);
            Range(json, shift.Range);
            json.WriteString("why", ClinicText.Why(shift));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Range(Utf8JsonWriter json, Interval range)
    {
        json.WriteNumber("low", range.Low);
        json.WriteNumber("high", range.High);
    }
}
