namespace ToiletAid.Core.Fitting;

/// <summary>What can be measured or looked up on one article, and matters for who can use it. Numbers come first.</summary>
public enum ArticleTraitKind
{
    /// <summary>Length from the middle of the grip to the middle of the wiping face or the nozzle, m.</summary>
    Length,

    /// <summary>Distance that the jet covers, m.</summary>
    JetReach,

    /// <summary>Width of the head with its paper, m.</summary>
    TipWidth,

    /// <summary>Greatest length when folded or taken apart, m.</summary>
    FoldedLength,

    /// <summary>Mass ready for use without water, kg.</summary>
    Mass,

    /// <summary>Reservoir, m³.</summary>
    Reservoir,

    /// <summary>Force to put paper on, N.</summary>
    LoadForce,

    /// <summary>Force to let go of the paper, N.</summary>
    ReleaseForce,

    /// <summary>Force to make the water flow, N.</summary>
    WashForce,

    /// <summary>Price, in the clinic's currency.</summary>
    Price,

    /// <summary>Mass of the person that it, or the add-on, is made for, kg. Rules ask for it, and no ranking depends on it.</summary>
    Carries,

    /// <summary>Warmest water that it makes, °C. Rules ask for it, and no ranking depends on it.</summary>
    WaterTemperature,

    /// <summary>Warmest water that is filled into it, °C. Rules ask for it, and no ranking depends on it.</summary>
    FillTemperature,

    /// <summary>It is curved, or can be set to a curve.</summary>
    Curved,

    /// <summary>What meets the skin is soft.</summary>
    SoftTip,

    /// <summary>Paper is put on with one hand.</summary>
    OneHandLoad,

    /// <summary>Paper is put on without tucking or threading.</summary>
    EasyLoad,

    /// <summary>Paper is let go with the palm, or by pressing it against thigh, hip or seat.</summary>
    ReleaseWithoutGrip,

    /// <summary>Palm or forearm can make the water flow.</summary>
    WashWithoutGrip,

    /// <summary>It takes a certain add-on.</summary>
    TakesAddOn,

    /// <summary>A certain material does not touch the skin.</summary>
    FreeOf,
}
