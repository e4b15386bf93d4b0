using System.Runtime.InteropServices;
using ToiletAid.Core.Person;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>Solves one way of reaching for persons who differ little from a middle person, four at a time.</summary>
/// <remarks>There are many valleys, and a person's deepest one need not be the middle person's. So each person looks at all poses that were good for
/// the middle person and, from the front, at all starts. From the likely ones a few steps show how deep the valley is; only the deepest are gone down
/// to the end. No person looks at another.</remarks>
internal sealed class DrawSolver
{
    // How many poses are gone down from: of the middle person whatever they look like, and of all that are looked at. From the front there are
    // more valleys than from elsewhere.
    private const int FromMiddle = 1;
    private const int FromMiddleInFront = 2;
    private const int Likely = 2;
    private const int LikelyInFront = 4;

    /// <summary>Steps after which it shows whether a pose is promising.</summary>
    private const int FirstRounds = 10;

    /// <summary>How far above the best a pose may be after the first steps and still be gone down from, m.</summary>
    private const double Promising = 5e-3;

    /// <summary>How many times the expected gain a step may lose and still be taken.</summary>
    private const float Risk = 2;

    private readonly DescentNumbers<float>[] _persons;
    private readonly FourObjective _objective;
    private readonly FourMinimiser _minimiser;
    private readonly PoseLeaders[] _likely;
    private readonly List<Descent> _descents = [];
    private readonly JointVector[] _best;
    private readonly double[] _values;
    private readonly Approach _approach;

    /// <param name="scene">One of the persons' scenes.</param>
    /// <param name="persons">The persons.</param>
    /// <param name="approach">Chooses the starts.</param>
    public DrawSolver(in Scene scene, DescentNumbers<float>[] persons, Approach approach)
    {
        _persons = persons;
        _approach = approach;
        _objective = new FourObjective(in scene);
        _minimiser = new FourMinimiser(_objective, persons, Risk);
        _likely = new PoseLeaders[Four.Count];
        _best = new JointVector[persons.Length];
        _values = new double[persons.Length];
    }

    /// <summary>Least value for each person, m.</summary>
    /// <param name="middle">Best poses of the middle person.</param>
    public ReadOnlySpan<double> Solve(in PoseLeaders middle)
    {
        Array.Fill(_values, double.PositiveInfinity);
        (int fromMiddle, int likely) = _approach == Approach.Front ? (FromMiddleInFront, LikelyInFront) : (FromMiddle, Likely);
        ReadOnlySpan<JointVector> known = middle.Best(middle.Held), always = middle.Best(fromMiddle);
        ReadOnlySpan<JointVector> poses = [.. ReachSolver.Starts(_approach), .. known[always.Length..]];
        for (int first = 0; first < _persons.Length; first += Four.Count)
        {
            int count = Math.Min(Four.Count, _persons.Length - first);
            Look(first, count, poses, likely);
            for (int person = first; person < first + count; person++)
            {
                foreach (ref readonly JointVector pose in always)
                {
                    _descents.Add(new Descent { Person = person, Pose = pose });
                }
            }
        }

        Descend();
        return _values;
    }

    /// <summary>Adds descents of four persons from the most promising of several poses.</summary>
    private void Look(int first, int count, ReadOnlySpan<JointVector> poses, int most)
    {
        for (int place = 0; place < count; place++)
        {
            _objective.Seat(place, in _persons[first + place]);
            _likely[place] = default;
        }

        foreach (ref readonly JointVector pose in poses)
        {
            JointsOf<Four> q = _minimiser.Clamp(in pose);
            Four value = _minimiser.At(in q);
            for (int place = 0; place < count; place++)
            {
                JointVector mine = default;
                for (int i = 0; i < JointVector.Count; i++)
                {
                    mine[i] = q[i][place];
                }

                _likely[place].Offer(value[place], in mine);
            }
        }

        for (int place = 0; place < count; place++)
        {
            for (int i = 0; i < Math.Min(_likely[place].Held, most); i++)
            {
                _descents.Add(new Descent { Person = first + place, Pose = _likely[place].Poses[i] });
            }
        }
    }

    /// <summary>Makes the descents that were added, and those that look promising to the end.</summary>
    private void Descend()
    {
        Span<Descent> all = CollectionsMarshal.AsSpan(_descents);
        _minimiser.Descend(all, FirstRounds, ReachSolver.RoughTolerance);
        Keep(all);
        int kept = 0;
        foreach (ref readonly Descent descent in all)
        {
            int person = descent.Person;
            bool best = descent.Value == _values[person];
            if (best || (descent.Value < _values[person] + Promising && !PoseLeaders.IsSame(in descent.Pose, in _best[person])))
            {
                all[kept++] = descent;
            }
        }

        _minimiser.Descend(all[..kept], ReachSolver.FineRounds, ReachSolver.DrawTolerance);
        Keep(all[..kept]);
        _descents.Clear();
    }

    private void Keep(ReadOnlySpan<Descent> descents)
    {
        foreach (ref readonly Descent descent in descents)
        {
            if (descent.Value < _values[descent.Person])
            {
                (_values[descent.Person], _best[descent.Person]) = (descent.Value, descent.Pose);
            }
        }
    }
}
