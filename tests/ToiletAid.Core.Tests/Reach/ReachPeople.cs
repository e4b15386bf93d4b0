using System.Collections.Immutable;
using CsCheck;
using ToiletAid.App.Files;
using ToiletAid.Core.Person;
using ToiletAid.Core.Randomness;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

/// <summary>The built-in tables and random people, composed once for all reach tests.</summary>
internal static class ReachPeople
{
    public const double Degree = Math.PI / 180;

    public static readonly BodyTables Tables = BodyTablesReader.ReadBuiltIn();

    /// <summary>Stature 172 cm, body mass index 24, 40 years: the person of the sanity band.</summary>
    public static readonly ReachPerson Reference = new()
    {
        Sex = Sex.Male,
        AgeYears = 40,
        Stature = new ReachInput(1.72),
        Mass = new ReachInput(24 * 1.72 * 1.72),
        Lean = Lean.Both,
    };

    public static readonly Gen<(Posture Posture, Approach Approach)> Ways =
        Gen.Select(Gen.Enum<Posture>(), Gen.Enum<Approach>(), (p, a) => (p, a));

    /// <summary>A body, joints from a fifth of normal up to normal, and any lean.</summary>
    public static readonly Gen<PersonDraw> Draws =
        Gen.Select(
            Gen.Select(Gen.Double[1.45, 1.95], Gen.Double[17, 42], Gen.Double[20, 95], Gen.Bool),
            Gen.Double[0, 1],
            Gen.Double[0.2, 1],
            Gen.Double[0.2, 1.6].Array[JointRanges.Count],
            Gen.Select(Gen.Double[0, 75 * Degree], Gen.Double[0, 35 * Degree]),
            (body, behind, front, shares, leans) => Make(body, behind, front, shares, leans));

    /// <summary>What a person may answer.</summary>
    public static readonly Gen<ReachPerson> Persons =
        Gen.Select(
            Gen.Select(Gen.Double[1.45, 1.95], Gen.Double[17, 42], Gen.Double[20, 95], Gen.Enum<Sex>()),
            Gen.Enum<LandmarkBehind>(),
            Gen.Enum<LandmarkFront>(),
            Gen.Enum<Lean>(),
            (body, behind, front, lean) => new ReachPerson
            {
                Sex = body.Item4,
                AgeYears = body.Item3,
                Stature = new ReachInput(body.Item1),
                Mass = new ReachInput(body.Item2 * body.Item1 * body.Item1),
                Behind = behind,
                Front = front,
                Lean = lean,
            });

    /// <summary>The same random things in every run, so that a law that fails for one in many fails today or never.</summary>
    public static IEnumerable<T> Fixed<T>(Gen<T> gen, int count)
    {
        var pcg = new PCG(1, 20260101);
        for (int i = 0; i < count; i++)
        {
            yield return gen.Generate(pcg, null, out _);
        }
    }

    public static ReachNumbers Numbers => Tables.Model;

    public static ImmutableDictionary<JointMotion, ReachInput> Joints(params (JointMotion Motion, double Degrees)[] joints) =>
        joints.ToImmutableDictionary(j => j.Motion, j => new ReachInput(j.Degrees * Degree));

    /// <summary>Least way of one person, m without stroke; +infinity where it is forbidden or there is no way.</summary>
    public static double Way(in PersonDraw person, Posture posture, Approach approach)
    {
        if (PostureSetting.Prepare(Numbers, Numbers.Postures[(int)posture], approach, in person, [], out JointBox box, out Scene scene) is not null)
        {
            return double.PositiveInfinity;
        }

        var objective = new ReachObjective(in person.Body, in scene);
        double way = ReachSolver.Solve(in objective, in box, approach, out JointVector _);
        return way <= person.Body.LongestWay ? way : double.PositiveInfinity;
    }

    /// <summary>A random point of a box.</summary>
    public static JointVector Somewhere(in JointBox box, ref RandomDraws random)
    {
        JointVector share = default;
        for (int i = 0; i < JointVector.Count; i++)
        {
            share[i] = random.NextUniform();
        }

        return box.At(in share);
    }

    private static PersonDraw Make(
        (double Stature, double Index, double Age, bool Female) body,
        double behind,
        double front,
        double[] shares,
        (double Forward, double Sideways) leans)
    {
        var person = new ReachPerson
        {
            Sex = body.Female ? Sex.Female : Sex.Male,
            AgeYears = body.Age,
            Stature = new ReachInput(body.Stature),
            Mass = new ReachInput(body.Index * body.Stature * body.Stature),
        };
        PersonDraw draw = new PersonModel(Tables, person).Middle(behind, front, 0);
        for (int i = 0; i < JointRanges.Count; i++)
        {
            bool scaled = (JointMotion)i is JointMotion.ShoulderExtension or JointMotion.ShoulderInternalRotation or JointMotion.ElbowExtensionLag;
            draw.Ranges[i] *= scaled ? 1 : Math.Min(1, shares[i]);
        }

        (draw.LeanForward, draw.LeanSideways) = leans;
        return draw;
    }
}
