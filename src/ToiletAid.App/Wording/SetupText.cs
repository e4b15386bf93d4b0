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
    private readonly double _leanWorthSaying = knowledge.Evidence.Value(EvidenceIds.BalanceLeanSaid);

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
    public int? FollowedInARow => known.Is(OptionIds.StepsOne) ? 1
        : known.Is(OptionIds.StepsTwoOrThree) ? (int)knowledge.Evidence.Value(EvidenceIds.LearningFollows[OptionIds.StepsTwoOrThree.Text])
        : null;

    /// <summary>What water is never to be warmer than, degrees Celsius.</summary>
    internal double WarmestCelsius => knowledge.Water.LimitCelsius(HeatSense.BurnsSooner(known, knowledge.Evidence.Value(EvidenceIds.ScaldOld)));

    /// <summary>True where it is not the last paper that shows whether the skin is clean, but somebody who looks.</summary>
    internal bool SomebodyLooks => !SeesNothing && !ranked.HandPats && !HasPaperToLookAt;

    private bool HasPaperToLookAt => _plan.Methods.Any(m => m.Paper is not null || m.NeedsBin);

    private bool HelperPrepares => Warns(RuleIds.HelperPreparesPaper) || Warns(RuleIds.HelperFolds);

    private bool IsBroken => Warns(RuleIds.WoundAdvice);

    private bool SeesNothing => known.Is(OptionIds.SightNone);

    private string Gloves => known.Has(OptionIds.PrecautionAllergyLatex) ? "gloves without latex" : "gloves";

    private bool Warns(RuleId rule) => ranked.Cautions.Any(c => c.Rule.Id == rule);

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
                yield return new(SetupAct.PutWipesReady, "Put the wipes and a lidded bin within reach.", "Get the wipes and the bin.", aid);
            }

            yield break;
        }

        string sheets = "sheet".Counting(paper.Strip.Sheets), length = SlotText.Centimetres(paper.Strip.LengthMetres);
        bool bunch = Bunches(aid);
        string fold = bunch ? $"Take {sheets} and bunch them into a pad as big as the palm."
            : paper.Strip.Folds == 0
            ? $"Take {sheets} in one strip, {length} long."
            : $"Fold {sheets} in half {Times(paper.Strip.Folds)}. That gives {paper.Strip.Layers} layers, {length} long.";
        string few = bunch ? $"Bunch {sheets} of paper" : paper.Strip.Folds == 0 ? $"Take {sheets} of paper" : $"Fold {sheets} in half {Times(paper.Strip.Folds)}";
        yield return !_plan.Has(AddOnIds.PreparedPaper) ? new(bunch ? SetupAct.BunchPaper : SetupAct.FoldPaper, fold, few + ".", aid)
            : HelperPrepares && reader != SetupReader.Helper
            ? new(
                SetupAct.FoldPaper,
                $"Once a week, a carer folds {paper.ToPrepare(DaysAhead)} pieces. {fold} Put a small elastic band round each and keep them by the toilet.",
                $"Your carer: {PlanText.Lower(few)}.",
                aid)
            : new(
                SetupAct.FoldPaper,
                $"Once a week, fold {paper.ToPrepare(DaysAhead)} pieces ahead. {fold} Put a small elastic band round each and keep them by the toilet.",
                $"{few}, {paper.ToPrepare(DaysAhead)} times a week.",
                aid);
        (string Text, string Few)? load = aid.Paper!.Hold switch
        {
            PaperHold.Wrap => ($"Wrap it round the head. It goes round {Number(paper.Cover.Wraps ?? 0)} times. Lock it.", "Wind it round. Lock it."),
            PaperHold.Tuck => ("Lay it over the head and tuck both ends into the slot.", "Tuck in both ends."),
            _ when aid.Reach == ReachKind.Handle => ("Put it in the jaws so that it covers them.", "Cover the jaws with it."),
            _ => null,
        };
        if (load is { } put)
        {
            yield return new(SetupAct.LoadPaper, put.Text, put.Few, aid);
            yield return new(SetupAct.CheckHold, "Pull firmly to check that it holds.", "Pull. It must hold.", aid);
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
            string refill = spray.RefillsPerClean > 0 ? $" Have water ready for {"more filling".Counting(spray.RefillsPerClean)}." : string.Empty;
            yield return new(SetupAct.FillWater, $"Fill it with {"millilitre".Counting((int)Math.Round(reservoir.Value * 1e6))} of water.{refill}", refill.Length > 0 ? "Fill it. Have more ready." : "Fill it with water.", _plan.Washing);
        }

        bool poor = HeatSense.MayBePoor(known);
        string limit = Number(WarmestCelsius);
        if (water is { CanBeWarm: true, LimitsTemperature: true })
        {
            string check = poor ? "measure it with a thermometer" : "feel it on the inner arm";
            string heat = Warns(RuleIds.HeatOfSeatAndAir) ? " Switch the seat heating off and set the air to cool." : string.Empty;
            yield return new(SetupAct.SetWarmth, $"Before the first use, set the water to its coolest setting and {check}. Never above {limit} degrees Celsius.{heat}", $"{(heat.Length > 0 ? "Seat heating off. " : string.Empty)}Coolest setting. Never above {limit} degrees Celsius.", _plan.Washing);
        }

        if (ranked.Setup.Mix is { IsOutOfReach: false } mix)
        {
            string taps = $"{Number(knowledge.Water.HotSupplyCelsius)} and {Number(knowledge.Water.ColdSupplyCelsius)} degrees Celsius";
            string tap = reader == SetupReader.Therapist ? $", if the tap gives {taps}." : $". That is for a tap that gives {taps}.";
            yield return new(SetupAct.MixWater, $"For warm water mix {"part".Counting(mix.Parts.Hot)} hot with {mix.Parts.Cold} cold{tap} Measure it with a thermometer. Never above {limit} degrees Celsius.", $"{"part".Counting(mix.Parts.Hot)} hot, {mix.Parts.Cold} cold. Never above {limit} degrees Celsius.", _plan.Washing);
        }
    }

    private IEnumerable<SetupStep> Sit()
    {
        bool inBed = known.Is(OptionIds.PlaceBed);
        string rail = _plan.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: true }) ? "the rail" : "something fixed";
        string hold = ranked.HandHolds ? $"Hold {rail}" : $"Lean on {rail}";
        string posture = _plan.Posture switch
        {
            Posture.Seated when inBed => "Sit up in bed with the back supported.",
            Posture.Seated => "Sit well back with both feet flat.",
            Posture.SeatedLeaningForward when inBed => "Sit up in bed and lean forward slowly.",
            Posture.SeatedLeaningForward => "Sit with both feet flat and lean forward slowly.",
            Posture.HalfStanding => $"{hold} and rise halfway.",
            Posture.Standing => $"Stand and {PlanText.Lower(hold)}.",
            Posture.SideLying => $"Lie on {Your("side")} with {Your("knees")} drawn up.",
            _ when inBed || !known.Knows(QuestionIds.Place) => $"Lie back with {Your("knees")} apart.",
            _ => $"Lie back in the tilted chair with {Your("knees")} apart.",
        };
        string say = reader == SetupReader.Helper && _plan.Aid.Method == MethodKind.Helper ? "Say: " : string.Empty;
        yield return new(SetupAct.TakePosture, say + posture + Leans(), FewOfPosture(inBed, hold));
        if (_plan.Approach is { } approach)
        {
            // Where the seat washes by itself, it is the companion that is brought to the skin.
            var reaches = _plan is { Aid.Reach: ReachKind.None, Companion: { } companion } ? companion : _plan.Aid;
            string what = reaches.Reach == ReachKind.Handle ? "aid" : reaches.Reach == ReachKind.Jet ? "nozzle" : "hand";
            string hand = CleaningSide.Hand(known) is { } side ? $"{Words.Of(side)} " : string.Empty;
            string it = what == "hand" ? Your($"{hand}hand") : $"the {what}";
            string held = what == "hand" || hand.Length == 0 ? string.Empty : $"Hold it in {Your($"{hand}hand")}. ";
            yield return new(SetupAct.BringToSkin, held + approach switch
            {
                Approach.Behind => $"Bring {it} round {Your("hip")} and in from behind.",
                Approach.Front => $"Part {Your("knees")} and bring {it} between {Your("thighs")} from the front.",
                _ when _plan.Posture is Posture.Seated or Posture.SeatedLeaningForward => $"Lean over to raise one buttock and bring {it} in from that side.",
                _ => $"Bring {it} in from the side.",
            }, approach switch
            {
                Approach.Behind => $"Reach behind{FewOfHand(hand)}.",
                Approach.Front => $"Reach between your thighs{FewOfHand(hand)}.",
                _ when _plan.Posture is Posture.Seated or Posture.SeatedLeaningForward => $"Lean over. Reach in{FewOfHand(hand)}.",
                _ => $"Reach in from the side{FewOfHand(hand)}.",
            }, reaches);
        }
    }

    /// <summary>True where the bare hand does not fold the paper and nobody folds it ahead.</summary>
    private bool Bunches(Aid aid) => aid.Reach == ReachKind.BareHand && !ranked.FoldsPaper && !_plan.Has(AddOnIds.PreparedPaper);

    private static string FewOfHand(string hand) => hand.Length == 0 ? string.Empty : $", {hand}hand";

    private string FewOfPosture(bool inBed, string hold)
    {
        var (forward, side) = Lean;
        string ahead = forward switch { 0 => string.Empty, < 30 => " Lean forward a little.", < 40 => " Hands on your knees.", _ => " Elbows on your knees." };
        string aside = (side, CleaningSide.Hand(known)) switch
        {
            (0, _) => string.Empty,
            (_, not null) => $" Lean to the {(CleaningSide.Hand(known) == WorkingHand.Right == side > 0 ? "right" : "left")}.",
            ( > 0, _) => " Lean to the hand that cleans.",
            _ => " Lean away from the hand that cleans.",
        };
        return _plan.Posture switch
        {
            Posture.Seated when inBed => "Sit up in bed.",
            Posture.Seated => "Sit well back.",
            Posture.SeatedLeaningForward => forward == 0 ? "Sit. Lean forward slowly." : "Sit.",
            Posture.HalfStanding => $"{hold}. Rise halfway.",
            Posture.Standing => $"Stand and {PlanText.Lower(hold)}.",
            Posture.SideLying => "Lie on your side.",
            _ => "Lie back. Knees apart.",
        } + ahead + aside;
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
            says.Add(string.Create(CultureInfo.InvariantCulture, $"about {forward} degrees forward"));
        }

        if (side != 0)
        {
            says.Add(string.Create(CultureInfo.InvariantCulture, $"about {Math.Abs(side)} degrees {(side > 0 ? "towards" : "away from")} the cleaning hand"));
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
        string aside = side == 0 ? string.Empty : $" Lean {(Math.Abs(side) < 30 ? "a little" : "well over")} {(side > 0 ? "towards" : "away from")} the hand that cleans.";
        return ahead + aside;
    }

    /// <summary>A part of the body, as it is said to a therapist or to whom it belongs.</summary>
    private string Your(string part) => $"{(reader == SetupReader.Therapist ? "the" : "your")} {part}";

    private IEnumerable<SetupStep> Clean()
    {
        bool male = known.Choice(QuestionIds.Sex) == Sex.Male;
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
            yield return _plan.Aid.Reach == ReachKind.None
                ? new(SetupAct.Clean, "Work the lever or the button and wash until clean.", "Wash until clean.", _plan.Aid)
                : new(SetupAct.Clean, $"Wash{frontToBack} for about {seconds} at the gentle strength.", $"Wash{frontToBack}, gently.", _plan.Aid);
            if (_plan.Aid.Method == MethodKind.WashAndDry)
            {
                yield return Dry();
            }
        }
        else
        {
            int loads = ranked.Setup.Paper?.LoadsPerClean ?? 1;
            yield return new(
                SetupAct.Clean,
                reader == SetupReader.Therapist
                ? $"Wipe{frontToBack}, one stroke with each clean face.{(loads > 1 ? $" Use {loads} pieces." : string.Empty)}"
                : $"{(male ? string.Empty : "Wipe from front to back. ")}Wipe once with each clean side of the paper.{(loads > 1 ? $" Use {loads} {(Bunches(_plan.Aid) ? "pads of paper" : "folded pieces")}." : string.Empty)}",
                $"Wipe{(male ? " between the buttocks" : frontToBack)}.{(loads > 1 ? $" Use {loads} pieces." : string.Empty)}",
                _plan.Aid);
        }

        if (_plan.Companion is { } companion)
        {
            yield return _plan.Aid.Water is null ? new(SetupAct.Finish, $"Finish with {PlanText.Lower(companion.Name)}.", companion.Water is null ? "Wipe once more." : "Then wash.", companion)
                : IsBroken ? new(SetupAct.Finish, $"Lay soft paper on until the skin is dry, do not rub, with {PlanText.Lower(companion.Name)}.", "Lay soft paper on. Do not rub.", companion)
                : new(SetupAct.Finish, $"Pat dry, do not rub, with {PlanText.Lower(companion.Name)}.", "Pat dry. Do not rub.", companion);
        }

        yield return CheckOfThePaper();
    }

    private SetupStep Dry() => Warns(RuleIds.AirOnBrokenSkin) ? new(
                SetupAct.Finish,
                ranked.HandPats ? "Leave the dryer off. Lay soft paper on until the skin is dry." : ranked.IsAlone ? "Leave the dryer off. Let a dry towel under the buttocks take up the water." : "Leave the dryer off. Somebody else lays soft paper on until the skin is dry.",
                ranked.HandPats ? "Dryer off. Lay soft paper on." : ranked.IsAlone ? "Dryer off. Dry towel under you." : "Dryer off. Somebody else lays soft paper on.",
                _plan.Aid)
            : Warns(RuleIds.HeatOfSeatAndAir) ? new(SetupAct.Dry, ranked.HandPats ? "Use the dryer on cool. Pat with soft paper until the paper stays dry." : "Use the dryer on cool, and twice if the skin stays wet.", ranked.HandPats ? "Dry with cool air. Pat." : "Dry with cool air.", _plan.Aid)
            : ranked.HandPats ? new(SetupAct.Dry, "Use the dryer until the skin feels dry. Pat any wet skin with soft paper.", "Dry with air. Pat.", _plan.Aid)
            : new(SetupAct.Dry, "Use the dryer until the skin feels dry.", "Dry with air.", _plan.Aid);

    private SetupStep CheckOfThePaper() => SeesNothing
        ? new(SetupAct.Look, "Use one more clean piece of paper than seems needed, and ask somebody to check now and then.", "Wipe once more. Let somebody look.")
        : SomebodyLooks
        ? new(SetupAct.Look, "For the first few times, let somebody check that the skin is clean and dry. Wash longer if it is not.", "Let somebody look.")
        : new(SetupAct.Look, $"Look at the {(HasPaperToLookAt ? "last paper" : "paper that pats dry")}. Clean paper means clean skin.", "Paper clean? Then stop.");

    private IEnumerable<SetupStep> ByHelper(bool male)
    {
        if (reader == SetupReader.Helper)
        {
            string doing = IsBroken ? "Rinse the skin and lay soft paper on. Do not rub." : male ? "Clean." : "Clean from front to back.";
            yield return new(SetupAct.HelperCleans, $"Ask first. Put on {Gloves}. Say what you do before each touch. {doing}", IsBroken ? "Rinse. Lay soft paper on." : $"Clean{(male ? string.Empty : " from front to back")}.", _plan.Aid);
            yield return new(SetupAct.Look, "Look at the last paper. Clean paper means clean skin.", "Paper clean? Then stop.");
            yield break;
        }

        string who = reader == SetupReader.Person ? "Your carer" : "The carer";
        string how = IsBroken ? "rinses the skin and lays soft paper on, without rubbing" : male ? "cleans" : "cleans from front to back";
        yield return new(SetupAct.HelperCleans, reader == SetupReader.Person
            ? $"{who} asks first and puts on {Gloves}. {who} {how}. They tell you before each touch."
            : $"{who} asks, puts on {Gloves} and {how}, saying so before each touch.", IsBroken ? "Your carer rinses you." : "Your carer cleans you.", _plan.Aid);
        yield return new(SetupAct.Look, $"{who} checks that the last paper stays clean.", "Your carer looks: is it clean?");
    }

    private IEnumerable<SetupStep> After()
    {
        foreach (var aid in _plan.Methods.Where(m => m.Reach == ReachKind.Handle && m.Paper is not null))
        {
            string it = _plan.Companion is null || _plan.Aid.Reach != ReachKind.Handle ? "it" : PlanText.Lower(aid.Name);
            var release = aid.Operations.FirstOrDefault(o => o.Kind == OperationKind.Release);
            bool touched = aid.SoilTouched.Value >= knowledge.Evidence.Value(EvidenceIds.ContactSheetBetween);
            yield return new(SetupAct.LetGo, release is { AgainstTheBody: true }
                ? $"Hold {it} over the bowl and let the paper drop without touching it. {(reader == SetupReader.Therapist ? "The button can be pressed against the thigh or hip." : "You can press the button against your thigh or hip.")}"
                : touched
                    ? "Take the paper off with a clean sheet and drop it into the bowl."
                    : $"Hold {it} over the bowl and let the paper drop without touching it.", touched && release is not { AgainstTheBody: true } ? "Take it off with a clean sheet." : "Let the paper drop.", aid);
        }

        if (_plan.Methods.Any(m => m.NeedsBin))
        {
            yield return new(SetupAct.UseBin, _plan.Aid.Method == MethodKind.Helper ? "Put wipes and gloves into the bin, not the toilet." : "Put wipes into the bin, not the toilet.", "Into the bin, not the toilet.");
        }

        if (_plan.Has(AddOnIds.SkinMirror))
        {
            yield return new(SetupAct.LookAtSkin, $"Look at {Your("skin")} with the mirror.", "Look at your skin.");
        }

        Aid[] tools = [.. _plan.Methods.Where(m => m.Operations.Any(o => o.Kind == OperationKind.Wash))];
        yield return new(SetupAct.WashUp, tools.Length > 1 ? $"Wash both aids with soap and water and let them dry. Wash {Your("hands")}."
            : tools.Length == 1 ? $"Wash the aid with soap and water and let it dry. Wash {Your("hands")}."
            : $"Wash {Your("hands")}.", tools.Length == 0 ? "Wash your hands." : "Wash it. Wash your hands.", tools.FirstOrDefault());
    }

    private static string Times(int folds) => folds switch { 1 => "once", 2 => "twice", _ => $"{folds} times" };

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    private static int Tens(double radians) => (int)Math.Round(radians * 18 / Math.PI) * 10;
}
