using ToiletAid.App.Sessions;

namespace ToiletAid.App.Stock;

/// <summary>Questions about an aid in the hand, one after the other.</summary>
public interface IMeasuring
{
    /// <summary>Number of the current question, from 0.</summary>
    int Position { get; }

    /// <summary>True when nothing is left to ask.</summary>
    bool IsDone { get; }

    /// <summary>How many answers there are.</summary>
    int Count { get; }

    /// <summary>What may be typed, short.</summary>
    string Wanted { get; }

    /// <summary>What is asked, as lines.</summary>
    IEnumerable<string> Asking();

    /// <summary>How to find out, as lines.</summary>
    IEnumerable<string> Help();

    /// <summary>Takes an answer.</summary>
    /// <param name="text">As typed.</param>
    Reply Submit(string text);

    /// <summary>Goes on without an answer.</summary>
    Reply Unknown();

    /// <summary>One step back; false at the first.</summary>
    bool Back();

    /// <summary>What was answered, one a line.</summary>
    IEnumerable<string> Summary();
}
