using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace ToiletAid.App.Files;

/// <summary>Brings profiles of earlier formats to the newest one, a step a format.</summary>
/// <param name="steps">The first makes format 2 out of format 1, and so on. Each takes a whole profile and gives a whole one.</param>
internal sealed class Migrations(ImmutableArray<Func<JsonObject, JsonObject>> steps)
{
    /// <summary>The steps of this program. Format 1 is the only one there has been.</summary>
    internal static readonly Migrations Known = new([]);

    /// <summary>The newest format.</summary>
    internal int Newest => steps.Length + 1;

    /// <summary>The profile in the newest format.</summary>
    /// <param name="profile">A profile.</param>
    /// <param name="format">Its format, from 1.</param>
    internal JsonObject Upgrade(JsonObject profile, int format)
    {
        for (int i = format - 1; i < steps.Length; i++)
        {
            profile = steps[i](profile);
            profile["format"] = i + 2;
        }

        return profile;
    }
}
