using ToiletAid.App.Files;
using ToiletAid.Core.Asking;
using ToiletAid.Core.Person;
using ToiletAidTui.Visits;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>A visit has one draft, whichever of a signal and a key is first, and also when a signal comes while the program is ending.</summary>
public sealed class OneDraftTests : IDisposable
{
    private readonly Home _home = new();
    private readonly DraftFile _drafts;
    private readonly Visit _visit;

    public OneDraftTests()
    {
        var environment = _home.Environment();
        var questions = BuiltIn.Questions();
        _drafts = new(questions, n => environment.GetValueOrDefault(n));
        _visit = new(questions, QuestionPlanner.For(BuiltIn.Knowledge()).Open, Depth.Quick, new(2026, 3, 9)) { Profiles = new(n => environment.GetValueOrDefault(n)) };
    }

    public void Dispose() => _home.Dispose();

    [Fact]
    public void A_signal_before_the_draft_of_the_keys_leaves_one()
    {
        Answer();
        string? said = _drafts.Keep(_visit);
        using var keys = _drafts.EachAnswer(null, () => null, isProtected: false);
        _visit.KeepIn(keys);
        Answer();
        Assert.Equal(2, _home.KeptAnswers());
        Assert.StartsWith("The answers are kept in your data folder.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_signal_after_the_program_has_let_its_draft_go_begins_no_other()
    {
        using (var keys = _drafts.EachAnswer(null, () => null, isProtected: false))
        {
            _visit.KeepIn(keys);
            Answer();
        }

        string? said = _drafts.Keep(_visit);
        Assert.Equal(1, _home.KeptAnswers());
        Assert.StartsWith("The answers are kept in your data folder.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_kept_stays_where_the_next_draft_cannot_be_written()
    {
        Answer();
        _ = _drafts.Keep(_visit);
        string blocked = Path.Combine(_home.Path, "blocked");
        File.WriteAllText(blocked, "A file where a folder should be.");
        using var keys = new DraftFile(BuiltIn.Questions(), n => n == "XDG_DATA_HOME" ? blocked : _home.Environment().GetValueOrDefault(n)).EachAnswer(null, () => null, isProtected: false);

        _visit.KeepIn(keys);

        Assert.Equal(1, _home.KeptAnswers());
    }

    private void Answer() => Assert.True(_visit.Engine.Unknown().Accepted);
}
