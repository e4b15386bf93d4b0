using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.InteropServices;
using ToiletAid.App.Files;
using ToiletAid.App.Origins;
using ToiletAidTui.Notices;

namespace ToiletAidTui.Commands.About;

/// <summary>What is told about the program.</summary>
/// <param name="Version">Version, with the commit it was built from behind a plus sign.</param>
/// <param name="Knowledge">First digits of a hash over the built-in data.</param>
/// <param name="Numbers">Every number of the data.</param>
/// <param name="Libraries">What it is made with.</param>
internal sealed record AboutFacts(string Version, string Knowledge, ImmutableArray<DataNumber> Numbers, ImmutableArray<Library> Libraries)
{
    /// <summary>SPDX id of our own licence.</summary>
    internal const string Licence = "MIT";

    internal static string Runtime => RuntimeInformation.FrameworkDescription;

    internal static string Machine => RuntimeInformation.RuntimeIdentifier;

    internal static AboutFacts Of() => new(
        typeof(AboutFacts).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion,
        KnowledgeVersion.Knowledge,
        [.. DataNumbers.All()],
        [.. Shipped.Libraries()]);
}
