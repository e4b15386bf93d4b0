using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;
using ToiletAidTui.Options;

namespace ToiletAidTui.Commands;

/// <summary>Commands that look at one saved profile.</summary>
internal static class OneProfile
{
    /// <summary>Reads the profile and does something with it, or tells what is wrong with it.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="path">The profile, or a code that stands for one.</param>
    /// <param name="stock">File with the clinic's own aids, or null.</param>
    /// <param name="action">What is done with it.</param>
    internal static int With(Terminal terminal, string path, string? stock, Func<KnowledgeBase, Profile, int> action)
    {
        if (StockOption.Over(BuiltIn.Knowledge(), stock, terminal) is not { } knowledge)
        {
            return ExitCode.InputRefused;
        }

        return With(terminal, knowledge, path, profile => action(knowledge, profile));
    }

    /// <summary>Reads the profile and does something with it, or tells what is wrong with it.</summary>
    /// <param name="terminal">What it talks to.</param>
    /// <param name="knowledge">What was loaded already.</param>
    /// <param name="path">The profile, or a code that stands for one.</param>
    /// <param name="action">What is done with it.</param>
    internal static int With(Terminal terminal, KnowledgeBase knowledge, string path, Func<Profile, int> action)
    {
        path = new ProfileFolder(terminal.Variable).Find(path);
        var read = new ProfileFile(knowledge.Questions).Read(path, terminal.Passphrase.Get);
        if (read.TryGet(out var profile))
        {
            return action(profile);
        }

        terminal.Complain(path, read.Issues);
        return ExitCode.InputRefused;
    }
}
