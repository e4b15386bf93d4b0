using CsCheck;
using ToiletAid.TestKit;

namespace ToiletAid;

/// <summary>
/// Laws tried on things that a seed determines. In this namespace it comes before the library's method of the same name, whose draws nothing fixes.
/// </summary>
internal static class SeededSamples
{
    private const int Usual = 100;
    private const int LeastOfMany = 200;
    private const int ShareByDefault = 5;

    internal static void Sample<T>(this Gen<T> gen, Action<T> assert, int iter = Usual, string? seed = null)
    {
        var draws = seed is null ? new PCG(1, TestRun.Seed) : PCG.Parse(seed);
        int times = iter <= LeastOfMany ? iter : TestRun.Times(iter, Math.Max(LeastOfMany, iter / ShareByDefault));
        for (int i = 0; i < times; i++)
        {
            string start = draws.ToString();
            T drawn = gen.Generate(draws, null, out _);
            try
            {
                assert(drawn);
            }
            catch (Exception fault) when (fault is not OutOfMemoryException)
            {
                // The library finds a smaller case that fails too and says it.
                Check.Sample(gen, assert, seed: start, iter: Usual, threads: 1);
                throw new InvalidOperationException($"Seed {TestRun.Seed}, draw {i}: it failed once and not again.", fault);
            }
        }
    }

    internal static void Sample<T1, T2>(this Gen<(T1 First, T2 Second)> gen, Action<T1, T2> assert, int iter = Usual) =>
        gen.Sample(t => assert(t.First, t.Second), iter);

    internal static void Sample<T1, T2, T3>(this Gen<(T1 First, T2 Second, T3 Third)> gen, Action<T1, T2, T3> assert, int iter = Usual) =>
        gen.Sample(t => assert(t.First, t.Second, t.Third), iter);

    internal static void Sample<T1, T2, T3, T4>(this Gen<(T1 First, T2 Second, T3 Third, T4 Fourth)> gen, Action<T1, T2, T3, T4> assert, int iter = Usual) =>
        gen.Sample(t => assert(t.First, t.Second, t.Third, t.Fourth), iter);

    internal static void Sample<T1, T2, T3, T4, T5>(this Gen<(T1 First, T2 Second, T3 Third, T4 Fourth, T5 Fifth)> gen, Action<T1, T2, T3, T4, T5> assert, int iter = Usual) =>
        gen.Sample(t => assert(t.First, t.Second, t.Third, t.Fourth, t.Fifth), iter);
}
