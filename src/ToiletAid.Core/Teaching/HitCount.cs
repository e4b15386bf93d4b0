namespace ToiletAid.Core.Teaching;

/// <summary>How often something happened among people with an answer, and among those who answered the same question otherwise.</summary>
/// <param name="With">People with the answer.</param>
/// <param name="HitsWith">Of them, those to whom it happened; at most <paramref name="With"/>.</param>
/// <param name="Without">People who answered otherwise.</param>
/// <param name="HitsWithout">Of them, those to whom it happened; at most <paramref name="Without"/>.</param>
public sealed record HitCount(int With, int HitsWith, int Without, int HitsWithout)
{
    /// <summary>Share among people with the answer, 0 to 1; 0 where there is nobody.</summary>
    public double ShareWith => With == 0 ? 0 : (double)HitsWith / With;

    /// <summary>Share among the others, 0 to 1; 0 where there is nobody.</summary>
    public double ShareWithout => Without == 0 ? 0 : (double)HitsWithout / Without;

    /// <summary>Lift: how much larger the share is with the answer, -1 to 1.</summary>
    public double Lift => ShareWith - ShareWithout;

    /// <summary>The lift in standard errors of two shares that are the same (the pooled test of two proportions, any textbook); 0 where it cannot be told.</summary>
    public double StandardErrors
    {
        get
        {
            double pooled = With + Without == 0 ? 0 : (double)(HitsWith + HitsWithout) / (With + Without);
            double variance = pooled * (1 - pooled) * ((1.0 / With) + (1.0 / Without));
            return With > 0 && Without > 0 && variance > 0 ? Lift / Math.Sqrt(variance) : 0;
        }
    }
}
