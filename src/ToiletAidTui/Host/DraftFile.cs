using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Host;

/// <summary>Answers of a visit that was stopped, kept for the next start. Nothing is written unless something stops the program.</summary>
/// <param name="files">Profiles on disk; a draft is one.</param>
/// <param name="folder">The user's own folder for data; empty when there is none.</param>
internal sealed class DraftFile(ProfileFile files, string folder)
{
    /// <summary>Stands in for a code that was not given yet.</summary>
    private const string NoCode = "P-0";

    /// <summary>So many visits can be stopped before the first is taken up.</summary>
    private const int MostDrafts = 20;

    /// <summary>The user's folder for data on this machine.</summary>
    internal static string UsualFolder(Func<string, string?> environment)
    {
        string folder = OperatingSystem.IsWindows()
            ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
            : environment("XDG_DATA_HOME") is { Length: > 0 } own ? own
            : environment("HOME") is { Length: > 0 } home ? Path.Combine(home, ".local", "share") : string.Empty;
        return Path.IsPathFullyQualified(folder) ? Path.Combine(folder, "toiletaid") : string.Empty;
    }

    /// <summary>The first draft that is kept; null when there is none.</summary>
    internal string? Kept() => folder.Length == 0 ? null : Names().FirstOrDefault(File.Exists);

    /// <summary>Keeps what is not saved; gives the sentence that says where, or null when there is nothing to keep.</summary>
    internal string? Keep(Visit visit)
    {
        if (!visit.IsUnsaved)
        {
            return null;
        }

        if (visit.Kept is { } beside && beside.Keep(visit.Session))
        {
            return $"The answers are kept beside {visit.Path}. The next assessment that saves there offers them.";
        }

        if (visit.Earlier is { IsProtected: true })
        {
            return "The answers could not be kept, because the profile is protected and its folder does not take them.";
        }

        if (folder.Length == 0)
        {
            return "The answers could not be kept, because this account has no home folder.";
        }

        try
        {
            OwnerOnly.Folder(folder);
            visit.Draft ??= Names().First(n => !File.Exists(n));
            files.Write(new Profile(visit.Earlier?.Profile.Person ?? visit.Person ?? NoCode, [visit.Session]), visit.Draft);
            return $"The answers are kept in {visit.Draft}. The next start offers them.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidOperationException)
        {
            return $"The answers could not be kept, {ProfileFile.Reason(e)}.";
        }
    }

    /// <summary>Takes a draft up as a visit; null when it cannot be read. The draft stays until the visit is saved or left.</summary>
    internal Visit? TakeUp(string path, Desk desk)
    {
        if (!files.Read(path).TryGet(out var profile))
        {
            return null;
        }

        var session = profile.Latest;
        var visit = new Visit(desk.Questions, desk.Open, session.Depth, session.Date)
        {
            Draft = path,
            Person = profile.Person == NoCode ? null : profile.Person,
        };
        visit.Engine.TakeUp(session.Answers);
        return visit;
    }

    /// <summary>Throws a draft away.</summary>
    internal static void Remove(string? path)
    {
        if (path is null)
        {
            return;
        }

        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It will be offered again at the next start, where it can be thrown away.
        }
    }

    private IEnumerable<string> Names() =>
        Enumerable.Range(1, MostDrafts).Select(i => Path.Combine(folder, i == 1 ? "draft.json" : $"draft-{i}.json"));
}
