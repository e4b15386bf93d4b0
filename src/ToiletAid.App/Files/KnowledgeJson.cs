using System.Text.Json;
using System.Text.Json.Serialization;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;
using ToiletAid.Core.Teaching;

namespace ToiletAid.App.Files;

/// <summary>The built-in data and a clinic's own stock: strict, so that a misspelt member is an error and not a default.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false,
    ReadCommentHandling = JsonCommentHandling.Skip,
    AllowTrailingCommas = true,
    Converters =
    [
        typeof(QuestionIdConverter),
        typeof(SourcedConverter),
        typeof(WordEnumConverter<Basis>),
        typeof(WordEnumConverter<Depth>),
        typeof(WordEnumConverter<QuestionKind>),
        typeof(WordEnumConverter<HowObtained>),
        typeof(WordEnumConverter<Approach>),
        typeof(WordEnumConverter<Posture>),
        typeof(WordEnumConverter<Grasp>),
        typeof(WordEnumConverter<AidShape>),
        typeof(WordEnumConverter<FineHandling>),
        typeof(WordEnumConverter<MethodKind>),
        typeof(WordEnumConverter<OperationKind>),
        typeof(WordEnumConverter<HandAct>),
        typeof(WordEnumConverter<PaperHold>),
        typeof(WordEnumConverter<ReachKind>),
        typeof(WordEnumConverter<Tip>),
        typeof(WordEnumConverter<RuleKind>),
        typeof(WordEnumConverter<AskedOfHands>),
        typeof(WordEnumConverter<Severity>),
        typeof(WordEnumConverter<LimitSpread>),
        typeof(WordEnumConverter<Criterion>),
        typeof(WordEnumConverter<HandEase>),
        typeof(WordEnumConverter<BodyMeasure>),
        typeof(WordEnumConverter<Sex>),
        typeof(WordEnumConverter<TeachingCause>),
    ])]
[JsonSerializable(typeof(QuestionsFile))]
[JsonSerializable(typeof(CatalogueFile))]
[JsonSerializable(typeof(RangesFile))]
[JsonSerializable(typeof(EvidenceFile))]
[JsonSerializable(typeof(RulesFile))]
[JsonSerializable(typeof(PeopleModel))]
[JsonSerializable(typeof(ChangesFile))]
[JsonSerializable(typeof(TrialKnowledge))]
[JsonSerializable(typeof(NormsFile))]
[JsonSerializable(typeof(SuppliesFile))]
[JsonSerializable(typeof(BodyFile))]
[JsonSerializable(typeof(TeachingFile))]
internal sealed partial class KnowledgeJson : JsonSerializerContext;
