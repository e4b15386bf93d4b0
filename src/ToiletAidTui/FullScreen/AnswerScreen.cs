extern alias TerminalGui;

using TerminalGui::Terminal.Gui.Drawing;
using TerminalGui::Terminal.Gui.Input;
using TerminalGui::Terminal.Gui.ViewBase;
using TerminalGui::Terminal.Gui.Views;
using ToiletAidTui.Host;
using ToiletAidTui.Keys;
using ToiletAidTui.Screens;
using Attribute = TerminalGui::Terminal.Gui.Drawing.Attribute;

namespace ToiletAidTui.FullScreen;

/// <summary>
/// The one view: it draws the rows of a screen and keeps the terminal's own cursor on the answer line, where readers and
/// braille displays look. A new screen is cleared first and written a moment later: a reader that compares frames would
/// leave out the lines that happen to be the same on both screens.
/// </summary>
internal sealed class AnswerScreen : Runnable
{
    private static readonly Attribute Plain = new(Color.None, Color.None, TextStyle.None);

    private readonly Shell _shell;
    private readonly KeyWork _work;
    private readonly Queue<KeyPress> _waiting = new();
    private ScreenText _before;
    private Action _after = () => { };
    private bool _isTold;
    private int _telling = -1;
    private int _part;
    private bool _blank;
    private ScreenRows? _rows;

    /// <summary>Makes the view.</summary>
    /// <param name="shell">The screens.</param>
    /// <param name="work">Where keys act.</param>
    internal AnswerScreen(Shell shell, KeyWork work)
    {
        (_shell, _work, _before) = (shell, work, ScreenText.Of(shell));
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
        BorderStyle = LineStyle.None;
        Border.Settings &= ~BorderSettings.TerminalTitle;
        HotKeySpecifier = (System.Text.Rune)0xFFFF;
        SetScheme(new Scheme(Plain));
    }

    /// <summary>How long a screen is left clear before it is written. The slowest reader tried needs two separate reads for it.</summary>
    internal static readonly TimeSpan ClearTime = TimeSpan.FromMilliseconds(60);

    /// <summary>True when only the character just typed is to be sent.</summary>
    internal bool IsEcho { get; private set; }

    /// <summary>True while a key is at work: then nobody else may touch the screens.</summary>
    internal bool IsWorking => _work.IsUnderWay;

    /// <summary>The rows as drawn last.</summary>
    internal ScreenRows? Rows => _rows;

    /// <summary>Called for every key, before it acts.</summary>
    internal Action KeyPressed { get; set; } = () => { };

    /// <summary>Says that work goes on, or shows what came of it and acts on the keys that were pressed meanwhile. Called each time the loop goes round.</summary>
    internal void GoOn()
    {
        if (!IsWorking)
        {
            return;
        }

        if (_work.IsDone(TimeSpan.Zero))
        {
            End();
            while (!IsWorking && _shell.Ending == Ending.None && _waiting.TryDequeue(out var next))
            {
                Do(next);
            }
        }
        else if (!_isTold && _work.IsLong)
        {
            Tell();
        }
    }

    /// <summary>Draws what changed since the last key. A screen that is shown anew is cleared first.</summary>
    internal void Follow()
    {
        if (_shell.Ending != Ending.None)
        {
            App?.RequestStop();
            return;
        }

        if (_telling != _shell.Telling)
        {
            bool first = _telling < 0;
            _telling = _shell.Telling;
            _part = 0;
            ShowAnew(first);
            return;
        }

        SetNeedsDraw();
    }

    /// <inheritdoc/>
    protected override bool OnKeyDown(Key key)
    {
        KeyPressed();
        if (Translate(key) is not { } press)
        {
            return true;
        }

        if (IsWorking)
        {
            Wait(press);
            return true;
        }

        Do(press);
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var size = Viewport.Size;
        var said = IsCovered ? ScreenText.Hidden(WorkNotice.GoesOn) : IsWorking ? _before : ScreenText.Of(_shell);
        _rows = ScreenRows.Lay(said, _shell.Services.Keys, size.Width, size.Height, _part);
        _part = _rows.Part;
        SetAttribute(Plain);
        for (int y = 0; y < size.Height; y++)
        {
            string row = _blank && y >= _rows.FixedRows ? string.Empty : _rows.Rows[y];
            AddStr(0, y, row.PadRight(size.Width));
        }
        return true;
    }

    /// <summary>True from the key that hides until it can act: nobody who comes in may have to be waited for.</summary>
    private bool IsCovered => IsWorking && _waiting.Any(p => p.Action == KeyAction.Hide);

    /// <summary>A key that is pressed while another is at work waits for its turn. What it hides is out of sight at once.</summary>
    private void Wait(KeyPress press)
    {
        bool hides = press.Action == KeyAction.Hide && !IsCovered;
        _waiting.Enqueue(press);
        if (hides)
        {
            _isTold = true;
            _part = 0;
            ShowAnew(first: false);
        }
    }

    private void Do(KeyPress press)
    {
        if (press.Action is KeyAction.PageDown or KeyAction.PageUp)
        {
            TurnPage(press.Action == KeyAction.PageDown ? 1 : -1);
            return;
        }

        var page = _shell.Current;
        string error = page.Error;
        bool typing = !_shell.IsHidden && page.IsTyping && press.Action == KeyAction.Text;
        (_before, _isTold) = (ScreenText.Of(_shell), false);
        _after = () => IsEcho = typing && !_isTold && page == _shell.Current && error == page.Error;
        if (_work.Begin(() => _shell.Press(press)))
        {
            End();
        }
    }

    private void Tell()
    {
        _isTold = true;
        IsEcho = false;
        _before = _before.With(WorkNotice.GoesOn);
        SetNeedsDraw();
    }

    private void End()
    {
        bool covered = IsCovered;
        _work.End();
        _after();
        if (_isTold && !covered && _telling != _shell.Telling)
        {
            _shell.SayFirst(WorkNotice.Ended);
        }

        Follow();
    }

    private KeyPress? Translate(Key key)
    {
        string name = key.ToString();
        if (_shell.Services.Keys.Find(name) is { } act)
        {
            return new(act);
        }

        var rune = key.AsRune;
        return rune.Value >= ' ' && !key.IsCtrl && !key.IsAlt ? new(KeyAction.Text, rune.ToString()) : null;
    }

    private void TurnPage(int by)
    {
        int part = Math.Clamp(_part + by, 0, (_rows?.Parts ?? 1) - 1);
        if (part != _part)
        {
            _part = part;
            ShowAnew(first: false);
        }
    }

    private void ShowAnew(bool first)
    {
        IsEcho = false;
        if (!first && App is { } app)
        {
            _blank = true;
            app.AddTimeout(ClearTime, () =>
            {
                _blank = false;
                SetNeedsDraw();
                return false;
            });
        }

        SetNeedsDraw();
    }
}
