namespace ToiletAid.Core.Reach;

/// <summary>A joint of the person whose range is used up in the best pose, and what more of it would bring. Limits of the posture and of precautions are
/// none.</summary>
/// <param name="Motion">The motion.</param>
/// <param name="MetresPerRadian">Change of the needed length for each further rad at the limit, m/rad; negative shortens.</param>
/// <param name="ChangeForTenDegrees">Change of the needed length if this range were 10 degrees wider, as far as posture and precautions use that, and all was solved again, m; 0 or negative.</param>
public sealed record LimitingJoint(JointMotion Motion, double MetresPerRadian, double ChangeForTenDegrees);
