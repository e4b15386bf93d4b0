using System.Collections.Immutable;
using ToiletAid.Core.Person;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Advising;

/// <summary>What of a person the reach depends on: all but which hand it is, for right and left mirror each other.</summary>
internal sealed class ReachKey : IEquatable<ReachKey>
{
    private readonly int _draws;
    private readonly ReachPerson _bare;
    private readonly ImmutableArray<KeyValuePair<JointMotion, ReachInput>> _joints;
    private readonly ImmutableArray<KeyValuePair<BodyMeasure, ReachInput>> _lengths;
    private readonly ImmutableArray<ReachPrecaution> _precautions;
    private readonly int _hash;

    /// <summary>Makes a key.</summary>
    /// <param name="person">The person.</param>
    /// <param name="draws">Persons drawn.</param>
    /// <param name="withFront">False for the ways in which how far the hand gets in front has no part.</param>
    internal ReachKey(ReachPerson person, int draws, bool withFront)
    {
        _draws = draws;
        _joints = [.. person.Joints.OrderBy(j => j.Key)];
        _lengths = [.. person.Lengths.OrderBy(l => l.Key)];
        _precautions = person.Precautions;
        _bare = person with
        {
            Hand = WorkingHand.Right,
            BehindHow = person.Behind is null ? HowObtained.Observed : person.BehindHow,
            Front = withFront ? person.Front : null,
            FrontHow = withFront && person.Front is not null ? person.FrontHow : HowObtained.Observed,
            Joints = ImmutableDictionary<JointMotion, ReachInput>.Empty,
            Lengths = ImmutableDictionary<BodyMeasure, ReachInput>.Empty,
            Precautions = ImmutableArray<ReachPrecaution>.Empty,
        };
        var hash = new HashCode();
        hash.Add(_draws);
        hash.Add(_bare);
        foreach (var joint in _joints)
        {
            hash.Add(joint);
        }

        _hash = hash.ToHashCode();
    }

    /// <inheritdoc/>
    public bool Equals(ReachKey? other) => other is not null
        && _hash == other._hash && _draws == other._draws && _bare == other._bare
        && _joints.SequenceEqual(other._joints) && _lengths.SequenceEqual(other._lengths) && _precautions.SequenceEqual(other._precautions);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ReachKey);

    /// <inheritdoc/>
    public override int GetHashCode() => _hash;
}
