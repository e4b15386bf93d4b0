using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ToiletAid.App.Wording;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.People;

/// <summary>The people of people.md, which a therapist can read: each must and each never, against the advice.</summary>
public sealed class PeopleTests
{
    private static readonly ImmutableArray<NamedPerson> People = NamedPerson.Read(Path.Combine(Here(), "people.md"));

    public static TheoryData<string> Names => [.. People.Select(p => p.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_person_is_told_what_must_come_and_nothing_that_must_never(string name)
    {
        var person = People.Single(p => p.Name == name);
        var advice = person.Answers.Advice();
        string text = string.Join('\n', new AdviceText(Cases.Knowledge).Lines(advice, person.Answers, 20));

        Assert.All(person.Must, m => Assert.True(Holds(m, advice, text), $"{name} must: {m}\n{text}"));
        Assert.All(person.Never, n => Assert.False(Holds(n, advice, text), $"{name} never: {n}\n{text}"));
    }

    [Fact]
    public void There_are_thirty_and_each_says_why() => Assert.True(People.Length >= 30 && People.All(p => p.Why.Length > 0 && p.Must.Length + p.Never.Length > 0));

    /// <summary>Each kind of claim is seen to hold and not to hold for somebody, so that none of them is empty.</summary>
    [Fact]
    public void A_claim_that_is_not_known_is_refused() => Assert.Throws<ArgumentException>(() => Holds("smells nice", Cases.Able.Advice(), string.Empty));

    private static bool Holds(string claim, Advice advice, string text)
    {
        string[] words = claim.Split(' ', 2);
        string what = words.Length > 1 ? words[1] : string.Empty;
        var plans = advice.Ranked.Select(r => r.Plan);
        return words[0] switch
        {
            "stops" => advice.Stops.Any(s => s.Rule.Id == what),
            "first" => !advice.Ranked.IsEmpty && advice.Ranked[0].Plan.Aid.Id == what,
            "offered" => plans.Any(p => p.Aid.Id == what),
            "ruled-out" => advice.RuledOut.Any(r => what.Split(" because ") is [var aid, var rule] && r.Aid.Id == aid && r.Reasons.Any(f => f.Rule.Id == rule)),
            "says" => advice.ForEveryPlan.Any(f => f.Rule.Id == what) || advice.Ranked.Any(r => r.Cautions.Any(c => c.Rule.Id == what)),
            "touches" when what == "stroke" => plans.Any(p => p.Aid.Method == MethodKind.Wipe),
            "touches" when what == "hard" => plans.Any(p => p.Methods.Any(m => m.Tip == Tip.Hard)),
            "touches" when what == "moist" => plans.Any(p => p.Methods.Any(m => m is { NeedsBin: true, Method: MethodKind.Wipe })),
            "follows" => plans.Any(p => p.Companion?.Id == what),
            "two-tools" => plans.Any(p => p.TakesTwoTools),
            "hand" when what == "behind" => plans.Any(p => p.Approach == Approach.Behind && p.Methods.Any(m => m.Reach == ReachKind.BareHand)),
            "posture" => plans.Any(p => Words.Of(p.Posture) == what && p.Methods.Any(m => m.Method != MethodKind.Helper)),
            "add-on" => plans.Any(p => p.Has(what)),
            "tucks" => plans.Any(p => p.Has(what) && p.Aid.Paper is { Hold: not PaperHold.Pad } && p.Companion is null),
            "need" => Words.Of(advice.Need) == what,
            "hears" => text.Contains(what, StringComparison.Ordinal),
            _ => throw new ArgumentException($"'{claim}' is no claim", nameof(claim)),
        };
    }

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
