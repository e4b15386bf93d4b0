using System.Text;
using ToiletAid.App.Files;

namespace ToiletAidTui.Commands;

/// <summary>A file that an option asked for beside the result.</summary>
internal static class OutputFile
{
    /// <summary>Writes it whole or not at all; gives the sentence that says why not, or null.</summary>
    /// <param name="path">As typed.</param>
    /// <param name="text">What it is to hold.</param>
    internal static string? Write(string path, string text)
    {
        try
        {
            WholeFile.Write(path, Encoding.UTF8.GetBytes(text));
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return $"{(path.Length == 0 ? "The file" : path)} could not be written, {ProfileFile.Reason(e)}.";
        }
    }
}
