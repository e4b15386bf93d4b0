namespace ToiletAid.App.Documents;

/// <summary>Our units as codes of the Unified Code for Units of Measure.</summary>
internal static class UcumCodes
{
    /// <summary>The system of the codes.</summary>
    internal const string System = "http://unitsofmeasure.org";

    /// <summary>The code of a unit symbol, or null where there is none, as for money.</summary>
    internal static string? Of(string symbol) => symbol switch
    {
        "m" or "cm" or "mm" or "kg" or "g" or "N" or "kgf" or "deg" or "rad" or "s" or "min" => symbol,
        "in" => "[in_i]",
        "ft" => "[ft_i]",
        "lb" => "[lb_av]",
        "st" => "[stone_av]",
        "oz" => "[oz_av]",
        "lbf" => "[lbf_av]",
        "C" => "Cel",
        "F" => "[degF]",
        "l" => "L",
        "ml" => "mL",
        "years" => "a",
        "a-day" => "/d",
        "share" => "1",
        _ => null,
    };
}
