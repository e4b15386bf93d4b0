#pragma warning disable CS1591 // the data say what each of them asks
using ToiletAid.Core.Ids;

namespace ToiletAid.Core.Person;

/// <summary>Questions that code names, held against the data when these are loaded (<c>NamedIds</c>).</summary>
public static class QuestionIds
{
    private static readonly IdTable<(QuestionId Question, IEnumerable<string>? Options)> Named = new();

    public static readonly QuestionId RedFlags = Any("red-flags");
    public static readonly QuestionId Precautions = Any("precautions");
    public static readonly QuestionId PrecautionSide = Any("precaution-side");
    public static readonly QuestionId Conditions = Any("conditions");
    public static readonly QuestionId Age = Any("age");
    public static readonly ChoiceId<Sex> Sex = Choice<Sex>("sex");
    public static readonly QuestionId Stature = Any("stature");
    public static readonly QuestionId Mass = Any("mass");
    public static readonly ChoiceId<WorkingHand> Hand = Choice<WorkingHand>("hand");
    public static readonly QuestionId HandsFree = Any("hands-free");
    public static readonly QuestionId Place = Any("place");
    public static readonly QuestionId Carry = Any("carry");
    public static readonly ChoiceId<Posture> Posture = Choice<Posture>("posture");
    public static readonly ChoiceId<LandmarkBehind> ReachBehind = Choice<LandmarkBehind>("reach-behind");
    public static readonly ChoiceId<LandmarkFront> ReachFront = Choice<LandmarkFront>("reach-front");
    public static readonly ChoiceId<Lean> Lean = Choice<Lean>("lean");
    public static readonly QuestionId Joints = Any("joints");
    public static readonly ChoiceId<Grasp> Grasp = Choice<Grasp>("grasp");
    public static readonly QuestionId Grip = Any("grip");
    public static readonly QuestionId Pinch = Any("pinch");
    public static readonly ChoiceId<Dexterity> Dexterity = Choice<Dexterity>("dexterity");
    public static readonly ChoiceId<Tremor> Tremor = Choice<Tremor>("tremor");
    public static readonly QuestionId Feeling = Any("feeling");
    public static readonly QuestionId FeelingSince = Any("feeling-since");
    public static readonly QuestionId Skin = Any("skin");
    public static readonly QuestionId Bleeding = Any("bleeding");
    public static readonly QuestionId SoreWhenWiped = Any("sore-when-wiped");
    public static readonly QuestionId Stool = Any("stool");
    public static readonly QuestionId Cleans = Any("cleans");
    public static readonly QuestionId Deep = Any("deep");
    public static readonly QuestionId Also = Any("also");
    public static readonly QuestionId Infection = Any("infection");
    public static readonly QuestionId Steps = Any("steps");
    public static readonly QuestionId Sight = Any("sight");
    public static readonly QuestionId Water = Any("water");
    public static readonly QuestionId Socket = Any("socket");
    public static readonly QuestionId Fixtures = Any("fixtures");
    public static readonly QuestionId Drain = Any("drain");
    public static readonly QuestionId Helper = Any("helper");
    public static readonly QuestionId PaperTouch = Any("paper-touch");
    public static readonly QuestionId Method = Any("method");
    public static readonly QuestionId Look = Any("look");
    public static readonly QuestionId Noise = Any("noise");
    public static readonly QuestionId Budget = Any("budget");
    public static readonly QuestionId Priorities = Any("priorities");

    /// <summary>All of them, with all options where these are the members of an enum.</summary>
    internal static IReadOnlyList<(QuestionId Question, IEnumerable<string>? Options)> All => Named.All;

    private static QuestionId Any(string id) => Named.Add((new(id), null)).Question;

    private static ChoiceId<T> Choice<T>(string id)
        where T : struct, Enum => new(Named.Add((new(id), Words.All<T>())).Question.Text);
}
