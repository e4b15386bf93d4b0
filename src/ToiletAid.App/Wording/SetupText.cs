using System.Globalization;
using Humanizer;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Paper;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Wording;

/// <summary>How a plan is set up and done, step by step. Every number is computed for this person.</summary>
/// <param name="ranked">The plan.</param>
/// <param name="known">Answers as given.</param>
/// <param name="knowledge">Limits.</param>
/// <param name="reader">Who is spoken to.</param>
public sealed class SetupText(RankedPlan ranked, Answers known, KnowledgeBase knowledge, SetupReader reader = SetupReader.Therapist)
{
    /// <summary>Days for which paper is folded ahead: once a week is easy to remember (decision).</summary>
    internal const int DaysAhead = 7;

    private readonly Plan _plan = ranked.Plan;
    private readonly double _leanWorthSaying = knowledge.Evidence.Value("balance.lean-said");

    /// <summary>The steps in order, each short enough to be read out by itself.</summary>
    public IReadOnlyList<string> Steps() => [.. Each().Select(s => s.Text)];

    /// <summary>The same steps with what is done in each, by which a picture is found.</summary>
    public IReadOnlyList<SetupStep> Each() =>
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

    private bool HelperPrepares => Warns("helper-prepares-paper") || Warns("helper-folds");

    private bool IsBroken => Warns("wound-advice");

    private bool SeesNothing => known.Choice("sight") == "none";

    private string Gloves => known.Many("precautions") is { } p && p.Contains("allergy-latex") ? "gloves without latex" : "gloves";

    private bool Warns(string rule) => ranked.Cautions.Any(c => c.Rule.Id == rule);

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

    private IEnumerable<SetupStep> ForPaper(Aid aid, PaperNeed? paper)
    {
        if (aid.Method == MethodKind.Helper)
        {
            yield break;
        }

        if (paper is null)
        {
            if (aid.NeedsBin && aid.Method == MethodKind.Wipe)
            {
                yield return new(SetupAct.PutWipesReady, "Put the wipes and a lidded bin within reach.", aid);
            }

            yield break;
        }

        string sheets = "sheet".ToQuantity(paper.Strip.Sheets), length = SlotText.Centimetres(paper.Strip.LengthMetres);
        bool bunch = aid.Reach == ReachKind.BareHand && !ranked.FoldsPaper && !_plan.Has("prepared-paper");
        string fold = bunch ? $"Take {sheets} and bunch them into a pad as big as the palm."
            : paper.Strip.Folds == 0
            ? $"Take {sheets} in one strip, {length} long."
            : $"Fold {sheets} in half {Times(paper.Strip.Folds)}. That gives {paper.Strip.Layers} layers, {length} long.";
        yield return new(bunch ? SetupAct.BunchPaper : SetupAct.FoldPaper, !_plan.Has("prepared-paper") ? fold
            : HelperPrepares && reader != SetupReader.Helper
            ? $"Once a week, a carer folds {paper.ToPrepare(DaysAhead)} pieces. {fold} Put a small elastic band round each and keep them by the toilet."
            : $"Once a week, fold {paper.ToPrepare(DaysAhead)} pieces ahead. {fold} Put a small elastic band round each and keep them by the toilet.", aid);
        string? load = aid.Paper!.Hold switch
        {
            PaperHold.Wrap => $"Wrap it round the head. It goes round {Number(paper.Cover.Wraps ?? 0)} times. Lock it.",
            PaperHold.Tuck => "Lay it over the head and tuck both ends into the slot.",
            _ when aid.Reach == ReachKind.Handle => "Put it in the jaws so that it covers them.",
            _ => null,
        };
        if (load is not null)
        {
            yield return new(SetupAct.LoadPaper, load, aid);
            yield return new(SetupAct.CheckHold, "Pull firmly to check that it holds.", aid);
        }
    }

