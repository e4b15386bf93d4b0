namespace ToiletAid.App.Pictures;

/// <summary>How the used paper leaves the aid.</summary>
internal enum LettingGo
{
    /// <summary>By opening or squeezing the grip.</summary>
    ByTheGrip,

    /// <summary>By a button that can be pressed against thigh or hip.</summary>
    AgainstTheBody,

    /// <summary>Taken off with a clean sheet.</summary>
    ByHand,
}
