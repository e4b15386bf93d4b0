using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>Saving: the code of the person, the file, and what came of it.</summary>
internal static class SavePages
{
    /// <summary>Saves the visit, asking for what is not known yet.</summary>
    internal static void Save(Shell shell)
    {
        if (shell.Visit is not { IsUnsaved: true } visit)
        {
            shell.Show(shell.Visit is null ? "There is nothing to save." : "There is nothing to save that is not saved.");
            return;
        }

        if (visit.Earlier is null && visit.Person is null)
        {
            shell.Push(Code(visit));
            return;
        }

        if (visit.Path is null)
        {
            shell.Push(File(visit));
            return;
        }

        Write(shell, visit);
    }

    private static EditPage Code(Visit visit) => new("code", ["Save. A code of the person is needed, never a name."], "Code, such as K-014", "Not taken. Code", (shell, typed) =>
    {
        if (visit.TakeCode(typed) is { } fault)
        {
            return fault;
        }

        shell.Pop();
        Save(shell);
        return null;
    });

    private static EditPage File(Visit visit)
    {
        string? own = visit.Profiles.Resolve(visit.Person!, null);
        return new("file", [own is null ? "Save. This account has no folder for data, so a file is needed." : $"Save. Enter alone saves {visit.Person} in your own folder."], "Enter, or a file", "Not saved. File", (shell, typed) =>
        {
            if (typed.Length == 0 && own is null)
            {
                return "Nothing was typed.";
            }

            string path = typed.Length == 0 ? own! : visit.Profiles.Resolve(typed, null) ?? typed;
            if (path == typed && Path.GetFileName(typed) == typed && !Path.HasExtension(typed))
            {
                // A word meant for something else would become a file in whatever folder the program was started in.
                return $"{typed} is not a code, and not a file with an ending such as .json.";
            }

            if (Path.Exists(path))
            {
                var read = shell.Services.Files.Open(path, shell.Services.Passphrase);
                if (!read.TryGet(out var earlier))
                {
                    return $"{read.Issues[0].Sentence(path)}.";
                }

                if (earlier.Profile.Person != visit.Person)
                {
                    return $"{path} is there already and is not a profile of {visit.Person}. Give another file.";
                }

                visit.Earlier = earlier;
            }

            visit.Path = path;
            if (visit.Save(shell.Services.Passphrase) is { } fault)
            {
                visit.Path = null;
                return fault;
            }

            // What follows is for that file.
            shell.KeepAnswers(visit);
            shell.Pop(Saved(visit));
            return null;
        });
    }

    private static void Write(Shell shell, Visit visit) =>
        shell.Show(visit.Save(shell.Services.Passphrase) is { } fault ? $"{fault} The answers are still here." : Saved(visit));

    private static string Saved(Visit visit) => string.Join(' ', visit.Said);
}