    private IEnumerable<SetupStep> ForWater()
    {
        if (_plan.Washing?.Water is not { } water || ranked.Setup.Spray is not { } spray)
        {
            yield break;
        }

        if (water.Reservoir is { } reservoir)
        {
            string refill = spray.RefillsPerClean > 0 ? $" Have water ready for {"more filling".ToQuantity(spray.RefillsPerClean)}." : string.Empty;
            yield return new(SetupAct.FillWater, $"Fill it with {"millilitre".ToQuantity((int)Math.Round(reservoir.Value * 1e6))} of water.{refill}", _plan.Washing);
        }

        bool poor = HeatSense.MayBePoor(known);
        string limit = Number(knowledge.Water.LimitCelsius(HeatSense.BurnsSooner(known, knowledge.Evidence.Value("scald.old"))));
        if (water is { CanBeWarm: true, LimitsTemperature: true })
        {
            string check = poor ? "measure it with a thermometer" : "feel it on the inner arm";
            string heat = Warns("heat-of-seat-and-air") ? " Switch the seat heating off and set the air to cool." : string.Empty;
            yield return new(SetupAct.SetWarmth, $"Before the first use, set the water to its lowest warmth and {check}. Never above {limit} degrees Celsius.{heat}", _plan.Washing);
        }

        if (ranked.Setup.Mix is { IsOutOfReach: false } mix)
        {
            yield return new(SetupAct.MixWater, $"For warm water mix {"part".ToQuantity(mix.Parts.Hot)} hot with {mix.Parts.Cold} cold, if the tap gives {Number(knowledge.Water.HotSupplyCelsius)} and {Number(knowledge.Water.ColdSupplyCelsius)} degrees Celsius. Measure it with a thermometer. Never above {limit} degrees Celsius.", _plan.Washing);
        }
    }

