namespace ToiletAidTui.Notices;

/// <summary>Something of others that is shipped with the program.</summary>
/// <param name="Name">Name of the package.</param>
/// <param name="Version">Its version.</param>
/// <param name="Licence">SPDX id of its licence.</param>
/// <param name="Copyright">Who holds it.</param>
internal sealed record Library(string Name, string Version, string Licence, string Copyright);
