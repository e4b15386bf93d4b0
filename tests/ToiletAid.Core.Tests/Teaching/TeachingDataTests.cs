using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.App.Teaching;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAid.Core.Simulation;
using ToiletAid.Core.Teaching;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Teaching;

/// <summary>What is taught about kinds, against the rules and against people who were not counted.</summary>
public sealed class TeachingDataTests(ITestOutputHelper output)
{
    /// <summary>Another draw than that of the file, which stands in its source.</summary>
    private const ulong FreshSeed = 977;

    private const int FewPeople = 40;
    private const int ManyPeople = 600;

    private static readonly KnowledgeBase Knowledge = Cases.Knowledge;
    private static readonly TeachingFile Counted = TeachingFile.Load();
    private static readonly TeachingWords Words = TeachingWords.Load();

    private static readonly Lazy<ImmutableArray<SeenPerson>> Few = new(() => Fresh(FewPeople));

    private static IEnumerable<(KindTeaching Kind, TeachingEvent Event, TeachingStatement Statement)> All() =>
    [
        .. Counted.Kinds.SelectMany(k => k.GoodFor.Select(s => (k, TeachingEvent.First(k.Kind), s))),
        .. Counted.Kinds.SelectMany(k => k.Near.Select(s => (k, TeachingEvent.Near(k.Kind), s))),
        .. Counted.Kinds.SelectMany(k => k.NotFor.Select(s => (k, TeachingEvent.RuledOut(k.Kind), s))),
        .. Counted.Kinds.SelectMany(k => k.Behind.Select(s => (k, TeachingEvent.Behind(k.Kind), s))),
    ];

    [Fact]
    public void The_file_says_how_it_was_counted_and_over_enough_people()
    {
        Assert.Equal(Basis.Computed, Counted.Basis);
        Assert.Contains("-- teaching --seed", Counted.Source, StringComparison.Ordinal);
        Assert.EndsWith($"--people {Counted.People}", Counted.Source, StringComparison.Ordinal);
        Assert.DoesNotContain($"--seed {FreshSeed} ", Counted.Source, StringComparison.Ordinal);
        Assert.InRange(Counted.People, 2000, int.MaxValue);
        Assert.Equal(Knowledge.Catalogue.Aids.Select(a => a.Id), Counted.Kinds.Select(k => k.Kind));
        Assert.InRange(Counted.Kinds.Sum(k => k.First), 1, Counted.People);
    }

    /// <summary>Rules, kinds and people move, and what is taught must move with them.</summary>
    [Fact]
    public void The_file_was_counted_with_the_data_as_they_are() =>
        Assert.True(Counted.Data == CountedData.Hash(), $"teaching.json was counted with other data. Count it again and put it in its place (some minutes): {Counted.Source} > teaching.json && mv teaching.json src/ToiletAid.App/Knowledge/");

    [Theory]
    [InlineData("aids.json", "\"value\": 38,", "\"value\": 39,", true)]
    [InlineData("aids.json", "Takes apart to wash.", "It takes apart.", false)]
    [InlineData("rules.json", "\"brings\": \"strokes or hard-tip or moist-wipes\"", "\"brings\": \"strokes or moist-wipes\"", true)]
    [InlineData("rules.json", "\"exposed\": \"mass>seat.usual-limit\"", "\"exposed\": \"mass>falls.age\"", false)]
    [InlineData("questions.json", "\"share\": 0.2", "\"share\": 0.21", true)]
    [InlineData("questions.json", "What position does the person clean in?", "How does the person sit?", false)]
    [InlineData("people.json", "\"cleansMedian\": 1.5", "\"cleansMedian\": 1.6", true)]
    [InlineData("evidence.json", "\"planner.tier-share\"", "\"planner.other-share\"", false)]
    [InlineData("evidence.json", "\"skin.hard-tip\"", "\"skin.harder-tip\"", true)]
    public void Counting_again_is_asked_for_where_a_place_can_move(string file, string from, string to, bool isAsked)
    {
        string Read(string name)
        {
            using var text = new StringWriter();
            KnowledgeText.Copy(name, text);
            return text.ToString();
        }

        Assert.Contains(from, Read(file), StringComparison.Ordinal);
        Assert.Equal(isAsked, CountedData.Hash() != CountedData.Hash(name => name == file ? Read(name).Replace(from, to, StringComparison.Ordinal) : Read(name)));
    }

