using System.Globalization;
using Humanizer;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Wording;

/// <summary>How a plan is set up and done, step by step. Every number is computed for this person.</summary>
/// <param name="ranked">The plan.</param>
/// <param name="known">Answers as given.</param>
/// <param name="knowledge">Limits.</param>
public sealed class SetupText(RankedPlan ranked, Answers known, KnowledgeBase knowledge)
{
    /// <summary>Days for which paper is folded ahead: once a week is easy to remember (decision).</summary>
    internal const int DaysAhead = 7;

    private readonly Plan _plan = ranked.Plan;
    private readonly double _leanWorthSaying = knowledge.Evidence.Value("balance.lean-said");

    /// <summary>The steps in order, each short enough to be read out by itself.</summary>
    public IReadOnlyList<string> Steps() =>
    [
        .. ForPaper(_plan.Aid, ranked.Setup.Paper),
        .. ForWater(),
        .. _plan.Companion is { } c ? ForPaper(c, ranked.Setup.CompanionPaper) : [],
        .. Sit(),
        .. Clean(),
        .. After(),
    ];

    /// <summary>How many steps in a row the person follows; null for all of them, or when it is not known.</summary>
    public int? FollowedInARow => known.Choice("steps") switch
    {
        "one" => 1,
        "two-or-three" => (int)knowledge.Evidence.Value("learning.follows.two-or-three"),
        _ => null,
    };

    private bool HelperPrepares => ranked.Cautions.Any(c => c.Rule.Id == "helper-prepares-paper");

    /// <summary>The steps numbered, in parts no longer than the person follows in a row.</summary>
    public IEnumerable<string> Lines()
    {
        var steps = Steps();
        int? follows = FollowedInARow;
        for (int i = 0; i < steps.Count; i++)
        {
            // What a helper does beforehand comes first and is not read out to the person.
            if (follows == 1 && i == (HelperPrepares ? 1 : 0))
            {
                yield return "Read out one step at a time and wait until it is done.";
            }

            if (follows > 1 && i % follows == 0)
            {
                yield return $"Part {(i / follows) + 1}.";
            }

            yield return $"{i + 1}. {steps[i]}";
        }
    }

    private IEnumerable<string> ForPaper(Aid aid, PaperNeed? paper)
    {
        if (aid.Method == MethodKind.Helper)
        {
            yield break;
        }

        if (paper is null)
        {
            if (aid.NeedsBin && aid.Method == MethodKind.Wipe)
            {
                yield return "Put the wipes and a lidded bin within reach.";
            }

            yield break;
        }

        string sheets = "sheet".ToQuantity(paper.Strip.Sheets), length = SlotText.Centimetres(paper.Strip.LengthMetres);
        string fold = paper.Strip.Folds == 0
            ? $"Take {sheets} in one strip, {length} long."
            : $"Fold {sheets} in half {Times(paper.Strip.Folds)}. That gives {paper.Strip.Layers} layers, {length} long.";
        yield return _plan.Has("prepared-paper")
            ? HelperPrepares
            ? $"Once a week, a carer folds {paper.ToPrepare(DaysAhead)} pieces. {fold} Put a small elastic band round each and keep them by the toilet."
            : $"Once a week, fold {paper.ToPrepare(DaysAhead)} pieces ahead. {fold} Put a small elastic band round each and keep them by the toilet."
            : fold;
        string? load = aid.Paper!.Hold switch
        {
            PaperHold.Wrap => $"Wrap it round the head. It goes round {Number(paper.Cover.Wraps ?? 0)} times. Lock it.",
            PaperHold.Tuck => "Lay it over the head and tuck both ends into the slot.",
            _ when aid.Reach == ReachKind.Handle => "Put it in the jaws so that it covers them.",
            _ => null,
        };
        if (load is not null)
        {
            yield return load;
            yield return "Pull firmly to check that it holds.";
        }
    }

    private IEnumerable<string> ForWater()
    {
        if (_plan.Washing?.Water is not { } water || ranked.Setup.Spray is not { } spray)
        {
            yield break;
        }

        if (water.Reservoir is { } reservoir)
        {
            string refill = spray.RefillsPerClean > 0 ? $" Have water ready for {"more filling".ToQuantity(spray.RefillsPerClean)}." : string.Empty;
            yield return $"Fill it with {"millilitre".ToQuantity((int)Math.Round(reservoir.Value * 1e6))} of water.{refill}";
        }

        string limit = Number(knowledge.Water.LimitCelsius(known.Choice("feeling") != "usual"));
        if (water is { CanBeWarm: true, LimitsTemperature: true })
        {
            yield return $"Before the first use, set the water to its lowest warmth and feel it on the inner arm. Never above {limit} degrees Celsius.";
        }

        if (ranked.Setup.Mix is { IsOutOfReach: false } mix)
        {
            yield return $"For warm water mix {"part".ToQuantity(mix.Parts.Hot)} hot with {mix.Parts.Cold} cold, if the tap gives {Number(knowledge.Water.HotSupplyCelsius)} and {Number(knowledge.Water.ColdSupplyCelsius)} degrees Celsius. Measure it with a thermometer. Never above {limit} degrees Celsius.";
        }
    }

