using System.Globalization;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Pictures;

/// <summary>The shape of a kind of aid, read off its attributes: what is drawn and what is said come from it.</summary>
internal sealed record AidForm
{
    /// <summary>How far a curved end turns, degrees: a convention of drawing.</summary>
    private const double CurvedEnd = 75;

    /// <summary>What is straight before it turns, as a share of the length.</summary>
    private const double Straight = 0.5;

    private const double Butt = 6;

    internal required AidFormKind Kind { get; init; }

    /// <summary>Id of the kind of aid.</summary>
    internal required string Id { get; init; }

    /// <summary>From the middle of the grip to the middle of the face or to the nozzle, cm.</summary>
    internal required double Length { get; init; }

    /// <summary>Width of what enters the cleft, cm; 0 where nothing does.</summary>
    internal double HeadWidth { get; init; }

    internal bool IsCurved { get; init; }

    internal bool IsSoft { get; init; }

    /// <summary>How far the water flies, cm; 0 where there is none.</summary>
    internal double Jet { get; init; }

    /// <summary>Places at which it folds or comes apart.</summary>
    internal int Joints { get; init; }

    /// <summary>True when the paper is let go with a lever or a button.</summary>
    internal bool LetsGo { get; init; }

    /// <summary>True when it washes and dries.</summary>
    internal bool Dries { get; init; }

    internal bool IsPowered { get; init; }

    internal bool HasPaper { get; init; }

    internal bool IsHandled => Kind is not (AidFormKind.Hand or AidFormKind.Seat or AidFormKind.Glove);

    internal bool Sprays => Kind is AidFormKind.Bottle or AidFormKind.Washer or AidFormKind.Hose;

    /// <summary>The form of a kind of aid.</summary>
    internal static AidForm Of(Aid aid)
    {
        double length = Centimetres(aid.Length), folded = Centimetres(aid.FoldedLength);
        var kind = KindOf(aid);
        return new()
        {
            Kind = kind,
            Id = aid.Id,
            Length = kind == AidFormKind.Hand ? FigureBody.HandBeyondGrip - 2 : length,
            HeadWidth = Centimetres(aid.TipWidth),
            IsCurved = aid.Shape == AidShape.Curved,
            IsSoft = aid.Tip == Tip.Soft,
            Jet = Centimetres(aid.JetReach),
            Joints = aid.Reach is ReachKind.Handle or ReachKind.Jet && folded > 0 ? Math.Max((int)Math.Ceiling((length / folded) - 0.001) - 1, 0) : 0,
            LetsGo = aid.Operations.Any(o => o is { Kind: OperationKind.Release, Act: HandAct.PushAgainstThigh or HandAct.PressLever or HandAct.Squeeze }),
            Dries = aid.Method == MethodKind.WashAndDry,
            IsPowered = aid.Water is { NeedsSocket: true },
            HasPaper = aid.Paper is not null,
        };
    }

