using ToiletAid.App.Files;
using ToiletAid.App.Store;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>SIGKILL at random instants. It shows what a killed program leaves, not what a power cut does to a disk's own memory.</summary>
[Trait("Speed", "Slow")]
public sealed class KilledSaveTests(ITestOutputHelper output)
{
    private const int Kills = 1000;
    private const int MostKills = 3000;

    /// <summary>As many as the machine has cores, or the kills would take minutes.</summary>
    private const int SideBySide = 2;

    private const int KillsOfOneFile = 20;
    private const int MostWait = 30;

    [Fact]
    public async Task No_kill_loses_a_committed_session_or_leaves_an_unreadable_file()
    {
        using var folder = new TempFolder();
        var tallies = await Task.WhenAll(Enumerable.Range(0, SideBySide).Select(w => Task.Run(() => KillMany(folder, w))));

        var total = tallies.Aggregate((a, b) => new(a.Kills + b.Kills, a.Committed + b.Committed, a.MidSave + b.MidSave, a.Leftovers + b.Leftovers, a.Drafts + b.Drafts));
        output.WriteLine($"{total.Kills} kills, {total.Committed} sessions committed, {total.MidSave} kills between commit and word, {total.Leftovers} half-written files left and ignored, {total.Drafts} drafts taken up");

        // A test in which nothing was being saved when it was killed would prove nothing. A busy machine saves less between kills, so it is killed more often.
        Assert.InRange(total.Committed, Kills, int.MaxValue);
        Assert.InRange(total.Leftovers, 1, int.MaxValue);
        Assert.InRange(total.Drafts, Kills / 2, total.Kills);
    }

    private static async Task<Tally> KillMany(TempFolder folder, int worker)
    {
        var random = new Random((int)(TestRun.Seed % int.MaxValue) - worker);
        var store = new ProfileStore(BuiltIn.Questions());
        var tally = new Tally(0, 0, 0, 0, 0);
        var committed = new HashSet<int>();
        string path = string.Empty;
        int next = 0;
        for (int kill = 0; kill < Kills / SideBySide || (tally.Committed < Kills / SideBySide && kill < MostKills / SideBySide); kill++)
        {
            if (kill % KillsOfOneFile == 0)
            {
                path = Path.Combine(Directory.CreateDirectory(Path.Combine(folder.Path, $"{worker}-{kill}")).FullName, "K-014.json");
                committed.Clear();
                next = 0;
            }

            using var saver = Saver.Start(path, next, count: 100_000, drafts: true);
            Assert.Equal("ready", await saver.StandardOutput.ReadLineAsync());
            await Task.Delay(TimeSpan.FromMilliseconds(random.NextDouble() * MostWait));
            saver.Kill();
            string output = await saver.StandardOutput.ReadToEndAsync();
            var said = Saver.Said(output);
            Assert.Equal(string.Empty, await saver.StandardError.ReadToEndAsync());
            await saver.WaitForExitAsync();
            int drafts = CheckDraft(path, Saver.SaidDraft(output));
            committed.UnionWith(said);
            int leftovers = Directory.GetFiles(Path.GetDirectoryName(path)!, ".*.new").Length;
            if (committed.Count == 0 && !File.Exists(path))
            {
                tally = tally with { Kills = kill + 1, Drafts = tally.Drafts + drafts };
                continue;
            }

            var read = store.Open(path);
            Assert.True(read.TryGet(out var stored), read.Issues.FirstOrDefault()?.Message);
            Assert.Equal(Seal.Whole, stored.Seal);
            int[] found = [.. stored.Profile.Sessions.Select(NumberedVisit.Number)];
            Assert.Equal(found.Length, found.Distinct().Count());
            Assert.Empty(committed.Except(found));
            int unsaid = found.Except(committed).Count();
            Assert.InRange(unsaid, 0, 1);
            committed.UnionWith(found);
            next = found.Max() + 1;
            tally = new(kill + 1, tally.Committed + said.Length, tally.MidSave + unsaid, tally.Leftovers + leftovers, tally.Drafts + drafts);
        }

        return tally;
    }

    /// <summary>The draft holds the last answers that were said to be in it, or the next; gives how many drafts there were.</summary>
    private static int CheckDraft(string path, int? said)
    {
        var left = AnswerJournal.Left(path);
        if (said is { } last)
        {
            Assert.InRange(NumberedVisit.Number(AnswerJournal.Read(Assert.Single(left), BuiltIn.Questions(), passphrase: null).Value!.Latest), last, last + 1);
        }

        foreach (string draft in AnswerJournal.All(path))
        {
            AnswerJournal.Drop(draft);
        }

        return said is null ? 0 : 1;
    }

    private sealed record Tally(int Kills, int Committed, int MidSave, int Leftovers, int Drafts);
}
