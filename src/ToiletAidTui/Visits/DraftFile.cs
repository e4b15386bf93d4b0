using ToiletAid.App.Store;
using ToiletAid.Core.Interview;

namespace ToiletAidTui.Visits;

/// <summary>Where the answers of visits under way are kept.</summary>
/// <param name="questions">The questions.</param>
/// <param name="environment">The environment, which names the user's own folders.</param>
internal sealed class DraftFile(QuestionSet questions, Func<string, string?> environment)
{
    /// <summary>Stands for the file of a visit that has none yet.</summary>
    private const string NoFile = "visit";

    private readonly ProfileFolder _profiles = new(environment);

    private readonly string? _own = OwnFolder.Data(environment) is { Length: > 0 } folder ? Path.Combine(folder, NoFile) : null;

    /// <summary>Keeps each answer of a visit.</summary>
    /// <param name="path">The file of the visit, or null.</param>
    /// <param name="passphrase">Gives the passphrase; asked for only where it is needed.</param>
    /// <param name="isProtected">True when the file is protected.</param>
    internal AnswerDraft EachAnswer(string? path, Func<string?> passphrase, bool isProtected) => new(path, _own, questions, passphrase, isProtected, _profiles);

    /// <summary>Keeps what is not saved; gives the sentence that says where, or null when there is nothing to keep.</summary>
    internal string? Keep(Visit visit) =>
        visit.IsUnsaved ? visit.Keep(() => EachAnswer(null, () => null, visit.Earlier is { IsProtected: true })) : null;
}
