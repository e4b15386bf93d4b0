using ToiletAid.App.Files;
using ToiletAid.App.Trials;
using ToiletAidTui.Visits;

namespace ToiletAidTui.Screens;

/// <summary>A trial from the key that begins it to the saved profile.</summary>
internal static class TrialPages
{
    /// <summary>Begins a trial with the person of the visit, whose profile has to be saved.</summary>
    internal static void Open(Shell shell)
    {
        if (shell.Visit is not { } visit)
        {
            shell.Show("A trial belongs to a saved profile. Open one, and choose the trial there.");
            return;
        }

        if (visit.IsUnsaved || visit is not { Earlier: { } stored, Path: not null })
        {
            shell.Show("A trial is recorded in what is saved. Save first.");
            return;
        }

        var recording = shell.Services.Trial(stored.Profile, out var faults);
        if (recording is null)
        {
            shell.Show(string.Join(' ', faults));
            return;
        }

        shell.Push(new TrialPage(recording), recording.Title);
    }

    /// <summary>Saves what was answered and says what it moved; takes the page of the trial away.</summary>
    /// <param name="shell">The screens, with the page of the trial in front.</param>
    /// <param name="recording">The trial.</param>
    /// <param name="said">What the last answer led to.</param>
    internal static void Finish(Shell shell, TrialRecording recording, string said = "")
    {
        if (recording.Interview.Result is null)
        {
            shell.Pop("Nothing was tried, so nothing was saved.");
            return;
        }

        var visit = shell.Visit!;
        var (saved, fault) = recording.Save(visit.Path!, shell.Services.Passphrase);
        if (saved is null)
        {
            shell.Push(new ListPage("trial not saved", $"{visit.Path} could not be written, {fault}. The answers are still here.", [],
            [
                new("Try again", s =>
                {
                    s.Pop();
                    Finish(s, recording);
                }),
                new("Leave without saving the trial", s =>
                {
                    s.Pop();
                    s.Pop("Nothing was saved.");
                }),
            ]));
            return;
        }

        visit.Earlier = saved;
        shell.Pop();
        Renew(shell, saved, visit);
        shell.Push(
            new TextPage("trial saved", [.. recording.Summary, $"Saved as {saved.Profile.Person} in {visit.Path}.", .. recording.Moved(saved.Profile)]),
            said);
    }

    /// <summary>What stands behind the trial is of before it.</summary>
    private static void Renew(Shell shell, StoredProfile saved, Visit visit)
    {
        switch (shell.Current.Name)
        {
            case ResultPages.PageName when visit.Session.Answers.Ids.Any():
                shell.Replace(ResultPages.Make(shell, visit));
                break;
            case ResultPages.PageName:
                shell.Replace(ResultPages.Saved(shell, saved.Profile, visit.Path!));
                break;
            case StartPages.ProfileName:
                shell.Replace(StartPages.Opened(saved, visit.Path!));
                break;
        }
    }
}
