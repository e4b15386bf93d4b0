namespace ToiletAid.App.Wording;

/// <summary>Who reads the steps of a set-up.</summary>
public enum SetupReader
{
    /// <summary>The therapist, of a person.</summary>
    Therapist,

    /// <summary>The person, in words of every day.</summary>
    Person,

    /// <summary>A helper: what the person does is read out to the person, what the helper does is said to the helper.</summary>
    Helper,
}
