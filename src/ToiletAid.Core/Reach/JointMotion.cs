namespace ToiletAid.Core.Reach;

/// <summary>A joint motion whose range may limit reach.</summary>
/// <remarks>The model takes the wrist from its ulnar deviation alone, the wider of the two ways in which a handle held in a fist is tilted: wrist
/// flexion, wrist extension and radial deviation are kept and change no length.</remarks>
public enum JointMotion
{
    /// <summary>Shoulder flexion: upper arm forward and up.</summary>
    ShoulderFlexion,

    /// <summary>Shoulder extension: upper arm backward.</summary>
    ShoulderExtension,

    /// <summary>Shoulder abduction: upper arm sideways.</summary>
    ShoulderAbduction,

    /// <summary>Shoulder adduction: upper arm across the body.</summary>
    ShoulderAdduction,

    /// <summary>Shoulder internal rotation: forearm toward the belly or the back.</summary>
    ShoulderInternalRotation,

    /// <summary>Shoulder external rotation: forearm outward.</summary>
    ShoulderExternalRotation,

    /// <summary>Elbow flexion.</summary>
    ElbowFlexion,

    /// <summary>Elbow extension lag: how much is missing until the arm is straight; 0 when it straightens fully.</summary>
    ElbowExtensionLag,

    /// <summary>Trunk flexion, or lean forward.</summary>
    TrunkFlexion,

    /// <summary>Trunk side bend, each way.</summary>
    TrunkSideBend,

    /// <summary>Trunk rotation, each way.</summary>
    TrunkRotation,

    /// <summary>Forearm pronation.</summary>
    ForearmPronation,

    /// <summary>Forearm supination.</summary>
    ForearmSupination,

    /// <summary>Wrist flexion.</summary>
    WristFlexion,

    /// <summary>Wrist extension.</summary>
    WristExtension,

    /// <summary>Wrist bent to the thumb side.</summary>
    RadialDeviation,

    /// <summary>Wrist bent to the little-finger side.</summary>
    UlnarDeviation,
}
