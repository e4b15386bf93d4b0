using ToiletAidTui.Keys;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>The screens of the program: which one is shown and what the keys that work everywhere do. It draws nothing.</summary>
/// <param name="services">What the screens work with.</param>
internal sealed class Shell(ScreenServices services)
{
    private readonly Stack<Page> _pages = new();
    private readonly Curtain _curtain = new(services.Passphrase);
    private string _warning = string.Empty;
    private bool _isRefusedAgain;
    private IReadOnlyList<string>? _left;

    /// <summary>What the screens work with.</summary>
    internal ScreenServices Services => services;

    /// <summary>The visit under way; null before one is started.</summary>
    internal Visit? Visit { get; set; }

    /// <summary>The screen that is shown.</summary>
    internal Page Current => _pages.Peek();

    /// <summary>A line that is said before the screen's own lines: what the last key led to.</summary>
    internal string Opening { get; private set; } = string.Empty;

    /// <summary>Goes up each time a screen is to be said from its top.</summary>
    internal int Telling { get; private set; }

    /// <summary>Why the front end has to stop.</summary>
    internal Ending Ending { get; set; }

    /// <summary>True while nothing of the visit may be seen.</summary>
    internal bool IsHidden => _curtain.IsClosed;

    /// <summary>True while a trial is recorded, also behind another screen.</summary>
    internal bool IsTrying => _pages.Any(p => p is TrialPage);

    /// <summary>True while a trial has answers that are not in the file.</summary>
    internal bool HasUnsavedTrial => _pages.Any(p => p is TrialPage { IsUnsaved: true });

    /// <summary>The answer line while the screen is hidden.</summary>
    internal string HiddenAnswer => _curtain.Answer;

    /// <summary>Why the last answer was not taken; empty when it was. Refused twice for the same reason it reads differently, since readers say
    /// nothing of a row that stays as it is.</summary>
    internal string Error => _isRefusedAgain ? $"Again. {Current.Error}" : Current.Error;

    /// <summary>The lines of the screen with the opening.</summary>
    internal IReadOnlyList<string> Lines => IsHidden ? [_curtain.Line] : _left ?? (Opening.Length > 0 ? [Opening, .. Current.Lines] : Current.Lines);

    /// <summary>Shows a screen in front of the others.</summary>
    internal void Push(Page page, string opening = "")
    {
        _pages.Push(page);
        Show(opening);
    }

    /// <summary>Shows a screen in place of the one in front.</summary>
    internal void Replace(Page page, string opening = "")
    {
        _pages.TryPop(out _);
        Push(page, opening);
    }

    /// <summary>Puts a screen with the same text in place of the one in front: only the answer line is said.</summary>
    internal void Swap(Page page)
    {
        _pages.Pop();
        _pages.Push(page);
    }

    /// <summary>Shows a screen in place of all.</summary>
    internal void Restart(Page page, string opening = "")
    {
        _pages.Clear();
        Push(page, opening);
    }

    /// <summary>Takes the screen in front away; the last one stays.</summary>
    internal void Pop(string opening = "")
    {
        if (_pages.Count > 1)
        {
            _pages.Pop();
            Show(opening);
            return;
        }

        Show($"This is the first screen. {services.Keys.Words(KeyAction.Leave)} leaves.");
    }

    /// <summary>Takes the screen in front away and leaves its text where it is: only the answer line of the one behind it is said.</summary>
    internal void PopQuietly()
    {
        var text = Lines;
        _pages.Pop();
        _left = text;
    }

    /// <summary>Says the screen again.</summary>
    internal void Show(string opening = "")
    {
        _left = null;
        Opening = _warning.Length == 0 ? opening : $"{opening} {_warning}".TrimStart();
        _warning = string.Empty;
        Telling++;
    }

    /// <summary>Says a sentence before the screen in front, which is to be said from its top already.</summary>
    internal void SayFirst(string sentence) => Opening = $"{sentence} {Opening}".TrimEnd();

    /// <summary>Says a sentence once, before the next screen.</summary>
    internal void Warn(string sentence) => _warning = sentence;

    /// <summary>Keeps each answer of a visit from now on.</summary>
    internal void KeepAnswers(Visit visit)
    {
        var each = services.EachAnswer(visit.Path, visit.Earlier);
        each?.Tell = Warn;
        visit.KeepIn(each);
    }

    /// <summary>Hides everything until Enter is pressed, or the passphrase is typed where the program was given one.</summary>
    internal void Hide()
    {
        if (!IsHidden)
        {
            _curtain.Close();
            _left = null;
            Telling++;
        }
    }

    /// <summary>Acts on a key.</summary>
    internal void Press(KeyPress key)
    {
        if (IsHidden)
        {
            Telling += _curtain.Press(key) ? 1 : 0;
            return;
        }

        string error = Current.Error;
        int telling = Telling;
        Take(key);
        bool isSame = telling == Telling && error.Length > 0 && error == Current.Error;
        _isRefusedAgain = isSame && (key.Action == KeyAction.Text && (Current.IsTyping || !ListCursor.IsDigit(key)) ? _isRefusedAgain : !_isRefusedAgain);
    }

    private void Take(KeyPress key)
    {
        switch (key.Action)
        {
            case KeyAction.Help when Current.Name != CommonPages.HelpName:
                Push(CommonPages.Help(this));
                break;
            case KeyAction.Menu when Current.Name != CommonPages.MenuName:
                Push(CommonPages.Menu(this));
                break;
            case KeyAction.Answers:
                Push(CommonPages.Answers(this));
                break;
            case KeyAction.Note when Current.Name != NotePage.PageName:
                NotePage.Open(this);
                break;
            case KeyAction.Trial when !IsTrying:
                TrialPages.Open(this);
                break;
            case KeyAction.Save:
                SavePages.Save(this);
                break;
            case KeyAction.Leave:
                CommonPages.Leave(this);
                break;
            case KeyAction.Linear:
                Ending = Ending.OtherMode;
                break;
            case KeyAction.Repeat:
                Show();
                break;
            case KeyAction.Hide:
                Hide();
                break;
            case KeyAction.Back:
                Current.Back(this);
                break;
            default:
                Current.Press(this, key);
                break;
        }
    }
}
