using System.Collections.Immutable;
using ToiletAid.App.Files;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Screens;

/// <summary>What the screens work with.</summary>
internal sealed class Desk
{
    /// <summary>The questions.</summary>
    internal required QuestionSet Questions { get; init; }

    /// <summary>Profiles on disk.</summary>
    internal required ProfileFile Files { get; init; }

    /// <summary>Which key does what.</summary>
    internal required KeyMap Keys { get; init; }

    /// <summary>The day of a visit that starts now.</summary>
    internal required Func<DateOnly> Today { get; init; }

    /// <summary>The result of a visit, in parts: title and lines; the first part is shown at once.</summary>
    internal required Func<Session, ImmutableArray<ResultPart>> Result { get; init; }

    /// <summary>The settings as they stand, one a line.</summary>
    internal required Func<IReadOnlyList<string>> Settings { get; init; }
}
