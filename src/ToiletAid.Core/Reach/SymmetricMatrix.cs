using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;

namespace ToiletAid.Core.Reach;

/// <summary>A symmetric matrix with a row and a column for each joint variable; the lower half is kept, row after row.</summary>
/// <remarks>The innermost part of the reach computation: the loops go without range checks, every index is below the size of its array.</remarks>
internal struct SymmetricMatrix
{
    private const int N = JointVector.Count;
    private const double LeastPivot = 1e-9;

    private Cells _cells;

    /// <summary>The first cell of a row; the others follow up to the diagonal.</summary>
    [UnscopedRef]
    public ref double Row(int i) => ref Unsafe.Add(ref Unsafe.As<Cells, double>(ref _cells), i * (i + 1) / 2);

    /// <summary>Adds a vector times itself.</summary>
    /// <param name="size">Factor.</param>
    /// <param name="v">The vector.</param>
    public void Add(double size, in JointVector v)
    {
        ref double cell = ref Unsafe.As<Cells, double>(ref _cells);
        for (int i = 0; i < N; i++)
        {
            double k = size * v[i];
            for (int j = 0; j <= i; j++)
            {
                cell += k * v[j];
                cell = ref Unsafe.Add(ref cell, 1);
            }
        }
    }

    /// <summary>The vector times this times the vector.</summary>
    public readonly double Along(in JointVector v)
    {
        double sum = 0;
        int cell = 0;
        for (int i = 0; i < N; i++)
        {
            double row = 0;
            for (int j = 0; j < i; j++)
            {
                row += _cells[cell++] * v[j];
            }

            sum += v[i] * ((2 * row) + (_cells[cell++] * v[i]));
        }

        return sum;
    }

    /// <summary>Solves for the step at which the slope is 0, with some of the steps held, by Cholesky's method; a pivot that is not above
    /// 0 is made so.</summary>
    /// <param name="held">Bits of the joints whose steps are given.</param>
    /// <param name="damping">Added to the diagonal.</param>
    /// <param name="slope">Slope without a step.</param>
    /// <param name="step">Given for the held joints; the others are found.</param>
    public readonly void SolveFree(uint held, double damping, in JointVector slope, ref JointVector step)
    {
        Cells lower = default;
        JointVector right = default, inverse = default;
        Order order = default;
        ref double l = ref Unsafe.As<Cells, double>(ref lower);
        int count = 0, row = 0;
        for (int i = 0; i < N; i++)
        {
            if ((held & (1u << i)) == 0)
            {
                order[count] = i;
                double sum = -slope[i];
                for (uint rest = held; rest != 0; rest &= rest - 1)
                {
                    int j = BitOperations.TrailingZeroCount(rest);
                    int above = Math.Max(i, j), under = Math.Min(i, j);
                    sum -= _cells[(above * (above + 1) / 2) + under] * step[j];
                }

                int from = i * (i + 1) / 2;
                for (int k = 0; k < count; k++)
                {
                    Unsafe.Add(ref l, row + k) = _cells[from + order[k]];
                }

                Unsafe.Add(ref l, row + count) = _cells[from + i] + damping;
                right[count] = Factor(ref l, row, count, sum, ref inverse, in right);
                count++;
                row += count;
            }
        }

        for (int i = count - 1; i >= 0; i--)
        {
            double sum = right[i];
            for (int k = i + 1; k < count; k++)
            {
                sum -= Unsafe.Add(ref l, (k * (k + 1) / 2) + i) * right[k];
            }

            right[i] = sum * inverse[i];
        }

        for (int k = 0; k < count; k++)
        {
            step[order[k]] = right[k];
        }
    }

    /// <summary>Turns the next row into that of the triangular factor, and gives its share of the right-hand side.</summary>
    private static double Factor(ref double l, int row, int count, double sum, ref JointVector inverse, in JointVector right)
    {
        ref double mine = ref Unsafe.Add(ref l, row);
        double pivot = Unsafe.Add(ref mine, count);
        int other = 0;
        for (int j = 0; j < count; j++)
        {
            double cell = Unsafe.Add(ref mine, j);
            for (int k = 0; k < j; k++)
            {
                cell -= Unsafe.Add(ref mine, k) * Unsafe.Add(ref l, other + k);
            }

            cell *= inverse[j];
            Unsafe.Add(ref mine, j) = cell;
            pivot -= cell * cell;
            sum -= cell * right[j];
            other += j + 1;
        }

        inverse[count] = 1 / Math.Sqrt(Math.Max(pivot, LeastPivot));
        return sum * inverse[count];
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
