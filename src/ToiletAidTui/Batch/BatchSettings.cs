using ToiletAid.Core.Advising;

namespace ToiletAidTui.Batch;

/// <summary>How a set of profiles is worked through.</summary>
/// <param name="Jobs">Threads, 1 or more.</param>
/// <param name="Resume">Profiles at the start that are passed over, 0 or more.</param>
/// <param name="Rejects">File for what was refused, or null.</param>
/// <param name="Quiet">True to say nothing about progress.</param>
/// <param name="Advice">How advice is computed.</param>
internal sealed record BatchSettings(int Jobs, long Resume, string? Rejects, bool Quiet, AdviceSettings Advice);
