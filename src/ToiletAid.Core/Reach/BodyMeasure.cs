namespace ToiletAid.Core.Reach;

/// <summary>A length of the body that the reach model needs.</summary>
public enum BodyMeasure
{
    /// <summary>Stature, m.</summary>
    Stature,

    /// <summary>Body mass, kg.</summary>
    Mass,

    /// <summary>Height of the acromion above the seat, m.</summary>
    ShoulderHeightSitting,

    /// <summary>Acromion to elbow joint (acromion-radiale length), m.</summary>
    UpperArm,

    /// <summary>Back of the elbow to the centre of the grip, m.</summary>
    ForearmToGrip,

    /// <summary>Breadth between the acromia, m.</summary>
    ShoulderBreadth,

    /// <summary>Breadth of the hips when sitting, m.</summary>
    HipBreadth,

    /// <summary>Depth of the buttock, m.</summary>
    ButtockDepth,

    /// <summary>Depth of the abdomen when sitting, m.</summary>
    AbdomenDepth,

    /// <summary>Thickness of the thigh above the seat, m.</summary>
    ThighThickness,

    /// <summary>Breadth of the hand across the knuckles, m.</summary>
    HandBreadth,

    /// <summary>Buttock to the hollow of the knee, m.</summary>
    ThighLength,
}
