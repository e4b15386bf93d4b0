using ToiletAid.Core.Advising;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Tests.Safety;

/// <summary>What may never be advised, and what must be said, written anew from the words of the hazard table: no condition, feature or
/// helper of the program is used, only answers, and what a plan is made of.</summary>
internal static class HazardChecker
{
    /// <summary>What is wrong with the advice for these answers; empty when nothing is.</summary>
    internal static IEnumerable<string> Faults(Answers a, Advice advice)
    {
        bool stop = MustStop(a);
        if (stop != !advice.Stops.IsEmpty)
        {
            yield return stop ? "a red flag did not stop it" : "it stopped without a red flag";
        }

        if (!advice.Stops.IsEmpty)
        {
            if (!advice.Ranked.IsEmpty)
            {
                yield return "ranked though stopped";
            }

            yield break;
        }

        foreach (var plan in advice.Ranked)
        {
            string[] said = [.. plan.Cautions.Select(c => c.Rule.Id)];
            foreach (string fault in Forbidden(a, plan).Concat(Unsaid(a, plan, said)).Concat(OfWater(a, plan)))
            {
                yield return $"{fault}: {plan.Plan.Key}";
            }

            if (said.Distinct(StringComparer.Ordinal).Count() < said.Length)
            {
                yield return $"the same caution twice: {plan.Plan.Key}";
            }
        }
    }

    private static bool MustStop(Answers a) =>
        a.Many(QuestionIds.RedFlags) is { IsEmpty: false } || Is(a, "feeling-since", "new") && Is(a, "feeling", "reduced", "none") || Holds(a, "conditions", "stoma");

    private static bool Is(Answers a, string question, params string[] options) => a.Choice(new(question)) is { } c && options.Contains(c);

    private static bool Holds(Answers a, string question, params string[] options) => a.Many(new(question)) is { } m && m.Any(options.Contains);

    private static bool NotWhole(Answers a) => Is(a, "skin", "sore-or-broken", "pressure-injury", "surgical-wound", "perineal-stitches");

    private static bool Numb(Answers a) => Is(a, "feeling", "reduced", "none");

    /// <summary>What the person must not be handed.</summary>
    private static IEnumerable<string> Forbidden(Answers a, RankedPlan ranked)
    {
        var plan = ranked.Plan;
        Aid[] all = plan.Companion is { } c ? [plan.Aid, c] : [plan.Aid];
        return
        [
            .. AsItsVariant(plan.Aid),
            .. OnSkin(a, ranked, all),
            .. InPostureAndPlace(a, ranked, all),
            .. ByHand(a, ranked, all),
            .. UnderPrecautions(a, ranked, all),
            .. OfSteps(a, ranked, all),
        ];
    }

    private static readonly System.Text.Json.Nodes.JsonArray Kinds = System.Text.Json.Nodes.JsonNode.Parse(
        File.ReadAllText(TestKit.Repository.Path("src", "ToiletAid.App", "Knowledge", "aids.json")))!["aids"]!.AsArray();

    /// <summary>What touches the skin and what is held must be as the file says of the variant, and of its kind in all else.</summary>
    private static IEnumerable<string> AsItsVariant(Aid aid)
    {
        var kind = Kinds.First(k => (string)k!["id"]! == aid.Id)!;
        var variant = aid.Variant is null ? null : (kind["variants"]?.AsArray() ?? []).First(v => (string)v!["id"]! == aid.Variant.Id);
        bool same = string.Equals((string)(variant?["tip"] ?? kind["tip"])!, aid.Tip.ToString(), StringComparison.OrdinalIgnoreCase)
            && Is("length", 100, aid.Length?.Value) && Is("tipWidth", 100, aid.TipWidth?.Value)
            && (int)(variant?["steps"] ?? kind["steps"])! == aid.Steps
            && kind["materials"]!.AsArray().Concat(variant?["materials"]?.AsArray() ?? []).All(m => aid.Materials.Contains((string)m!))
            && (variant?["operations"]?.AsArray() ?? []).All(o => aid.Operations.Any(p => string.Equals(p.Kind.ToString(), (string)o!["kind"]!, StringComparison.OrdinalIgnoreCase) && Math.Abs(p.Force.Value - (double)o["force"]!["value"]!) < 1e-9));
        if (!same)
        {
            yield return "an aid that is not as its variant is";
        }

        bool Is(string member, double inMetre, double? has) =>
            (variant?[member] ?? kind[member]) is { } number ? has is { } h && Math.Abs(((double)number["value"]! / inMetre) - h) < 1e-9 : has is null;
    }

