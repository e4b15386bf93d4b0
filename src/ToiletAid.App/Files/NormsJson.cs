using System.Text.Json;
using System.Text.Json.Serialization;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>Norms and the numbers of hand and supplies: strict, so that a misspelt member is an error and not a default.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false,
    ReadCommentHandling = JsonCommentHandling.Skip,
    AllowTrailingCommas = true,
    Converters = [typeof(SourcedConverter), typeof(WordEnumConverter<Basis>), typeof(WordEnumConverter<Sex>)])]
[JsonSerializable(typeof(NormsFile))]
[JsonSerializable(typeof(EvidenceFile))]
[JsonSerializable(typeof(SuppliesFile))]
internal sealed partial class NormsJson : JsonSerializerContext;
