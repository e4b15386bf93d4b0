using System.Collections.Immutable;
using System.Text.Json;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;
using ToiletAid.Core.Reach;

namespace ToiletAid.App.Files;

/// <summary>Reads the tables of bodies, joints and postures.</summary>
public static class BodyTablesReader
{
    private const int KnownFormat = 1;

    /// <summary>The tables that come with the program.</summary>
    public static BodyTables ReadBuiltIn() => Tables(BuiltIn.Load("body.json", KnowledgeJson.Default.BodyFile));

    /// <summary>Reads tables from a file of the same shape.</summary>
    /// <exception cref="JsonException">The file has a member that is not known, misses one, or has a value that cannot be.</exception>
    public static BodyTables Read(Stream stream) =>
        Tables(JsonSerializer.Deserialize(stream, KnowledgeJson.Default.BodyFile) ?? throw new JsonException("the body file is empty"));

    private static BodyTables Tables(BodyFile file)
    {
        if (file.Format != KnownFormat)
        {
            throw new JsonException($"the body file has format {file.Format}; this program reads format {KnownFormat}");
        }

        var regressions = ImmutableArray.CreateBuilder<BodyRegression>(file.Regressions.Length);
        foreach (BodyFileRegression r in file.Regressions)
        {
            regressions.Add(ToRegression(r));
        }

        var numbers = new Dictionary<string, Sourced>(file.Numbers.Length, StringComparer.Ordinal);
        foreach (BodyFileNumber n in file.Numbers)
        {
            if (!numbers.TryAdd(n.Id, ToSourced(n)))
            {
                throw new JsonException($"the body file gives '{n.Id}' twice");
            }
        }

        try
        {
            return new BodyTables(regressions.MoveToImmutable(), new NumberTable(numbers));
        }
        catch (Exception e) when (e is KeyNotFoundException or ArgumentException)
        {
            throw new JsonException($"the body file is incomplete: {e.Message}", e);
        }
    }

    private static BodyRegression ToRegression(BodyFileRegression r)
    {
        if (r.Sex == Sex.Unstated || !(r.Spread >= 0))
        {
            throw new JsonException($"the regression of {r.Measure} needs sex female or male and a spread of 0 or more");
        }

        return new BodyRegression
        {
            Measure = r.Measure,
            Sex = r.Sex,
            Intercept = r.Intercept,
            PerStature = r.PerStature,
            PerMass = r.PerMass,
            Spread = r.Spread,
            Basis = r.Basis,
            Source = r.Source,
        };
    }

    private static Sourced ToSourced(BodyFileNumber n)
    {
        Unit unit = Units.Find(n.Unit) ?? throw new JsonException($"'{n.Id}' has the unit '{n.Unit}', which is not known");
        double low = n.Low ?? n.Value, high = n.High ?? n.Value;
        if (!(low <= n.Value && n.Value <= high))
        {
            throw new JsonException($"'{n.Id}' must lie between its low and its high");
        }

        return new Sourced(unit.ToSi(n.Value), unit.ToSi(low), unit.ToSi(high), n.Basis, n.Source);
    }
}
