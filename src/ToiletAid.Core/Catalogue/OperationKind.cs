namespace ToiletAid.Core.Catalogue;

/// <summary>What a hand does with an aid, in the order of use.</summary>
public enum OperationKind
{
    /// <summary>Fill a reservoir with water.</summary>
    Fill,

    /// <summary>Put paper on, or get the aid ready.</summary>
    Load,

    /// <summary>Hold the aid, or keep it closed, while moving it.</summary>
    Hold,

    /// <summary>Wipe, squeeze or press to wash.</summary>
    Clean,

    /// <summary>Let go of the used paper.</summary>
    Release,

    /// <summary>Wash or disinfect the aid afterwards.</summary>
    Wash,
}
