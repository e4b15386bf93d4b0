using ToiletAid.App.Typed;

namespace ToiletAid.App.Stock;

/// <summary>One number of an aid that can be measured at a desk.</summary>
/// <param name="Name">What it is, as the subject of a sentence.</param>
/// <param name="How">How it is measured, one step a sentence.</param>
/// <param name="Tool">What it is measured with.</param>
/// <param name="Asked">Units and plausible range.</param>
/// <param name="Path">Where it stands in the aid's JSON; an operation goes by its kind, such as operations, release, force.</param>
/// <param name="LeastError">Error of the tool, SI; 0 where it is exact.</param>
/// <param name="ErrorShare">Error as a share of the value, which counts where it is more.</param>
internal sealed record Measurement(string Name, string How, string Tool, QuantityQuestion Asked, string[] Path, double LeastError, double ErrorShare)
{
    /// <summary>True for what is read off a bill and not measured.</summary>
    public bool IsPrice => Asked.Units[0].Symbol == "money";
}
