using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>A symmetric matrix with a row and a column for each joint variable, kept whole, row after row.</summary>
/// <remarks>The innermost part of the reach computation: a row is computed at once, and loops go without range checks; every index is
/// below the size of its array.</remarks>
internal struct SymmetricMatrix
{
    private const int N = JointVector.Count;
    private const double LeastPivot = 1e-9;

    private Rows _rows;

    /// <summary>A row.</summary>
    [UnscopedRef]
    public ref Eight Row(int i) => ref Unsafe.Add(ref Unsafe.As<Rows, Eight>(ref _rows), i);

    /// <summary>Adds a vector times itself.</summary>
    /// <param name="size">Factor.</param>
    /// <param name="v">The vector.</param>
    public void Add(double size, in JointVector v)
    {
        Eight all = v.All;
        for (int i = 0; i < N; i++)
        {
            Row(i) += size * v[i] * all;
        }
    }

    /// <summary>The quadratic form: the vector times this times the vector.</summary>
    public readonly double Along(in JointVector v)
    {
        Eight sum = default;
        for (int i = 0; i < N; i++)
        {
            sum += v[i] * _rows[i];
        }

        return (sum * v.All).Sum;
    }

    /// <summary>Solves for the step at which the slope is 0, with some of the steps held, by Cholesky's method without roots (LDLᵀ); a pivot
    /// that is not above 0 is made so.</summary>
    /// <param name="held">Bits of the joints whose steps are given.</param>
    /// <param name="damping">Added to the diagonal.</param>
    /// <param name="slope">Slope without a step.</param>
    /// <param name="step">Given for the held joints; the others are found.</param>
    public readonly void SolveFree(uint held, double damping, in JointVector slope, ref JointVector step)
    {
        Unsafe.SkipInit(out Cells lower);
        Unsafe.SkipInit(out Order order);
        JointVector right = default, inverse = default;
        ref double l = ref Unsafe.As<Cells, double>(ref lower);
        ref double all = ref Unsafe.As<Rows, double>(ref Unsafe.AsRef(in _rows));
        int count = 0, row = 0;
        for (int i = 0; i < N; i++)
        {
            if ((held & (1u << i)) == 0)
            {
                order[count] = i;
                ref double from = ref Unsafe.Add(ref all, i * JointVector.Places);
                double sum = -slope[i];
                for (uint rest = held; rest != 0; rest &= rest - 1)
                {
                    int j = BitOperations.TrailingZeroCount(rest);
                    sum -= Unsafe.Add(ref from, j) * step[j];
                }

                ref double mine = ref Unsafe.Add(ref l, row);
                for (int k = 0; k < count; k++)
                {
                    Unsafe.Add(ref mine, k) = Unsafe.Add(ref from, order[k]);
                }

                double pivot = Factor(ref l, ref mine, count, Unsafe.Add(ref from, i) + damping, ref sum, in inverse, in right);
                inverse[count] = 1 / Math.Max(pivot, LeastPivot);
                right[count] = sum;
                count++;
                row += count;
            }
        }

        for (int i = count - 1; i >= 0; i--)
        {
            double sum = right[i] * inverse[i];
            for (int k = i + 1; k < count; k++)
            {
                sum -= Unsafe.Add(ref l, (k * (k + 1) / 2) + i) * right[k];
            }

            right[i] = sum;
        }

        for (int k = 0; k < count; k++)
        {
            step[order[k]] = right[k];
        }
    }

    /// <summary>Turns the next row into that of the triangular factor, takes its share off the right-hand side, and gives its pivot.</summary>
    private static double Factor(ref double l, ref double mine, int count, double pivot, ref double sum, in JointVector inverse, in JointVector right)
    {
        int other = 0;
        for (int j = 0; j < count; j++)
        {
            double cell = Unsafe.Add(ref mine, j);
            for (int k = 0; k < j; k++)
            {
                cell -= Unsafe.Add(ref mine, k) * Unsafe.Add(ref l, other + k);
            }

            Unsafe.Add(ref mine, j) = cell;
            other += j + 1;
        }

        for (int j = 0; j < count; j++)
        {
            double cell = Unsafe.Add(ref mine, j), share = cell * inverse[j];
            pivot -= cell * share;
            sum -= share * right[j];
            Unsafe.Add(ref mine, j) = share;
        }

        return pivot;
    }

    [InlineArray(N)]
    private struct Rows
    {
        private Eight _first;
    }

    [InlineArray(N * (N + 1) / 2)]
    private struct Cells
    {
        private double _first;
    }

    [InlineArray(N)]
    private struct Order
    {
        private int _first;
    }
}
