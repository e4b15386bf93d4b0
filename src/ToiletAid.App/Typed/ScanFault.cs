namespace ToiletAid.App.Typed;

/// <summary>Why typed text could not be taken apart.</summary>
internal enum ScanFault
{
    /// <summary>It could.</summary>
    None,

    /// <summary>Nothing was typed.</summary>
    Empty,

    /// <summary>More text than any quantity has.</summary>
    TooLong,

    /// <summary>It does not start with a number.</summary>
    NoNumber,

    /// <summary>More than two numbers.</summary>
    TooManyNumbers,

    /// <summary>A comma before three digits: thousands or decimals.</summary>
    CommaOfTwoMeanings,

    /// <summary>Thousands are set apart.</summary>
    ThousandsSetApart,
}
