using System.Text;

namespace ToiletAid.App.Files;

/// <summary>How the bytes of a text stand for characters. All text is UTF-8; what some editors save instead is named.</summary>
internal static class TextForm
{
    /// <summary>The fault, ready to be told; null for what may be UTF-8.</summary>
    internal static Issue? Fault(ReadOnlySpan<byte> text) =>
        Utf16(text) is null ? null : new("utf-16", string.Empty, "it is UTF-16, save it as UTF-8");

    /// <summary>UTF-16 by its mark or by its many zeros, which no text in UTF-8 has; null for anything else.</summary>
    internal static Encoding? Utf16(ReadOnlySpan<byte> text) =>
        text is [0xFF, 0xFE, ..] or [not 0, 0, not 0, 0, ..] ? Encoding.Unicode
        : text is [0xFE, 0xFF, ..] or [0, not 0, 0, not 0, ..] ? Encoding.BigEndianUnicode
        : null;

    /// <summary>The same text as UTF-8, where it is UTF-16.</summary>
    internal static byte[] ToUtf8(byte[] text) => Utf16(text) is { } form ? Encoding.UTF8.GetBytes(form.GetString(text)) : text;
}
