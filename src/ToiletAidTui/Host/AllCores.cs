using ToiletAid.Core.Advising;

namespace ToiletAidTui.Host;

/// <summary>One person's advice on all cores: for commands that do not share them among many people.</summary>
internal static class AllCores
{
    internal static AdviceSettings Advice { get; } = On(new(), Environment.ProcessorCount);

    /// <summary>The same settings, with pieces of work side by side.</summary>
    /// <param name="settings">The settings.</param>
    /// <param name="most">How many pieces at most, 1 or more.</param>
    internal static AdviceSettings On(AdviceSettings settings, int most)
    {
        var limit = new ParallelOptions { MaxDegreeOfParallelism = most };
        return settings with { ForAll = (count, work) => Parallel.For(0, count, limit, work) };
    }
}