    /// <summary>A kind for which nothing speaks is told by what comes before it.</summary>
    [Fact]
    public void Where_no_answer_speaks_for_a_kind_what_comes_before_it_is_counted()
    {
        Assert.All(Counted.Kinds, k => Assert.Equal(k.GoodFor.IsEmpty && k.Near.IsEmpty, !k.Others.IsEmpty));
        Assert.All(Counted.Kinds.Where(k => !k.Others.IsEmpty), k =>
        {
            Assert.InRange(k.Others.Sum(o => o.First), 1, Counted.People - k.RuledOut - k.First);
            Assert.All(k.Others, o => Assert.Contains(Counted.Kinds, other => other.Kind == o.Kind && other.First >= o.First));
            Assert.All(k.Others, o => Assert.NotNull(Core.Person.Words.Find<Criterion>(o.Because)));
        });
    }

    [Fact]
    public void Every_statement_has_the_people_and_the_shares_that_back_it()
    {
        Assert.InRange(All().Count(), 60, 200);
        Assert.All(All(), a =>
        {
            var (_, happened, s) = a;
            Assert.InRange(s.Count.With, TeachingLimits.LeastPeople, Counted.People);
            Assert.InRange(s.Count.With + s.Count.Without, s.Count.With, Counted.People);
            Assert.InRange(s.Count.HitsWith, 0, s.Count.With);
            Assert.InRange(s.Count.HitsWithout, 0, s.Count.Without);
            Assert.InRange(s.Count.StandardErrors, TeachingLimits.LeastErrors, double.MaxValue);
            Assert.InRange(s.Count.Lift, happened.LeastLift, 1);
            Assert.InRange(s.Count.ShareWith, happened.LeastShare, 1);
        });
    }

    [Fact]
    public void Every_answer_rule_and_criterion_of_a_statement_exists()
    {
        Assert.All(All(), a =>
        {
            var question = Knowledge.Questions[new(a.Statement.Question)];
            Assert.NotEmpty(a.Statement.Options);
            Assert.All(a.Statement.Options, o => Assert.Equal(o, question.FindOption(o)?.Id));
            Assert.True(
                a.Statement.By == TeachingCause.Criterion ? Core.Person.Words.Find<Criterion>(a.Statement.Because) is not null : Knowledge.Rules[a.Statement.Because].Kind == RuleKind.RulesOut,
                a.Statement.Because);
        });
    }

    [Fact]
    public void There_are_words_for_every_kind_answer_rule_and_criterion()
    {
        Assert.Equal(Knowledge.Catalogue.Aids.Select(a => a.Id).Order(), Words.Kinds.Keys.Order());
        Assert.Equal(Core.Person.Words.All<Criterion>().Order(), Words.Gains.Keys.Order());
        Assert.Equal(Knowledge.Rules.All.Where(r => r.Kind == RuleKind.RulesOut).Select(r => r.Id).Order(), Words.WouldNot.Keys.Order());
        foreach (var question in Knowledge.Questions.All.Where(q => q.Kind is QuestionKind.Choice or QuestionKind.Many && q.Id != "red-flags"))
        {
            Assert.Equal(question.Options.Select(o => o.Id).Order(), Words.People[question.Id].Keys.Order());
        }
    }

    [Fact]
    public void Words_for_several_options_name_options_in_their_order() => Assert.All(Words.Together, q => Assert.All(q.Value.Keys, key =>
    {
        string[] options = key.Split('|');
        Assert.Equal(Knowledge.Questions[new(q.Key)].Options.Select(o => o.Id).Where(options.Contains), options);
    }));

    [Fact]
    public void Whoever_is_said_to_be_ruled_out_by_a_rule_is_ruled_out() => Assert.InRange(RuledOutByRule(Few.Value), 50, int.MaxValue);

    /// <summary>Who may not grip hard with the other hand may use tongs with the cleaning hand, and who knows the rule alone cannot tell.</summary>
    [Fact]
    public void A_rule_that_looks_at_other_answers_is_not_said_to_hold_always() =>
        Assert.DoesNotContain(new KindRules(Knowledge).RulesOut(Knowledge.Catalogue.Aids.Single(a => a.Id == "tongs")), r => r.Finding.Rule.Id == "no-strong-grip");

