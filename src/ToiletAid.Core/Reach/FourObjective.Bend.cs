using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <content>How far the handle must bend where forearm and wrist do not point it.</content>
internal sealed partial class FourObjective
{
    /// <summary>Adds what the bend of the handle costs, with its slope and curvature.</summary>
    /// <remarks>Where the way touches may move with the hand; it moves along the line to the hand, which turns the line by nothing.</remarks>
    private void HandleBend()
    {
        FourPoints touch = _arm.FromPelvis(in _way.Touch), line = touch - _arm.Grip;
        Four inverse = FourMath.One / Vector128.MaxNative(line.Length, FourMath.Of(1e-6f));
        FourPoints aim = inverse * line, fore = (FourMath.One / _n.Forearm) * (_arm.Grip - _arm.Elbow);
        FourPoints palm = FourPoints.Cross(in fore, in _arm.Thumb);
        Four forth = FourPoints.Dot(in aim, in fore), ahead = FourPoints.Dot(in aim, in _arm.Thumb), inward = FourPoints.Dot(in aim, in palm);

        // The handle sticks out of either end of the fist, so a direction and its opposite are the same.
        Four ofAhead = ahead & FourMath.Of(-0f), ofInward = inward & FourMath.Of(-0f);
        Four supinated = Vector128.LessThan(ahead ^ ofInward, Four.Zero);
        Four steepest = FourMath.Select(supinated, _n.SupinationSlope, _n.PronationSlope);
        Four tilts = Vector128.GreaterThan(-forth, _n.DeviationSine);
        Four turns = Vector128.GreaterThan(Vector128.Abs(inward), steepest * Vector128.Abs(ahead));
        if ((tilts | turns) == Four.Zero)
        {
            return;
        }

        Four flat = Vector128.Sqrt(FourMath.Over(FourMath.One - (forth * forth)));
        Four back = FourMath.Angle(Vector128.Abs(forth), flat) ^ (-forth & FourMath.Of(-0f));
        Four tilt = FourMath.Over(back - _n.Deviation) & tilts;
        Four limit = FourMath.Select(supinated, _n.Supination, _n.Pronation);
        Four aside = FourMath.Over(FourMath.Angle(Vector128.Abs(inward), Vector128.Abs(ahead)) - limit) & turns;
        Four width = Vector128.Sqrt((ahead * ahead) + (inward * inward));
        Four turn = aside * width;
        Value += _n.HandleBend * ((tilt * tilt) + (turn * turn));
        if (!_withSlopes || !Vector128.GreaterThanAny(tilt + turn, Four.Zero))
        {
            return;
        }

        Four perForth = -(FourMath.One / Vector128.MaxNative(flat, FourMath.Of(1e-3f))) & Vector128.GreaterThan(tilt, Four.Zero);
        BendRow(in touch, perForth * inverse * (fore - (forth * aim)), perForth * FourPoints.Cross(in fore, in aim), out JointsOf<Four> row);
        AddBend(tilt, in row);

        Four perWidth = FourMath.One / Vector128.MaxNative(width, FourMath.Of(1e-3f)), turning = Vector128.GreaterThan(turn, Four.Zero);
        Four perAhead = perWidth * ((aside * ahead) - (Vector128.Abs(inward) ^ ofAhead)) & turning;
        Four perInward = perWidth * ((aside * inward) + (Vector128.Abs(ahead) ^ ofInward)) & turning;
        FourPoints withLine = (perAhead * (_arm.Thumb - (ahead * aim))) + (perInward * (palm - (inward * aim)));
        FourPoints withAxis = (perAhead * FourPoints.Cross(in _arm.Thumb, in aim)) + (perInward * FourPoints.Cross(in palm, in aim));
        BendRow(in touch, inverse * withLine, in withAxis, out row);
        AddBend(turn, in row);
    }

    /// <summary>Carries slopes with the line from hand to touch and with the turning of the forearm over to the joints.</summary>
    private void BendRow(in FourPoints touch, in FourPoints withLine, in FourPoints withAxis, out JointsOf<Four> row)
    {
        Unsafe.SkipInit(out row);
        for (int i = 0; i < N; i++)
        {
            row[i] = FourPoints.Dot(in withAxis, in _axes[i]) - FourPoints.Dot(in withLine, in _gripMoves[i]);
        }

        FourPoints moment = FourPoints.Cross(in touch, in withLine);
        row[JointVector.Lean] += FourPoints.Dot(_arm.PelvisLean, in moment);
        row[JointVector.Bend] += FourPoints.Dot(_arm.PelvisBend, in moment);
    }

    private void AddBend(Four bend, in JointsOf<Four> row)
    {
        Four twice = 2 * _n.HandleBend, size = twice * bend;
        for (int i = 0; i < N; i++)
        {
            Slope[i] += size * row[i];
        }

        Curvature.Add(twice, in row);
    }
}
