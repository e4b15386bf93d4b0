using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;
using ToiletAid.Core.Person;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>
/// One sequence of steps of two people, each with an account and a window, in one folder of profiles: it is done on a real disk and in the model, and compared.
/// A kill is an exception at a change of a file after which no further change is let through, so what a program does while it falls counts for nothing.
/// </summary>
internal sealed partial class StoreWalk : IDisposable
{
    private const int Rounds = 1000;
    private const int MostChanges = 12;
    private const int MostVisits = 8;
    private const uint FirstAccount = 1001;
    private const string RedFlags = "red-flags";

    private static readonly string[] Names = ["K-1.json", "K-1", "K-1.json.b.json"];
    private static readonly string[] Passphrases = ["four quiet otters swim", "seven loud herons fly"];
    private static readonly Core.Interview.QuestionSet Questions = BuiltIn.Questions();
    private static readonly ProfileStore Store = new(Questions) { Iterations = Rounds };
    private static readonly ProfileKeeper Keeper = new(Questions) { Iterations = Rounds };
    private static readonly string Flag = Questions.Find(RedFlags)!.Options[0].Id;
    private static readonly DateOnly FirstDay = new(2026, 3, 1);

    private readonly string _folder = Directory.CreateDirectory(Path.Combine(Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath(), $"toiletaid-walk-{Guid.NewGuid():N}")).FullName;
    private readonly StoreModel _model = new();
    private readonly Window[] _windows = [new(), new()];
    private readonly Dictionary<int, StoreModel.Visit> _visits = [];
    private readonly Tally _tally;
    private readonly List<string> _said = [];

    /// <summary>A visit that begins in clear while there is no profile stays so until it is saved, also when somebody else begins a protected one meanwhile.</summary>
    private readonly HashSet<string> _begunInClear = [];
    private int _clock = 10;
    private int _next;
    private int _user;
    private int _killAt;

