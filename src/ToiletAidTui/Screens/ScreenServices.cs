using System.Collections.Immutable;
using ToiletAid.App.Articles;
using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAidTui.Keys;
using ToiletAidTui.Settings;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>What the screens work with.</summary>
internal sealed class ScreenServices
{
    /// <summary>The questions.</summary>
    internal required QuestionSet Questions { get; init; }

    /// <summary>The questions still to be asked at a depth, the next one first.</summary>
    internal required Func<Depth, Answers, ImmutableArray<Question>> Open { get; init; }

    /// <summary>Profiles on disk.</summary>
    internal required ProfileFile Files { get; init; }

    /// <summary>The user's folder of profiles.</summary>
    internal required ProfileFolder Profiles { get; init; }

    /// <summary>The passphrase of protected profiles, as far as it is known.</summary>
    internal Func<string?> Passphrase { get; init; } = () => null;

    /// <summary>Takes a passphrase that was typed on a screen.</summary>
    internal Action<string> Know { get; init; } = _ => { };

    /// <summary>Keeps each answer of a visit on disk: of one without a file yet, or of one for the profile at a path. Null when that cannot be.</summary>
    internal Func<string?, StoredProfile?, AnswerDraft?> EachAnswer { get; init; } = (_, _) => null;

    /// <summary>Which key does what.</summary>
    internal required KeyMap Keys { get; init; }

    /// <summary>The day of a visit that starts now.</summary>
    internal required Func<DateOnly> Today { get; init; }

    /// <summary>The result of a visit, in parts; the brief result is shown at once.</summary>
    internal required Func<Session, ResultParts> Result { get; init; }

    /// <summary>Why no more is asked, one sentence.</summary>
    internal required Func<Visit, string> Ended { get; init; }

    /// <summary>True when an answer out of several is taken by its digit alone.</summary>
    internal bool OneKey { get; init; }

    /// <summary>Why a kind of aid has its place, and what would put it first.</summary>
    internal required Func<Session, string, ImmutableArray<string>> Why { get; init; }

    /// <summary>What would change the first place.</summary>
    internal required Func<Session, ImmutableArray<string>> Counterfactuals { get; init; }

    /// <summary>What an article must be like to suit the person of a visit.</summary>
    internal required Func<Session, ImmutableArray<string>> LookFor { get; init; }

    /// <summary>Asks whether an article is right for the person of a visit; null where a red flag stops everything.</summary>
    internal required Func<Session, ArticleInterview?> Article { get; init; }

    /// <summary>What is to be said of an article at the end of the questions.</summary>
    internal required Func<ArticleInterview, ImmutableArray<string>> Verdict { get; init; }

    /// <summary>Keeps an article in a file of the clinic's own aids; says what came of it.</summary>
    internal required Func<ArticleInterview, string, string> KeepArticle { get; init; }

    /// <summary>The file of the clinic's own aids that is in use; null for none.</summary>
    internal string? Stock { get; init; }

    /// <summary>Begins a trial with the person of a saved profile, today; null with the reasons where there can be none.</summary>
    internal required TrialBeginning Trial { get; init; }

    /// <summary>Every kind of aid: id and name.</summary>
    internal required ImmutableArray<(string Id, string Name)> Kinds { get; init; }

    /// <summary>The quick calculators.</summary>
    internal required ImmutableArray<CalculatorForm> Calculators { get; init; }

    /// <summary>Compares the last two visits in one profile or two.</summary>
    internal required Func<ImmutableArray<string>, Caught> Compare { get; init; }

    /// <summary>Explains kinds of aid side by side, for the person of a saved profile or for nobody.</summary>
    internal required Func<ImmutableArray<string>, string?, Caught> Explain { get; init; }

    /// <summary>Writes or shows a document about a saved profile, with what was typed for some of its fields.</summary>
    internal required Func<string, ImmutableDictionary<string, string>, Caught> Document { get; init; }

    /// <summary>Reads the settings as they stand.</summary>
    internal required SettingsSource Settings { get; init; }

    /// <summary>Keeps a setting of the user; gives why not, one sentence, or null.</summary>
    internal required Func<string, string, string?> Keep { get; init; }
}
