using System.Globalization;

namespace ToiletAidTui.Batch;

/// <summary>How far a long run is, as plain lines at whole steps: a screen reader hears a line once and nothing in between.</summary>
/// <param name="talk">Where it is said; null to say nothing.</param>
internal sealed class Progress(TextWriter? talk)
{
    private const long FirstStep = 1000;

    /// <summary>Says the number when it is a whole step: each thousand, from ten thousand each ten thousand, and so on.</summary>
    internal void At(long done)
    {
        long step = FirstStep;
        while (step <= done / 10)
        {
            step *= 10;
        }

        if (talk is not null && done > 0 && done % step == 0)
        {
            talk.WriteLine($"{done.ToString("N0", CultureInfo.InvariantCulture)} profiles are done.");
        }
    }
}