    private IEnumerable<SetupStep> Sit()
    {
        string place = known.Choice("place") ?? string.Empty;
        string rail = _plan.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: true }) ? "the rail" : "something fixed";
        string hold = ranked.HandHolds ? $"Hold {rail}" : $"Lean on {rail}";
        string posture = _plan.Posture switch
        {
            Posture.Seated when place == "bed" => "Sit up in bed with the back supported.",
            Posture.Seated => "Sit well back with both feet flat.",
            Posture.SeatedLeaningForward when place == "bed" => "Sit up in bed and lean forward slowly.",
            Posture.SeatedLeaningForward => "Sit with both feet flat and lean forward slowly.",
            Posture.HalfStanding => $"{hold} and rise halfway.",
            Posture.Standing => $"Stand and {PlanText.Lower(hold)}.",
            Posture.SideLying => $"Lie on {Your("side")} with {Your("knees")} drawn up.",
            _ when place is "" or "bed" => $"Lie back with {Your("knees")} apart.",
            _ => $"Lie back in the tilted chair with {Your("knees")} apart.",
        };
        yield return new(SetupAct.TakePosture, posture + Leans());
        if (_plan.Approach is { } approach)
        {
            // Where the seat washes by itself, it is the companion that is brought to the skin.
            var reaches = _plan is { Aid.Reach: ReachKind.None, Companion: { } companion } ? companion : _plan.Aid;
            string what = reaches.Reach == ReachKind.Handle ? "aid" : reaches.Reach == ReachKind.Jet ? "nozzle" : "hand";
            string hand = CleaningSide.Hand(known) is { } side ? $"{side} " : string.Empty;
            string it = what == "hand" ? Your($"{hand}hand") : $"the {what}";
            string held = what == "hand" || hand.Length == 0 ? string.Empty : $"Hold it in {Your($"{hand}hand")}. ";
            yield return new(SetupAct.BringToSkin, held + approach switch
            {
                Approach.Behind => $"Bring {it} round {Your("hip")} from behind.",
                Approach.Front => $"Part {Your("knees")} and bring {it} between {Your("thighs")} from the front.",
                _ when _plan.Posture is Posture.Seated or Posture.SeatedLeaningForward => $"Lean off one buttock and bring {it} in from that side.",
                _ => $"Bring {it} in from the side.",
            }, reaches);
        }
    }

    /// <summary>What the solved posture asks of the trunk, where it is worth saying: tens of degrees forward, and to the side of the cleaning hand or, below 0, away from it.</summary>
    internal (int Forward, int ToTheSide) Lean
    {
        get
        {
            if (_plan.Approach is null || ranked.Demands.Need?.Pose is not { } pose || !double.IsFinite(pose.Lean))
            {
                return default;
            }

            return (pose.Lean > _leanWorthSaying ? Tens(pose.Lean) : 0, Math.Abs(pose.Bend) > _leanWorthSaying ? Tens(pose.Bend) : 0);
        }
    }

    private string Leans()
    {
        var (forward, side) = Lean;
        if (reader != SetupReader.Therapist)
        {
            return PlainLeans(forward, side);
        }

        var says = new List<string>();
        if (forward > 0)
        {
            says.Add(string.Create(CultureInfo.InvariantCulture, $"forward about {forward} degrees"));
        }

        if (side != 0)
        {
            says.Add(string.Create(CultureInfo.InvariantCulture, $"to the {(side > 0 ? "side of the cleaning hand" : "other side")} about {Math.Abs(side)} degrees"));
        }

        return says.Count == 0 ? string.Empty : $" Lean {says.Humanize("and")}.";
    }

    /// <summary>The same without a number of degrees. At 30 degrees hands rest on the knees, from 40 on elbows do (common practice).</summary>
    private static string PlainLeans(int forward, int side)
    {
        string ahead = forward switch
        {
            0 => string.Empty,
            < 30 => " Lean forward a little.",
            < 40 => " Lean forward until your hands rest on your knees.",
            _ => " Lean forward until your elbows rest on your knees.",
        };
        string aside = side == 0 ? string.Empty : $" Lean {(Math.Abs(side) < 30 ? "a little" : "well over")} to {(side > 0 ? "the side of the hand that cleans" : "the other side")}.";
        return ahead + aside;
    }

    /// <summary>A part of the body, as it is said to a therapist or to whom it belongs.</summary>
    private string Your(string part) => $"{(reader == SetupReader.Therapist ? "the" : "your")} {part}";

    private IEnumerable<SetupStep> Clean()
    {
        bool male = known.Choice("sex") == "male";
        if (_plan.Aid.Method == MethodKind.Helper)
        {
            foreach (var step in ByHelper(male))
            {
                yield return step;
            }

            yield break;
        }

        string frontToBack = male ? string.Empty : " from front to back";
        if (_plan.Aid.Water is not null && ranked.Setup.Spray is { } spray)
        {
            string seconds = TimeSpan.FromSeconds(Math.Round(spray.GentleSecondsPerClean)).Humanize(culture: CultureInfo.InvariantCulture);
            yield return new(SetupAct.Clean, _plan.Aid.Reach == ReachKind.None
                ? "Work the lever or the button and wash until clean."
                : $"Wash{frontToBack} for about {seconds} at the gentle strength.", _plan.Aid);
            if (_plan.Aid.Method == MethodKind.WashAndDry)
            {
                yield return new(SetupAct.Dry, Warns("air-on-broken-skin") ? (ranked.HandPats ? "Leave the dryer off. Lay soft paper on until the skin is dry." : "Leave the dryer off. Somebody else lays soft paper on until the skin is dry.")
                    : Warns("heat-of-seat-and-air") ? (ranked.HandPats ? "Use the dryer on cool. Pat with soft paper until the paper stays dry." : "Use the dryer on cool, and twice if the skin stays wet.")
                    : ranked.HandPats ? "Use the dryer until the skin feels dry. Pat any wet skin with soft paper."
                    : "Use the dryer until the skin feels dry.", _plan.Aid);
            }
        }
        else
        {
            int loads = ranked.Setup.Paper?.LoadsPerClean ?? 1;
            yield return new(SetupAct.Clean, reader == SetupReader.Therapist
                ? $"Wipe{frontToBack}, one stroke with each clean face.{(loads > 1 ? $" Use {loads} pieces." : string.Empty)}"
                : $"{(male ? string.Empty : "Wipe from front to back. ")}Wipe once with each clean side of the paper.{(loads > 1 ? $" Use {loads} folded pieces." : string.Empty)}", _plan.Aid);
        }

        if (_plan.Companion is { } companion)
        {
            yield return new(SetupAct.Finish, _plan.Aid.Water is null ? $"Finish with {PlanText.Lower(companion.Name)}."
                : IsBroken ? $"Lay soft paper on until the skin is dry, do not rub, with {PlanText.Lower(companion.Name)}."
                : $"Pat dry, do not rub, with {PlanText.Lower(companion.Name)}.", companion);
        }

        if (SeesNothing)
        {
            yield return new(SetupAct.Look, "Use one more clean paper than seems needed, and ask somebody to look now and then.");
        }
        else if (_plan.Methods.Any(m => m.Paper is not null || m.NeedsBin))
        {
            yield return new(SetupAct.Look, "Look at the last paper. It is clean when the paper stays clean.");
        }
        else
        {
            yield return new(SetupAct.Look, ranked.HandPats
                ? "Look at the paper that pats dry. It is clean when the paper stays clean."
                : "The first times, let somebody look whether the skin is clean and dry. Wash longer where it is not.");
        }
    }

    private IEnumerable<SetupStep> ByHelper(bool male)
    {
        if (reader == SetupReader.Helper)
        {
            string doing = IsBroken ? "Rinse the skin and lay soft paper on. Do not rub." : male ? "Clean." : "Clean from front to back.";
            yield return new(SetupAct.HelperCleans, $"Ask first. Put on {Gloves}. Say what you do before each touch. {doing}", _plan.Aid);
            yield return new(SetupAct.Look, "Look at the last paper. It is clean when the paper stays clean.");
            yield break;
        }

        string who = reader == SetupReader.Person ? "Your carer" : "The carer";
        string how = IsBroken ? "rinses the skin and lays soft paper on, without rubbing" : male ? "cleans" : "cleans from front to back";
        yield return new(SetupAct.HelperCleans, $"{who} asks, puts on {Gloves} and {how}, saying so before each touch.", _plan.Aid);
        yield return new(SetupAct.Look, $"{who} checks that the last paper stays clean.");
    }

    private IEnumerable<SetupStep> After()
    {
        foreach (var aid in _plan.Methods.Where(m => m.Reach == ReachKind.Handle && m.Paper is not null))
        {
            string it = _plan.Companion is null || _plan.Aid.Reach != ReachKind.Handle ? "it" : PlanText.Lower(aid.Name);
            var release = aid.Operations.FirstOrDefault(o => o.Kind == OperationKind.Release);
            yield return new(SetupAct.LetGo, release is { AgainstTheBody: true }
                ? $"Hold {it} over the bowl and let the paper drop without touching it. {(reader == SetupReader.Therapist ? "The button can be pressed against the thigh or hip." : "You can press the button against your thigh or hip.")}"
                : aid.SoilTouched.Value >= knowledge.Evidence.Value("contact.sheet-between")
                    ? "Take the paper off with a clean sheet and drop it into the bowl."
                    : $"Hold {it} over the bowl and let the paper drop without touching it.", aid);
        }

        if (_plan.Methods.Any(m => m.NeedsBin))
        {
            yield return new(SetupAct.UseBin, _plan.Aid.Method == MethodKind.Helper ? "Put wipes and gloves into the bin, not the toilet." : "Put wipes into the bin, not the toilet.");
        }

        if (_plan.Has("skin-mirror"))
        {
            yield return new(SetupAct.LookAtSkin, $"Look at {Your("skin")} with the mirror.");
        }

        Aid[] tools = [.. _plan.Methods.Where(m => m.Operations.Any(o => o.Kind == OperationKind.Wash))];
        yield return new(SetupAct.WashUp, tools.Length > 1 ? $"Wash both aids with soap and water and let them dry. Wash {Your("hands")}."
            : tools.Length == 1 ? $"Wash the aid with soap and water and let it dry. Wash {Your("hands")}."
            : $"Wash {Your("hands")}.", tools.FirstOrDefault());
    }

    private static string Times(int folds) => folds switch { 1 => "once", 2 => "twice", _ => $"{folds} times" };

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static int Tens(double radians) => (int)Math.Round(radians * 18 / Math.PI) * 10;
}
