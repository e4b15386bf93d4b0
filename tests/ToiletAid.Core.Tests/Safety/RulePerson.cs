using System.Globalization;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Tests.Advising;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>A row of the table of rules both ways: somebody on whom a rule fires, and the one answer with which it does not.</summary>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Who">Name of the person, see <see cref="People"/>.</param>
/// <param name="Fires">The answer with which it fires, such as <c>helper=never</c>; <c>=?</c> for not known, <c>=a+b</c> for several, <c>=none</c> for none of many.</param>
/// <param name="DoesNot">The same question answered so that it does not fire.</param>
internal sealed record RulePerson(string Rule, string Who, string Fires, string DoesNot)
{
    private static readonly Dictionary<(string Who, string Answer), HashSet<string>> Heard = [];

    /// <summary>The usual forms alone, as a clinic that has no other forms has them: a narrow head would be taken wherever a wide one is warned of.</summary>
    private static readonly Advisor Advisor = new(Cases.AsUsual, new() { ValueDraws = 4, WeightDraws = 20 });

    /// <summary>Invented people. Whom a rule needs otherwise is made from one of them by a few answers.</summary>
    internal static readonly Dictionary<string, Answers> People = new(StringComparer.Ordinal)
    {
        ["Able"] = Cases.Able,
        ["Stiff"] = Answer(Cases.Able, "reach-behind=not-past-the-hip reach-front=groin lean=forward stature=172cm mass=80kg"),
        ["One hand"] = Answer(Cases.Able, "hands-free=one dexterity=slow grasp=whole-hand"),
        ["Forgets"] = Answer(Cases.Able, "steps=two-or-three helper=sometimes"),
        ["Commode"] = Answer(Cases.Able, "place=commode posture=seated"),
        ["In bed"] = Answer(Cases.Able, "place=bed posture=side-lying lean=not-at-all helper=always"),
        ["Stands"] = Answer(Cases.Able, "posture=half-standing"),
        ["Upright"] = Answer(Cases.Able, "posture=standing"),
        ["Alone"] = Answer(Cases.Able, "helper=never"),
        ["Old"] = Answer(Cases.Able, "age=80years posture=seated-leaning-forward"),
        ["Weak"] = Answer(Cases.Able, "grip=60N pinch=15N"),
    };

    /// <summary>What is said of the two persons, who differ in one answer.</summary>
    internal (HashSet<string> Fires, HashSet<string> DoesNot) Both => (Said(Who, Fires), Said(Who, DoesNot));

    /// <summary>Question of the answer that differs.</summary>
    internal string Question => Fires[..Fires.IndexOf('=', StringComparison.Ordinal)];

    private static HashSet<string> Said(string who, string answer)
    {
        if (!Heard.TryGetValue((who, answer), out var said))
        {
            Heard[(who, answer)] = said = Said(Answer(People[who], answer));
        }

        return said;
    }

    /// <summary>Ids of the rules that stop, refuse some plan that could be made for this person, or warn of an offered one.</summary>
    private static HashSet<string> Said(Answers known)
    {
        var stops = Advisor.Stops(known);
        if (!stops.IsEmpty)
        {
            return [.. stops.Select(s => s.Rule.Id)];
        }

        var (appraiser, _) = Advisor.Appraise(known, 4);
        var hands = Advisor.Hands(appraiser);
        var space = new PlanSpace(Cases.AsUsual.Catalogue, Cases.AsUsual.Evidence, known);
        var refused = Cases.AsUsual.Catalogue.Aids.SelectMany(space.Of).SelectMany(p => PlanCheck.Of(Cases.AsUsual, hands, p).Reasons);
        return [.. refused.Concat(Advisor.Advise(known).Ranked.SelectMany(r => r.Cautions)).Select(f => f.Rule.Id)];
    }

    /// <summary>Rows that would do for a rule that has none: every single answer of everybody, first found first.</summary>
    internal static IEnumerable<RulePerson> Suggest(IReadOnlySet<string> rules)
    {
        foreach (var (who, known) in People)
        {
            var before = Said(known);
            foreach (var question in Cases.Knowledge.Questions.All)
            {
                string now = Written(known[question.Id]?.Value);
                string[] ends = question.Number is { } n ? [Text(n.Low, n.Units[0]), Text(n.High, n.Units[0])] : [];
                foreach (string option in question.Options.Select(o => o.Id).Concat(ends).Append("?").Where(o => o != now))
                {
                    // A red flag silences every other rule, which says nothing about that rule.
                    var answers = Answer(known, $"{question.Id}={option}");
                    var after = Said(answers);
                    foreach (string rule in rules.Where(r => after.Contains(r) != before.Contains(r) && (after.Contains(r) || Advisor.Stops(answers).IsEmpty)))
                    {
                        string here = $"{question.Id}={now}", there = $"{question.Id}={option}";
                        yield return after.Contains(rule) ? new(rule, who, there, here) : new(rule, who, here, there);
                    }
                }
            }
        }
    }

    private static string Written(AnswerValue? value) => value switch
    {
        AnswerValue.Choice c => c.Option,
        AnswerValue.Many { Options.IsEmpty: true } => "none",
        AnswerValue.Many m => string.Join('+', m.Options),
        AnswerValue.Number n => Text(n.Amount, n.Unit),
        _ => "?",
    };

    private static string Text(double amount, string unit) => amount.ToString(CultureInfo.InvariantCulture) + unit;

    private static Answers Answer(Answers known, string answers) => answers.Split(' ').Aggregate(known, (k, a) => One(k, a.Split('=')[0], a.Split('=')[1]));

    private static Answers One(Answers known, string id, string value)
    {
        var question = Cases.Knowledge.Questions[new(id)];
        string[] options = question.Kind == QuestionKind.Many && value == "none" ? [] : value.Split('+');
        return value == "?" ? known.Without(new(id))
            : char.IsAsciiDigit(value[0]) && question.FindOption(value) is null ? Number(known, id, value)
            : options.FirstOrDefault(o => question.FindOption(o) is null) is { } lost ? throw new ArgumentException($"{id} has no option {lost}", nameof(value))
            : question.Kind == QuestionKind.Many ? known.Mark(id, [.. options])
            : known.Choose(id, value);
    }

    private static Answers Number(Answers known, string id, string value)
    {
        string unit = value.TrimStart('0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '.');
        return known.Choose(id, double.Parse(value[..^unit.Length], CultureInfo.InvariantCulture), unit);
    }
}
