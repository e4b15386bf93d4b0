using ToiletAid.App.Files;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Store;

public sealed class SharedSaveTests
{
    private const int Programs = 8;
    private static readonly int Saves = TestRun.Times(50, 25);

    /// <summary>A profile is read and written whole at each save, so that four of 400 visits take a quarter of the time of one of 1,600.</summary>
    private static readonly int Profiled = TestRun.Times(4, 1);

    private static readonly ProfileStore Profiles = new(BuiltIn.Questions());

    [Fact]
    public async Task Eight_programs_that_save_to_one_profile_lose_nothing()
    {
        for (int profile = 0; profile < Profiled; profile++)
        {
            await SaveTogether();
        }
    }

    private static async Task SaveTogether()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var savers = Enumerable.Range(0, Programs).Select(i => Saver.Start(path, i * Saves, Saves)).ToList();
        foreach (var saver in savers)
        {
            var cancel = TestContext.Current.CancellationToken;
            var said = Saver.Said(await saver.StandardOutput.ReadToEndAsync(cancel));
            Assert.Equal(string.Empty, await saver.StandardError.ReadToEndAsync(cancel));
            await saver.WaitForExitAsync(cancel);
            Assert.Equal((0, Saves), (saver.ExitCode, said.Length));
            saver.Dispose();
        }

        var stored = Profiles.Open(path).Value!;
        Assert.Equal(Enumerable.Range(0, Programs * Saves), stored.Profile.Sessions.Select(NumberedVisit.Number).Order());
        Assert.Equal(Programs * Saves, stored.Revision);
    }

    [Fact]
    public void The_second_to_save_is_told_what_the_first_saved()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null);
        var first = Profiles.Open(path).Value;
        var second = Profiles.Open(path).Value;

        Profiles.Add(path, "K-014", NumberedVisit.Session(1), first);
        var saved = Profiles.Add(path, "K-014", NumberedVisit.Session(2), second).Value!;

        Assert.Equal(1, NumberedVisit.Number(Assert.Single(saved.AddedElsewhere)));
        Assert.Equal([0, 1, 2], saved.Stored.Profile.Sessions.Select(NumberedVisit.Number));
        Assert.Equal(3, saved.Stored.Revision);
    }

    [Fact]
    public void Saving_the_same_session_again_changes_nothing()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var once = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!;
        byte[] before = File.ReadAllBytes(path);

        Assert.True(Profiles.Add(path, "K-014", NumberedVisit.Session(0), once.Stored).Value!.WasThere);
        Assert.Equal(before, File.ReadAllBytes(path));
    }

    [Fact]
    public void Sessions_stand_in_the_order_of_writing()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        Session late = NumberedVisit.Session(0) with { Date = new(2026, 5, 1) }, early = NumberedVisit.Session(1) with { Date = new(2026, 1, 1) };
        var once = Profiles.Add(path, "K-014", late, seen: null).Value!;

        Assert.Equal([late.Date, early.Date], Profiles.Add(path, "K-014", early, once.Stored).Value!.Stored.Profile.Sessions.Select(s => s.Date));
    }

    [Fact]
    public void The_profile_of_another_person_is_left_alone()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null);

        Assert.Equal("other-person", Assert.Single(Profiles.Add(path, "M-207", NumberedVisit.Session(1), seen: null).Issues).Code);
        Assert.Equal(1, Profiles.Open(path).Value!.Revision);
    }

    [Fact]
    public void A_profile_that_was_erased_elsewhere_does_not_come_back_with_its_old_sessions()
    {
        using var folder = new TempFolder();
        string path = folder.File("K-014.json");
        var seen = Profiles.Add(path, "K-014", NumberedVisit.Session(0), seen: null).Value!.Stored;
        ProfileKeeper.Erase(path);

        Assert.Equal("removed", Assert.Single(Profiles.Add(path, "K-014", NumberedVisit.Session(1), seen).Issues).Code);
        Assert.Equal([1], Profiles.Add(path, "K-014", NumberedVisit.Session(1), seen: null).Value!.Stored.Profile.Sessions.Select(NumberedVisit.Number));
    }
}
