using System.Collections.Immutable;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>What a folder of profiles should hold, as plain lists: no files, no order of steps, no text.</summary>
internal sealed class StoreModel
{
    /// <summary>What should be there of each profile.</summary>
    internal Dictionary<string, Held> Profiles { get; } = [];

    internal Held this[string name]
    {
        get => Profiles.GetValueOrDefault(name) ?? Held.Nothing;
        set => Profiles[name] = value;
    }

    /// <summary>A visit: its number, its day, whether it was written late, whether a red flag is in it.</summary>
    internal sealed record Visit(int Number, int Day, bool IsLate, bool HasFlag);

    /// <summary>What is held of one profile.</summary>
    /// <param name="Visits">In the order of saving; empty when there is no file.</param>
    /// <param name="Passphrase">Null when it is open.</param>
    /// <param name="Previous">Visits of the version before; empty when there is none.</param>
    /// <param name="Left">Numbers of the visits in drafts that nobody writes.</param>
    internal sealed record Held(ImmutableArray<Visit> Visits, string? Passphrase, ImmutableArray<Visit> Previous, ImmutableArray<int> Left)
    {
        internal static Held Nothing { get; } = new([], null, [], []);

        /// <summary>With a visit, and what the one who saves it saw; null when that was removed since.</summary>
        internal Held? Saved(Visit visit, ImmutableArray<Visit>? seen, string? startsWith)
        {
            if (seen is { } opened && (Visits.IsEmpty || !opened.Any(Visits.Contains)))
            {
                return null;
            }

            ImmutableArray<Visit> now = [.. Visits, .. (seen ?? []).Add(visit).Where(v => !Visits.Contains(v)).Distinct()];
            return now.Length == Visits.Length ? this : this with { Visits = now, Previous = Visits, Passphrase = Visits.IsEmpty ? startsWith : Passphrase };
        }

        internal Held Protected(string? passphrase) => this with { Passphrase = passphrase, Previous = [] };

        /// <summary>The visit that is ranked: the last that was not written late.</summary>
        internal Visit Ranked => Visits.Last(v => !v.IsLate);

        /// <summary>True when a red flag must be heard: one of the ranked visit, or of a late one since.</summary>
        internal bool Warns => Ranked.HasFlag || Visits.Skip(Visits.IndexOf(Ranked)).Any(v => v.HasFlag);

        public bool Equals(Held? other) => other is not null && Visits.SequenceEqual(other.Visits) && Passphrase == other.Passphrase && Previous.SequenceEqual(other.Previous) && Left.Order().SequenceEqual(other.Left.Order());

        public override int GetHashCode() => Visits.Length;

        public override string ToString() => $"visits {List(Visits)}, passphrase {Passphrase ?? "none"}, before {List(Previous)}, drafts {string.Join(' ', Left)}";

        private static string List(IEnumerable<Visit> visits) => $"[{string.Join(' ', visits.Select(v => $"{v.Number}{(v.IsLate ? "late" : string.Empty)}"))}]";
    }
}
