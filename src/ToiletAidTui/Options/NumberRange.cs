using System.CommandLine.Parsing;
using System.Globalization;

namespace ToiletAidTui.Options;

/// <summary>Numbers that an option takes.</summary>
internal static class NumberRange
{
    /// <summary>Adds an error when the number is out of range; what is not a number has its error already.</summary>
    internal static void Check(OptionResult result, long low, long high, string name)
    {
        if (result.Tokens is [var token] && long.TryParse(token.Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long value) && (value < low || value > high))
        {
            result.AddError(value < low ? $"The value of {name} is below {low}, give {low} or more" : $"The value of {name} is above {high}, give {high} or less");
        }
    }
}
