using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>A number, or one for each of several persons, for each joint variable; places as in <see cref="JointVector"/>.</summary>
[InlineArray(JointVector.Count)]
internal struct JointsOf<T>
{
    private T _first;
}