    /// <summary>The form in words, from the same facts as the lines.</summary>
    internal string Words()
    {
        string shape = IsCurved ? "curved" : "straight", long_ = $"{Number(Length)} centimetres from grip to ";
        string joints = Joints switch { 0 => string.Empty, 1 => " It folds or comes apart at one joint.", _ => $" It folds or comes apart at {Joints} joints." };
        string wide = $"{Number(HeadWidth)} centimetres wide";
        string soft = IsSoft ? "soft" : "hard";
        string go = LetsGo ? " A button at the grip lets the paper go." : Kind == AidFormKind.Tongs ? string.Empty : " Nothing lets the paper go, it is taken off by hand.";
        return Kind switch
        {
            AidFormKind.Hand => HasPaper ? "A hand that holds folded paper." : "A hand that holds a wipe.",
            AidFormKind.Jaws => $"A {shape} handle, {long_}tip. Two {soft} jaws, {wide}, hold folded paper.{go}{joints}",
            AidFormKind.TuckHead => $"A {shape} handle, {long_}head. The {soft} head is {wide}. Paper lies over it with both ends tucked in.{go}{joints}",
            AidFormKind.WrapHead => $"A {shape} handle, {long_}head. The flat {soft} head is {wide}. Paper goes round it.{go}{joints}",
            AidFormKind.Tongs => $"{(IsCurved ? "Curved" : "Straight")} tongs, {long_}tips. The tips are {wide}. They hold paper while they are squeezed.{joints}",
            AidFormKind.Head => $"A {shape} handle, {long_}head. The {soft} head is {wide}.{joints}",
            AidFormKind.Bottle => $"A bottle that is squeezed, with a {shape} spout, {long_}its end.{joints} Water flies {Number(Jet)} centimetres.",
            AidFormKind.Washer => $"A washer with a button and a {shape} nozzle, {long_}its end.{joints} Water flies {Number(Jet)} centimetres.",
            AidFormKind.Hose => $"A {shape} nozzle with a trigger on a hose, {long_}its end.{joints} Water flies {Number(Jet)} centimetres.",
            AidFormKind.Seat => $"A toilet seat with a washer under it{(Dries ? " and a dryer" : string.Empty)}. {(IsPowered ? "A cable goes to a socket." : "A lever at its side works it.")}",
            _ => "The gloved hand of another person.",
        };
    }

    /// <summary>The middle line from the end of the grip to the face, with the grip's middle at 0 and the handle to the right; a curved end turns to the left.</summary>
    internal IReadOnlyList<Spot> MiddleLine(double from = -Butt)
    {
        var spots = new List<Spot>();
        double step = Math.Max(Length / 24, 0.5);
        for (double s = from; s < Length; s += step)
        {
            spots.Add(AtLength(s).Place);
        }

        spots.Add(AtLength(Length).Place);
        return spots;
    }

    /// <summary>Place and direction on the middle line.</summary>
    /// <param name="s">From the middle of the grip, cm.</param>
    internal (Spot Place, Spot Along) AtLength(double s)
    {
        double bend = Length * Straight;
        if (!IsCurved || s <= bend || Kind == AidFormKind.Hand)
        {
            return (new(s, 0), new(1, 0));
        }

        double radius = Length * (1 - Straight) / (CurvedEnd * Math.PI / 180), turned = Math.Min((s - bend) / radius * 180 / Math.PI, CurvedEnd);
        var along = Spot.Toward(turned);
        var end = new Spot(bend, radius) - (along.Left * radius);
        return (end + (along * Math.Max(s - Length, 0)), along);
    }

    private static AidFormKind KindOf(Aid aid) => aid switch
    {
        { Method: MethodKind.Helper } => AidFormKind.Glove,
        { Reach: ReachKind.None } => AidFormKind.Seat,
        { Reach: ReachKind.BareHand } => AidFormKind.Hand,
        { Reach: ReachKind.Jet, Water: null or { Reservoir: null } } => AidFormKind.Hose,
        { Reach: ReachKind.Jet } => Does(aid, OperationKind.Clean, HandAct.Squeeze) ? AidFormKind.Bottle : AidFormKind.Washer,
        _ when Does(aid, OperationKind.Hold, HandAct.Squeeze) => AidFormKind.Tongs,
        { Paper.Hold: PaperHold.Wrap } => AidFormKind.WrapHead,
        { Paper.Hold: PaperHold.Tuck } => AidFormKind.TuckHead,
        { Paper: not null } => AidFormKind.Jaws,
        _ => AidFormKind.Head,
    };

    private static bool Does(Aid aid, OperationKind kind, HandAct act) =>
        aid.Operations.Any(o => o.Kind == kind && (o.Act ?? HandActs.Usual(kind, o.Grasps, o.AgainstTheBody, aid.Reach)) == act);

    private static double Centimetres(Sourced? metres) => (metres?.Value ?? 0) * 100;

    private static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
