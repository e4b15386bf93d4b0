using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>Goes down from many poses of many persons, four at a time: as <see cref="BoxMinimiser"/> does from one, with less care for what is
/// far below a millimetre.</summary>
/// <remarks>Each of the four places goes its own way; where one is at its end the next descent takes the place.</remarks>
/// <param name="objective">What to make small.</param>
/// <param name="persons">Numbers of the persons.</param>
/// <param name="risk">How many times the expected gain a step may lose and still be taken: it met a solid that the model did not know of, and from
/// there the model knows it. 0 takes more steps and misses fewer valleys.</param>
internal sealed class FourMinimiser(FourObjective objective, DescentNumbers<float>[] persons, float risk)
{
    private const int N = JointVector.Count;
    private const int MostAttempts = 8;

    // For a stature of one; how damping follows the gain is as in the other minimiser.
    private const float FirstDamping = 0.2f;
    private const float LeastDamping = (float)BoxMinimiser.LeastDamping;
    private const float NoGain = 1e-7f;

    /// <summary>A descent ends where the model expects to gain less than this share of what two steps must gain.</summary>
    private const float Enough = 0.1f;

    private JointsOf<Four> _q;
    private JointsOf<Four> _next;
    private JointsOf<Four> _slope;
    private FourCurvature _curvature;
    private Four _value;
    private Four _bestValue;
    private JointsOf<Four> _best;
    private Four _damping;
    private Four _expected;

    // Of each place: which descent, whether its start has still to be tried, and how many rounds, weak rounds and attempts it had.
    private PlacesOf<int> _which;
    private PlacesOf<bool> _isNew;
    private PlacesOf<int> _rounds;
    private PlacesOf<int> _weak;
    private PlacesOf<int> _attempts;

    /// <summary>For one person, with no risk.</summary>
    /// <param name="objective">What to make small.</param>
    /// <param name="box">Limits.</param>
    public static FourMinimiser Of(in ReachObjective objective, in JointBox box) => new(new FourObjective(in objective.Scene), [objective.Numbers(in box)], risk: 0);

    /// <summary>Makes all descents.</summary>
    /// <param name="descents">Starts; ends on return.</param>
    /// <param name="rounds">Largest number of steps of each.</param>
    /// <param name="tolerance">Ends when two steps in a row gain less than this share of the stature.</param>
    public void Descend(Span<Descent> descents, int rounds, double tolerance)
    {
        int next = 0, busy = 0;
        for (int place = 0; place < Four.Count; place++)
        {
            _which[place] = -1;
            if (next < descents.Length)
            {
                Start(place, next, in descents[next]);
                next++;
                busy++;
            }
        }

        while (busy > 0)
        {
            Move(out Four gain, out Four accepted);
            for (int place = 0; place < Four.Count; place++)
            {
                int which = _which[place];
                if (which < 0 || !IsDone(place, gain[place], accepted.AsInt32()[place] != 0, rounds, tolerance))
                {
                    continue;
                }

                End(place, ref descents[which]);
                _which[place] = -1;
                if (next < descents.Length)
                {
                    Start(place, next, in descents[next]);
                    next++;
                }
                else
                {
                    busy--;
                }
            }
        }
    }

    /// <summary>Value of a pose of each person in the places.</summary>
    public Four At(in JointsOf<Four> q)
    {
        objective.Try(in q, withSlopes: false);
        return objective.Value;
    }

    /// <summary>A pose within the limits of each person in the places.</summary>
    public JointsOf<Four> Clamp(in JointVector pose)
    {
        Unsafe.SkipInit(out JointsOf<Four> q);
        for (int i = 0; i < N; i++)
        {
            q[i] = FourMath.Clamp(FourMath.Of((float)pose[i]), objective.Persons.Low[i], objective.Persons.High[i]);
        }

        return q;
    }

    private void Start(int place, int which, in Descent descent)
    {
        ref readonly DescentNumbers<float> person = ref persons[descent.Person];
        objective.Seat(place, in person);
        (_which[place], _isNew[place], _rounds[place], _weak[place], _attempts[place]) = (which, true, 0, 0, 0);
        for (int i = 0; i < N; i++)
        {
            float q = Math.Min(Math.Max((float)descent.Pose[i], person.Low[i]), person.High[i]);
            _q[i] = _q[i].WithElement(place, q);
        }

        _damping = _damping.WithElement(place, FirstDamping * person.Unit);
        _value = _value.WithElement(place, float.PositiveInfinity);
        _bestValue = _bestValue.WithElement(place, float.PositiveInfinity);
    }

    private void End(int place, ref Descent descent)
    {
        for (int i = 0; i < N; i++)
        {
            descent.Pose[i] = _best[i][place];
        }

        descent.Value = _bestValue[place];
    }

    private bool IsDone(int place, float gain, bool accepted, int rounds, double tolerance)
    {
        if (_isNew[place])
        {
            _isNew[place] = false;
            return false;
        }

        float unit = objective.Persons.Unit[place], expected = _expected[place];
        if (expected <= 0 && -expected < Enough * tolerance * unit)
        {
            return true;
        }

        if (!accepted)
        {
            return ++_attempts[place] >= MostAttempts;
        }

        _attempts[place] = 0;
        _rounds[place]++;
        _weak[place] = gain < tolerance * unit ? _weak[place] + 1 : 0;
        return _rounds[place] >= rounds || _weak[place] >= 2;
    }

