using System.Collections.Immutable;
using ToiletAid.App.Trials;
using ToiletAid.Core.Person;

namespace ToiletAidTui.Screens;

/// <summary>Begins a trial.</summary>
/// <param name="profile">The profile as it is saved.</param>
/// <param name="faults">Why there can be none, in sentences.</param>
internal delegate TrialRecording? TrialBeginning(Profile profile, out ImmutableArray<string> faults);
