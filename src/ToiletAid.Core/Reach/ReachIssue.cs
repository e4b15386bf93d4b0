namespace ToiletAid.Core.Reach;

/// <summary>An input that cannot be used.</summary>
/// <param name="Field">Id of the question: stature, mass, age, lean, joints or lengths.</param>
/// <param name="Sentence">One sentence that names the field and its range.</param>
public sealed record ReachIssue(string Field, string Sentence);
