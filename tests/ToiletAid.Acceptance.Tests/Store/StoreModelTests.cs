using CsCheck;

namespace ToiletAid.Acceptance.Tests.Store;

/// <summary>Random sequences of what two people do to a folder of profiles, with programs that die between any two changes of a file, against a plain model.</summary>
public sealed class StoreModelTests(ITestOutputHelper output)
{
    private const int StepsOfOne = 50;

    private static readonly Gen<int[]> Sequences = Gen.Int[0, int.MaxValue].Array[1, (2 * StepsOfOne) - 1];

    [Fact]
    public void The_store_holds_what_a_plain_model_holds() => Try(3_000);

    [Fact]
    [Trait("Speed", "Slow")]
    public void The_store_holds_what_a_plain_model_holds_over_a_hundred_thousand_steps() => Try(100_000);

    private void Try(int steps)
    {
        var tally = new StoreWalk.Tally();
        int done = 0;

        // Lengths differ, so it goes on until there are as many steps as were promised.
        while (done < steps)
        {
            Sequences.Sample(sequence =>
            {
                StoreWalk.Take(sequence, tally);
                done += sequence.Length;
            }, iter: 1, seed: new PCG(1, TestRun.Seed + (ulong)done).ToString());
        }

        output.WriteLine($"{done} steps, {tally.Kills} of them killed at one of {tally.Changes} changes of a file, {tally.Scans} looks at every file; {string.Join(", ", tally.Done.OrderBy(d => d.Key, StringComparer.Ordinal).Select(d => $"{d.Key} {d.Value}"))}");

        // A walk that did nothing would agree with any model.
        Assert.InRange(tally.Kills, steps / 20, steps);
        Assert.All((string[])["saved", "removed", "erased", "in use", "protected", "unfinished", "resumed", "late"], what => Assert.InRange(tally.Done.GetValueOrDefault(what), 1, steps));
    }
}
