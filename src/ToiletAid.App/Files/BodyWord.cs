using System.Text.Json;
using System.Text.Json.Serialization;

namespace ToiletAid.App.Files;

/// <summary>Enums of the body file as kebab-case words, never numbers.</summary>
/// <typeparam name="T">The enum.</typeparam>
internal sealed class BodyWord<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false)
    where T : struct, Enum;
