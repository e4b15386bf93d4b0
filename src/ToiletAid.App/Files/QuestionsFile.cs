using System.Collections.Immutable;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;

namespace ToiletAid.App.Files;

/// <summary>The questions, as in the file.</summary>
/// <param name="Questions">The questions.</param>
/// <param name="Basis">What kind of knowledge shares and assumed numbers are.</param>
/// <param name="Source">Where they come from.</param>
internal sealed record QuestionsFile(ImmutableArray<Question> Questions, Basis Basis, string Source);