    private static IEnumerable<string> OnSkin(Answers a, RankedPlan ranked, Aid[] all)
    {
        var plan = ranked.Plan;
        Aid main = ranked.Plan.Aid;
        if (NotWhole(a) && (main.Method == MethodKind.Wipe || all.Any(m => m.Tip == Tip.Hard || m.Method == MethodKind.Wipe && m.NeedsBin)))
        {
            yield return "something that rubs, or is hard, on a wound or broken skin";
        }

        if (Is(a, "skin", "radiotherapy") && all.Any(m => m.Tip == Tip.Hard))
        {
            yield return "a hard tip on irradiated skin";
        }

        if (Holds(a, "precautions", "allergy-wipes") && all.Any(m => m.Method == MethodKind.Wipe && m.NeedsBin))
        {
            yield return "moist wipes in spite of an allergy";
        }

        foreach (string material in (string[])["latex", "silicone", "nickel"])
        {
            if (Holds(a, "precautions", "allergy-" + material) && (all.Any(m => m.Materials.Contains(material)) || plan.AddOns.Any(o => o.Materials.Contains(material))))
            {
                yield return $"{material} in spite of an allergy";
            }
        }
    }

    private static IEnumerable<string> InPostureAndPlace(Answers a, RankedPlan ranked, Aid[] all)
    {
        var plan = ranked.Plan;
        Aid main = ranked.Plan.Aid;
        bool seat = all.Any(m => m.Method is MethodKind.Wash or MethodKind.WashAndDry && m.Reach == ReachKind.None);
        bool onSeat = plan.Posture is Posture.Seated or Posture.SeatedLeaningForward;
        if (Is(a, "posture", "side-lying", "reclined") && plan.Posture is not (Posture.SideLying or Posture.Reclined))
        {
            yield return "somebody who lies is told to sit or stand";
        }

        if (Is(a, "posture", "seated", "seated-leaning-forward") && !onSeat)
        {
            yield return "somebody who sits is told to lie or stand";
        }

        if (Is(a, "posture", "reclined") && Is(a, "place", "commode", "own-toilet", "shared-or-public-toilet") && plan.Posture != Posture.Reclined)
        {
            yield return "somebody who reclines on a commode is told otherwise";
        }

        if (Is(a, "place", "bed", "commode", "shared-or-public-toilet") && (seat || all.Any(m => m.ChangesFixtures) || plan.AddOns.Any(o => o.ChangesFixtures)))
        {
            yield return "something mounted where nothing can be";
        }

        if (Is(a, "fixtures", "no") && (all.Any(m => m.ChangesFixtures) || plan.AddOns.Any(o => o.ChangesFixtures)))
        {
            yield return "fixtures changed that may not be";
        }

        if (Is(a, "socket", "no") && all.Any(m => m.Water is { NeedsSocket: true }))
        {
            yield return "mains power without a socket";
        }

        if (Is(a, "water", "none") && all.Any(m => m.Water is { Plumbed: false }))
        {
            yield return "water where there is none";
        }

        if (Is(a, "helper", "never") && all.Any(m => m.Method == MethodKind.Helper))
        {
            yield return "a helper who is never there";
        }
    }

