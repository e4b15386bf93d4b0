using System.Collections.Immutable;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>How long an aid must be: the shortest way from the grip centre of the hand to the skin to be cleaned, over all poses that a
/// person can take, in every posture and by every approach.</summary>
public static class ReachAnalysis
{
    private const int MostDraws = 4096;

    /// <summary>Computes the reach of one person.</summary>
    /// <param name="tables">Bodies, joints, postures.</param>
    /// <param name="person">What is known; whatever is not known is drawn from its whole range.</param>
    /// <param name="settings">Draws, seed, and which postures and approaches.</param>
    /// <returns>One need for each posture and approach; same input, same bits.</returns>
    /// <exception cref="ArgumentException">An input is outside its range; see <see cref="ReachPersonCheck"/> for all of them.</exception>
    public static ReachReport Analyse(BodyTables tables, ReachPerson person, ReachSettings settings)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.Draws is < 0 or > MostDraws)
        {
            throw new ArgumentOutOfRangeException(nameof(settings), settings.Draws, $"the number of draws must be between 0 and {MostDraws}");
        }

        ImmutableArray<ReachIssue> issues = ReachPersonCheck.Check(tables, person);
        if (!issues.IsEmpty)
        {
            throw new ArgumentException(issues[0].Sentence, nameof(person));
        }

        var model = new PersonModel(tables, person);
        var landmarks = new LandmarkReach(tables.Model, model);
        if (person.Behind is { } behind && !model.HasJointsBehind)
        {
            model.Behind = landmarks.Behind(behind);
        }

        if (person.Front is { } front)
        {
            model.Front = landmarks.Front(front);
        }

        PersonDraw middle = model.Middle();
        PersonDraw[] draws = Draws(model, settings);
        ImmutableArray<double> hands = [.. draws.Select(d => d.Body.HandBeyond)];
        var needs = ImmutableArray.CreateBuilder<ReachNeed>();
        var solver = new NeedSolver(tables.Model, person.Precautions, draws, hands, settings.WithDetail);
        foreach (Posture posture in settings.Postures.IsDefaultOrEmpty ? Enum.GetValues<Posture>() : [.. settings.Postures])
        {
            foreach (Approach approach in settings.Approaches.IsDefaultOrEmpty ? Enum.GetValues<Approach>() : [.. settings.Approaches])
            {
                needs.Add(solver.Solve(in middle, posture, approach));
            }
        }

        return new ReachReport
        {
            Needs = needs.ToImmutable(),
            Contradictions = Contradictions.Find(tables.Model, person, model, landmarks),
            HandReach = middle.Body.HandBeyond,
            Body = Lengths(middle.Body),
            OutsideSurvey = BodyModel.IsOutsideSurvey(tables, person.Sex, middle.Body.Stature, middle.Body.Mass),
            CapabilityBehind = model.Behind,
            CapabilityFront = model.Front,
            Seed = settings.Seed,
        };
    }

    private static PersonDraw[] Draws(PersonModel model, ReachSettings settings)
    {
        var chance = new Chance(settings.Draws, settings.Seed);
        var draws = new PersonDraw[settings.Draws];
        for (int i = 0; i < draws.Length; i++)
        {
            draws[i] = model.Draw(chance, i);
        }

        return draws;
    }

    private static BodyLengths Lengths(in Body body) => new()
    {
        Stature = body.Stature,
        Mass = body.Mass,
        ShoulderAboveHip = body.ShoulderUp,
        ShoulderFromMidline = body.ShoulderOut,
        UpperArm = body.UpperArm,
        Forearm = body.Forearm,
        PelvisDepth = 2 * body.PelvisForward,
        PelvisBreadth = 2 * body.PelvisSideways,
        AbdomenDepth = 2 * body.TrunkForward,
        ThighThickness = 2 * body.ThighRadius,
    };
}
