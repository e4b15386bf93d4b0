using System.Text.Json;
using System.Text.Json.Serialization;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Files;

/// <summary>How the body file is read: strict, without reflection.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false,
    ReadCommentHandling = JsonCommentHandling.Skip,
    AllowTrailingCommas = true,
    Converters = [typeof(WordEnumConverter<BodyMeasure>), typeof(WordEnumConverter<Sex>), typeof(WordEnumConverter<Basis>)])]
[JsonSerializable(typeof(BodyFile))]
internal sealed partial class BodyJson : JsonSerializerContext;
