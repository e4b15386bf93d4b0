namespace ToiletAid.App.Wording;

/// <summary>What is done in a step of the set-up.</summary>
public enum SetupAct
{
    /// <summary>Put wipes and bin within reach.</summary>
    PutWipesReady,

    /// <summary>Fold the paper.</summary>
    FoldPaper,

    /// <summary>Bunch the paper into a pad, where it is not folded.</summary>
    BunchPaper,

    /// <summary>Put the paper into or round the aid.</summary>
    LoadPaper,

    /// <summary>Check that the paper holds.</summary>
    CheckHold,

    /// <summary>Fill a reservoir.</summary>
    FillWater,

    /// <summary>Set how warm the water is.</summary>
    SetWarmth,

    /// <summary>Mix hot and cold water.</summary>
    MixWater,

    /// <summary>Sit, stand or lie as the plan asks.</summary>
    TakePosture,

    /// <summary>Bring hand or aid to the skin.</summary>
    BringToSkin,

    /// <summary>Wipe or wash.</summary>
    Clean,

    /// <summary>Another person cleans.</summary>
    HelperCleans,

    /// <summary>Dry with warm or cool air.</summary>
    Dry,

    /// <summary>Pat dry or finish with the companion.</summary>
    Finish,

    /// <summary>See whether the skin is clean.</summary>
    Look,

    /// <summary>Let the used paper go.</summary>
    LetGo,

    /// <summary>Put what must not be flushed into the bin.</summary>
    UseBin,

    /// <summary>Look at the skin with a mirror.</summary>
    LookAtSkin,

    /// <summary>Wash the aid and the hands.</summary>
    WashUp,
}
