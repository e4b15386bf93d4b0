using ToiletAid.App.Sessions;
using ToiletAidTui.Host;

namespace ToiletAidTui.Linear;

/// <summary>What every dialogue says in the same words.</summary>
internal static class ReplyLines
{
    /// <summary>Says what came of what was typed; true when it was taken.</summary>
    internal static bool Say(this SpeechLines lines, Reply reply)
    {
        lines.Line(reply.Accepted ? reply.Text : $"Error: {reply.Text}");
        return reply.Accepted;
    }

    /// <summary>Says what came of going back.</summary>
    /// <param name="lines">Where lines go.</param>
    /// <param name="went">False at the first question.</param>
    internal static void WentBack(this SpeechLines lines, bool went) => lines.Line(went ? "Going back." : "This is the first question.");
}
