using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace ToiletAid.App.Files;

/// <summary>A value, or what is wrong with the input that it was to be made from.</summary>
/// <typeparam name="T">What was wanted.</typeparam>
public sealed class Checked<T>
    where T : class
{
    private Checked(T? value, ImmutableArray<Issue> issues)
    {
        Value = value;
        Issues = issues;
    }

    /// <summary>The value, or null when there are issues.</summary>
    public T? Value { get; }

    /// <summary>What is wrong; empty when there is a value.</summary>
    public ImmutableArray<Issue> Issues { get; }

    /// <summary>True, with the value, when nothing is wrong.</summary>
    public bool TryGet([NotNullWhen(true)] out T? value)
    {
        value = Value;
        return value is not null;
    }

    internal static Checked<T> Good(T value) => new(value, []);

    internal static Checked<T> Bad(params IEnumerable<Issue> issues) => new(null, [.. issues]);
}
