using ToiletAid.Core.Evidence;

namespace ToiletAid.App.Files;

/// <summary>What is plausible for the numbers of an aid, as in the file.</summary>
/// <param name="Basis">What kind of knowledge the ranges are.</param>
/// <param name="Source">Why they were chosen.</param>
/// <param name="Catalogue">Range of each member of a catalogue file, by its name.</param>
/// <param name="Measured">Range and units of what is measured or typed at a desk.</param>
/// <param name="Errors">Errors of the tools.</param>
internal sealed record RangesFile(Basis Basis, string Source, Dictionary<string, RangesFileMember> Catalogue, Dictionary<string, RangesFileTyped> Measured, Dictionary<string, Sourced> Errors);
