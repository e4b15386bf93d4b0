using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>The landmark tests in the model: how far the hand is from a landmark, and how much of the full joint range it takes.</summary>
/// <remarks>Hand behind the back is tested upright, standing; hand between the thighs seated, leaning as the person can, with the middle of what the
/// test behind leaves open: the range behind must stand in the model before the one in front is asked for.</remarks>
internal sealed class LandmarkReach(ReachNumbers numbers, PersonModel model)
{
    /// <summary>Capabilities that differ by no more than this tell nothing apart.</summary>
    private const double NearlySame = 1e-3;

    /// <summary>A hand that reaches this much farther than it must is near enough, m: far less than the error of the test itself.</summary>
    private const double NearlyThere = 5e-4;

    /// <summary>Each step takes at least this share off the range, so that it ends.</summary>
    private const double LeastShare = 0.05;

    /// <summary>How many poses of the most able person, and of the stiffest, are gone down from.</summary>
    private const int EachJoins = 4;

    /// <summary>How many that are at most: all.</summary>
    private const int Followed = 2 * EachJoins;

    /// <summary>What the hand reaches, m, and what it has to do, at a capability.</summary>
    private delegate double Attempt(double capability, out ReachObjective objective, out JointBox box);

    /// <summary>Range of capability that reproduces a landmark behind.</summary>
    public (double Low, double High) Behind(LandmarkBehind landmark)
    {
        double low = 0;
        for (LandmarkBehind passed = LandmarkBehind.OuterButtock; passed <= landmark; passed++)
        {
            low = Math.Max(low, Least(passed));
        }

        return landmark == LandmarkBehind.WaistOrAbove ? AsUsual(low) : (low, Math.Max(low, Least(landmark + 1)));
    }

    /// <summary>Range of capability that reproduces a landmark in front.</summary>
    public (double Low, double High) Front(LandmarkFront landmark)
    {
        double low = landmark == LandmarkFront.NotPastMidThigh ? 0 : Least(LandmarkFront.Groin);
        low = landmark == LandmarkFront.PastTheGroin ? Math.Max(low, Least(landmark)) : low;
        return landmark == LandmarkFront.PastTheGroin ? AsUsual(low) : (low, Math.Max(low, Least(landmark + 1)));
    }

    /// <summary>Range of capability of those who pass the highest landmark: in them the test found nothing wrong, so they have what is usual for
    /// their age, some less and as many more.</summary>
    private (double Low, double High) AsUsual(double low) => (Math.Max(low, 1 - numbers.Landmarks.UsualSpread), 1 + numbers.Landmarks.UsualSpread);

    /// <summary>What the hand lacks to a landmark behind, m; 0 or below when it gets there.</summary>
    public double MissingBehind(in PersonDraw person, LandmarkBehind landmark)
    {
        Set(in person, landmark, out ReachObjective objective, out JointBox box);
        return ReachSolver.Solve(in objective, in box, Approach.Behind, out JointVector _) - Hand(in person);
    }

    /// <summary>What the hand lacks to a landmark in front, m; 0 or below when it gets there.</summary>
    public double MissingFront(in PersonDraw person, LandmarkFront landmark)
    {
        Set(in person, landmark, out ReachObjective objective, out JointBox box);
        return ReachSolver.Solve(in objective, in box, Approach.Front, out JointVector _) - Hand(in person);
    }

    private double Least(LandmarkBehind landmark) => Least(Approach.Behind, (double capability, out ReachObjective objective, out JointBox box) =>
    {
        PersonDraw person = model.Middle(capability, 1, 0);
        Set(in person, landmark, out objective, out box);
        return Hand(in person);
    });

    private double Least(LandmarkFront landmark) => Least(Approach.Front, (double capability, out ReachObjective objective, out JointBox box) =>
    {
        PersonDraw person = model.Middle((model.Behind.Low + model.Behind.High) / 2, capability, 0);
        Set(in person, landmark, out objective, out box);
        return Hand(in person);
    });