    /// <summary>One attempt in each place; a start is tried as it is.</summary>
    private void Move(out Four gain, out Four accepted)
    {
        Four fresh = Vector128.Equals(_value, FourMath.Of(float.PositiveInfinity));
        _expected = (~fresh).AsInt32() == Vector128<int>.Zero ? Four.Zero : Step();
        for (int i = 0; i < N; i++)
        {
            _next[i] = FourMath.Select(fresh, _q[i], _next[i]);
        }

        objective.Try(in _next, withSlopes: true);
        Four unit = objective.Persons.Unit;
        gain = FourMath.Select(fresh, FourMath.One, _value - objective.Value);
        Four falls = Vector128.LessThan(_expected, -NoGain * unit);
        accepted = (Vector128.GreaterThan(gain, risk * _expected) & falls) | fresh;
        Four share = gain / Vector128.MaxNative(-_expected, NoGain * unit);
        Four factor = FourMath.Select(
            Vector128.GreaterThan(share, FourMath.Of((float)BoxMinimiser.GoodShare)),
            FourMath.Of((float)BoxMinimiser.Relaxing),
            FourMath.Select(Vector128.GreaterThan(share, FourMath.Of((float)BoxMinimiser.PoorShare)), FourMath.One, FourMath.Of((float)BoxMinimiser.Tightening)));
        factor = FourMath.Select(falls, factor, FourMath.Of((float)BoxMinimiser.TighteningAtLimits));
        factor = FourMath.Select(fresh, FourMath.One, factor);
        _damping = Vector128.MaxNative(_damping * factor, LeastDamping * unit);
        Take(accepted);
        Four better = Vector128.LessThan(objective.Value, _bestValue);
        _bestValue = FourMath.Select(better, objective.Value, _bestValue);
        for (int i = 0; i < N; i++)
        {
            _best[i] = FourMath.Select(better, _next[i], _best[i]);
        }
    }

    private void Take(Four accepted)
    {
        _value = FourMath.Select(accepted, objective.Value, _value);
        for (int i = 0; i < N; i++)
        {
            _q[i] = FourMath.Select(accepted, _next[i], _q[i]);
            _slope[i] = FourMath.Select(accepted, objective.Slope[i], _slope[i]);
        }

        _curvature.Take(accepted, in objective.Curvature);
    }

    /// <summary>Sets the next poses by damped steps, cut off at the limits, and gives the change that the model expects of them.</summary>
    private Four Step()
    {
        ref readonly DescentNumbers<Four> n = ref objective.Persons;
        Unsafe.SkipInit(out JointsOf<Four> free);
        Unsafe.SkipInit(out JointsOf<Four> step);
        for (int i = 0; i < N; i++)
        {
            Four held = (Vector128.LessThanOrEqual(_q[i], n.Low[i]) & Vector128.GreaterThan(_slope[i], Four.Zero))
                | (Vector128.GreaterThanOrEqual(_q[i], n.High[i]) & Vector128.LessThan(_slope[i], Four.Zero));
            free[i] = ~held;
            step[i] = -_slope[i];
        }

        _curvature.Solve(in free, _damping, ref step);
        if (Hold(ref free, in step, out JointsOf<Four> moved))
        {
            // Where the step would leave the limits it goes to them, and the others are solved again around that.
            _curvature.Times(in moved, out step);
            for (int i = 0; i < N; i++)
            {
                step[i] = -_slope[i] - step[i];
            }

            _curvature.Solve(in free, _damping, ref step);
            for (int i = 0; i < N; i++)
            {
                step[i] += moved[i];
            }
        }

        return Expected(ref step);
    }

    /// <summary>Takes joints that a step would carry out of their limits out of those that are free.</summary>
    /// <param name="free">Bits set where a joint moves.</param>
    /// <param name="step">The step.</param>
    /// <param name="moved">How far those go that were taken out; 0 elsewhere.</param>
    /// <returns>True when there are any.</returns>
    private bool Hold(ref JointsOf<Four> free, in JointsOf<Four> step, out JointsOf<Four> moved)
    {
        ref readonly DescentNumbers<Four> n = ref objective.Persons;
        Unsafe.SkipInit(out moved);
        Four any = Four.Zero;
        for (int i = 0; i < N; i++)
        {
            Four there = _q[i] + step[i], inside = FourMath.Clamp(there, n.Low[i], n.High[i]);
            Four left = Vector128.AndNot(free[i], Vector128.Equals(there, inside));
            moved[i] = (inside - _q[i]) & left;
            free[i] = Vector128.AndNot(free[i], left);
            any |= left;
        }

        return !Vector128.EqualsAll(any.AsInt32(), Vector128<int>.Zero);
    }

    private Four Expected(ref JointsOf<Four> step)
    {
        ref readonly DescentNumbers<Four> n = ref objective.Persons;
        for (int i = 0; i < N; i++)
        {
            _next[i] = FourMath.Clamp(_q[i] + step[i], n.Low[i], n.High[i]);
            step[i] = _next[i] - _q[i];
        }

        _curvature.Times(in step, out JointsOf<Four> bent);
        Four expected = Four.Zero;
        for (int i = 0; i < N; i++)
        {
            expected += step[i] * (_slope[i] + (0.5f * bent[i]));
        }

        return expected;
    }

    /// <summary>Something for each place.</summary>
    [InlineArray(4)]
    private struct PlacesOf<T>
    {
        private T _first;
    }
}
