namespace ToiletAid.Core.Interview;

/// <summary>What shape an answer has.</summary>
public enum QuestionKind
{
    /// <summary>One of the options, or a number where the question has one too.</summary>
    Choice,

    /// <summary>Any of the options, or none of them.</summary>
    Many,

    /// <summary>A number with a unit.</summary>
    Number,

    /// <summary>A number for each of several parts, any of which may be left out.</summary>
    Parts,

    /// <summary>The options in order, ties and gaps allowed.</summary>
    Order,
}
