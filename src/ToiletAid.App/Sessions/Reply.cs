namespace ToiletAid.App.Sessions;

/// <summary>What an answer led to.</summary>
/// <param name="Accepted">True when it was taken.</param>
/// <param name="Text">What was taken, in words; or why it was not, one sentence.</param>
/// <param name="Retry">A short reminder of what is wanted, for the line with the cursor; empty when it was taken.</param>
public sealed record Reply(bool Accepted, string Text, string Retry = "");
