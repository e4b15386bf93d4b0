using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAidTui.Host;

/// <summary>Answers of a visit that was stopped, kept for the next start where they cannot be kept after each answer.</summary>
/// <param name="questions">The questions.</param>
/// <param name="environment">The environment, which names the user's own folders.</param>
internal sealed class DraftFile(QuestionSet questions, Func<string, string?> environment)
{
    /// <summary>So many visits can be stopped before the first is taken up.</summary>
    private const int MostDrafts = 20;

    private const string Ending = ".json";

    /// <summary>Stands for the file of a visit that has none yet.</summary>
    private const string NoFile = "visit";

    private readonly ProfileFolder _profiles = new(environment);

    /// <summary>The user's own folder for data; empty when there is none.</summary>
    private readonly string _folder = OwnFolder.Data(environment);

    /// <summary>Those of a folder.</summary>
    internal static IEnumerable<string> Kept(string folder) => Names(folder).Where(File.Exists);

    /// <summary>True for one of these and not a draft that grows with each answer.</summary>
    internal static bool IsOne(string draft) => draft.EndsWith(Ending, StringComparison.Ordinal);

    /// <summary>Keeps each answer of a visit, beside its file or in the user's own folder; null when there is neither.</summary>
    /// <param name="path">The file of the visit, or null.</param>
    /// <param name="passphrase">Gives the passphrase when the file is protected; null when it is not.</param>
    internal AnswerDraft? EachAnswer(string? path, Func<string?>? passphrase) =>
        path is not null ? new(path, questions, passphrase, ownFolder: false, _profiles)
        : _folder.Length > 0 ? new(Path.Combine(_folder, NoFile), questions, null, ownFolder: true, _profiles)
        : null;

    /// <summary>Keeps what is not saved; gives the sentence that says where, or null when there is nothing to keep.</summary>
    internal string? Keep(Visit visit)
    {
        if (!visit.IsUnsaved)
        {
            return null;
        }

        if (visit.Kept is { } each && each.Keep(visit))
        {
            return $"The answers are kept {each.Where}.";
        }

        if (visit.Earlier is { IsProtected: true })
        {
            return "The answers could not be kept, because the profile is protected and its folder does not take them.";
        }

        if (_folder.Length == 0)
        {
            return "The answers could not be kept, because this account has no folder for data.";
        }

        try
        {
            OwnerOnly.Folder(_folder);
            string? before = visit.Draft;
            string? draft = before is not null && IsOne(before) ? before : Names(_folder).FirstOrDefault(n => !File.Exists(n));
            if (draft is null)
            {
                return $"The answers could not be kept, because {MostDrafts} visits that were stopped are kept already. Start the program and take them up or erase them.";
            }

            new ProfileFile(questions).Write(new Profile(visit.Earlier?.Profile.Person ?? visit.Person ?? AnswerJournal.NoCode, [visit.Session]), draft);
            visit.Draft = draft;
            if (before != draft)
            {
                Remove(before);
            }

            return $"The answers are kept in {visit.Draft}. The next start offers them.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"The answers could not be kept, {ProfileFile.Reason(e)}.";
        }
    }

    /// <summary>Erases a draft.</summary>
    internal static void Remove(string? draft)
    {
        if (draft is null)
        {
            return;
        }

        try
        {
            AnswerJournal.Drop(draft);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It will be offered again at the next start, where it can be thrown away.
        }
    }

    private static IEnumerable<string> Names(string folder) =>
        Enumerable.Range(1, MostDrafts).Select(i => Path.Combine(folder, i == 1 ? "draft.json" : $"draft-{i}.json"));
}
