namespace ToiletAid.Core.Teaching;

/// <summary>Something that may happen to a kind in one person's advice.</summary>
/// <param name="Kind">Id of the kind.</param>
/// <param name="SpeaksForIt">True where it speaks for the kind.</param>
/// <param name="Among">People among whom it is counted.</param>
/// <param name="Is">Whether it happened.</param>
/// <param name="LeastLift">Smallest lift that is told.</param>
/// <param name="LeastShare">Smallest share of people with the answer to whom it must happen.</param>
public sealed record TeachingEvent(string Kind, bool SpeaksForIt, Func<SeenPerson, bool> Among, Func<SeenPerson, bool> Is, double LeastLift, double LeastShare)
{
    /// <summary>True where the kind is ruled out.</summary>
    public bool RulesOut { get; private init; }

    /// <summary>The kind comes first.</summary>
    /// <param name="kind">Id of the kind.</param>
    public static TeachingEvent First(string kind) => new(kind, true, _ => true, p => p.Place(kind) == 1, TeachingLimits.LeastLift, 0);

    /// <summary>The kind is one of the first three.</summary>
    /// <param name="kind">Id of the kind.</param>
    public static TeachingEvent Near(string kind) => new(kind, true, _ => true, p => p.Place(kind) <= TeachingLimits.NearPlace, TeachingLimits.LeastLift, 0);

    /// <summary>The kind is ruled out.</summary>
    /// <param name="kind">Id of the kind.</param>
    public static TeachingEvent RuledOut(string kind) =>
        new(kind, false, _ => true, p => p.RuledOut.ContainsKey(kind), TeachingLimits.LeastRuledOutLift, TeachingLimits.LeastRuledOut) { RulesOut = true };

    /// <summary>The kind can be used and another comes first; counted among those who can use it, since the others are told as ruled out.</summary>
    /// <param name="kind">Id of the kind.</param>
    public static TeachingEvent Behind(string kind) =>
        new(kind, false, p => p.Place(kind) is not null, p => p.Place(kind) > 1, TeachingLimits.LeastBehindLift, TeachingLimits.LeastRuledOut);
}
