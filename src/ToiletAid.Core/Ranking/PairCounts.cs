using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace ToiletAid.Core.Ranking;

/// <summary>Compares every sum with every other, draw after draw, and counts who beat whom and who stood where.</summary>
/// <remarks>Sums are compared as singles, sixteen at a time. A double that is greater than another is never smaller as a single, so only sums
/// that are equal as singles are looked at again. Counts are bytes until a draw could make one overflow.</remarks>
internal sealed class PairCounts
{
    private const int Lanes = 16;
    private const ulong EveryOther = 0x00FF_00FF_00FF_00FF;
    private const ulong AddAll = 0x0001_0001_0001_0001;

    private readonly int _alternatives;
    private readonly int _stride;
    private readonly ushort _pairs;
    private readonly float[] _singles;
    private readonly byte[] _above;
    private readonly byte[] _used;
    private readonly byte[] _wins;
    private readonly byte[] _ranks;
    private int _draws;

    /// <summary>Makes empty counts.</summary>
    /// <param name="alternatives">Number of alternatives, 1 to <see cref="CriterionValues.MostAlternatives"/>.</param>
    internal PairCounts(int alternatives)
    {
        _alternatives = alternatives;
        _pairs = (ushort)(alternatives * (alternatives - 1) / 2);
        _stride = (alternatives + Lanes - 1) / Lanes * Lanes;
        _singles = new float[_stride];
        _above = new byte[_stride];
        _used = new byte[_stride];
        _used.AsSpan(0, alternatives).Fill(byte.MaxValue);
        _wins = new byte[alternatives * _stride];
        _ranks = new byte[alternatives * _stride];
    }

    /// <summary>How many sums of the last draw are above each alternative's.</summary>
    internal ReadOnlySpan<byte> Above => _above.AsSpan(0, _alternatives);

    /// <summary>True when nothing more can be counted before <see cref="MoveTo"/>.</summary>
    internal bool IsFull => _draws == byte.MaxValue;

    /// <summary>Counts a draw.</summary>
    /// <param name="sums">Sums of the alternatives, and anything up to a whole number of lanes.</param>
    /// <returns>The number of the first, or -1 when some are tied; then only who beat whom was counted, not who stood where.</returns>
    internal int Count(ReadOnlySpan<double> sums)
    {
        _draws++;
        for (int lane = 0; lane < sums.Length; lane += Vector128<float>.Count)
        {
            var four = sums.Slice(lane, 4);
            Vector128.Narrow(Vector128.Create(four), Vector128.Create(four[2..])).CopyTo(_singles, lane);
        }

        for (int block = 0; block < _stride; block += Lanes)
        {
            Compare(block);
        }

        if (Sum() != _pairs)
        {
            Settle(sums);
            if (Sum() != _pairs)
            {
                return -1;
            }
        }

        int first = 0;
        for (int block = 0; block < _stride; block += Lanes)
        {
            first = Stand(block) is >= 0 and var found ? found : first;
        }

        return first;
    }

    /// <summary>Adds what was counted to these, and begins again.</summary>
    /// <param name="wins">By the one and the other.</param>
    /// <param name="ranks">By alternative and rank.</param>
    internal void MoveTo(long[] wins, long[] ranks)
    {
        for (int i = 0; i < _alternatives; i++)
        {
            for (int j = 0; j < _alternatives; j++)
            {
                wins[(i * _alternatives) + j] += _wins[(i * _stride) + j];
                ranks[(i * _alternatives) + j] += _ranks[(j * _stride) + i];
            }
        }

        _wins.AsSpan().Clear();
        _ranks.AsSpan().Clear();
        _draws = 0;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Compare(int block)
    {
        ref float singles = ref MemoryMarshal.GetArrayDataReference(_singles);
        ref byte wins = ref MemoryMarshal.GetArrayDataReference(_wins);
        var a = Vector128.LoadUnsafe(ref singles, (nuint)block);
        var b = Vector128.LoadUnsafe(ref singles, (nuint)block + 4);
        var c = Vector128.LoadUnsafe(ref singles, (nuint)block + 8);
        var d = Vector128.LoadUnsafe(ref singles, (nuint)block + 12);
        var above = Vector128<byte>.Zero;
        nuint at = (nuint)block;
        for (int i = 0; i < _alternatives; i++, at += (nuint)_stride)
        {
            // A lane that is below counts minus one as a whole number.
            var one = Vector128.Create(_singles[i]);
            var below = Vector128.NarrowWithSaturation(
                Vector128.NarrowWithSaturation(Vector128.LessThan(a, one).AsInt32(), Vector128.LessThan(b, one).AsInt32()),
                Vector128.NarrowWithSaturation(Vector128.LessThan(c, one).AsInt32(), Vector128.LessThan(d, one).AsInt32())).AsByte();
            (Vector128.LoadUnsafe(ref wins, at) - below).StoreUnsafe(ref wins, at);
            above -= below;
        }

        above.CopyTo(_above, block);
    }

    /// <summary>How many alternatives of the last draw have as many above them as this one, itself included.</summary>
    internal int Tied(int alternative)
    {
        int tied = 0;
        var rank = Vector128.Create(_above[alternative]);
        for (int block = 0; block < _stride; block += Lanes)
        {
            var same = Vector128.Equals(Vector128.Create(_above, block), rank) & Vector128.Create(_used, block);
            tied += BitOperations.PopCount(same.ExtractMostSignificantBits());
        }

        return tied;
    }

    /// <summary>Compares again, exactly, where singles are equal.</summary>
    private void Settle(ReadOnlySpan<double> sums)
    {
        for (int i = 0; i < _alternatives; i++)
        {
            var one = Vector512.Create(_singles[i]);
            for (int block = 0; block < _stride; block += Lanes)
            {
                uint equal = (uint)Vector512.Equals(Vector512.Create(_singles, block), one).ExtractMostSignificantBits();
                for (; equal != 0; equal &= equal - 1)
                {
                    int j = block + BitOperations.TrailingZeroCount(equal);
                    if (j < _alternatives && sums[i] > sums[j])
                    {
                        _wins[(i * _stride) + j]++;
                        _above[j]++;
                    }
                }
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Sum()
    {
        int sum = 0;
        for (int block = 0; block < _stride; block += Lanes)
        {
            // Eight bytes are added as four pairs, and these with one multiplication.
            var above = (Vector128.Create(_above, block) & Vector128.Create(_used, block)).AsUInt64();
            var pairs = (above & Vector128.Create(EveryOther)) + ((above >>> 8) & Vector128.Create(EveryOther));
            sum += (int)(((pairs[0] + pairs[1]) * AddAll) >>> 48);
        }

        return sum;
    }

    /// <summary>Counts who stands where among sixteen, and gives the first of all if it is among them, or -1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int Stand(int block)
    {
        ref byte ranks = ref MemoryMarshal.GetArrayDataReference(_ranks);
        var above = Vector128.Create(_above, block);
        var rank = Vector128<byte>.Zero;
        nuint end = (nuint)_ranks.Length;
        for (nuint at = (nuint)block; at < end; at += (nuint)_stride)
        {
            (Vector128.LoadUnsafe(ref ranks, at) - Vector128.Equals(above, rank)).StoreUnsafe(ref ranks, at);
            rank += Vector128<byte>.One;
        }

        uint firsts = (Vector128.Equals(above, Vector128<byte>.Zero) & Vector128.Create(_used, block)).ExtractMostSignificantBits();
        return firsts == 0 ? -1 : block + BitOperations.TrailingZeroCount(firsts);
    }
}
