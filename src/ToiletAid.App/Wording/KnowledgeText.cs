using System.Globalization;
using Humanizer;
using ToiletAid.App.Typed;
using ToiletAid.Core.Catalogue;
using ToiletAid.Core.Evidence;
using ToiletAid.Core.Interview;
using ToiletAid.Core.Person;
using ToiletAid.Core.Quantities;

namespace ToiletAid.App.Wording;

/// <summary>The built-in data as lines to be read.</summary>
public static class KnowledgeText
{
    /// <summary>Writes a built-in file as it is.</summary>
    public static void Copy(string name, TextWriter output)
    {
        using var stream = typeof(KnowledgeText).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"the program was built without {name}");
        using var reader = new StreamReader(stream);
        output.WriteLine(reader.ReadToEnd().TrimEnd());
    }

    /// <summary>Every question: id, prompt, answers, depths, how to find out, why.</summary>
    public static IEnumerable<string> Questions(QuestionSet questions)
    {
        foreach (var q in questions.All)
        {
            yield return $"{q.Id}. {q.Prompt}";
            yield return $"Answers: {Answers(q)}.";
            yield return $"Depths: {q.Depths.Humanize(d => Words.Of(d), "and")}.";
            foreach (var c in q.AskWhen)
            {
                yield return c.Known is { } known ? $"Asked only when {c.Question} is known as {string.Join(" or ", known)}."
                    : c.Is is { } yes
                    ? $"Asked only when {c.Question} is {string.Join(" or ", yes)}, or not known."
                    : $"Asked only when {c.Question} is not {string.Join(" or ", c.IsNot!)}.";
            }

            yield return $"How to find out: {q.Observe}";
            yield return $"Why it matters: {q.Why}";
            yield return string.Empty;
        }
    }

    /// <summary>Every kind of aid and add-on with its attributes and their basis.</summary>
    public static IEnumerable<string> Aids(AidCatalogue catalogue)
    {
        foreach (var a in catalogue.Aids)
        {
            yield return $"{a.Id}. {a.Name}.";
            yield return a.Summary;
            foreach (var (name, number, unit) in Attributes(a))
            {
                if (number is not null)
                {
                    yield return Attribute(name, number, unit);
                }
            }

            yield return $"Steps: {a.Steps}.";
            if (!a.AddOns.IsEmpty)
            {
                yield return $"Add-ons: {string.Join(", ", a.AddOns)}.";
            }

            if (!a.Variants.IsEmpty)
            {
                yield return $"Variants: {string.Join("; ", a.Variants.Select(v => $"{v.Id}, {v.Has}"))}.";
            }

            yield return string.Empty;
        }

        foreach (var a in catalogue.AddOns)
        {
            yield return $"{a.Id}. {a.Name}, an add-on.";
            yield return a.Summary;
            yield return string.Empty;
        }
    }

    private static (string Name, Sourced? Number, string Unit)[] Attributes(Aid a) =>
    [
        ("Length", a.Length, "cm"),
        ("Reach of the jet", a.JetReach, "cm"),
        ("Width of the tip", a.TipWidth, "cm"),
        ("Mass", a.Mass, "g"),
        ("Folded length", a.FoldedLength, "cm"),
        ("Reservoir", a.Water?.Reservoir, "ml"),
        ("Coverage", a.Coverage, "share"),
        ("Rubbing", a.Rubbing, "share"),
        ("Soil touched", a.SoilTouched, "share"),
        ("Easy to clean", a.EasyToClean, "share"),
        ("Noticeable", a.Noticeable, "share"),
        ("Noise", a.Noise, "share"),
        ("Need of sight", a.NeedsSight, "share"),
        ("Price", a.Upkeep.Price, "money"),
    ];

    private static string Attribute(string name, Sourced number, string symbol)
    {
        var unit = Units.Find(symbol)!;
        string Shown(double si) => Math.Round(unit.FromSi(si), 2).ToString("0.##", CultureInfo.InvariantCulture);
        string basis = Words.Of(number.Basis).Replace('-', ' ');
        return $"{name}: {Spoken.Amount(Math.Round(unit.FromSi(number.Value), 2), unit)}, from {Shown(number.Low)} to {Shown(number.High)}. Basis: {basis}.";
    }

    private static string Answers(Question q)
    {
        string number = q.Number is { } n ? Range(n) : string.Empty;
        string options = string.Join(", ", q.Options.Select(o => o.Id));
        string parts = string.Join(", ", q.Parts.Select(p => $"{p.Id} {Range(p.Number)}"));
        string all = string.Join(", or ", ((string[])[options, number, parts]).Where(s => s.Length > 0));
        return q.Kind switch
        {
            QuestionKind.Many => $"any of {all}",
            QuestionKind.Order => $"in order, {all}",
            _ => all,
        };
    }

    private static string Range(NumberSpec n)
    {
        var unit = Units.Find(n.Units[0])!;
        string name = unit.Symbol is "money" or "share" ? string.Empty : " " + unit.Name;
        string others = n.Units.Length > 1 ? $", also in {string.Join(", ", n.Units.Skip(1))}" : string.Empty;
        return string.Create(CultureInfo.InvariantCulture, $"{n.Low} to {n.High}{name}{others}");
    }
}
