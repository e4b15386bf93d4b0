namespace ToiletAid.Core.Asking;

/// <summary>What was worked out before, by a number that counts up from 0.</summary>
internal sealed class SlotMemo<T>
{
    private (bool Known, T Value)[] _slots = [];

    /// <summary>True where something is kept.</summary>
    /// <param name="number">The number, 0 or more.</param>
    /// <param name="value">What is kept.</param>
    internal bool Has(int number, out T value)
    {
        if (number < _slots.Length)
        {
            (bool known, value) = _slots[number];
            return known;
        }

        value = default!;
        return false;
    }

    /// <summary>Keeps a value and gives it back.</summary>
    /// <param name="number">The number, 0 or more.</param>
    /// <param name="value">The value.</param>
    internal T Keep(int number, T value)
    {
        if (number >= _slots.Length)
        {
            Array.Resize(ref _slots, Math.Max(number + 1, 2 * _slots.Length));
        }

        _slots[number] = (true, value);
        return value;
    }
}
