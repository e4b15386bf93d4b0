using System.Text.Json.Serialization;

namespace ToiletAidTui.Notices;

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, RespectNullableAnnotations = true, RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(Library[]))]
internal sealed partial class LibraryJson : JsonSerializerContext;
