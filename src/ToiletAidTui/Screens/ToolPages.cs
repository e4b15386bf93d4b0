using System.Collections.Immutable;
using System.Globalization;

namespace ToiletAidTui.Screens;

/// <summary>Screens beside the interview: calculators, comparing two visits, documents.</summary>
internal static class ToolPages
{
    /// <summary>Kinds that can be heard beside each other without losing the thread.</summary>
    internal const int MostKinds = 4;

    /// <summary>The quick calculators.</summary>
    internal static Page Calculators(Shell shell) => new ListPage("calculators", "Calculators.", [],
    [
        .. shell.Services.Calculators.Select(c => new Entry(
            $"{char.ToUpperInvariant(c.Name[0])}{c.Name[1..]}. {c.Description}",
            s => s.Push(FormPages.Make($"calculator {c.Name}", $"Calculator of {c.Name}.", c.Fields, c.Compute, "Compute", "Done.")))),
        new("Go back", s => s.Pop()),
    ]);

    /// <summary>Asks which profile, then for a second one.</summary>
    internal static Page Compare() => new EditPage("compare", ["Compare two visits of one person."], "Profile", "Not opened. Profile", (shell, path) =>
    {
        if (path.Length == 0)
        {
            return "Nothing was typed.";
        }

        shell.Replace(new EditPage("compare second", ["Compare with a visit in another profile of the same person, or with the one before in this profile."], "Profile, Enter alone for this one", "Not opened. Profile", (s, second) =>
            Fault(s, second.Length == 0 ? [path] : [path, second], replace: true)));
        return null;
    });

    /// <summary>Shows the comparison of the last two visits in a profile.</summary>
    internal static void Compared(Shell shell, string path)
    {
        if (Fault(shell, [path], replace: false) is { } fault)
        {
            shell.Show(fault);
        }
    }

    /// <summary>A document about a saved profile.</summary>
    internal static Page Documents(Shell shell, string path) => FormPages.Make(
        "document",
        "Write a document. Without a file it is shown.",
        [
            Field("--kind", "note for the clinic note, sheet for a sheet to leave behind, record for the record system. The note if left out.", "the clinic note"),
            Field("--for", "Whom a sheet is for: person or helper. The person if left out.", "the person"),
            Field("--sheet", "Form of the person's sheet: words, or pictures for who does not read. By the answers if left out.", "what the answers ask for"),
            Field("--format", "text, markdown or html; json for a record. Text if left out.", "the usual one"),
            Field("--plan", "Place of the plan that was taken. The first if left out.", "the first"),
            Field("--language", "en-GB or en-US.", "British English"),
            Field("--out", "File to write, such as note.html. Only its owner may read it.", "none, it is shown"),
        ],
        given => shell.Services.Document(path, given),
        "Write or show it",
        "Written.");

    private static FormField Field(string option, string description, string leftOut) => new(option, FormWords.Of("report", option), description, leftOut);

    /// <summary>Every kind of aid, to ask why it is not first.</summary>
    /// <param name="shell">The screens.</param>
    /// <param name="about">What is said about a kind.</param>
    internal static Page WhyNot(Shell shell, Func<string, ImmutableArray<string>> about) => new ListPage("why not", "Why not another kind?", [],
    [
        .. shell.Services.Kinds.Select(k => new Entry(k.Name, s => s.Push(new TextPage("why not this", [$"{k.Name}.", .. about(k.Id)])))),
        new("Go back", s => s.Pop()),
    ]);

    /// <summary>Asks which kinds are explained side by side, all in one line: a list of lists would have thousands of pages.</summary>
    /// <param name="shell">The screens.</param>
    /// <param name="path">The saved profile of a person whom it is about; null for nobody.</param>
    internal static Page Explain(Shell shell, string? path = null)
    {
        var kinds = shell.Services.Kinds;
        return new EditPage("explain",
        [
            $"Kinds side by side, for teaching. Type 1 to {MostKinds} numbers with a space between, such as 2 3.",
            .. kinds.Select((k, i) => $"{i + 1}. {k.Name}"),
        ],
        "Numbers", "Not taken. Numbers", (s, typed) =>
        {
            string[] words = typed.Split((char[])[' ', ','], StringSplitOptions.RemoveEmptyEntries);
            if (words.Length == 0)
            {
                return "Nothing was typed.";
            }

            string[] ids = [.. words.Select(w => int.TryParse(w, NumberStyles.None, CultureInfo.InvariantCulture, out int n) && n >= 1 && n <= kinds.Length ? kinds[n - 1].Id : w)];
            if (ids.FirstOrDefault(id => !kinds.Any(k => k.Id == id)) is { } wrong)
            {
                return $"{wrong} is not 1 to {kinds.Length}.";
            }

            var explained = s.Services.Explain([.. ids], path);
            if (explained.Fault is { } fault)
            {
                return fault;
            }

            s.Replace(new TextPage("explained", explained.Said));
            return null;
        });
    }

    private static string? Fault(Shell shell, ImmutableArray<string> paths, bool replace)
    {
        var compared = shell.Services.Compare(paths);
        if (compared.Fault is { } fault)
        {
            return fault;
        }

        var page = new TextPage("comparison", compared.Said);
        if (replace)
        {
            shell.Replace(page);
        }
        else
        {
            shell.Push(page);
        }

        return null;
    }
}
