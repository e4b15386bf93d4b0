using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Safety;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>The table as data: what it may say, and that a wrong word in it is refused before anybody is advised.</summary>
public sealed class HazardTableTests
{
    private static readonly Rule Row = new()
    {
        Id = "row",
        Kind = RuleKind.Caution,
        Severity = Severity.Note,
        Hazard = "harm",
        Text = "Take care.",
        Purpose = "Care.",
        Basis = Basis.Decision,
        Source = "Test.",
    };

    [Theory]
    [InlineData("skinn=fragile", "", "'skinn' is not a question")]
    [InlineData("skin=thin", "", "'thin' is not an answer to skin")]
    [InlineData("skin=fragile|thin", "", "'thin' is not an answer to skin")]
    [InlineData("", "hard-tips", "'hard-tips' is not a feature of a plan")]
    [InlineData("mass>no.such.limit", "", "compares no number with an entry of the evidence")]
    [InlineData("sex>seat.usual-limit", "", "compares no number with an entry of the evidence")]
    [InlineData("skin=fragile and", "", "it breaks off")]
    [InlineData("(skin=fragile", "", "a bracket is not closed")]
    [InlineData("skin=fragile sex=male", "", "'sex=male' is not expected")]
    public void A_condition_with_a_wrong_word_is_refused_at_load(string exposed, string brings, string says)
    {
        var fault = Assert.Throws<ArgumentException>(() => Book(Row with { Exposed = exposed, Brings = brings }));

        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
        Book(Row);
    }

    [Fact]
    public void A_stop_may_not_look_at_a_plan_and_a_slot_must_be_filled()
    {
        Assert.Throws<ArgumentException>(() => Book(Row with { Kind = RuleKind.Stop, Brings = "hard-tip" }));
        Assert.Throws<ArgumentException>(() => Book(Row with { Text = "Never above {limit}.", Brings = "hard-tip" }));
        Book(Row with { Text = "Never above {limit}.", Brings = "water-as-warm-as-chosen" });
    }

    [Theory]
    [InlineData("skin=fragile", true)]
    [InlineData("skin=sound", false)]
    [InlineData("skin=sound or skin=fragile and sex=female", true)]
    [InlineData("(skin=sound or skin=fragile) and sex=male", false)]
    [InlineData("not (skin=sound or sex=male)", true)]
    [InlineData("conditions=catheter|stoma", true)]
    [InlineData("mass>seat.usual-limit", true)]
    [InlineData("sight=?", true)]
    [InlineData("sight=low", null)]
    [InlineData("sight=low or skin=fragile", true)]
    [InlineData("sight=low and skin=sound", false)]
    [InlineData("not sight=low", null)]
    public void And_binds_closer_than_or_and_what_is_not_known_stays_open(string exposed, bool? applies)
    {
        var known = Answers.None.Choose("skin", "fragile").Choose("sex", "female").Mark("conditions", "catheter").Choose("mass", 121);
        var outcome = Book(Row with { Exposed = exposed }).Cautions[0].Check(new(Cases.Knowledge, known, Trials.TrialCases.Plan("by-hand"), new PlanDemands()));

        Assert.Equal(applies, outcome.Applies);
        Assert.Equal<QuestionId>(applies is null ? [QuestionIds.Sight] : [], outcome.Needs);
    }

    [Fact]
    public void Every_row_says_the_harm_whom_it_is_for_and_what_to_do() => Assert.All(Cases.Knowledge.Rules.All, r =>
    {
        bool shown = r.Kind != RuleKind.RulesOut;
        Assert.NotEmpty(r.Hazard);
        Assert.Equal(shown, r.Person is not null);
        Assert.Equal(shown, r.Brief is not null);
        Assert.True(r.Brief is null || (r.Brief.Split(' ').Length <= 12 && r.Brief.Count(c => c == '.') == 1), r.Brief);
        Assert.All(new[] { r.Text, r.Brief, r.Person, r.Helper, r.Arrange }.OfType<string>(), t => Assert.EndsWith(".", t, StringComparison.Ordinal));
    });

    /// <summary>Whom nobody is exposed to is a row that is never said: each row can apply.</summary>
    [Fact]
    public void Every_feature_of_plans_is_named_by_a_row() => Assert.Empty(PlanFeatures.Names.Except(
        Cases.Knowledge.Rules.All.SelectMany(r => (r.Brings + " " + r.Exposed).Replace("(", " ", StringComparison.Ordinal).Replace(")", " ", StringComparison.Ordinal).Split(' '))));

    private static HazardTable Book(params ImmutableArray<Rule> rules) => new(new RuleBook(rules), Cases.Knowledge.Questions, Cases.Knowledge.Evidence);
}
