using System.Runtime.InteropServices;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Reach;

/// <summary>A number about the person, with how it was obtained.</summary>
/// <param name="Value">SI: m, kg or rad.</param>
/// <param name="How">How it was obtained; sets its error.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct ReachInput(double Value, HowObtained How = HowObtained.Measured);
