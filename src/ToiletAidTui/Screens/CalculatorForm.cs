using System.Collections.Immutable;

namespace ToiletAidTui.Screens;

/// <summary>A calculator as the screens show it.</summary>
/// <param name="Name">Its command.</param>
/// <param name="Description">What it computes.</param>
/// <param name="Fields">What it takes.</param>
/// <param name="Compute">Computes with what was typed for some of the fields.</param>
internal sealed record CalculatorForm(string Name, string Description, ImmutableArray<FormField> Fields, Func<ImmutableDictionary<string, string>, Caught> Compute);
