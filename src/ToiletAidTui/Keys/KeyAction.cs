namespace ToiletAidTui.Keys;

/// <summary>What a key does, whatever key that is.</summary>
internal enum KeyAction
{
    /// <summary>The entry above.</summary>
    Up,

    /// <summary>The entry below.</summary>
    Down,

    /// <summary>The first entry, or the start of what is typed.</summary>
    First,

    /// <summary>The last entry, or the end of what is typed.</summary>
    Last,

    /// <summary>One character to the left.</summary>
    Left,

    /// <summary>One character to the right.</summary>
    Right,

    /// <summary>The part of the text that did not fit below.</summary>
    PageDown,

    /// <summary>The part of the text that did not fit above.</summary>
    PageUp,

    /// <summary>Takes the entry or what was typed.</summary>
    Enter,

    /// <summary>Removes the character before the cursor.</summary>
    Erase,

    /// <summary>Removes the character at the cursor.</summary>
    Delete,

    /// <summary>Goes back one step.</summary>
    Back,

    /// <summary>Help.</summary>
    Help,

    /// <summary>Every action, as a list.</summary>
    Menu,

    /// <summary>Goes on line by line.</summary>
    Linear,

    /// <summary>Says the screen again.</summary>
    Repeat,

    /// <summary>The answers so far.</summary>
    Answers,

    /// <summary>The answer is not known.</summary>
    Unknown,

    /// <summary>How the answer was obtained.</summary>
    How,

    /// <summary>Types the answer in place of choosing it.</summary>
    Type,

    /// <summary>Asks nothing more and gives the result.</summary>
    Finish,

    /// <summary>Writes a free note.</summary>
    Note,

    /// <summary>Records how a plan was tried.</summary>
    Trial,

    /// <summary>Saves the answers.</summary>
    Save,

    /// <summary>Hides the screen.</summary>
    Hide,

    /// <summary>Leaves the program.</summary>
    Leave,

    /// <summary>A character.</summary>
    Text,
}
