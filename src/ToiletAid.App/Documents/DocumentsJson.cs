using System.Text.Json.Serialization;

namespace ToiletAid.App.Documents;

/// <summary>Words of the documents: strict, so that a misspelt member is an error and not a default.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false)]
[JsonSerializable(typeof(DocumentData))]
internal sealed partial class DocumentsJson : JsonSerializerContext;
