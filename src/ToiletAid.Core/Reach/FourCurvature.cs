using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Four = System.Runtime.Intrinsics.Vector128<float>;

namespace ToiletAid.Core.Reach;

/// <summary>A symmetric matrix of each of four persons, with a row and a column for each joint variable: its lower triangle, row by row.</summary>
/// <remarks>The innermost part of the reach computation, written out: counting in loops takes longer than the arithmetic.</remarks>
[InlineArray(Pairs)]
internal struct FourCurvature
{
    /// <summary>How many numbers are kept of each.</summary>
    public const int Pairs = JointVector.Count * (JointVector.Count + 1) / 2;

    private Four _first;

    /// <summary>Adds a vector times itself times a factor.</summary>
    public void Add(Four factor, in JointsOf<Four> v)
    {
        Four a = v[0], b = v[1], c = v[2], d = v[3], e = v[4], f = v[5], g = v[6], by = factor * a;
        this[0] += by * a;
        by = factor * b;
        this[1] += by * a;
        this[2] += by * b;
        by = factor * c;
        this[3] += by * a;
        this[4] += by * b;
        this[5] += by * c;
        by = factor * d;
        this[6] += by * a;
        this[7] += by * b;
        this[8] += by * c;
        this[9] += by * d;
        by = factor * e;
        this[10] += by * a;
        this[11] += by * b;
        this[12] += by * c;
        this[13] += by * d;
        this[14] += by * e;
        by = factor * f;
        this[15] += by * a;
        this[16] += by * b;
        this[17] += by * c;
        this[18] += by * d;
        this[19] += by * e;
        this[20] += by * f;
        by = factor * g;
        this[21] += by * a;
        this[22] += by * b;
        this[23] += by * c;
        this[24] += by * d;
        this[25] += by * e;
        this[26] += by * f;
        this[27] += by * g;
    }

    /// <summary>Adds another matrix times a factor.</summary>
    public void Add(Four factor, in FourCurvature other)
    {
        ref Four mine = ref Unsafe.As<FourCurvature, Four>(ref this);
        ref Four theirs = ref Unsafe.As<FourCurvature, Four>(ref Unsafe.AsRef(in other));
        for (int k = 0; k < Pairs; k += 4)
        {
            Unsafe.Add(ref mine, k) += factor * Unsafe.Add(ref theirs, k);
            Unsafe.Add(ref mine, k + 1) += factor * Unsafe.Add(ref theirs, k + 1);
            Unsafe.Add(ref mine, k + 2) += factor * Unsafe.Add(ref theirs, k + 2);
            Unsafe.Add(ref mine, k + 3) += factor * Unsafe.Add(ref theirs, k + 3);
        }
    }

    /// <summary>Takes another one where bits are set.</summary>
    public void Take(Four where, in FourCurvature other)
    {
        ref Four mine = ref Unsafe.As<FourCurvature, Four>(ref this);
        ref Four theirs = ref Unsafe.As<FourCurvature, Four>(ref Unsafe.AsRef(in other));
        for (int k = 0; k < Pairs; k += 4)
        {
            Unsafe.Add(ref mine, k) = FourMath.Select(where, Unsafe.Add(ref theirs, k), Unsafe.Add(ref mine, k));
            Unsafe.Add(ref mine, k + 1) = FourMath.Select(where, Unsafe.Add(ref theirs, k + 1), Unsafe.Add(ref mine, k + 1));
            Unsafe.Add(ref mine, k + 2) = FourMath.Select(where, Unsafe.Add(ref theirs, k + 2), Unsafe.Add(ref mine, k + 2));
            Unsafe.Add(ref mine, k + 3) = FourMath.Select(where, Unsafe.Add(ref theirs, k + 3), Unsafe.Add(ref mine, k + 3));
        }
    }

