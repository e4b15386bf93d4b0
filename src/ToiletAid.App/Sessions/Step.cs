using ToiletAid.Core.Interview;

namespace ToiletAid.App.Sessions;

/// <summary>What is asked now: a question, or one part of it.</summary>
/// <param name="Question">The question.</param>
/// <param name="Part">The part, or null for the whole.</param>
/// <param name="PartNumber">Which part it is, from 1; 0 for the whole.</param>
public sealed record Step(Question Question, Part? Part, int PartNumber);
