using ToiletAidTui.Screens;

namespace ToiletAid.TestKit;

/// <summary>Keys as a person presses them on the screens.</summary>
internal static class Hands
{
    /// <summary>The screens with a saved profile opened.</summary>
    internal static Model Opened(string file)
    {
        var model = new Model(depth: null);
        model.Choose("Open a saved profile");
        model.Type(file);
        return model;
    }

    /// <summary>Goes to an entry of the list in front and takes it.</summary>
    internal static void Choose(this Model model, string label)
    {
        var list = Assert.IsType<ListPage>(model.Shell.Current);
        int place = list.Entries.Select(e => e.Label).ToList().FindIndex(l => l.StartsWith(label, StringComparison.Ordinal));
        Assert.True(place >= 0, $"{label} is not among {string.Join(", ", list.Entries.Select(e => e.Label))}");
        model.Press(Keys.End);
        model.Press(Keys.Home);
        for (int i = 0; i < place; i++)
        {
            model.Press(Keys.Down);
        }

        model.Press(Keys.Enter);
    }

    /// <summary>Takes an entry and types its value.</summary>
    internal static void Fill(this Model model, string label, string value)
    {
        model.Choose(label);
        model.Type(value);
    }

    /// <summary>Types a line and Enter.</summary>
    internal static void Type(this Model model, string text)
    {
        foreach (char c in text)
        {
            model.Press(c.ToString());
        }

        model.Press(Keys.Enter);
    }

    /// <summary>Lines of a command's output.</summary>
    internal static string[] Split(string text) => text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
}
