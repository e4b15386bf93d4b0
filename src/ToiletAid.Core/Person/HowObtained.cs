namespace ToiletAid.Core.Person;

/// <summary>How an answer was obtained; sets its uncertainty.</summary>
public enum HowObtained
{
    /// <summary>Seen by the therapist.</summary>
    Observed,

    /// <summary>Told by the person or a carer.</summary>
    Reported,

    /// <summary>Measured with an instrument.</summary>
    Measured,
}
