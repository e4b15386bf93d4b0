using ToiletAid.Core.Person;

namespace ToiletAid.App.Wording;

/// <summary>A sentence of the brief result.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Sentence">One sentence with its full stop.</param>
public sealed record BriefPart(BriefTopic Topic, string Sentence)
{
    /// <summary>The topic as it is written in JSON.</summary>
    public string Name => Words.Of(Topic);
}
