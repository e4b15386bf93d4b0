namespace ToiletAid.App.Typed;

/// <summary>Typed text taken apart.</summary>
/// <param name="Fault">Why it could not be, or none.</param>
/// <param name="Parts">One or two numbers with their words; as far as it was understood when there is a fault.</param>
/// <param name="OtherReading">With a comma of two meanings: the last part with the comma read as a decimal mark.</param>
internal sealed record ScannedText(ScanFault Fault, IReadOnlyList<TypedPart> Parts, TypedPart? OtherReading = null);