    /// <summary>The matrix times a vector.</summary>
    public readonly void Times(in JointsOf<Four> v, out JointsOf<Four> product)
    {
        Unsafe.SkipInit(out product);
        Four a = v[0], b = v[1], c = v[2], d = v[3], e = v[4], f = v[5], g = v[6];
        product[0] = (this[0] * a) + (this[1] * b) + (this[3] * c) + (this[6] * d) + (this[10] * e) + (this[15] * f) + (this[21] * g);
        product[1] = (this[1] * a) + (this[2] * b) + (this[4] * c) + (this[7] * d) + (this[11] * e) + (this[16] * f) + (this[22] * g);
        product[2] = (this[3] * a) + (this[4] * b) + (this[5] * c) + (this[8] * d) + (this[12] * e) + (this[17] * f) + (this[23] * g);
        product[3] = (this[6] * a) + (this[7] * b) + (this[8] * c) + (this[9] * d) + (this[13] * e) + (this[18] * f) + (this[24] * g);
        product[4] = (this[10] * a) + (this[11] * b) + (this[12] * c) + (this[13] * d) + (this[14] * e) + (this[19] * f) + (this[25] * g);
        product[5] = (this[15] * a) + (this[16] * b) + (this[17] * c) + (this[18] * d) + (this[19] * e) + (this[20] * f) + (this[26] * g);
        product[6] = (this[21] * a) + (this[22] * b) + (this[23] * c) + (this[24] * d) + (this[25] * e) + (this[26] * f) + (this[27] * g);
    }

