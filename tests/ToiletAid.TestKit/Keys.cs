namespace ToiletAid.TestKit;

/// <summary>Keys as a terminal sends them.</summary>
internal static class Keys
{
    internal const string Down = "\u001b[B";
    internal const string Up = "\u001b[A";
    internal const string Home = "\u001b[H";
    internal const string End = "\u001b[F";
    internal const string Enter = "\r";
    internal const string Escape = "\u001b";
    internal const string Backspace = "\u007f";
    internal const string F1 = "\u001bOP";
    internal const string F2 = "\u001bOQ";
    internal const string F4 = "\u001bOS";
    internal const string F9 = "\u001b[20~";
    internal const string F12 = "\u001b[24~";
    internal const string PageDown = "\u001b[6~";

    internal static string Control(char letter) => ((char)(letter - 'A' + 1)).ToString();
}
