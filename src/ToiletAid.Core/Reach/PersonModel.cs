using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Turns answers into plausible persons.</summary>
internal sealed class PersonModel
{
    private readonly BodyTables _tables;
    private readonly ReachPerson _person;
    private readonly JointRanges _norm;
    private readonly double[] _zeros = new double[BodyModel.Deviates];

    public PersonModel(BodyTables tables, ReachPerson person)
    {
        _tables = tables;
        _person = person;
        for (int i = 0; i < JointRanges.Count; i++)
        {
            double adult = tables.Model.AdultRanges[i], older = tables.Model.OlderRanges[i];
            _norm[i] = person.AgeYears switch
            {
                null => (adult + older) / 2,
                { } age when age < tables.Model.OlderFrom => adult,
                _ => older,
            };
        }
    }

    /// <summary>Share of the usual range behind, lower and upper end; set from the landmark answer. Some people have more than is usual.</summary>
    public (double Low, double High) Behind { get; set; } = (0, 1);

    /// <summary>Share of the usual range in front, lower and upper end; set from the landmark answer.</summary>
    public (double Low, double High) Front { get; set; } = (0, 1);

    /// <summary>True when the landmark behind has nothing left to decide.</summary>
    public bool HasJointsBehind =>
        _person.Joints.ContainsKey(JointMotion.ShoulderExtension) && _person.Joints.ContainsKey(JointMotion.ShoulderInternalRotation);

    /// <summary>The middle person.</summary>
    public PersonDraw Middle() => Middle((Behind.Low + Behind.High) / 2, (Front.Low + Front.High) / 2, 0);

    /// <summary>True when any of the joints is measured that take a hand behind the back.</summary>
    public bool HasJointBehind =>
        _person.Joints.ContainsKey(JointMotion.ShoulderExtension) || _person.Joints.ContainsKey(JointMotion.ShoulderInternalRotation);

    /// <summary>The middle person at given capabilities.</summary>
    /// <param name="behind">Share of full range behind, 0 to 1.</param>
    /// <param name="front">Share of full range in front, 0 to 1.</param>
    /// <param name="errors">Standard errors by which every measured angle is better than measured, or worse where this is negative. Except at 0, a
    /// lean that is not known in degrees is then the best or the worst that the answer leaves open.</param>
    public PersonDraw Middle(double behind, double front, double errors)
    {
        PersonDraw draw = default;
        draw.Body = BodyModel.Make(_tables, _person, _zeros);
        for (int i = 0; i < JointRanges.Count; i++)
        {
            // More of an elbow's lag is worse.
            draw.Ranges[i] = Joint((JointMotion)i, behind, 0, (JointMotion)i == JointMotion.ElbowExtensionLag ? -errors : errors);
        }

        draw.FrontFreedom = Math.Min(front, 1);
        double share = (1 + Math.Sign(errors)) / 2.0;
        draw.LeanForward = Lean(true, share, errors);
        draw.LeanSideways = Lean(false, share, errors);
        return draw;
    }

    /// <summary>One plausible person.</summary>
    public PersonDraw Draw(LatinHypercubeDraws hypercube, int index)
    {
        Span<double> z = stackalloc double[BodyModel.Deviates];
        for (int i = 0; i < z.Length; i++)
        {
            z[i] = hypercube.Normal(i, index);
        }

        PersonDraw draw = default;
        draw.Body = BodyModel.Make(_tables, _person, z, hypercube.Normal(LatinHypercubeDraws.Arms, index));

        double behind = Capability(Behind, _person.Behind.HasValue, _person.BehindHow, hypercube.Share(LatinHypercubeDraws.Behind, index));
        double apart = hypercube.Normal(LatinHypercubeDraws.Joints + (int)JointMotion.ShoulderExtension, index);
        double front = Capability(Front, _person.Front.HasValue, _person.FrontHow, hypercube.Share(LatinHypercubeDraws.Front, index));
        for (int i = 0; i < JointRanges.Count; i++)
        {
            double deviate = hypercube.Normal(LatinHypercubeDraws.Joints + i, index);
            draw.Ranges[i] = Joint((JointMotion)i, behind * Apart((JointMotion)i, apart), deviate, deviate);
        }

        draw.FrontFreedom = Math.Min(front, 1);
        draw.LeanForward = Lean(true, hypercube.Share(LatinHypercubeDraws.LeanForward, index), hypercube.Normal(LatinHypercubeDraws.LeanForward, index));
        draw.LeanSideways = Lean(false, hypercube.Share(LatinHypercubeDraws.LeanSideways, index), hypercube.Normal(LatinHypercubeDraws.LeanSideways, index));
        return draw;
    }

    /// <summary>Share of full range: evenly spread between the ends, which the error of the landmark test moves apart.</summary>
    private double Capability((double Low, double High) range, bool answered, HowObtained how, double share)
    {
        double error = answered ? _tables.Model.LandmarkError(how) : 0;
        double low = Math.Max(range.Low - error, 0), high = Math.Min(range.High + error, Math.Max(range.High, 1));
        return low + (share * (high - low));
    }

    /// <summary>Extension and rotation of one shoulder go apart: what one has more at the same landmark the other has less.</summary>
    private double Apart(JointMotion motion, double deviate) => motion switch
    {
        JointMotion.ShoulderExtension => Math.Max(1 + (deviate * _tables.Model.JointApart), _tables.Model.JointLeastShare),
        JointMotion.ShoulderInternalRotation => Math.Max(1 - (deviate * _tables.Model.JointApart), _tables.Model.JointLeastShare),
        _ => 1,
    };

    private double Joint(JointMotion motion, double behind, double betweenPeople, double errors)
    {
        if (_person.Joints.TryGetValue(motion, out ReachInput given))
        {
            return Math.Min(Math.Max(given.Value + (errors * _tables.Model.JointError(motion, given.How)), 0), Math.PI);
        }

        // The landmark behind tells how much of these two there is; how people differ is in it.
        return motion is JointMotion.ShoulderExtension or JointMotion.ShoulderInternalRotation
            ? behind * _norm[motion]
            : _norm[motion] * Math.Max(1 + (betweenPeople * _tables.Model.JointBetweenPeople), _tables.Model.JointLeastShare);
    }

    private double Lean(bool forward, double share, double deviate)
    {
        ReachInput? given = forward ? _person.LeanForward : _person.LeanSideways;
        if (given is { } known)
        {
            return Math.Max(known.Value + (deviate * _tables.Model.JointError(JointMotion.TrunkFlexion, known.How)), 0);
        }

        ReachNumbers numbers = _tables.Model;
        (Sourced no, Sourced yes) = forward ? (numbers.LeansNotForward, numbers.LeansForward) : (numbers.LeansNotSideways, numbers.LeansSideways);
        bool? leans = _person.Lean switch
        {
            null => null,
            Core.Person.Lean.Both => true,
            Core.Person.Lean.Forward => forward,
            Core.Person.Lean.ToASide => !forward,
            _ => false,
        };
        return leans switch
        {
            null => no.Low + (share * (yes.High - no.Low)),
            true => Between(yes, share),
            false => Between(no, share),
        };
    }

    /// <summary>Evenly spread below and above the value, which is the median.</summary>
    private static double Between(Sourced s, double share) =>
        share < 0.5 ? s.Low + (2 * share * (s.Value - s.Low)) : s.Value + (((2 * share) - 1) * (s.High - s.Value));
}
