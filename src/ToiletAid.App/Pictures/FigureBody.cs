namespace ToiletAid.App.Pictures;

/// <summary>Lengths of the figure that stands for every person, cm. Up to the thigh they are those of the middle adult of the body data, 170 cm tall,
/// rounded to half a centimetre, which a test checks; head, lower leg and thicknesses are a convention of drawing.</summary>
internal static class FigureBody
{
    internal const double Stature = 170;
    internal const double ShoulderAboveHip = 47;
    internal const double UpperArm = 29.5;
    internal const double Forearm = 32;
    internal const double HandBeyondGrip = 12.5;
    internal const double HipAboveSeat = 8.5;
    internal const double HalfShoulders = 18.5;
    internal const double HalfHips = 18;
    internal const double Thigh = 43;
    internal const double Shank = 40;
    internal const double Ankle = 8;
    internal const double Foot = 17;
    internal const double NeckToHead = 21;
    internal const double Head = 10.5;
    internal const double Pelvis = 11;
}
