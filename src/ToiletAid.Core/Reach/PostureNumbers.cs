using ToiletAid.Core.Evidence;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>What a posture leaves free and how it places thighs and pelvis; rad and shares.</summary>
internal sealed class PostureNumbers
{
    public PostureNumbers(NumberTable numbers, Posture posture)
    {
        Posture = posture;
        double Read(string name) => numbers.Value($"posture.{Words.Of(posture)}.{name}");
        LeanLow = Read("lean-low");
        LeanHigh = Read("lean-high");
        Bend = Read("bend");
        TwistForward = Read("twist-forward");
        TwistBack = Read("twist-back");
        PelvisLean = Read("pelvis-share-of-lean");
        PelvisBend = Read("pelvis-share-of-bend");
        ThighFlexion = Read("thigh-flexion");
        ThighParting = Read("thigh-parting");
    }

    public Posture Posture { get; }

    /// <summary>Least and greatest forward lean.</summary>
    public double LeanLow { get; }

    /// <inheritdoc cref="LeanLow"/>
    public double LeanHigh { get; }

    /// <summary>Greatest side bend, each way.</summary>
    public double Bend { get; }

    /// <summary>Greatest twist that brings the working shoulder forward.</summary>
    public double TwistForward { get; }

    /// <summary>Greatest twist that takes it back; people turn less far that way.</summary>
    public double TwistBack { get; }

    /// <summary>Shares of lean and side bend that the pelvis takes.</summary>
    public double PelvisLean { get; }

    /// <inheritdoc cref="PelvisLean"/>
    public double PelvisBend { get; }

    /// <summary>Thigh against the upright trunk; 0 is straight down.</summary>
    public double ThighFlexion { get; }

    /// <summary>Each thigh from straight ahead.</summary>
    public double ThighParting { get; }

    public bool HasSeat => Posture is Posture.Seated or Posture.SeatedLeaningForward;

    public bool IsLying => Posture is Posture.SideLying or Posture.Reclined;
}
