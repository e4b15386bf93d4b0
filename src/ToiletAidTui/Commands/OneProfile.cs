using ToiletAid.App.Files;
using ToiletAid.Core;
using ToiletAid.Core.Person;
using ToiletAidTui.Host;

namespace ToiletAidTui.Commands;

/// <summary>Commands that look at one saved profile.</summary>
internal static class OneProfile
{
    /// <summary>Reads the profile and does something with it, or tells what is wrong with it.</summary>
    internal static int With(Terminal terminal, string path, Func<Knowledge, Profile, int> action)
    {
        var knowledge = BuiltIn.Knowledge();
        var read = new ProfileFile(knowledge.Questions).Read(path, terminal.Passphrase.Get);
        if (read.TryGet(out var profile))
        {
            return action(knowledge, profile);
        }

        foreach (var issue in read.Issues)
        {
            terminal.Error.WriteLine(issue.Sentence(path) + ".");
        }

        return ExitCode.InputRefused;
    }
}