    private StoreWalk(Tally tally)
    {
        _tally = tally;
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(_folder, (UnixFileMode)0x1FF);
        }
    }

    /// <summary>Takes all steps; fails where disk and model differ.</summary>
    internal static void Take(IEnumerable<int> steps, Tally tally)
    {
        using var walk = new StoreWalk(tally);
        try
        {
            foreach (int step in steps)
            {
                walk.Step(step);
            }

            walk.Look();
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"{e.Message}\nAfter: {string.Join("; ", walk._said.TakeLast(15))}", e);
        }
    }

    public void Dispose()
    {
        Be(-1);
        foreach (var window in _windows)
        {
            window.Journal?.Dispose();
        }

        Directory.Delete(_folder, recursive: true);
    }

    private Window Mine => _windows[_user];

    private string At(string name) => Path.Combine(_folder, name);

    private static string Person(string name) => $"K-{Array.IndexOf(Names, name) + 1}";

    private void Step(int step)
    {
        int what = Part(ref step, 20);
        _user = Part(ref step, _windows.Length);
        string name = Mine.Name ?? Names[Part(ref step, Names.Length)];
        _killAt = Part(ref step, 10) < 5 ? 1 + Part(ref step, MostChanges) : 0;
        int detail = step;
        if (_model[name].Visits.Length > MostVisits)
        {
            what = 14;
        }

        Be(_user);
        switch (what)
        {
            case 0:
                _clock = Math.Max(3, _clock + (detail % 9) - 4);
                Say($"clock {_clock}");
                break;
            case 1 or 2:
                Open(name);
                break;
            case 3 or 4 or 5:
                Answer(name, detail);
                break;
            case 6 or 7 or 8 or 9:
                Save(name, detail);
                break;
            case 10:
                Leave();
                break;
            case 11:
                Die();
                break;
            case 12:
                Resume(name);
                break;
            case 13:
                Drop(name);
                break;
            case 14 or 15:
                Erase(name);
                break;
            default:
                Protect(name, detail);
                break;
        }

        if (_said.Count % 10 == 0)
        {
            Look();
        }
    }

    private void Open(string name)
    {
        if (Mine.Name is not null)
        {
            return;
        }

        Say($"open {name}");
        var held = _model[name];
        var read = Store.Open(At(name), () => held.Passphrase);
        Assert.Equal(held.Visits.IsEmpty, read.Value is null);
        (Mine.Name, Mine.Seen, Mine.SeenVisits) = (name, read.Value, held.Visits.IsEmpty ? null : held.Visits);
        if (read.Value is { } stored)
        {
            Same(held, stored);
        }
    }

    private void Answer(string name, int detail)
    {
        Open(name);
        var held = _model[name];

        // The day that is given is today, or a little before; where a later visit is known, it is written down late.
        int day = _clock - (detail % 3);
        bool late = Mine.SeenVisits is { } seen && seen.Any(v => v.Day > day && v.Day <= _clock);
        var visit = Mine.Visit is { } going ? going with { Number = _next++ } : new StoreModel.Visit(_next++, day, late, detail % 4 == 0);
        _visits[visit.Number] = visit;
        Say($"answer {visit.Number} in {name}");
        int? before = Mine.Visit?.Number;
        bool killed = Killed(() =>
        {
            Mine.Journal ??= AnswerJournal.Start(At(name), Questions, held.Passphrase ?? (Mine.Seen is { IsProtected: true } ? Passphrases[0] : Mine.StartsWith), Rounds);
            Mine.Journal.Save(Session(visit), Person(name));
        });
        if (!killed)
        {
            Mine.Visit = visit;
            return;
        }

        Mine.Close();
        Settle(name, [held with { Left = before is { } n ? held.Left.Add(n) : held.Left }, held with { Left = held.Left.Add(visit.Number) }]);
    }

    private void Save(string name, int detail)
    {
        if (Mine.Visit is not { } visit)
        {
            Answer(name, detail);
            return;
        }

        Say($"save {visit.Number} in {name}");
        var held = _model[name];
        string? passphrase = held.Visits.IsEmpty ? Mine.StartsWith : held.Passphrase;
        if (held.Visits.IsEmpty && (held.Left.Length > 0 || Holders(name) > 1))
        {
            _begunInClear.Add(name);
        }

        var wanted = held.Saved(visit with { IsLate = visit.IsLate && held.Visits.Any(v => v.Day > visit.Day) }, Mine.SeenVisits, Mine.StartsWith);
        Checked<Saved>? saved = null;
        bool killed = Killed(() =>
        {
            saved = Store.Add(At(name), Person(name), Session(visit), Mine.Seen, () => passphrase, startsProtected: Mine.StartsWith is not null);
            if (saved.Value is not null)
            {
                Mine.Journal!.Discard();
            }
        });
        if (killed)
        {
            Mine.Close();
            var stays = held with { Left = held.Left.Add(visit.Number) };
            Settle(name, [stays, stays with { Previous = held.Visits }, .. wanted is null ? (StoreModel.Held[])[] : [wanted, wanted with { Left = stays.Left }]]);
            return;
        }

        if (wanted is null)
        {
            Assert.Equal("removed", Assert.Single(saved!.Issues).Code);
            Count("removed");
            (Mine.StartsWith, Mine.Seen, Mine.SeenVisits) = (Mine.Seen!.IsProtected ? Passphrases[0] : null, null, null);
            return;
        }

        Assert.True(saved!.TryGet(out var now), saved.Issues.FirstOrDefault()?.Message);
        Same(wanted, now.Stored);
        _model[name] = wanted;
        Count("saved");
        if (wanted.Visits[^1].IsLate)
        {
            Count("late");
        }

        (Mine.Seen, Mine.SeenVisits, Mine.Visit, Mine.Journal, Mine.StartsWith) = (now.Stored, wanted.Visits, null, null, null);
    }

    private void Leave()
    {
        if (Mine.Name is not { } name)
        {
            return;
        }

        Say($"leave {name}");
        var held = _model[name];
        int? number = Mine.Visit?.Number;
        bool killed = Killed(() => Mine.Journal?.Discard());
        Mine.Close();
        if (killed)
        {
            Settle(name, [held, held with { Left = number is { } n ? held.Left.Add(n) : held.Left }]);
        }
    }

    private void Die()
    {
        if (Mine.Name is not { } name)
        {
            return;
        }

        Say($"die in {name}");
        if (Mine.Visit is { } visit)
        {
            _model[name] = _model[name] with { Left = _model[name].Left.Add(visit.Number) };
        }

        Mine.Close();
    }

    private void Resume(string name)
    {
        var held = _model[name];
        if (Mine.Name is not null || held.Left.IsEmpty)
        {
            return;
        }

        Open(name);
        string draft = AnswerJournal.Left(At(name))[0];
        int number = Number(draft);
        Say($"resume {number} in {name}");
        Assert.Contains(number, held.Left);
        bool killed = Killed(() =>
        {
            Mine.Journal = AnswerJournal.Start(At(name), Questions, held.Passphrase, Rounds);
            Mine.Journal.Save(Session(_visits[number]), Person(name));
            AnswerJournal.Drop(draft);
        });
        Count("resumed");
        if (killed)
        {
            Mine.Close();
            Settle(name, [held, held with { Left = held.Left.Add(number) }]);
            return;
        }

        Mine.Visit = _visits[number];
        _model[name] = held with { Left = held.Left.Remove(number) };
    }

    private void Drop(string name)
    {
        var held = _model[name];
        if (held.Left.IsEmpty)
        {
            return;
        }

        string draft = AnswerJournal.Left(At(name))[0];
        int number = Number(draft);
        Say($"drop {number} of {name}");
        var without = held with { Left = held.Left.Remove(number) };
        if (Killed(() => AnswerJournal.Drop(draft)))
        {
            Settle(name, [held, without]);
            return;
        }

        _model[name] = without;
    }

    private void Erase(string name)
    {
        Say($"erase {name}");
        var held = _model[name];
        bool inUse = Holders(name) > 0;
        Checked<Erased>? erased = null;
        if (Killed(() => erased = ProfileKeeper.Erase(At(name))))
        {
            // Without the profile nothing decides: drafts go one by one.
            Settle(name, inUse ? [held] : held.Visits.IsEmpty ? [.. Some(held.Left).Select(l => held with { Left = l })] : [held, StoreModel.Held.Nothing]);
            return;
        }

        string? code = inUse ? "in-use" : held == StoreModel.Held.Nothing ? "not-a-file" : null;
        Assert.Equal(code, erased!.Value is null ? erased.Issues[0].Code : null);
        Count(inUse ? "in use" : "erased");
        if (code is null)
        {
            _model[name] = StoreModel.Held.Nothing;
        }
    }

    private void Protect(string name, int detail)
    {
        var held = _model[name];
        string? next = held.Passphrase is null || detail % 2 == 0 ? Passphrases[detail % Passphrases.Length] : null;
        Say($"protect {name} with {next ?? "nothing"}");
        bool unfinished = !held.Left.IsEmpty || Holders(name) > 0;
        Checked<StoredProfile>? changed = null;
        var wanted = held.Visits.IsEmpty || unfinished ? held : held.Protected(next);
        if (Killed(() => changed = Keeper.Change(At(name), () => held.Passphrase, () => next, open: next is null)))
        {
            Settle(name, [held, wanted]);
            return;
        }

        string? code = held.Visits.IsEmpty ? "not-a-file" : unfinished ? "unfinished" : null;
        Assert.Equal(code, changed!.Value is null ? changed.Issues[0].Code : null);
        Count(code is null ? "protected" : code);
        _model[name] = wanted;
    }

    /// <summary>After a kill: what can be read without the lock is old or new; once somebody has had the lock, all of it is one of what may be.</summary>
    private void Settle(string name, ImmutableArray<StoreModel.Held> may)
    {
        _tally.Kills++;
        var first = Visits(At(name), out _, out var stored);
        Assert.Contains(may, m => m.Visits.SequenceEqual(first));
        Assert.Equal(Seal.Whole, stored?.Seal ?? Seal.Whole);

        // Who ends it may be killed too.
        _user = 1 - _user;
        Be(_user);
        _killAt = _killAt % 3 == 0 ? 1 + (_killAt / 3) : 0;
        _ = Killed(Recover);
        _killAt = 0;
        Recover();
        Be(-1);
        var now = new StoreModel.Held(Visits(At(name), out string? passphrase, out _), passphrase, Visits(At(name + ".previous"), out _, out _), [.. AnswerJournal.Left(At(name)).Select(Number)]);
        Assert.True(may.Any(m => m.Equals(now)), $"{name} holds {now}, and not {string.Join(" or ", may)}");
        _model[name] = now;
        Look();
    }

    private void Recover() => FolderLock.Take(_folder, TimeSpan.FromSeconds(5)).Dispose();

    /// <summary>Every file of the folder is accounted for, and nothing of a protected profile is in clear.</summary>
    private void Look()
    {
        _tally.Scans++;
        Be(-1);
        string[] files = [.. Directory.GetFiles(_folder).Select(f => Path.GetFileName(f)).Where(f => f != FolderLock.FileName)];
        int known = 0;
        foreach (string name in Names)
        {
            var held = _model[name];
            string[] drafts = AnswerJournal.All(At(name)), own = [.. held.Visits.IsEmpty ? [] : (string[])[At(name)], .. held.Previous.IsEmpty ? [] : (string[])[At(name + ".previous")], .. drafts];
            Assert.All(own, f => Assert.True(File.Exists(f), $"{f} is missing"));
            Assert.Equal(held.Left.Length + Holders(name), drafts.Length);
            known += own.Length;
            if (drafts.Length == 0)
            {
                _begunInClear.Remove(name);
            }

            if (held.Passphrase is not null)
            {
                Assert.All(own, f => Assert.False(IsClear(f) && !(_begunInClear.Contains(name) && drafts.Contains(f)), $"{f} is in clear"));
            }
        }

        Assert.True(known == files.Length, $"Of {string.Join(", ", files)} only {known} should be there");
    }

    private static bool IsClear(string path) => RawFile.Read(path).AsSpan().IndexOf("stature"u8) >= 0;

    private int Holders(string name) => _windows.Count(w => w.Name == name && w.Journal is not null);

    private static IEnumerable<ImmutableArray<int>> Some(ImmutableArray<int> all) =>
        Enumerable.Range(0, 1 << all.Length).Select(bits => all.Where((_, i) => (bits & (1 << i)) != 0).ToImmutableArray());

    private void Same(StoreModel.Held held, StoredProfile stored)
    {
        Assert.Equal(held.Visits.Select(v => v.Number), stored.Profile.Sessions.Select(NumberedVisit.Number));
        Assert.Equal(held.Passphrase is not null, stored.IsProtected);
        var latest = stored.Profile.Latest;
        Assert.Equal(held.Ranked.Number, NumberedVisit.Number(latest));
        Assert.Equal(held.Warns, latest.Answers.Many(new(RedFlags)) is { IsEmpty: false });
    }

    private ImmutableArray<StoreModel.Visit> Visits(string path, out string? passphrase, out StoredProfile? stored)
    {
        (passphrase, stored) = (null, null);
        if (!File.Exists(path))
        {
            return [];
        }

        foreach (string? tried in ProfileFile.IsProtected(path) ? Passphrases : (string?[])[null])
        {
            stored = Store.Open(path, () => tried).Value;
            if (stored is not null)
            {
                passphrase = tried;
                return [.. stored.Profile.Sessions.Select(s => _visits[NumberedVisit.Number(s)] with { IsLate = s.IsLate })];
            }
        }

        throw new InvalidOperationException($"{path} cannot be opened");
    }

    private static int Number(string draft)
    {
        var read = Passphrases.Select(p => AnswerJournal.Read(draft, Questions, () => p)).FirstOrDefault(r => r.Value is not null);
        Assert.True(read is not null, $"{draft} cannot be taken up");
        return NumberedVisit.Number(read.Value!.Sessions[^1]);
    }

    private static Session Session(StoreModel.Visit visit)
    {
        var session = NumberedVisit.Session(visit.Number) with { Date = FirstDay.AddDays(visit.Day), IsLate = visit.IsLate };
        return visit.HasFlag ? session with { Answers = session.Answers.With(new(RedFlags), new(new AnswerValue.Many([Flag]), HowObtained.Reported)) } : session;
    }

    /// <summary>Does it; true when it was killed on the way.</summary>
    private bool Killed(Action work)
    {
        int changes = 0, killAt = _killAt;
        Disk.Before = _ =>
        {
            _tally.Changes++;
            if (killAt > 0 && ++changes >= killAt)
            {
                throw new KilledException();
            }
        };
        try
        {
            work();
            return false;
        }
        catch (KilledException)
        {
            Say($"killed at change {killAt}");
            return true;
        }
        finally
        {
            Disk.Before = null;
        }
    }

    /// <summary>On this thread files are used as another account: that of a person, or with -1 the one that runs the test.</summary>
    private static void Be(int user)
    {
        if (Environment.UserName == "root")
        {
            _ = SetFileUser(user < 0 ? 0 : FirstAccount + (uint)user);
        }
    }

    private static int Part(ref int number, int of)
    {
        int part = number % of;
        number /= of;
        return part;
    }

    private void Say(string what) => _said.Add($"{_user}: {what}");

    private void Count(string what) => _tally.Done[what] = _tally.Done.GetValueOrDefault(what) + 1;

    [LibraryImport("libc", EntryPoint = "setfsuid")]
    private static partial int SetFileUser(uint user);

    private sealed class KilledException : Exception;

    private sealed class Window
    {
        internal string? Name { get; set; }

        internal StoredProfile? Seen { get; set; }

        internal ImmutableArray<StoreModel.Visit>? SeenVisits { get; set; }

        internal AnswerJournal? Journal { get; set; }

        internal StoreModel.Visit? Visit { get; set; }

        internal string? StartsWith { get; set; }

        /// <summary>As when its program ends.</summary>
        internal void Close()
        {
            Journal?.Dispose();
            (Name, Seen, SeenVisits, Journal) = (null, null, null, null);
            (Visit, StartsWith) = (null, null);
        }
    }

    /// <summary>What was done in all.</summary>
    internal sealed class Tally
    {
        internal int Kills { get; set; }

        internal int Changes { get; set; }

        internal int Scans { get; set; }

        internal Dictionary<string, int> Done { get; } = [];
    }
}
