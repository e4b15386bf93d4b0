using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ToiletAid.Acceptance.Tests.Documents;

/// <summary>The table of the Unified Code for Units of Measure as its publisher gives it out, ucum-essence.xml, from the package Fhir.Metrics.</summary>
internal sealed partial class UcumTable(XElement root)
{
    private readonly Dictionary<string, double> _prefixes = root.Elements("prefix").ToDictionary(Code, p => Number(p.Element("value")!), StringComparer.Ordinal);
    private readonly HashSet<string> _bases = [.. root.Elements("base-unit").Select(Code)];
    private readonly Dictionary<string, XElement> _units = root.Elements("unit").ToDictionary(Code, StringComparer.Ordinal);

    internal static UcumTable Load()
    {
        var package = typeof(Fhir.Metrics.UCUM).Assembly;
        using var stream = package.GetManifestResourceStream(package.GetManifestResourceNames().Single(n => n.EndsWith("ucum-essence.xml", StringComparison.OrdinalIgnoreCase)))!;
        var table = new UcumTable(XDocument.Load(stream).Root!);
        Assert.Equal(7, table._bases.Count); // metre, second, gram, radian, kelvin, coulomb, candela
        return table;
    }

    internal bool Has(string code) => _bases.Contains(code) || _units.ContainsKey(code);

    /// <summary>The size of a unit in metres, grams, seconds and radians.</summary>
    internal double InBaseUnits(string term)
    {
        double size = 1;
        bool divide = false;
        foreach (string part in Parts().Split(term).Where(p => p.Length > 0))
        {
            if (part is "." or "/")
            {
                divide = part == "/";
                continue;
            }

            size = divide ? size / Component(part) : size * Component(part);
        }

        return size;
    }

    private double Component(string part)
    {
        if (double.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out double number))
        {
            return number;
        }

        var power = Power().Match(part);
        int exponent = power.Groups["power"].Success ? int.Parse(power.Groups["power"].Value, CultureInfo.InvariantCulture) : 1;
        return Math.Pow(Symbol(power.Groups["symbol"].Value), exponent);
    }

    private double Symbol(string code)
    {
        if (_bases.Contains(code))
        {
            return 1;
        }

        if (_units.TryGetValue(code, out var unit))
        {
            var value = unit.Element("value")!;
            return Number(value) * InBaseUnits((string)value.Attribute("Unit")!);
        }

        string prefix = _prefixes.Keys.FirstOrDefault(p => code.StartsWith(p, StringComparison.Ordinal) && IsMetric(code[p.Length..])) ?? throw new InvalidOperationException($"{code} is no unit of the table");
        return _prefixes[prefix] * Symbol(code[prefix.Length..]);
    }

    private bool IsMetric(string code) => _bases.Contains(code) || (_units.TryGetValue(code, out var unit) && (string?)unit.Attribute("isMetric") == "yes");

    private static string Code(XElement element) => (string)element.Attribute("Code")!;

    private static double Number(XElement value) => double.Parse((string)value.Attribute("value")!, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<op>[./])(?![^\[]*\])", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Parts();

    [GeneratedRegex(@"^(?<symbol>.*?)(?<power>-?\d+)?$", RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Power();
}
