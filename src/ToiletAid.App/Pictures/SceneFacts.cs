using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Pictures;

/// <summary>What a picture of the whole plan shows: lines and words are both made of it.</summary>
internal sealed record SceneFacts
{
    internal required Posture Posture { get; init; }

    internal required Support Support { get; init; }

    internal Approach? Approach { get; init; }

    /// <summary>How far the trunk leans forward, degrees, where the words say it; else 0.</summary>
    internal double Lean { get; init; }

    /// <summary>How far it leans to the side of the cleaning hand or, below 0, away from it, degrees, where the words say it; else 0.</summary>
    internal double SideLean { get; init; }

    internal required AidForm Form { get; init; }

    internal bool IsHelped => Form.Kind == AidFormKind.Glove;

    /// <summary>True when the left hand cleans.</summary>
    internal bool IsLeft { get; init; }

    /// <summary>True when the other hand holds on.</summary>
    internal bool HoldsOn => Posture is Posture.Standing or Posture.HalfStanding;

    internal bool HasRail { get; init; }

    internal bool HasCuff { get; init; }

    internal bool HasThickHandle { get; init; }

    internal bool HasFootstool { get; init; }

    /// <summary>True for a seat with a cut-out, raised over the toilet.</summary>
    internal bool HasRaisedSeat { get; init; }

    /// <summary>True when it is seen from behind, where a lean to the side shows.</summary>
    internal bool IsFromBehind => (Approach == Core.Person.Approach.Side && Posture is not (Posture.SideLying or Posture.Reclined))
        || (Approach == Core.Person.Approach.Behind && SideLean != 0 && Lean == 0 && Support is Support.Toilet or Support.Commode && Posture is Posture.Seated or Posture.Standing);

    /// <summary>The facts of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="aid">The one of its methods that is shown.</param>
    /// <param name="known">Answers as given.</param>
    /// <param name="lean">How far the trunk leans forward and to the side, degrees.</param>
    internal static SceneFacts Of(Plan plan, Aid aid, Answers known, (int Forward, int ToTheSide) lean)
    {
        bool inBed = known.Is(OptionIds.PlaceBed);
        return new()
        {
            Posture = plan.Posture,
            Support = plan.Posture switch
            {
                Posture.SideLying => Support.BedFromAbove,
                Posture.Reclined => inBed || !known.Knows(QuestionIds.Place) ? Support.Bed : Support.TiltedChair,
                Posture.Seated or Posture.SeatedLeaningForward when inBed => Support.Bed,
                _ => known.Is(OptionIds.PlaceCommode) ? Support.Commode : Support.Toilet,
            },
            Approach = aid.Reach == ReachKind.None ? null : plan.Approach,
            Lean = lean.Forward,
            SideLean = lean.ToTheSide,
            Form = AidForm.Of(aid),
            IsLeft = CleaningSide.Hand(known) == WorkingHand.Left,
            HasRail = plan.AddOns.Any(a => a is { Steadies: true, ChangesFixtures: true }),
            HasCuff = plan.AddOns.Any(a => a.HoldsTheHand),
            HasThickHandle = plan.AddOns.Any(a => a.GripShare is not null),
            HasFootstool = plan.Has(AddOnIds.Footstool),
            HasRaisedSeat = plan.AddOns.Any(a => a.RoomGained is not null),
        };
    }
}
