namespace ToiletAid.Core.Teaching;

/// <summary>When a difference is worth telling a learner. All of them are decisions.</summary>
public static class TeachingLimits
{
    /// <summary>Fewest people with an answer.</summary>
    public const int LeastPeople = 60;

    /// <summary>Fewest standard errors. About 1,500 pairs of kind and answer are looked at, so 5 leaves one in a thousand such tables with a false one.</summary>
    public const double LeastErrors = 5;

    /// <summary>The last place that is near to the first.</summary>
    public const int NearPlace = 3;

    /// <summary>From so many more people of 1 for whom this kind is ruled out among the others, that is the cause.</summary>
    public const double ItselfIsCause = 0.3;

    /// <summary>From so many more other kinds that a rule takes away, that is the cause.</summary>
    public const double OthersAreCause = 1;

    /// <summary>Smallest lift of coming first.</summary>
    public const double LeastLift = 0.04;

    /// <summary>Smallest share of people with an answer for whom a kind is ruled out.</summary>
    public const double LeastRuledOut = 0.5;

    /// <summary>Smallest lift of being ruled out.</summary>
    public const double LeastRuledOutLift = 0.2;

    /// <summary>Smallest lift of standing behind another kind.</summary>
    public const double LeastBehindLift = 0.1;

    /// <summary>Most other kinds that are told where nothing speaks for one.</summary>
    public const int MostOthers = 2;

    /// <summary>Most statements of one sort about one kind: more would not be heard to the end.</summary>
    public const int Most = 4;
}
