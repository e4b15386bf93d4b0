using System.Collections.Immutable;
using Humanizer;
using ToiletAid.App.Files;
using ToiletAid.App.Wording;
using ToiletAid.Core.Catalogue;

namespace ToiletAid.App.Teaching;

/// <summary>Plain words for teaching, as in the file. They say who and what; how often and how far comes from the numbers.</summary>
public sealed record TeachingWords
{
    /// <summary>A short name for each kind, with its article.</summary>
    public required ImmutableDictionary<string, string> Kinds { get; init; }

    /// <summary>Who gives an answer, by question and option, after "people".</summary>
    public required ImmutableDictionary<string, ImmutableDictionary<string, string>> People { get; init; }

    /// <summary>The same for several options of a question in fewer words, by question and options with upright lines between.</summary>
    public required ImmutableDictionary<string, ImmutableDictionary<string, string>> Together { get; init; }

    /// <summary>What a kind would do that a rule does not allow, by rule, after "it would".</summary>
    public required ImmutableDictionary<string, string> WouldNot { get; init; }

    /// <summary>What a kind may gain or lose in, by criterion.</summary>
    public required ImmutableDictionary<string, string> Gains { get; init; }

    /// <summary>The built-in words.</summary>
    public static TeachingWords Load() => BuiltIn.Load("teaching-words.json", TeachingJson.Default.TeachingWords);

    /// <summary>A kind in few words; one of the clinic's own by the name that the clinic gave it.</summary>
    internal string Name(Aid aid) => Kinds.GetValueOrDefault(aid.Id) ?? "the " + PlanText.Lower(aid.Name);

    /// <summary>The people who give one of the answers.</summary>
    internal string Who(string question, ImmutableArray<string> options) =>
        "people " + (Together.GetValueOrDefault(question)?.GetValueOrDefault(string.Join('|', options)) ?? options.Select(o => People[question][o]).Humanize("or"));
}
