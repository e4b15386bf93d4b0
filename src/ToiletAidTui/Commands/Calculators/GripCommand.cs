using ToiletAid.App.Calculators;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>The calculator of grip.</summary>
internal static class GripCommand
{
    internal static Calculator Calculator { get; } = new(
        "grip",
        "A hand compared with the norm for age and sex, and with what an aid needs.",
        [
            ("age", "Age in years. Needed."),
            ("sex", "female, male or unstated."),
            ("grip", "Grip on the dynamometer, such as \"11 kg\", \"24 lb\" or \"108 N\"."),
            ("pinch", "Pinch on the gauge, such as \"3 kg\"."),
            ("grasp", "Best usable grasp: fine-pinch, whole-hand, press-with-palm-or-fist, press-with-forearm, none."),
            ("dexterity", "usual, slow, cannot, or the peg test such as \"35 s\"."),
            ("tremor", "none, some, marked."),
            ("hands-free", "two or one."),
            ("cleans", "Cleans a day."),
            ("aid", "Id of an aid whose demands are shown."),
            ("add-on", "Ids of add-ons used with it, with commas between them."),
        ],
        Compute);

    private static GripCalculation? Compute(CalculatorInput input)
    {
        input.Answers(QuestionIds.Age, QuestionIds.Sex, QuestionIds.Grip, QuestionIds.Pinch, QuestionIds.Grasp, QuestionIds.Dexterity, QuestionIds.Tremor, QuestionIds.HandsFree, QuestionIds.Cleans);
        var aid = input.Aid();
        var addOns = input.Typed.AddOns(input.Knowledge.Catalogue, input.Text("add-on")?.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) ?? []);
        if (!input.Has("age"))
        {
            input.Typed.Fault("age", "It is missing. The norm depends on age, so give it, such as --age 74.");
        }

        if (input.Has("add-on") && !input.Has("aid"))
        {
            input.Typed.Fault("add-on", "An add-on needs an aid. Give --aid too.");
        }

        if (aid is not null && addOns.FirstOrDefault(a => !aid.AddOns.Contains(a.Id)) is { } unfit)
        {
            input.Typed.Fault("add-on", $"{unfit.Id} does not combine with {aid.Id}, use {(aid.AddOns.IsEmpty ? "no add-on" : string.Join(", ", aid.AddOns))}.");
        }

        return input.Typed.Faults.Count > 0 ? null : new(input.Knowledge, input.Typed.Answers, aid, addOns);
    }
}
