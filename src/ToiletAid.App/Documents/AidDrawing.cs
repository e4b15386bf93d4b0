using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Person;
using ToiletAid.Core.Plans;

namespace ToiletAid.App.Documents;

/// <summary>One line drawing of the plan: the person from the side in their posture, and what brings paper or water to the skin.</summary>
public static class AidDrawing
{
    private const string Toilet = "<path d=\"M105 150h90M118 150c0 45 15 55 25 55v25h35v-25c10 0 17-15 17-55M70 110h25v45\" stroke=\"#555\"/>";
    private const string Floor = "<path d=\"M20 232h280\" stroke=\"#555\" stroke-width=\"3\"/>";
    private const string Seated = "<circle cx=\"140\" cy=\"32\" r=\"17\"/><path d=\"M140 50L135 140h85v88h22\"/>";
    private const string Leaning = "<circle cx=\"212\" cy=\"45\" r=\"17\"/><path d=\"M200 60L135 140h85v88h22\"/>";
    private const string Upright = "<circle cx=\"225\" cy=\"22\" r=\"17\"/><path d=\"M225 40v95l-3 93h24\"/>";
    private const string Halfway = "<circle cx=\"225\" cy=\"30\" r=\"17\"/><path d=\"M217 47L165 118l62 22-8 88h24\"/>";
    private const string OnTheSide = "<path d=\"M20 190h280M30 190v40M290 190v40\" stroke=\"#555\"/><circle cx=\"55\" cy=\"160\" r=\"17\"/><path d=\"M73 162l92 6 62-40 50 45\"/>";
    private const string Reclined = "<path d=\"M20 190h280M30 190v40M290 190v40M25 188l95-68\" stroke=\"#555\"/><circle cx=\"62\" cy=\"110\" r=\"17\"/><path d=\"M78 120l72 56 58-58 44 66\"/>";

    /// <summary>The drawing of a plan.</summary>
    public static Drawing Of(Plan plan, bool toHelper)
    {
        bool helped = plan.Aid.Method == MethodKind.Helper;
        bool inBed = plan.Posture is Posture.SideLying or Posture.Reclined;
        string scene = inBed ? string.Empty : Floor + Toilet;
        string how = helped ? Helped(plan.Posture) : plan.Aid.Reach == ReachKind.None ? SeatJet() : Arm(plan);
        return new(Title(plan), Words(plan, helped, toHelper), scene + Body(plan.Posture) + how);
    }

    private static string Title(Plan plan) => plan.Posture switch
    {
        Posture.SideLying or Posture.Reclined => "A person cleans in bed",
        Posture.Standing or Posture.HalfStanding => "A person cleans standing at the toilet",
        _ => "A person cleans on the toilet",
    };

    private static string Words(Plan plan, bool helped, bool toHelper)
    {
        string posture = plan.Posture switch
        {
            Posture.Seated => "The person sits up on the toilet with both feet flat.",
            Posture.SeatedLeaningForward => "The person sits on the toilet with both feet flat and leans forward.",
            Posture.HalfStanding => "The person has come half up from the toilet.",
            Posture.Standing => "The person stands at the toilet.",
            Posture.SideLying => "The person lies on the side with the knees up.",
            _ => "The person lies back with the knees up.",
        };
        string what = plan.Aid.Reach switch { ReachKind.Handle => "aid", ReachKind.Jet => "washer", _ => "hand" };
        string how = helped ? toHelper ? "Your gloved hand cleans." : "The gloved hand of a helper cleans."
            : plan.Aid.Reach == ReachKind.None ? "Water comes up from under the seat."
            : plan.Approach is { } way ? $"The {what} comes to the skin {PlanText.Way(way)}." : $"The {what} comes to the skin.";
        return $"{posture} {how}";
    }

    private static string Body(Posture posture) => posture switch
    {
        Posture.Seated => Seated,
        Posture.SeatedLeaningForward => Leaning,
        Posture.HalfStanding => Halfway,
        Posture.Standing => Upright,
        Posture.SideLying => OnTheSide,
        _ => Reclined,
    };

