using System.Collections.Immutable;
using ToiletAid.Core.Interview;

namespace ToiletAid.App.Files;

/// <summary>The questions, as in the file.</summary>
internal sealed record QuestionsFile(ImmutableArray<Question> Questions);
