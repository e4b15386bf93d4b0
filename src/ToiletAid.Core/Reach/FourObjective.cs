using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>What <see cref="ReachObjective"/> is for one person, for four at once, each in its own place: value, slope and curvature of a pose.</summary>
/// <remarks>Persons in one way of reaching have the same kinds of solids around them, so that the four take the same steps; where a solid
/// stands in the way of none of the four it is passed over. No place looks at another, so that a result does not depend on who sits beside.</remarks>
internal sealed partial class FourObjective
{
    private const int N = JointVector.Count;

    private readonly float _pelvisLean;
    private readonly float _pelvisBend;
    private readonly bool _hasSeat;
    private readonly Mattress _mattress;
    private readonly bool _isStraight;
    private readonly bool _isOffSkin;
    private readonly Four _wedgeX;
    private readonly Four _wedgeY;
    private readonly Four _wedgeSine;
    private readonly Four _wedgeCosine;

    private DescentNumbers<Four> _n;
    private FourArm _arm;
    private FourWay _way;
    private FourPoints _grip;
    private JointsOf<FourPoints> _axes;
    private JointsOf<FourPoints> _gripMoves;
    private JointsOf<FourPoints> _elbowMoves;
    private bool _withSlopes;

    // Sum of the squares of all depths, its slope, and the sum of the products of their slopes.
    private Four _pressed;
    private JointsOf<Four> _pressedSlope;
    private FourCurvature _pressedPairs;

    /// <summary>Value of each pose, m.</summary>
    public Four Value;

    /// <summary>Slope of the value with each joint, m/rad.</summary>
    public JointsOf<Four> Slope;

    /// <summary>Curvature (the Gauss-Newton part of the Hessian), m/rad²: lower triangle, row by row.</summary>
    public FourCurvature Curvature;

    /// <param name="scene">One of the persons' scenes, for what all have alike.</param>
    public FourObjective(in Scene scene)
    {
        (_pelvisLean, _pelvisBend) = ((float)scene.PelvisLean, (float)scene.PelvisBend);
        (_hasSeat, _mattress) = (scene.HasSeat, scene.Mattress);
        (_isStraight, _isOffSkin) = (scene.Straight && !scene.TargetOffSkin, scene.TargetOffSkin);
        (_wedgeX, _wedgeY) = (FourMath.Of((float)scene.WedgeX), FourMath.Of((float)scene.WedgeY));
        (_wedgeSine, _wedgeCosine) = (FourMath.Of((float)scene.WedgeSine), FourMath.Of((float)scene.WedgeCosine));
    }

    /// <summary>The persons in their places.</summary>
    public ref readonly DescentNumbers<Four> Persons => ref _n;

    /// <summary>Puts a person in one place.</summary>
    /// <param name="place">0 to 3.</param>
    /// <param name="person">The person.</param>
    public void Seat(int place, in DescentNumbers<float> person)
    {
        ref float to = ref Unsafe.Add(ref Unsafe.As<DescentNumbers<Four>, float>(ref _n), place);
        ref float from = ref Unsafe.As<DescentNumbers<float>, float>(ref Unsafe.AsRef(in person));
        for (int i = 0; i < DescentNumbers<float>.Count; i++)
        {
            Unsafe.Add(ref to, i * Four.Count) = Unsafe.Add(ref from, i);
        }
    }

    /// <summary>Tries poses: sets the value, and on demand slope and curvature.</summary>
    public void Try(in JointsOf<Four> q, bool withSlopes)
    {
        _withSlopes = withSlopes;
        _arm.Place(in _n, in q, _pelvisLean, _pelvisBend);
        _grip = _arm.ToPelvis(in _arm.Grip);
        if (!_isOffSkin)
        {
            _way.Find(in _n, in _grip);
        }

        if (_isStraight || _isOffSkin)
        {
            _way.GoStraight(new(_n.TargetX, _n.TargetY, _n.TargetZ), in _grip);
        }

        _pressed = Four.Zero;
        if (withSlopes)
        {
            _pressedSlope = default;
            _pressedPairs = default;
            Moves();
        }

        if (_isStraight)
        {
            Straight();
        }

        if (_hasSeat && !_isOffSkin)
        {
            WayOnSeat();
        }

        Solids();
        Wedge();
        Envelope(in q);
        Value = _way.Length + (0.5f * _n.Stiffness * _pressed * (FourMath.One + (_pressed * _n.Firmness)));
        if (withSlopes)
        {
            Way();
            AddPressed();
        }

        HandleBend();
    }

