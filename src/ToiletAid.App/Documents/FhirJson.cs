using System.Text.Json;

namespace ToiletAid.App.Documents;

/// <summary>Parts that resources of FHIR R4 share.</summary>
internal static class FhirJson
{
    internal const string Icf = "http://hl7.org/fhir/sid/icf";
    internal const string Loinc = "http://loinc.org";
    internal const string Categories = "http://terminology.hl7.org/CodeSystem/observation-category";
    internal const string FlagCategories = "http://terminology.hl7.org/CodeSystem/flag-category";
    internal const string Participants = "http://terminology.hl7.org/CodeSystem/provenance-participant-type";

    /// <summary>The system under which ids of our questions and aids are codes. Nobody has registered it, so it is a URN of our own.</summary>
    internal const string Ours = "urn:toiletaid:ids";

    /// <summary>The system under which the clinic's code of a person is an identifier.</summary>
    private const string PersonCodes = "urn:toiletaid:person-codes";

    /// <summary>Opens an entry of the bundle and its resource; close both with <see cref="EndResource"/>.</summary>
    internal static void StartResource(this Utf8JsonWriter json, string type, string id, string language)
    {
        json.WriteStartObject();
        json.WriteString("fullUrl", "urn:uuid:" + id);
        json.WriteStartObject("resource");
        json.WriteString("resourceType", type);
        json.WriteString("id", id);
        json.WriteString("language", language);
    }

    internal static void EndResource(this Utf8JsonWriter json)
    {
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>The person: a Patient of the bundle that has the clinic's own code and nothing else, so that the record system finds whom it means by the code.</summary>
    internal static void Subject(this Utf8JsonWriter json, string person)
    {
        json.WriteStartObject("subject");
        json.WriteString("reference", "urn:uuid:" + PersonId(person));
        json.WriteString("type", "Patient");
        json.WriteStartObject("identifier");
        json.Identifier(person);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>Id of the Patient: the same at every visit.</summary>
    internal static string PersonId(string person) => RecordIds.Named("person/" + person);

    /// <summary>The members of an identifier: the clinic's code of a person.</summary>
    internal static void Identifier(this Utf8JsonWriter json, string person)
    {
        json.WriteString("system", PersonCodes);
        json.WriteString("value", person);
    }

    /// <summary>A list with one concept.</summary>
    internal static void Category(this Utf8JsonWriter json, string name, string text, params ReadOnlySpan<(string System, string Code, string Display)> codings)
    {
        json.WriteStartArray(name);
        json.WriteStartObject();
        json.Concept(text, codings);
        json.WriteEndObject();
        json.WriteEndArray();
    }

    internal static void Reference(this Utf8JsonWriter json, string id)
    {
        json.WriteStartObject();
        json.WriteString("reference", "urn:uuid:" + id);
        json.WriteEndObject();
    }

    internal static void References(this Utf8JsonWriter json, string name, params IEnumerable<string> ids)
    {
        json.WriteStartArray(name);
        foreach (string id in ids)
        {
            json.Reference(id);
        }

        json.WriteEndArray();
    }

    /// <summary>The members of a concept: codings, then words.</summary>
    internal static void Concept(this Utf8JsonWriter json, string text, params ReadOnlySpan<(string System, string Code, string Display)> codings)
    {
        if (codings.Length > 0)
        {
            json.WriteStartArray("coding");
            foreach (var (system, code, display) in codings)
            {
                json.WriteStartObject();
                json.Coding(system, code, display);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteString("text", text);
    }

    internal static void Coding(this Utf8JsonWriter json, string system, string code, string display)
    {
        json.WriteString("system", system);
        json.WriteString("code", code);
        json.WriteString("display", display);
    }

    /// <summary>A quantity in a UCUM unit, or without one where the unit has no code.</summary>
    internal static void Quantity(this Utf8JsonWriter json, string name, double value, string symbol, string unit)
    {
        json.WriteStartObject(name);
        json.WriteNumber("value", (decimal)Math.Round(value, 4));
        if (UcumCodes.Of(symbol) is { } code)
        {
            json.WriteString("unit", unit);
            json.WriteString("system", UcumCodes.System);
            json.WriteString("code", code);
        }

        json.WriteEndObject();
    }

    internal static void Notes(this Utf8JsonWriter json, params IEnumerable<string> notes)
    {
        json.WriteStartArray("note");
        foreach (string note in notes)
        {
            json.WriteStartObject();
            json.WriteString("text", note);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
