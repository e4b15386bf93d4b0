using System.Text.Json.Serialization;

namespace ToiletAid.App.Teaching;

/// <summary>Words of teaching: strict, so that a misspelt member is an error and not a default.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false)]
[JsonSerializable(typeof(TeachingWords))]
internal sealed partial class TeachingJson : JsonSerializerContext;
