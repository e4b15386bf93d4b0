namespace ToiletAid.Core.Hand;

/// <summary>How much of its comfortable strength a hand must give.</summary>
public enum EffortBand
{
    /// <summary>Little: no concern.</summary>
    Ok,

    /// <summary>Noticeable: try it.</summary>
    Caution,

    /// <summary>Hard: look for something easier.</summary>
    Poor,

    /// <summary>Too much: not feasible.</summary>
    NotFeasible,
}
