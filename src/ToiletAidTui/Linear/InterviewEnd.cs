namespace ToiletAidTui.Linear;

/// <summary>How an interview ended.</summary>
public enum InterviewEnd
{
    /// <summary>Nothing was left to ask, or the person asked for the result.</summary>
    Done,

    /// <summary>The person left.</summary>
    Quit,

    /// <summary>The person goes on in full screen.</summary>
    Switch,

    /// <summary>The person asked for a page, and comes back to the question.</summary>
    Page,

    /// <summary>Input came to its end before the questions did.</summary>
    InputEnded,
}
