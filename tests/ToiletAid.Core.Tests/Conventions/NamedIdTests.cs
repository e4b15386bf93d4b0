using System.Reflection;
using ToiletAid.App.Files;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;

namespace ToiletAid.Core.Tests.Conventions;

/// <summary>A misspelt id neither compiles nor starts: code names ids by the tables, and the tables are held against the data.</summary>
public sealed class NamedIdTests
{
    private static readonly KnowledgeBase Built = BuiltIn.Knowledge();

    public static TheoryData<string, KnowledgeBase> Lacking => new()
    {
        { "the question 'grip'", Built with { Questions = new([.. Built.Questions.All.Where(q => q.Id != QuestionIds.Grip)]) } },
        { "options of 'tremor'", Built with { Questions = Without(QuestionIds.Tremor, "marked") } },
        { "the option 'never' of 'helper'", Built with { Questions = Without(QuestionIds.Helper, "never") } },
        { "the add-on 'footstool'", Built with { Catalogue = new(Built.Catalogue.Aids, [.. Built.Catalogue.AddOns.Where(a => a.Id != "footstool")]) } },
        { "the number 'falls.lean' of the evidence", Built with { Evidence = Without("falls.lean") } },
        { "the number 'planner.more.full' of the evidence", Built with { Evidence = Without("planner.more.full") } },
        { "the number 'skin.fragility.fragile' of the evidence", Built with { Evidence = Without("skin.fragility.fragile") } },
        { "the rule 'scald'", Built with { Rules = new([.. Built.Rules.All.Where(r => r.Id != "scald")]) } },
    };

    [Theory, MemberData(nameof(Lacking))]
    public void What_code_names_and_the_data_lack_ends_the_start(string lost, KnowledgeBase lacking) =>
        Assert.Contains(lost, Assert.Throws<ArgumentException>(() => NamedIds.Checked(lacking)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("ToiletAid.Core")]
    [InlineData("ToiletAid.App")]
    [InlineData("toiletaid")]
    public void No_id_is_a_text_of_its_own_where_it_is_looked_up(string assembly) =>
        Assert.Empty(from call in CompiledCalls.In(Assembly.Load(assembly)) where call.Literal is not null && LooksUp(call.Called) select $"{call.Caller} looks up '{call.Literal}'");

    [Theory]
    [InlineData("ToiletAid.Core")]
    [InlineData("ToiletAid.App")]
    [InlineData("toiletaid")]
    public void No_option_is_a_text_of_its_own_where_an_answer_is_looked_at(string assembly) => Assert.Empty(Compared(Assembly.Load(assembly)));

    [Theory]
    [InlineData("ToiletAid.Core")]
    [InlineData("ToiletAid.App")]
    [InlineData("toiletaid")]
    public void Numbers_of_a_computation_are_all_taken_when_it_is_made(string assembly) =>
        Assert.Empty(from call in CompiledCalls.In(Assembly.Load(assembly)) where call.Literal is not null && call.Called.DeclaringType == typeof(NumberTable) && !Makes(call.Caller) select $"{call.Caller} looks up '{call.Literal}'");

    [Fact]
    public void A_number_that_is_taken_later_is_seen() =>
        Assert.Contains(CompiledCalls.In(typeof(NamedIdTests).Assembly), c => c is { Caller: "NamedIdTests.Later", Literal: "cost.roll" } && c.Called.DeclaringType == typeof(NumberTable) && !Makes(c.Caller));

    [Fact]
    public void An_option_that_is_a_text_of_its_own_is_seen() =>
        Assert.Subset(Compared(typeof(NamedIdTests).Assembly).ToHashSet(), new HashSet<string> { "NamedIdTests.Either compares with 'bed'", "NamedIdTests.Either compares with 'commode'", "NamedIdTests.Holds compares with 'sternal'" });

    [Fact]
    public void A_text_of_its_own_is_seen() =>
        Assert.Contains(CompiledCalls.In(typeof(NamedIdTests).Assembly), c => c is { Caller: "NamedIdTests.Literal", Literal: "grip" } && LooksUp(c.Called));

    internal static double? Literal() => Answers.None.Si(new("grip"));

    internal static double Later(NumberTable numbers) => numbers.Value("cost.roll");

    internal static bool Either() => Answers.None.Choice(QuestionIds.Place) is "bed" or "commode";

    internal static bool Holds() => Answers.None.Many(QuestionIds.Precautions) is { } many && many.Contains("sternal");

    /// <summary>A constructor, or a method that makes a value of numbers.</summary>
    private static bool Makes(string caller) => caller.EndsWith("..ctor", StringComparison.Ordinal) || caller.EndsWith(".From", StringComparison.Ordinal);

    /// <summary>Texts that are compared with something in a method that asks for an option by its text.</summary>
    private static IEnumerable<string> Compared(Assembly assembly) =>
        from method in CompiledCalls.In(assembly).GroupBy(c => c.Caller)
        where method.Any(c => c.Called.DeclaringType == typeof(Answers) && c.Called is { IsGenericMethod: false, Name: nameof(Answers.Choice) or nameof(Answers.Many) })
        from call in method
        where call is { Literal: not null, Called.Name: "op_Equality" or "op_Inequality" or "Contains" or "Equals" }
        orderby method.Key, call.Literal
        select $"{method.Key} compares with '{call.Literal}'";

    private static EvidenceTable Without(string id) => new(Built.Evidence.Ids.Where(i => i.Text != id).Select(i => KeyValuePair.Create(i.Text, Built.Evidence[i])));

    private static QuestionSet Without(string question, string option) =>
        new([.. Built.Questions.All.Select(q => q.Id == question ? q with { Options = [.. q.Options.Where(o => o.Id != option)] } : q)]);

    /// <summary>Takes an id, also when that is written as a text: where any id can stand, such as one from a file.</summary>
    private static bool LooksUp(MethodBase called) =>
        called.DeclaringType == typeof(Answers) || called.DeclaringType == typeof(RuleOutcome) || called.DeclaringType == typeof(QuestionSet)
        || called.DeclaringType == typeof(RuleBook) || (called.DeclaringType == typeof(Plan) && called.Name == nameof(Plan.Has))
        || (called.DeclaringType is { } type && Nested(type) && called is ConstructorInfo);

    /// <summary>A made id counts as looked up, but in its table.</summary>
    private static bool Nested(Type type) => type == typeof(QuestionId) || type == typeof(OptionId) || type == typeof(RuleId) || type == typeof(EvidenceId) || (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ChoiceId<>));
}
