using System.Collections.Immutable;

namespace ToiletAid.Core.Teaching;

/// <summary>Who may choose a kind, counted over simulated people.</summary>
/// <param name="Kind">Id of the kind.</param>
/// <param name="First">People for whom it comes first.</param>
/// <param name="RuledOut">People for whom it is ruled out.</param>
/// <param name="GoodFor">Answers with which it comes first more often; greatest lift first.</param>
/// <param name="Near">Answers with which it is more often one of the first three, for a kind of which <paramref name="GoodFor"/> says nothing.</param>
/// <param name="Others">Kinds that come first instead for most who can use it, the commonest first, for a kind of which neither of these says anything.</param>
/// <param name="NotFor">Answers with which it is more often ruled out; greatest lift first.</param>
/// <param name="Behind">Answers with which another kind comes first more often, though this one can be used; greatest lift first.</param>
public sealed record KindTeaching(
    string Kind,
    int First,
    int RuledOut,
    ImmutableArray<TeachingStatement> GoodFor,
    ImmutableArray<TeachingStatement> Near,
    ImmutableArray<TeachingOther> Others,
    ImmutableArray<TeachingStatement> NotFor,
    ImmutableArray<TeachingStatement> Behind);