    /// <summary>Least capability with which the hand gets there, by false position as in the Illinois method (from memory): what the hand
    /// lacks falls smoothly with capability, so that a few straight lines find where it ends.</summary>
    private static double Least(Approach approach, Attempt attempt)
    {
        double hand = attempt(1, out ReachObjective objective, out JointBox box);
        double atHigh = ReachSolver.Solve(in objective, in box, approach, out PoseLeaders leaders) - hand;
        JointVector pose = leaders.Poses[0];
        if (atHigh > -NearlyThere)
        {
            return 1;
        }

        // The stiffest person may come by another way than the most able, so for both all starts are looked at.
        double low = 0, high = 1;
        hand = attempt(low, out objective, out box);
        double atLow = ReachSolver.Solve(in objective, in box, approach, out PoseLeaders stiffest) - hand;
        if (atLow <= 0)
        {
            return low;
        }

        leaders.Join(in stiffest, EachJoins);

        bool? roseLast = null;
        while (high - low > NearlySame)
        {
            double share = Math.Clamp(atLow / (atLow - atHigh), LeastShare, 1 - LeastShare);
            double middle = low + (share * (high - low));
            JointVector from = pose;
            double lacking = Lacking(middle, attempt, in leaders, ref from);
            bool rises = lacking > 0;
            if (rises)
            {
                (low, atLow) = (middle, lacking);
            }
            else
            {
                (high, atHigh, pose) = (middle, lacking, from);
                if (lacking > -NearlyThere)
                {
                    break;
                }
            }

            // An end that stays twice running counts half, or the other would creep.
            if (rises == roseLast)
            {
                (atLow, atHigh) = rises ? (atLow, atHigh / 2) : (atLow / 2, atHigh);
            }

            roseLast = rises;
        }

        return high;
    }

    private static double Lacking(double capability, Attempt attempt, in PoseLeaders leaders, ref JointVector pose)
    {
        double hand = attempt(capability, out ReachObjective objective, out JointBox box);
        return ReachSolver.Follow(in objective, in box, in leaders, Followed, ref pose) - hand;
    }

    private double Hand(in PersonDraw person) => person.Body.HandBeyond + numbers.Landmarks.NearEnough;

    private void Set(in PersonDraw person, LandmarkBehind landmark, out ReachObjective objective, out JointBox box)
    {
        PostureNumbers standing = numbers.Postures[(int)Posture.Standing];
        _ = PostureSetting.Prepare(numbers, standing, Approach.Behind, in person, [], out box, out Scene scene);
        for (int i = JointVector.Lean; i <= JointVector.Twist; i++)
        {
            box.Low[i] = 0;
            box.High[i] = 0;
        }

        Free(ref scene, in person);
        Body body = person.Body;
        LandmarkNumbers at = numbers.Landmarks;
        (scene.Target, scene.TargetOffSkin) = landmark switch
        {
            LandmarkBehind.OuterButtock => (OnPelvis(in body, at.OuterButtockSideways, at.OuterButtockAboveMiddle), false),
            LandmarkBehind.TheCleft => (OnPelvis(in body, 0, at.CleftAboveMiddle), false),
            LandmarkBehind.Tailbone => (OnPelvis(in body, 0, at.TailboneAboveMiddle), false),
            _ => (new Vector3D(body.TrunkCentre - body.TrunkForward, 0, body.WaistUp), true),
        };
        objective = new ReachObjective(in body, in scene);
    }

    private void Set(in PersonDraw person, LandmarkFront landmark, out ReachObjective objective, out JointBox box)
    {
        PostureNumbers seated = numbers.Postures[(int)Posture.Seated];
        _ = PostureSetting.Prepare(numbers, seated, Approach.Front, in person, [], out box, out Scene scene);
        Free(ref scene, in person);
        Body body = person.Body;
        LandmarkNumbers at = numbers.Landmarks;
        (scene.Target, scene.TargetOffSkin) = landmark switch
        {
            LandmarkFront.Groin => (new Vector3D(at.GroinBeforeHip * body.PelvisForward, 0, -at.GroinBelowHip * body.PelvisUp), true),
            _ => (new Vector3D(body.PelvisForward * Math.Sin(at.PastGroinBeforeLowest), 0, -body.PelvisUp * Math.Cos(at.PastGroinBeforeLowest)), false),
        };
        objective = new ReachObjective(in body, in scene);
    }

    /// <summary>A landmark may be come at from anywhere and with any side of the hand, but fingers point forward from the forearm, as far aside as the
    /// wrist bends.</summary>
    private static void Free(ref Scene scene, in PersonDraw person)
    {
        (scene.WedgeX, scene.WedgeY, scene.WedgeSine, scene.WedgeCosine) = (0, 0, 0, 0);
        double wrist = Math.Max(person.Ranges[JointMotion.WristFlexion], person.Ranges[JointMotion.WristExtension]);
        (scene.Pronation, scene.Supination, scene.Deviation) = (Math.PI, Math.PI, wrist - (Math.PI / 2));
    }

    private static Vector3D OnPelvis(in Body body, double sideways, double up)
    {
        (double ss, double cs) = Math.SinCos(sideways);
        (double su, double cu) = Math.SinCos(up);
        return new Vector3D(-body.PelvisForward * cs * cu, body.PelvisSideways * ss * cu, body.PelvisUp * su);
    }
}
