using System.Text.Json;

namespace ToiletAid.App.Files;

/// <summary>Tells a text that was cut short from one that is wrong.</summary>
internal static class JsonEnd
{
    private const int DeepestNesting = 16;

    /// <summary>True when nothing is wrong with a JSON object but that its end is missing.</summary>
    internal static bool IsMissing(ReadOnlySpan<byte> text)
    {
        var reader = new Utf8JsonReader(text, isFinalBlock: false, new(new JsonReaderOptions { MaxDepth = DeepestNesting }));
        try
        {
            bool any = false;
            while (reader.Read())
            {
                any = true;
                if (reader.CurrentDepth == 0 && reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
                {
                    return false;
                }
            }

            return any;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
