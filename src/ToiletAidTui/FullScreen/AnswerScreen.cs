extern alias TerminalGui;

using TerminalGui::Terminal.Gui.Drawing;
using TerminalGui::Terminal.Gui.Input;
using TerminalGui::Terminal.Gui.ViewBase;
using TerminalGui::Terminal.Gui.Views;
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
    private int _turn = -1;
    private int _part;
    private bool _blank;
    private ScreenRows? _rows;

    /// <summary>Makes the view.</summary>
    /// <param name="shell">The screens.</param>
    internal AnswerScreen(Shell shell)
    {
        _shell = shell;
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

    /// <summary>The rows as drawn last.</summary>
    internal ScreenRows? Rows => _rows;

    /// <summary>Called for every key, before it acts.</summary>
    internal Action KeyPressed { get; set; } = () => { };

    /// <summary>Draws what changed since the last key. A screen that is shown anew is cleared first.</summary>
    internal void Follow()
    {
        if (_shell.Ending != Ending.None)
        {
            App?.RequestStop();
            return;
        }

        if (_turn != _shell.Turn)
        {
            bool first = _turn < 0;
            _turn = _shell.Turn;
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
        var typing = !_shell.IsHidden && _shell.Current.IsTyping;
        if (Translate(key) is not { } press)
        {
            return true;
        }

        if (press.Act is Act.PageDown or Act.PageUp)
        {
            Turn(press.Act == Act.PageDown ? 1 : -1);
            return true;
        }

        var page = _shell.Current;
        string error = page.Error;
        _shell.Press(press);
        IsEcho = typing && press.Act == Act.Text && page == _shell.Current && error == page.Error;
        Follow();
        return true;
    }

    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        var size = Viewport.Size;
        _rows = ScreenRows.Lay(_shell, size.Width, size.Height, _part);
        _part = _rows.Part;
        SetAttribute(Plain);
        for (int y = 0; y < size.Height; y++)
        {
            string row = _blank && y >= _rows.FixedRows ? string.Empty : _rows.Rows[y];
            AddStr(0, y, row.PadRight(size.Width));
        }
        return true;
    }

    private KeyPress? Translate(Key key)
    {
        string name = key.ToString();
        if (_shell.Desk.Keys.Find(name) is { } act)
        {
            return new(act);
        }

        var rune = key.AsRune;
        return rune.Value >= ' ' && !key.IsCtrl && !key.IsAlt ? new(Act.Text, rune.ToString()) : null;
    }

    private void Turn(int by)
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