    private static IEnumerable<string> ByHand(Answers a, RankedPlan ranked, Aid[] all)
    {
        var plan = ranked.Plan;
        Aid main = ranked.Plan.Aid;
        bool bareHand = all.Any(m => m.Reach == ReachKind.BareHand);
        bool cannotFold = Is(a, "grasp", "press-with-palm-or-fist", "press-with-forearm", "none") || Is(a, "dexterity", "cannot");
        if (plan.AddOns.Any(o => o.PreparesPaper) && Is(a, "helper", "never") && cannotFold)
        {
            yield return "paper that nobody can fold ahead";
        }

        bool ready = plan.AddOns.Any(o => o.PreparesPaper);
        if (cannotFold && all.Any(m => m.Reach == ReachKind.Handle && m.Paper is { } paper && (paper.Hold == PaperHold.Tuck || (paper.Hold == PaperHold.Pad && !ready))))
        {
            yield return "paper to be folded each time by a hand that cannot fold";
        }

        if (plan.AddOns.Any(o => o.PreparesPaper) && !all.Any(m => m.Paper is { Hold: PaperHold.Pad } && m.Method != MethodKind.Helper))
        {
            yield return "prepared paper for what tucks or wraps";
        }

        if (plan.AddOns.Any(o => o.ShowsTheSkin) && Is(a, "sight", "none"))
        {
            yield return "a mirror for somebody who cannot see";
        }

        if (main.Water is not null && plan.Companion is { Method: MethodKind.Wipe, NeedsBin: true })
        {
            yield return "a moist wipe to pat dry with";
        }

        if (bareHand && plan.Approach == Approach.Behind && Is(a, "reach-behind", "not-past-the-hip", "outer-buttock"))
        {
            yield return "the bare hand from behind, though it was seen not to get there";
        }

        if (bareHand && plan.Approach == Approach.Front && Is(a, "reach-front", "not-past-mid-thigh"))
        {
            yield return "the bare hand from the front, though it was seen not to get there";
        }
    }

    private static IEnumerable<string> UnderPrecautions(Answers a, RankedPlan ranked, Aid[] all)
    {
        var plan = ranked.Plan;
        string? side = a.Choice(QuestionIds.PrecautionSide), hand = a.Choice((QuestionId)QuestionIds.Hand);
        bool otherArm = side is "left" or "right" && (hand == "either" || (hand is "left" or "right" && hand != side));
        if (plan.Approach == Approach.Behind && (Holds(a, "precautions", "sternal") || (Holds(a, "precautions", "shoulder-surgery") && !otherArm)))
        {
            yield return "behind the back in spite of a precaution";
        }

        if (plan.Approach is not null && Holds(a, "precautions", "hip-flexion-limit", "no-twisting-or-bending", "brittle-bones", "dizzy-when-leaning") && plan.Posture is Posture.SeatedLeaningForward)
        {
            yield return "a lean forward in spite of a precaution";
        }

        if (Holds(a, "precautions", "no-weight-through-the-hand") && plan.Approach is not null && plan.Posture == Posture.HalfStanding)
        {
            yield return "weight through a hand";
        }

        if (Holds(a, "precautions", "no-weight-on-a-leg") && plan.Posture is Posture.Standing or Posture.HalfStanding && Holds(a, "precautions", "no-weight-on-a-leg"))
        {
            yield return "weight on a leg";
        }

        if (Holds(a, "precautions", "hip-extension-limit") && plan.Posture == Posture.Standing)
        {
            yield return "standing with a hip that must not be stretched";
        }

        if (plan.Approach == Approach.Side && plan.Posture is Posture.Seated or Posture.SeatedLeaningForward && plan.Approach == Approach.Side && Is(a, "lean", "forward", "not-at-all"))
        {
            yield return "a lean aside that cannot be held";
        }
    }

    private static IEnumerable<string> OfSteps(Answers a, RankedPlan ranked, Aid[] all)
    {
        var plan = ranked.Plan;
        if (Is(a, "hands-free", "one") && all.Any(m => m.Method != MethodKind.Helper && m.Operations.Any(o => o.Hands > 1 && !o.AgainstTheBody && !(o.Kind == OperationKind.Load && m.Paper is { Hold: PaperHold.Pad } && plan.AddOns.Any(x => x.PreparesPaper)))))
        {
            yield return "a step for two hands";
        }

        int steps = all.Sum(m => m.Steps) + plan.AddOns.Sum(o => o.ExtraSteps);
        int? follows = a.Choice(QuestionIds.Steps) switch { "one" => 1, "two-or-three" => 3, _ => null };
        if (steps > follows && (Is(a, "helper", "never") || steps > follows + 2))
        {
            yield return "more steps than are followed";
        }

        if (ranked.Demands.ReachShare < 0.5)
        {
            yield return "more likely too short than long enough";
        }
    }

    /// <summary>Numb, old and unknown skin, and hands that cannot judge heat, get no water above 37 degrees Celsius, and nobody above 38.</summary>
    private static IEnumerable<string> OfWater(Answers a, RankedPlan ranked)
    {
        bool sooner = Numb(a) || Holds(a, "conditions", "heat-not-felt-by-the-hand") || !a.Knows(QuestionIds.Feeling) || a.Si(QuestionIds.Age) > 65;
        double most = sooner ? 37 : 38;
        if (ranked.Setup.Mix?.Celsius > most || ranked.Cautions.SelectMany(c => c.Slots).Any(s => s.Name == "limit" && s.Si > most))
        {
            yield return "water that is too warm for this skin";
        }
    }

