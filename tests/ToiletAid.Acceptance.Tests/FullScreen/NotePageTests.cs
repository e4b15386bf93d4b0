using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>The page of the free note.</summary>
public sealed class NotePageTests
{
    [Fact]
    public void Lines_are_added_changed_and_taken_away()
    {
        var model = new Model();
        model.Press(Keys.Control('K'));
        Assert.Equal(["Note of this visit.", "Write what no question asks. Never write a name."], model.Shell.Lines);
        model.Type("First");
        Assert.Equal(["Line 1 is kept.", "Note of this visit.", "1. First"], model.Shell.Lines);
        model.Type("Second");
        model.Press(Keys.Up);
        model.Press(Keys.Up);
        Assert.Equal("Line 1 of 2: First", model.Answer);
        model.Type(" of all");
        Assert.Equal(["Line 1 is changed.", "Note of this visit.", "1. First of all", "2. Second"], model.Shell.Lines);
        model.Press(Keys.Up);
        foreach (char _ in "Second")
        {
            model.Press(Keys.Backspace);
        }

        model.Press(Keys.Enter);
        Assert.Equal(["Line 2 is removed.", "Note of this visit.", "1. First of all"], model.Shell.Lines);
        Assert.False(model.Press("x"));
        model.Press(Keys.Up);
        model.Press(Keys.Down);
        Assert.Equal("Line 2, Enter alone ends: x", model.Answer);
        model.Press(Keys.Backspace);
        model.Press(Keys.Enter);
        Assert.IsAssignableFrom<QuestionPage>(model.Shell.Current);
        model.Press(Keys.Control('E'));
        Assert.Contains("Note, line 1. First of all", model.Shell.Lines);
    }

    [Fact]
    public void What_is_refused_stays_in_the_line_to_be_mended()
    {
        var model = new Model();
        model.Press(Keys.Control('K'));
        model.Type(new string('a', 301));
        Assert.Equal("Error: The line has 301 characters, at most 300 are taken, write it in two lines.", model.Shell.Current.Error);
        Assert.EndsWith("aaa", model.Answer, StringComparison.Ordinal);
        Assert.StartsWith("Not taken. Line 1, Enter alone ends: a", model.Answer, StringComparison.Ordinal);
        model.Press(Keys.Backspace);
        model.Press(Keys.Enter);
        Assert.Equal(300, Assert.Single(model.Shell.Visit!.Engine.Note.Lines).Length);
    }

    [Fact]
    public void The_menu_leads_to_it_and_without_a_visit_it_says_so()
    {
        var model = new Model(depth: null);
        model.Press(Keys.F9);
        model.Choose("Write a note, N or Control K");
        Assert.StartsWith("A note belongs to a visit.", model.Shell.Opening, StringComparison.Ordinal);
    }

    [Fact]
    public void A_saved_profile_takes_a_note_of_today_without_an_interview()
    {
        using var folder = new TempFolder();
        string file = folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
        var model = Hands.Opened(file);
        model.Choose("Write a note for today");
        model.Type("Rang, all well");
        model.Press(Keys.Enter);
        Assert.Equal("The note is not saved yet. Control S saves it.", model.Shell.Opening);
        model.Press(Keys.Control('C'));
        Assert.Equal(["The note is not saved.", "1. Go back to the note", "2. Save it first", "3. Leave and lose the answers"], model.Shell.Lines);
        model.Choose("Save it first");
        Assert.Equal($"Saved as K-014 in {file}.", model.Shell.Opening);
        Assert.Contains("\"note\": [\n        \"Rang, all well\"", File.ReadAllText(file), StringComparison.Ordinal);

        model.Choose("Write a note for today");
        model.Press(Keys.Up);
        model.Type(" indeed");
        Assert.Equal("Error: Line 1 is saved and stays as it is. Write a new line.", model.Shell.Current.Error);
        model.Press(Keys.Escape);
        model.Choose("New visit for this person");
        model.Choose("Quick");
        Assert.Empty(model.Shell.Visit!.Engine.Note.Lines);
    }

    [Fact]
    public void A_note_begun_in_one_profile_never_ends_up_in_another()
    {
        using var folder = new TempFolder();
        string one = folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
        var model = Hands.Opened(one);
        model.Choose("Write a note for today");
        model.Type("For K-014 alone");
        model.Press(Keys.Enter);
        model.Press(Keys.Escape);
        model.Choose("Open a saved profile");
        Assert.Equal("The note is not saved.", model.Shell.Lines[0]);
        model.Choose("Go on without the note");
        model.Type(DemoPeople.File("m-207-one-hand"));
        model.Choose("Write a note for today");
        Assert.Equal("Write what no question asks. Never write a name.", model.Shell.Lines[1]);
    }

    [Fact]
    public void What_is_noted_before_the_first_question_belongs_to_the_visit()
    {
        using var folder = new TempFolder();
        string file = folder.File("k-014.json", File.ReadAllText(DemoPeople.File("k-014-stiff-shoulder")));
        var model = Hands.Opened(file);
        model.Choose("Write a note for today");
        model.Type("Comes with a stick");
        model.Press(Keys.Enter);
        model.Choose("New visit for this person");
        model.Choose("Quick");
        model.Type("0");
        model.Press(Keys.Control('S'));
        using var saved = System.Text.Json.JsonDocument.Parse(File.ReadAllText(file));
        var last = saved.RootElement.GetProperty("sessions")[1];
        Assert.Equal("Comes with a stick", last.GetProperty("note")[0].GetString());
        Assert.Single(last.GetProperty("answers").EnumerateObject());
        Assert.Equal(2, saved.RootElement.GetProperty("sessions").GetArrayLength());
    }
}