    private IEnumerable<string> Sit()
    {
        string posture = _plan.Posture switch
        {
            Posture.Seated => "Sit well back with both feet flat.",
            Posture.SeatedLeaningForward => "Sit with both feet flat and lean forward slowly.",
            Posture.HalfStanding => "Hold the rail and rise halfway.",
            Posture.Standing => "Stand and hold the rail.",
            Posture.SideLying => "Lie on the side with the knees drawn up.",
            _ => "Lie back with the knees apart.",
        };
        yield return ranked.Demands.Need?.Pose is { } pose && Leans(pose) is { } lean ? $"{posture} {lean}" : posture;
        if (_plan.Approach is { } approach)
        {
            string what = _plan.Aid.Reach == ReachKind.Handle ? "aid" : _plan.Aid.Reach == ReachKind.Jet ? "nozzle" : "hand";
            yield return approach switch
            {
                Approach.Behind => $"Bring the {what} round the hip from behind.",
                Approach.Front => $"Part the knees and bring the {what} between the thighs from the front.",
                _ => $"Lean off one buttock and bring the {what} in from that side.",
            };
        }
    }

    /// <summary>What the solved posture asks of the trunk, where it is worth saying.</summary>
    private string? Leans(ReachPose pose)
    {
        if (_plan.Approach is null || !double.IsFinite(pose.Lean))
        {
            return null;
        }

        var says = new List<string>();
        if (pose.Lean > _leanWorthSaying)
        {
            says.Add($"forward about {Tens(pose.Lean)} degrees");
        }

        if (Math.Abs(pose.Bend) > _leanWorthSaying)
        {
            says.Add($"to the {(pose.Bend > 0 ? "side of the cleaning hand" : "other side")} about {Tens(Math.Abs(pose.Bend))} degrees");
        }

        return says.Count == 0 ? null : $"Lean {says.Humanize("and")}.";
    }

    private IEnumerable<string> Clean()
    {
        if (_plan.Aid.Method == MethodKind.Helper)
        {
            yield return "The carer puts on gloves and cleans, saying so before each touch.";
            yield break;
        }

        if (_plan.Aid.Water is not null && ranked.Setup.Spray is { } spray)
        {
            string seconds = TimeSpan.FromSeconds(Math.Round(spray.GentleSecondsPerClean)).Humanize(culture: CultureInfo.InvariantCulture);
            yield return _plan.Aid.Reach == ReachKind.None
                ? "Work the lever or the button and wash until clean."
                : $"Wash for about {seconds} at the gentle strength.";
            if (_plan.Aid.Method == MethodKind.WashAndDry)
            {
                yield return "Use the dryer until the skin feels dry. Pat any wet skin with soft paper.";
            }
        }
        else
        {
            string direction = known.Choice("sex") == "male" ? "Wipe" : "Wipe from front to back";
            int loads = ranked.Setup.Paper?.LoadsPerClean ?? 1;
            yield return $"{direction}, one stroke with each clean face.{(loads > 1 ? $" Use {loads} pieces." : string.Empty)}";
        }

        if (_plan.Companion is { } companion)
        {
            yield return _plan.Aid.Water is null ? $"Finish with {PlanText.Lower(companion.Name)}." : $"Pat dry, do not rub, with {PlanText.Lower(companion.Name)}.";
        }
    }

    private IEnumerable<string> After()
    {
        if (_plan.Aid.Reach == ReachKind.Handle && _plan.Aid.Paper is not null)
        {
            var release = _plan.Aid.Operations.FirstOrDefault(o => o.Kind == OperationKind.Release);
            yield return release is { AgainstTheBody: true }
                ? "Hold it over the bowl and let the paper drop without touching it. The button can be pressed against the thigh or hip."
                : _plan.Aid.SoilTouched.Value >= knowledge.Evidence.Value("contact.sheet-between")
                    ? "Take the paper off with a clean sheet and drop it into the bowl."
                    : "Hold it over the bowl and let the paper drop without touching it.";
        }

        if (_plan.Methods.Any(m => m.NeedsBin))
        {
            yield return "Put wipes and gloves into the bin, not the toilet.";
        }

        if (_plan.Has("skin-mirror"))
        {
            yield return "Look at the skin with the mirror.";
        }

        yield return _plan.Methods.Any(m => m.Operations.Any(o => o.Kind == OperationKind.Wash))
            ? "Wash the aid with soap and water and let it dry. Wash the hands."
            : "Wash the hands.";
    }

    private static string Times(int folds) => folds switch { 1 => "once", 2 => "twice", _ => $"{folds} times" };

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Tens(double radians) => (Math.Round(radians * 18 / Math.PI) * 10).ToString(CultureInfo.InvariantCulture);
}