    /// <summary>Solves the matrix, damped, times a vector for that vector, by Cholesky's method without roots (LDLᵀ); a pivot that is not above 0
    /// is made so.</summary>
    /// <param name="free">Bits set where a joint moves; elsewhere the solution is 0.</param>
    /// <param name="damping">Added to the diagonal.</param>
    /// <param name="right">Right-hand side; the solution on return.</param>
    public readonly void Solve(in JointsOf<Four> free, Four damping, ref JointsOf<Four> right)
    {
        Unsafe.SkipInit(out FourCurvature l);
        Unsafe.SkipInit(out JointsOf<Four> inverse);
        UpperRows(in free, damping, ref l, ref inverse, ref right);
        LowerRows(in free, damping, ref l, ref inverse, ref right);
        Four g = right[6] * inverse[6];
        Four f = (right[5] * inverse[5]) - (l[26] * g);
        Four e = (right[4] * inverse[4]) - (l[25] * g) - (l[19] * f);
        Four d = (right[3] * inverse[3]) - (l[24] * g) - (l[18] * f) - (l[13] * e);
        Four c = (right[2] * inverse[2]) - (l[23] * g) - (l[17] * f) - (l[12] * e) - (l[8] * d);
        Four b = (right[1] * inverse[1]) - (l[22] * g) - (l[16] * f) - (l[11] * e) - (l[7] * d) - (l[4] * c);
        Four a = (right[0] * inverse[0]) - (l[21] * g) - (l[15] * f) - (l[10] * e) - (l[6] * d) - (l[3] * c) - (l[1] * b);
        (right[0], right[1], right[2], right[3]) = (a, b, c, d);
        (right[4], right[5], right[6]) = (e, f, g);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Four Inverse(Four pivot) => FourMath.One / Vector128.MaxNative(pivot, FourMath.Of(1e-9f));

    private readonly void UpperRows(in JointsOf<Four> free, Four damping, ref FourCurvature l, ref JointsOf<Four> inverse, ref JointsOf<Four> right)
    {
        Four at = free[0], bt = free[1], ct = free[2], dt = free[3];
        Four z0 = right[0] & at, v0 = Inverse(this[0] + damping);
        Four c0 = this[1] & at & bt, l0 = c0 * v0;
        l[1] = l0;
        Four z1 = (right[1] & bt) - (l0 * z0), v1 = Inverse(this[2] + damping - (c0 * l0));

        c0 = this[3] & at & ct;
        l0 = c0 * v0;
        Four c1 = (this[4] & bt & ct) - (c0 * l[1]), l1 = c1 * v1;
        (l[3], l[4]) = (l0, l1);
        Four z2 = (right[2] & ct) - (l0 * z0) - (l1 * z1), v2 = Inverse(this[5] + damping - (c0 * l0) - (c1 * l1));

        c0 = this[6] & at & dt;
        l0 = c0 * v0;
        c1 = (this[7] & bt & dt) - (c0 * l[1]);
        l1 = c1 * v1;
        Four c2 = (this[8] & ct & dt) - (c0 * l[3]) - (c1 * l[4]), l2 = c2 * v2;
        (l[6], l[7], l[8]) = (l0, l1, l2);
        Four z3 = (right[3] & dt) - (l0 * z0) - (l1 * z1) - (l2 * z2);
        (right[0], right[1], right[2], right[3]) = (z0, z1, z2, z3);
        (inverse[0], inverse[1], inverse[2]) = (v0, v1, v2);
        inverse[3] = Inverse(this[9] + damping - (c0 * l0) - (c1 * l1) - (c2 * l2));
    }

    private readonly void LowerRows(in JointsOf<Four> free, Four damping, ref FourCurvature l, ref JointsOf<Four> inverse, ref JointsOf<Four> right)
    {
        Four mine = free[4];
        Four c0 = this[10] & free[0] & mine, c1 = (this[11] & free[1] & mine) - (c0 * l[1]);
        Four c2 = (this[12] & free[2] & mine) - (c0 * l[3]) - (c1 * l[4]);
        Four c3 = (this[13] & free[3] & mine) - (c0 * l[6]) - (c1 * l[7]) - (c2 * l[8]);
        Four l0 = c0 * inverse[0], l1 = c1 * inverse[1], l2 = c2 * inverse[2], l3 = c3 * inverse[3];
        (l[10], l[11], l[12], l[13]) = (l0, l1, l2, l3);
        inverse[4] = Inverse(this[14] + damping - (c0 * l0) - (c1 * l1) - (c2 * l2) - (c3 * l3));
        right[4] = (right[4] & mine) - (l0 * right[0]) - (l1 * right[1]) - (l2 * right[2]) - (l3 * right[3]);

        mine = free[5];
        (c0, c1) = (this[15] & free[0] & mine, this[16] & free[1] & mine);
        c1 -= c0 * l[1];
        c2 = (this[17] & free[2] & mine) - (c0 * l[3]) - (c1 * l[4]);
        c3 = (this[18] & free[3] & mine) - (c0 * l[6]) - (c1 * l[7]) - (c2 * l[8]);
        Four c4 = (this[19] & free[4] & mine) - (c0 * l[10]) - (c1 * l[11]) - (c2 * l[12]) - (c3 * l[13]);
        (l0, l1, l2, l3) = (c0 * inverse[0], c1 * inverse[1], c2 * inverse[2], c3 * inverse[3]);
        Four l4 = c4 * inverse[4];
        (l[15], l[16], l[17], l[18]) = (l0, l1, l2, l3);
        l[19] = l4;
        inverse[5] = Inverse(this[20] + damping - (c0 * l0) - (c1 * l1) - (c2 * l2) - (c3 * l3) - (c4 * l4));
        right[5] = (right[5] & mine) - (l0 * right[0]) - (l1 * right[1]) - (l2 * right[2]) - (l3 * right[3]) - (l4 * right[4]);

        mine = free[6];
        (c0, c1) = (this[21] & free[0] & mine, this[22] & free[1] & mine);
        c1 -= c0 * l[1];
        c2 = (this[23] & free[2] & mine) - (c0 * l[3]) - (c1 * l[4]);
        c3 = (this[24] & free[3] & mine) - (c0 * l[6]) - (c1 * l[7]) - (c2 * l[8]);
        c4 = (this[25] & free[4] & mine) - (c0 * l[10]) - (c1 * l[11]) - (c2 * l[12]) - (c3 * l[13]);
        Four c5 = (this[26] & free[5] & mine) - (c0 * l[15]) - (c1 * l[16]) - (c2 * l[17]) - (c3 * l[18]) - (c4 * l[19]);
        (l0, l1, l2, l3) = (c0 * inverse[0], c1 * inverse[1], c2 * inverse[2], c3 * inverse[3]);
        (l4, Four l5) = (c4 * inverse[4], c5 * inverse[5]);
        (l[21], l[22], l[23], l[24]) = (l0, l1, l2, l3);
        (l[25], l[26]) = (l4, l5);
        inverse[6] = Inverse(this[27] + damping - (c0 * l0) - (c1 * l1) - (c2 * l2) - (c3 * l3) - (c4 * l4) - (c5 * l5));
        right[6] = (right[6] & mine) - (l0 * right[0]) - (l1 * right[1]) - (l2 * right[2]) - (l3 * right[3]) - (l4 * right[4]) - (l5 * right[5]);
    }
}