    /// <summary>How elbow and grip move with each joint: the joint's axis crossed with the lever to its centre; frame of seat and thighs.</summary>
    private void Moves()
    {
        _arm.Axes(out _axes);
        FourPoints toElbow = _arm.Elbow - _arm.Shoulder, toGrip = _arm.Grip - _arm.Shoulder, fore = _arm.Grip - _arm.Elbow;
        _elbowMoves[JointVector.Lean] = FourPoints.Cross(in _axes[JointVector.Lean], in _arm.Elbow);
        _elbowMoves[JointVector.Bend] = FourPoints.Cross(in _axes[JointVector.Bend], in _arm.Elbow);
        _elbowMoves[JointVector.Twist] = FourPoints.Cross(in _axes[JointVector.Twist], in _arm.Elbow);
        _elbowMoves[JointVector.Flexion] = FourPoints.Cross(in _axes[JointVector.Flexion], in toElbow);
        _elbowMoves[JointVector.Abduction] = FourPoints.Cross(in _axes[JointVector.Abduction], in toElbow);
        _gripMoves[JointVector.Lean] = FourPoints.Cross(in _axes[JointVector.Lean], in _arm.Grip);
        _gripMoves[JointVector.Bend] = FourPoints.Cross(in _axes[JointVector.Bend], in _arm.Grip);
        _gripMoves[JointVector.Twist] = FourPoints.Cross(in _axes[JointVector.Twist], in _arm.Grip);
        _gripMoves[JointVector.Flexion] = FourPoints.Cross(in _axes[JointVector.Flexion], in toGrip);
        _gripMoves[JointVector.Abduction] = FourPoints.Cross(in _axes[JointVector.Abduction], in toGrip);
        _gripMoves[JointVector.Rotation] = FourPoints.Cross(in _axes[JointVector.Rotation], in fore);
        _gripMoves[JointVector.Elbow] = FourPoints.Cross(in _axes[JointVector.Elbow], in fore);
    }

    /// <summary>Slope and curvature of the length of the way: the curvature is one over the distance, across the line.</summary>
    private void Way()
    {
        FourPoints slope = _arm.FromPelvis(in _way.Slope);
        FourPoints line = _arm.FromPelvis(_grip - _way.Touch);
        Four inverse = FourMath.One / Vector128.MaxNative(line.Length, (float)BoxMinimiser.NearestTouch * _n.Unit);
        line = inverse * line;

        // The grip as the pelvis sees it, which turns by a share of lean and bend.
        JointsOf<FourPoints> moves = _gripMoves;
        moves[JointVector.Lean] -= FourPoints.Cross(_arm.PelvisLean, in _arm.Grip);
        moves[JointVector.Bend] -= FourPoints.Cross(_arm.PelvisBend, in _arm.Grip);
        Unsafe.SkipInit(out JointsOf<Four> along);
        ref Four cell = ref Curvature[0];
        for (int i = 0; i < N; i++)
        {
            ref readonly FourPoints mine = ref moves[i];
            Slope[i] = FourPoints.Dot(in slope, in mine);
            Four a = FourPoints.Dot(in line, in mine);
            along[i] = a;
            for (int j = 0; j <= i; j++)
            {
                cell = inverse * (FourPoints.Dot(in mine, in moves[j]) - (a * along[j]));
                cell = ref Unsafe.Add(ref cell, 1);
            }
        }
    }

    /// <summary>Adds what pressing costs to slope and curvature.</summary>
    private void AddPressed()
    {
        Four pressure = 0.5f * _n.Stiffness * (FourMath.One + (2 * _pressed * _n.Firmness));
        for (int i = 0; i < N; i++)
        {
            Slope[i] += pressure * _pressedSlope[i];
        }

        Curvature.Add(2 * pressure, in _pressedPairs);
        Curvature.Add(_n.Stiffness * _n.Firmness, in _pressedSlope);
    }

    /// <summary>Takes in a depth and how it changes with the joints, 0 where there is none.</summary>
    private void Press(Four depth, in JointsOf<Four> row)
    {
        Four twice = 2 * depth;
        _pressedSlope[0] += twice * row[0];
        _pressedSlope[1] += twice * row[1];
        _pressedSlope[2] += twice * row[2];
        _pressedSlope[3] += twice * row[3];
        _pressedSlope[4] += twice * row[4];
        _pressedSlope[5] += twice * row[5];
        _pressedSlope[6] += twice * row[6];
        _pressedPairs.Add(FourMath.One, in row);
    }
}
