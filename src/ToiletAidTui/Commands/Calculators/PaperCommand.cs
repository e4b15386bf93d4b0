using System.Globalization;
using ToiletAid.App.Calculators;
using ToiletAid.App.Stock;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Commands.Calculators;

/// <summary>The calculator of paper.</summary>
internal static class PaperCommand
{
    internal static Calculator Calculator { get; } = new(
        "paper",
        "How a folded strip sits on a head, whether it holds, and how much paper goes in a month.",
        [
            ("aid", "Id of an aid that takes paper. It gives sheets, folds and girth unless they are given too."),
            ("sheets", "Sheets in the strip, 1 to 60."),
            ("folds", "How often the strip is folded in half, 0 to 4."),
            ("girth", "Girth of the head with its paper, such as \"9 cm\". Without it the strip is a pad."),
            ("stool", "Usual Bristol stool type, 1 to 7. Type 4 if left out."),
            ("cleans", "Cleans a day. 1.5 if left out."),
        ],
        Compute);

    private static PaperCalculation? Compute(CalculatorInput input)
    {
        input.Answers(QuestionIds.Stool, QuestionIds.Cleans);
        var aid = input.Aid();
        int? sheets = input.Count("sheets", StockRanges.Count("sheets")), folds = input.Count("folds", StockRanges.Count("folds"));
        double? girth = input.Quantity("girth", StockRanges.Typed("headGirth", "girth"));
        if (aid is { Paper: null })
        {
            input.Typed.Fault("aid", $"{aid.Id} takes no paper. Use one of {string.Join(", ", input.Knowledge.Catalogue.Aids.Where(a => a.Paper is not null).Select(a => a.Id))}.");
        }

        if (!input.Has("aid") && !(input.Has("sheets") && input.Has("folds")))
        {
            input.Typed.Fault(input.Has("sheets") ? "folds" : "sheets", "It is missing. Give --sheets and --folds, or --aid.");
        }

        if (input.Typed.Faults.Count > 0)
        {
            return null;
        }

        var measured = girth is { } g ? new Sourced(g, g, g, Basis.Estimate, "Given on the command line.") : null;
        var use = aid?.Paper ?? new PaperUse(measured is null ? PaperHold.Pad : PaperHold.Wrap, sheets!.Value, folds!.Value, measured);
        use = use with { Sheets = sheets ?? use.Sheets, Folds = folds ?? use.Folds, HeadGirth = measured ?? use.HeadGirth };
        var filled = Assumptions.Fill(input.Knowledge.Questions, input.Typed.Answers);
        return new(input.Knowledge, use, int.Parse(filled.Choice(QuestionIds.Stool)!, CultureInfo.InvariantCulture), filled.Si(QuestionIds.Cleans)!.Value);
    }
}
