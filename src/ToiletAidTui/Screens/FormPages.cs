using System.Collections.Immutable;

namespace ToiletAidTui.Screens;

/// <summary>What a command takes as a list to fill in, so that a screen says what the command line says.</summary>
internal static class FormPages
{
    /// <summary>A form.</summary>
    /// <param name="name">Name, for tests and captures.</param>
    /// <param name="title">What the screen is, one sentence.</param>
    /// <param name="fields">What can be filled in.</param>
    /// <param name="act">Does it, with what was typed for some of the fields.</param>
    /// <param name="run">What the entry that runs it is called.</param>
    /// <param name="done">Said when it gives no text.</param>
    internal static Page Make(string name, string title, ImmutableArray<FormField> fields, Func<ImmutableDictionary<string, string>, Caught> act, string run, string done) =>
        new Form(name, title, fields, act, run, done).Page(ImmutableDictionary<string, string>.Empty);

    private sealed record Form(string Name, string Title, ImmutableArray<FormField> Fields, Func<ImmutableDictionary<string, string>, Caught> Act, string Run, string Done)
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
            var caught = Act(given);
            if (caught.Fault is { } fault)
            {
                shell.Show(fault);
                return;
            }

            if (caught.Said.Length == 0)
            {
                shell.Show(string.Join(' ', caught.Complaints.Append(Done)));
                return;
            }

            shell.Push(new TextPage($"{Name} result", [.. caught.Complaints, .. caught.Said]));
        }
    }
}
