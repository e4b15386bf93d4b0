using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>Solves one approach for persons who differ little from a middle person, one after the other: each starts from poses that were
/// best for the others.</summary>
/// <remarks>From the front there are many valleys, and none of the persons before may have been in the deepest one. So some persons look
/// at all starts, and the others at what those found. That costs about as much as fewer starts for everybody and errs less.</remarks>
/// <param name="approach">Chooses the starts.</param>
/// <param name="middle">Best poses of the middle person.</param>
/// <param name="persons">How many there will be.</param>
internal sealed class DrawSolver(Approach approach, PoseLeaders middle, int persons)
{
    /// <summary>One person in so many also looks at the middle person's second pose and, from the front, at all starts.</summary>
    private const int LooksWide = 2;

    // How many poses are gone down from: of the middle person, of all starts, and of those who looked at all starts.
    private const int Followed = 2;
    private const int FollowedFromStarts = 7;
    private const int FollowedFromOthers = 2;

    // Made in order and read in order, so that the result does not depend on anything but the persons.
    private readonly JointVector[] _found = new JointVector[approach == Approach.Front ? (persons + LooksWide - 1) / LooksWide : 0];
    private JointVector _last = middle.Poses[0];
    private int _turn;
    private int _held;

    /// <summary>Least value for the next person, m.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">This person's limits.</param>
    public double Next(in ReachObjective objective, in JointBox box)
    {
        bool wide = _turn++ % LooksWide == 0;
        int followed = approach == Approach.Behind || wide ? Followed : 1;
        double value = ReachSolver.Follow(in objective, in box, in middle, followed, ref _last);
        if (approach == Approach.Front)
        {
            Follow(in objective, in box, _found.AsSpan(0, _held), FollowedFromOthers, ref value);
            if (wide)
            {
                Follow(in objective, in box, ReachSolver.FrontStarts.AsSpan(), FollowedFromStarts, ref value);
                _found[_held++] = _last;
            }
        }

        return value;
    }

    /// <summary>Goes down from the most promising of several starts.</summary>
    private void Follow(in ReachObjective objective, in JointBox box, ReadOnlySpan<JointVector> starts, int followed, ref double value)
    {
        PoseLeaders likely = default;
        foreach (ref readonly JointVector start in starts)
        {
            JointVector q = box.Clamp(in start);
            likely.Offer(objective.At(in q), in q);
        }

        for (int i = 0; i < Math.Min(likely.Held, followed); i++)
        {
            ReachSolver.Improve(in objective, in box, in likely.Poses[i], ref value, ref _last);
        }
    }
}
