using CsCheck;
using ToiletAid.Core.Reach;

namespace ToiletAid.Core.Tests.Reach;

public sealed class SinesTests
{
    // Against the mathematical library of the platform, over a few turns.
    [Fact]
    public void Eight_sines_and_cosines_are_those_of_the_library() =>
        Gen.Double[-10, 10].Array[JointVector.Places].Sample(
            angles =>
            {
                JointVector turns = default, sines = default, cosines = default;
                for (int i = 0; i < angles.Length; i++)
                {
                    turns[i] = angles[i];
                }

                Sines.Of(turns.All, out Eight ofSine, out Eight ofCosine);
                (sines.All, cosines.All) = (ofSine, ofCosine);
                for (int i = 0; i < angles.Length; i++)
                {
                    (double sine, double cosine) = Math.SinCos(angles[i]);
                    Assert.Equal(sine, sines[i], 5e-16);
                    Assert.Equal(cosine, cosines[i], 5e-16);
                }
            },
            iter: 10_000);

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(Math.PI / 2, 1, 0)]
    [InlineData(Math.PI, 0, -1)]
    [InlineData(-Math.PI / 2, -1, 0)]
    [InlineData(3 * Math.PI / 2, -1, 0)]
    [InlineData(Math.PI / 6, 0.5, 0.8660254037844386)]
    public void Corners_are_exact_to_the_last_bits(double angle, double sine, double cosine)
    {
        JointVector turns = default, sines = default, cosines = default;
        turns[0] = angle;
        Sines.Of(turns.All, out Eight ofSine, out Eight ofCosine);
        (sines.All, cosines.All) = (ofSine, ofCosine);
        Assert.Equal(sine, sines[0], 3e-16);
        Assert.Equal(cosine, cosines[0], 3e-16);
    }
}
