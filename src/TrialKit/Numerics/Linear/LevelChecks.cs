using System.Globalization;

namespace TrialKit.Numerics.Linear;

/// <summary>Refusals of level indices that no analysis can use.</summary>
internal static class LevelChecks
{
    /// <summary>Refuses an index list of another length than the values, or with an index outside 0..count-1.</summary>
    /// <param name="indices">One index per observation.</param>
    /// <param name="length">Number of observations.</param>
    /// <param name="name">What the indices number, for the message.</param>
    /// <returns>The number of levels: the largest index + 1. Every level below it occurs.</returns>
    /// <exception cref="ArgumentException">Lengths differ, an index is negative, or a level never occurs.</exception>
    public static int Count(ReadOnlySpan<int> indices, int length, string name)
    {
        if (indices.Length != length)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{indices.Length} indices of {name} came with {length} values; one for each was expected."), name);
        }

        var levels = 0;
        foreach (var index in indices)
        {
            if (index < 0 || index >= length)
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"An index of {name} is {index}; 0 to {length - 1} was expected for {length} values."), name);
            }

            levels = Math.Max(levels, index + 1);
        }

        var seen = new bool[levels];
        foreach (var index in indices)
        {
            seen[index] = true;
        }

        var missing = Array.IndexOf(seen, value: false);
        return missing < 0
            ? levels
            : throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"Level {missing} of {name} never occurs though level {levels - 1} does; levels are numbered without gaps."), name);
    }
}
