extern alias TerminalGui;

using ToiletAidTui.FullScreen;
using ToiletAidTui.Screens;
using Key = TerminalGui::Terminal.Gui.Input.Key;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>Long work is told on the answer line, and nothing that is pressed meanwhile is lost.</summary>
[Collection(nameof(OneScreen))]
public sealed class LongWorkTests : IDisposable
{
    private readonly ManualResetEventSlim _begun = new();
    private readonly ManualResetEventSlim _mayEnd = new();
    private readonly HandClock _clock = new();
    private readonly Model _model = new(depth: null);
    private readonly Stage _stage;

    public LongWorkTests() => _stage = new(_model.Shell, 80, 24, new FullScreenOptions { Clock = _clock });

    public void Dispose()
    {
        _mayEnd.Set();
        _stage.Dispose();
        _begun.Dispose();
        _mayEnd.Dispose();
    }

    [Fact]
    public void It_is_told_at_two_seconds_once_and_on_the_answer_line_alone()
    {
        Begin(s => s.Push(new TextPage("after", ["It is found."])));
        string[] before = _stage.Rows;
        Pass(1.9);
        Assert.Equal(before, _stage.Rows);
        Pass(0.1);
        Assert.Equal("Working...", _stage.Rows[_stage.Laid.AnswerRow]);
        Assert.Equal((_stage.Laid.AnswerRow, 0), (_stage.Laid.CursorRow, _stage.Laid.CursorColumn));
        string[] told = _stage.Rows;
        Assert.Equal([_stage.Laid.AnswerRow], Enumerable.Range(0, 24).Where(i => before[i] != told[i]));
        Pass(60);
        Assert.Equal(told, _stage.Rows);
        End();
        Assert.Equal(["Done.", "It is found.", string.Empty, "Enter goes back.", string.Empty], _stage.Rows[1..6]);
        _stage.Press(Key.Enter);
        Assert.Equal(["Slow work.", "1. Begin", string.Empty, "Begin, 1 of 1", string.Empty], _stage.Rows[1..6]);
    }

    [Fact]
    public void Quick_work_is_not_told()
    {
        Begin(s => s.Push(new TextPage("after", ["It is found."])));
        Pass(1.9);
        End();
        Pass(60);
        Assert.Equal(["It is found.", string.Empty, "Enter goes back.", string.Empty], _stage.Rows[1..5]);
    }

    [Fact]
    public void After_work_that_leads_to_no_other_screen_the_answer_line_comes_back()
    {
        Begin(_ => { });
        string[] before = _stage.Rows;
        Pass(2);
        Assert.NotEqual(before, _stage.Rows);
        End();
        Assert.Equal(before, _stage.Rows);
    }

    [Fact]
    public void Keys_pressed_meanwhile_act_afterwards_in_their_order()
    {
        Begin(s => s.Push(new EditPage("after", ["It is found."], "Name", "Not taken. Name", (_, _) => null)));
        _stage.Touch(Key.B);
        Pass(2);
        _stage.Touch(Key.A);
        _stage.Touch(Key.Home);
        _stage.Touch(Key.C);
        Assert.Equal("Working...", _stage.Rows[_stage.Laid.AnswerRow]);
        End();
        Assert.Equal("Name: cba", _stage.Rows[_stage.Laid.AnswerRow]);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(2.0)]
    public void The_key_that_hides_hides_at_once_and_until_Enter(double seconds)
    {
        Begin(s => s.Push(new TextPage("after", ["It is found."])));
        Pass(seconds);
        _stage.Touch(Key.F12);
        Assert.Equal(["The screen is hidden.", string.Empty, "Working...", string.Empty], _stage.Rows[1..5]);
        Pass(60);
        _stage.Size(79, 24);
        Assert.Equal(["The screen is hidden.", string.Empty, "Working...", string.Empty], _stage.Rows[1..5]);
        End();
        Assert.Equal(["The screen is hidden.", string.Empty, "Enter shows it again.", string.Empty], _stage.Rows[1..5]);
        _stage.Press(Key.Enter);
        Assert.Equal(["It is found.", string.Empty, "Enter goes back.", string.Empty], _stage.Rows[1..5]);
    }

    [Fact]
    public void A_new_size_meanwhile_shows_what_was_there()
    {
        Begin(s => s.Push(new TextPage("after", ["It is found."])));
        Pass(2);
        _stage.Size(40, 12);
        Assert.Equal(["Slow work.", "1. Begin", string.Empty, "Working...", string.Empty], _stage.Rows[_stage.Laid.FixedRows..][..5]);
    }

    [Fact]
    public void A_fault_of_the_work_is_not_swallowed()
    {
        Begin(_ => throw new NotSupportedException("of the work"));
        Assert.Equal("of the work", Assert.Throws<NotSupportedException>(End).Message);
    }

    /// <summary>Chooses an entry whose work lasts until <see cref="End"/>.</summary>
    private void Begin(Action<Shell> then)
    {
        _model.Shell.Push(new ListPage("slow", "Slow work.", [], [new("Begin", s =>
        {
            _begun.Set();
            _mayEnd.Wait();
            then(s);
        })]));
        _stage.Press(Key.CursorDown);
        _stage.Touch(Key.Enter);
        Assert.True(_begun.Wait(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken));
    }

    private void Pass(double seconds)
    {
        _clock.Pass(TimeSpan.FromSeconds(seconds));
        _stage.GoRound();
    }

    private void End()
    {
        _mayEnd.Set();
        _stage.Settle();
    }
}