    /// <summary>What has to be said beside the plan.</summary>
    private static IEnumerable<string> Unsaid(Answers a, RankedPlan ranked, string[] said)
    {
        var plan = ranked.Plan;
        Aid[] all = plan.Companion is { } c ? [plan.Aid, c] : [plan.Aid];
        bool Missing(bool when, string id) => when && !said.Contains(id);
        bool hard = all.Any(m => m.Tip == Tip.Hard), wipes = all.Any(m => m.Method == MethodKind.Wipe), helper = all.Any(m => m.Method == MethodKind.Helper);
        bool chosenHeat = all.Any(m => m.Water is { CanBeWarm: true, LimitsTemperature: false }), air = all.Any(m => m.Method == MethodKind.WashAndDry);
        bool coldHands = Holds(a, "conditions", "heat-not-felt-by-the-hand");

        if (Missing(!a.Knows(QuestionIds.RedFlags) || (Numb(a) && !a.Knows(QuestionIds.FeelingSince)), "signs-not-known"))
        {
            yield return "nobody asked about the signs, and nothing is said of it";
        }

        (bool When, string Id)[] must =
        [
            (!a.Knows(QuestionIds.Precautions), "precautions-not-known"),
            (Holds(a, "precautions", "dysreflexia-risk"), "dysreflexia-risk"),
            (NotWhole(a), "wound-advice"),
            (Is(a, "infection", "yes"), "infection"),
            (Numb(a) && hard, "skin-tear-hard-tip"),
            (Numb(a), "skin-cannot-be-felt"),
            ((Numb(a) || coldHands) && chosenHeat, "scald"),
            (chosenHeat && !Numb(a) && !coldHands && !(a.Si(QuestionIds.Age) > 65), "warm-water"),
            (chosenHeat && !Numb(a) && !coldHands && a.Si(QuestionIds.Age) > 65, "warm-water-old-skin"),
            ((Numb(a) || !a.Knows(QuestionIds.Feeling)) && air, "heat-of-seat-and-air"),
            (NotWhole(a) && air, "air-on-broken-skin"),
            (Is(a, "skin", "fragile") && wipes, "fragile-skin"),
            (Is(a, "bleeding", "yes") && (wipes || hard), "bleeds-easily"),
            (Is(a, "tremor", "marked") && hard, "tremor-and-hard-tip"),
            (!Is(a, "sex", "male") && (wipes || helper || all.Any(m => m.Reach == ReachKind.Jet)), "front-to-back"),
            (all.Any(m => m.NeedsBin), "bin-not-flush"),
            (Holds(a, "conditions", "catheter"), "catheter"),
            (Holds(a, "conditions", "low-white-cells"), "low-white-cells"),
            (Holds(a, "conditions", "prolapse"), "prolapse"),
            (all.Any(m => m.Water is { NeedsSocket: true }), "electric-installer"),
            (helper, "stay-with-helper"),
            (plan.AddOns.Any(o => o.RoomGained is not null), "raised-seat-stability"),
            (Holds(a, "precautions", "hip-flexion-limit", "hip-extension-limit", "no-twisting-or-bending", "sternal", "shoulder-surgery", "no-strong-grip", "no-weight-on-a-leg"), "surgical-precaution"),
        ];
        foreach (var (when, id) in must)
        {
            if (Missing(when, id))
            {
                yield return $"{id} is not said";
            }
        }

        bool leans = plan.Posture is Posture.SeatedLeaningForward or Posture.HalfStanding or Posture.Standing || (plan.Approach == Approach.Side && plan.Posture == Posture.Seated);
        if (leans && !helper && !said.Contains("lean-and-fall") && !said.Contains("lean-needs-balance"))
        {
            yield return "nothing is said of falling";
        }

        if (a.Si(QuestionIds.Mass) > 120 && (plan.AddOns.Any(o => o.RoomGained is not null || o.Steadies) || all.Any(m => m.Water is not null && m.Reach == ReachKind.None)) && !said.Contains("mass-limit"))
        {
            yield return "mass-limit is not said";
        }
    }
}
