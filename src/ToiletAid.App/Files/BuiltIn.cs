using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;

namespace ToiletAid.App.Files;

/// <summary>The data that come with the program, embedded in it so that one file is enough.</summary>
public static class BuiltIn
{
    /// <summary>The questions.</summary>
    public static QuestionSet Questions() => new(Load("questions.json", KnowledgeJson.Default.QuestionsFile).Questions);

    /// <summary>The kinds of aid and add-ons.</summary>
    public static AidCatalogue Aids()
    {
        var file = Load("aids.json", KnowledgeJson.Default.CatalogueFile);
        return new(file.Aids, file.AddOns);
    }

    /// <summary>The numbers that rules and criteria use.</summary>
    public static EvidenceTable Evidence() => new(Load("evidence.json", KnowledgeJson.Default.EvidenceFile).Numbers);

    /// <summary>The hazard table.</summary>
    public static RuleBook Rules() => new(Load("rules.json", KnowledgeJson.Default.RulesFile).Rules);

    /// <summary>What simulated people are like.</summary>
    public static PeopleModel People() => Load("people.json", KnowledgeJson.Default.PeopleModel);

    /// <summary>What trials can find.</summary>
    public static TrialKnowledge Trials() => Load("trials.json", KnowledgeJson.Default.TrialKnowledge);

    /// <summary>All that advice rests on.</summary>
    public static KnowledgeBase Knowledge()
    {
        // Most of a start is spent here, so two cores share it.
        var tables = Task.Run(() => (Body: BodyTablesReader.ReadBuiltIn(), Hand: BuiltInNorms.HandModel(), Supplies: BuiltInSupplies.Load()));
        var (questions, aids, evidence, rules) = (Questions(), Aids(), Evidence(), Rules());
        var (body, hand, supplies) = tables.GetAwaiter().GetResult();
        return NamedIds.Checked(new()
        {
            Questions = questions,
            Catalogue = aids,
            Evidence = evidence,
            Rules = rules,
            Body = body,
            Hand = hand,
            Paper = supplies.Paper,
            Water = supplies.Water,
            Prices = supplies.Prices,
            Trials = Trials(),
            People = People(),
            Changes = Load("changes.json", KnowledgeJson.Default.ChangesFile).Changes,
        });
    }

    internal static T Load<T>(string name, JsonTypeInfo<T> type)
    {
        using var stream = typeof(BuiltIn).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"the program was built without {name}");
        return JsonSerializer.Deserialize(stream, type) ?? throw new InvalidOperationException($"{name} is empty");
    }
}
