namespace ToiletAid.Core.Reach;

/// <summary>Side of the body on which the mattress lies.</summary>
internal enum Mattress
{
    /// <summary>There is none.</summary>
    None,

    /// <summary>Under the hip away from the working hand.</summary>
    Beside,

    /// <summary>Behind the body.</summary>
    Behind,
}
