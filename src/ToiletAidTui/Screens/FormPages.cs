using System.Collections.Immutable;

namespace ToiletAidTui.Screens;

/// <summary>A command of the program with its options as a list to fill in, so that a screen says what the command line says.</summary>
internal static class FormPages
{
    /// <summary>A form.</summary>
    /// <param name="name">Name, for tests and captures.</param>
    /// <param name="title">What the screen is, one sentence.</param>
    /// <param name="command">The command without the options of the form.</param>
    /// <param name="fields">What can be filled in.</param>
    /// <param name="run">What the entry that runs it is called.</param>
    /// <param name="done">Said when the command gives no text.</param>
    internal static Page Make(string name, string title, ImmutableArray<string> command, ImmutableArray<FormField> fields, string run, string done) =>
        new Form(name, title, command, fields, run, done).Page(ImmutableDictionary<string, string>.Empty);

    private sealed record Form(string Name, string Title, ImmutableArray<string> Command, ImmutableArray<FormField> Fields, string Run, string Done)
    {
        internal ListPage Page(ImmutableDictionary<string, string> given) => new ListPage(Name, Title, [],
        [
            .. Fields.Select(f => new Entry($"{f.Label}: {given.GetValueOrDefault(f.Option, f.LeftOut)}", s => s.Push(Ask(f, given)))),
            new(Run, s => Show(s, given)),
            new("Go back", s => s.Pop()),
        ]);

        private EditPage Ask(FormField field, ImmutableDictionary<string, string> given) => new($"{Name} value", [$"{field.Label}.", field.Description], "Value, Enter alone for none", "Not taken. Value", (shell, typed) =>
        {
            shell.Pop();
            shell.Replace(Page(typed.Length == 0 ? given.Remove(field.Option) : given.SetItem(field.Option, typed)));
            return null;
        });

        private void Show(Shell shell, ImmutableDictionary<string, string> given)
        {
            // An option and its value in one word: a value may begin with a dash.
            var (code, output, error) = shell.Desk.Command([.. Command, .. Fields.Where(f => given.ContainsKey(f.Option)).Select(f => $"{f.Option}={given[f.Option]}")]);
            string[] said = Split(output), complained = Split(error);
            if (code != 0)
            {
                shell.Show(string.Join(' ', complained));
                return;
            }

            if (said.Length == 0)
            {
                shell.Show(string.Join(' ', complained.Append(Done)));
                return;
            }

            shell.Push(new TextPage($"{Name} result", [.. complained, .. said]));
        }
    }

    private static string[] Split(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
