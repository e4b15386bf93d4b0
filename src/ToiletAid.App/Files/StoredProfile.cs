using ToiletAid.Core.Person;

namespace ToiletAid.App.Files;

/// <summary>A profile as it was found on disk.</summary>
/// <param name="Profile">The profile.</param>
/// <param name="Revision">How often the store has written it; 0 for a file from elsewhere.</param>
/// <param name="Seal">What its hash says.</param>
/// <param name="IsProtected">True when it needs a passphrase.</param>
public sealed record StoredProfile(Profile Profile, int Revision, Seal Seal, bool IsProtected = false);
