using ToiletAid.Core.Advising;

namespace ToiletAidTui.Host;

/// <summary>One person's advice on all cores: for commands that do not share them among many people.</summary>
internal static class AllCores
{
    internal static AdviceSettings Advice { get; } = On(new());

    internal static AdviceSettings On(AdviceSettings settings) => settings with { ForAll = static (count, work) => Parallel.For(0, count, work) };
}