    /// <summary>Arm from the shoulder, then the thick aid or the water to the skin.</summary>
    private static string Arm(Plan plan)
    {
        bool front = plan.Approach == Approach.Front;
        var (arm, hand, skin) = (plan.Posture, front) switch
        {
            (Posture.Seated, false) => ("M139 62L98 98l8 32", (X: 106, Y: 130), (X: 132, Y: 162)),
            (Posture.Seated, true) => ("M139 62l40 32 2 36", (X: 181, Y: 130), (X: 150, Y: 166)),
            (Posture.SeatedLeaningForward, false) => ("M190 72l-62 6-22 40", (X: 106, Y: 118), (X: 130, Y: 160)),
            (Posture.SeatedLeaningForward, true) => ("M190 72l14 40-18 20", (X: 186, Y: 132), (X: 150, Y: 166)),
            (Posture.HalfStanding, false) => ("M208 60l-58 6-20 34", (X: 130, Y: 100), (X: 158, Y: 132)),
            (Posture.HalfStanding, true) => ("M208 60l14 44-24 22", (X: 198, Y: 126), (X: 172, Y: 140)),
            (Posture.Standing, false) => ("M225 55l-38 34 8 32", (X: 195, Y: 121), (X: 216, Y: 148)),
            (Posture.Standing, true) => ("M225 55l36 34-12 30", (X: 249, Y: 119), (X: 230, Y: 150)),
            (Posture.SideLying, false) => ("M90 162l40-34 30 10", (X: 160, Y: 138), (X: 172, Y: 176)),
            (Posture.SideLying, true) => ("M90 162l60-44 38 12", (X: 188, Y: 130), (X: 176, Y: 172)),
            (_, false) => ("M90 130l20 44 28 8", (X: 138, Y: 182), (X: 162, Y: 184)),
            _ => ("M90 130l50-12 24 28", (X: 164, Y: 146), (X: 160, Y: 178)),
        };
        string from = $"{hand.X} {hand.Y}", to = $"{skin.X} {skin.Y}";
        string tool = plan.Aid.Reach switch
        {
            ReachKind.Handle => $"<path d=\"M{from}Q{(front ? hand.X : hand.X - 4)} {skin.Y} {to}\" stroke=\"#00509e\" stroke-width=\"10\"/>",
            ReachKind.Jet => $"<path d=\"M{from}L{to}\" stroke=\"#00509e\" stroke-width=\"7\" stroke-dasharray=\"2 12\"/>",
            _ => $"<path d=\"M{from}L{to}\" stroke=\"#00509e\" stroke-width=\"6\"/>",
        };
        return $"<path d=\"{arm}\"/>{tool}<circle cx=\"{skin.X}\" cy=\"{skin.Y}\" r=\"6\" fill=\"#111\" stroke=\"none\"/>";
    }

    private static string SeatJet() =>
        "<path d=\"M170 168L142 152\" stroke=\"#00509e\" stroke-width=\"7\" stroke-dasharray=\"2 12\"/><path d=\"M139 62l25 40 22 34\"/>";

    private static string Helped(Posture posture) => posture switch
    {
        Posture.SideLying => "<path d=\"M215 20l-20 70-22 80\" stroke=\"#00509e\" stroke-width=\"7\"/>",
        Posture.Reclined => "<path d=\"M215 30l-12 80-45 70\" stroke=\"#00509e\" stroke-width=\"7\"/>",
        Posture.Standing => "<path d=\"M150 30l12 60 48 55\" stroke=\"#00509e\" stroke-width=\"7\"/>",
        Posture.HalfStanding => "<path d=\"M100 30l8 60 48 40\" stroke=\"#00509e\" stroke-width=\"7\"/>",
        _ => "<path d=\"M60 20l20 80 50 58\" stroke=\"#00509e\" stroke-width=\"7\"/>",
    };
}