    /// <summary>A hazard of poor feeling is told to those who feel little, and a question that was not asked yet is nobody's hazard.</summary>
    [Fact]
    public void Warnings_are_told_to_those_whom_they_are_for()
    {
        var all = new KindRules(Knowledge).Cautions(Knowledge.Catalogue.Aids.Single(a => a.Id == "spray-wash")).ToList();

        Assert.Contains(all, r => r is { Finding.Rule.Id: "scald", Question: { Text: "feeling" } } && r.Options.SequenceEqual(["reduced", "none"]));
        Assert.Contains(all, r => r is { Finding.Rule.Id: "scald", Question: { Text: "conditions" } } && r.Options.SequenceEqual(["heat-not-felt-by-the-hand"]));
        Assert.Contains(all, r => r is { Finding.Rule.Id: "warm-water", Question: { Text: "feeling" } } && r.Options.SequenceEqual(["usual"]));
        Assert.Contains(all, r => r is { Finding.Rule.Id: "wet-skin", Question: null });
        Assert.DoesNotContain(all, r => r.Finding.Rule.Id == "posture-not-known");
    }

    private static int RuledOutByRule(ImmutableArray<SeenPerson> people)
    {
        var rules = new KindRules(Knowledge);
        int checks = 0;
        foreach (var aid in Knowledge.Catalogue.Aids)
        {
            foreach (var rule in rules.RulesOut(aid))
            {
                Assert.Equal(RuleKind.RulesOut, rule.Finding.Rule.Kind);
                foreach (var person in people.Where(p => p.Chosen(rule.Question!) is { } chosen && chosen.Any(rule.Options.Contains)))
                {
                    Assert.Contains(rule.Finding.Rule.Id, person.RuledOut[aid.Id]);
                    checks++;
                }
            }
        }

        return checks;
    }

    [Fact]
    public void Whoever_was_always_ruled_out_is_ruled_out_among_others_too()
    {
        var always = All().Where(a => a.Event.RulesOut && a.Statement.Count.HitsWith == a.Statement.Count.With).ToList();
        Assert.InRange(always.Count, 20, int.MaxValue);
        var tally = new TeachingTally(Knowledge.Questions, Few.Value);
        Assert.All(always, a => Assert.Equal(1, tally.Count(a.Statement.Question, a.Statement.Options, a.Event) is { With: > 0 } count ? count.ShareWith : 1));
    }

    [Fact]
    [Trait("Speed", "Slow")]
    public void Every_statement_points_the_same_way_among_people_who_were_not_counted()
    {
        var people = Fresh(ManyPeople);
        Assert.InRange(RuledOutByRule(people), 1000, int.MaxValue);
        var tally = new TeachingTally(Knowledge.Questions, people);
        var wrong = new List<string>();
        foreach (var (kind, happened, s) in All())
        {
            var count = tally.Count(s.Question, s.Options, happened);
            string line = FormattableString.Invariant($"{kind.Kind} {s.Question} {string.Join('|', s.Options)}: {s.Count.ShareWith:0.00} against {s.Count.ShareWithout:0.00}, fresh {count.HitsWith} of {count.With} against {count.HitsWithout} of {count.Without}");
            output.WriteLine(line);
            if (count.Lift <= 0)
            {
                wrong.Add(line);
            }
        }

        Assert.Empty(wrong);
    }

    private static ImmutableArray<SeenPerson> Fresh(int people)
    {
        var simulator = new PeopleSimulator(Knowledge, Knowledge.People);
        var advisor = new Advisor(Knowledge, new() { AsksGrip = false });
        return
        [
            .. Enumerable.Range(0, int.MaxValue)
                .Select(n => simulator.Make(FreshSeed, n, Depth.Full, new(2026, 1, 1)).Latest.Answers)
                .Where(a => advisor.Stops(a).IsEmpty)
                .Take(people)
                .Select(a => new SeenPerson(Knowledge.Questions, a, advisor.Advise(a))),
        ];
    }
}
