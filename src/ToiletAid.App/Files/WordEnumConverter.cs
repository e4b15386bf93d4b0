using System.Text.Json;
using System.Text.Json.Serialization;

namespace ToiletAid.App.Files;

/// <summary>Enums are written as kebab-case words and never as numbers.</summary>
/// <typeparam name="T">The enum.</typeparam>
internal sealed class WordEnumConverter<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false)
    where T : struct, Enum;
