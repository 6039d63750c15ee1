using TrialKit.Quantities;

namespace TrialKit.Stand;

/// <summary>A published table of corn yield by stand and planting date, in percent of the best.</summary>
/// <remarks>Nafziger 1994, J. Prod. Agric. 7:59-62, as printed by Purdue University 2006. Values between its entries are straight between the four around; beyond its edges there is none.</remarks>
public static class StandResponse
{
    /// <summary>The table's name, to be printed beside every value.</summary>
    public const string Source = "Nafziger 1994, J. Prod. Agric. 7:59-62, as printed by Purdue 2006";

    /// <summary>What the table is not.</summary>
    public const string Caution = "The table is one region's data, as old as its year: it knows nothing of this field, its hybrid, its weather, gaps in the stand, or the cost of replanting.";

    // Any year: only month and day are looked up.
    private static readonly DateOnly[] Dates =
    [
        new(2000, 4, 10), new(2000, 4, 20), new(2000, 4, 25), new(2000, 4, 30), new(2000, 5, 5),
        new(2000, 5, 10), new(2000, 5, 15), new(2000, 5, 20), new(2000, 5, 25), new(2000, 5, 30),
    ];

    private static readonly double[] ThousandPerAcre = [10, 12, 16, 20, 22, 24, 26, 28, 30, 32, 34, 36];

    private static readonly int[][] PercentOfBest =
    [
        [62, 68, 78, 85, 88, 91, 92, 93, 94, 94, 93, 91],
        [67, 73, 83, 90, 93, 96, 97, 98, 99, 98, 98, 96],
        [68, 74, 84, 92, 94, 97, 98, 99, 100, 100, 99, 97],
        [68, 74, 84, 92, 95, 97, 99, 100, 100, 100, 99, 97],
        [67, 73, 83, 91, 94, 96, 98, 99, 99, 99, 98, 97],
        [65, 71, 82, 89, 92, 94, 96, 97, 97, 97, 96, 95],
        [63, 69, 79, 87, 89, 92, 93, 94, 95, 95, 94, 92],
        [59, 65, 75, 83, 86, 88, 90, 91, 91, 91, 90, 89],
        [55, 61, 71, 79, 81, 84, 85, 86, 87, 87, 86, 84],
        [49, 55, 65, 73, 76, 78, 80, 81, 81, 81, 80, 79],
    ];

    /// <summary>The least and the greatest stand of the table.</summary>
    public static (PlantDensity Least, PlantDensity Greatest) Stands { get; } =
        (PlantDensity.FromPerAcre(1000 * ThousandPerAcre[0]), PlantDensity.FromPerAcre(1000 * ThousandPerAcre[^1]));

    /// <summary>The table's entries.</summary>
    public static IEnumerable<(DateOnly Planted, PlantDensity Stand, int Percent)> Entries =>
        Dates.SelectMany((date, i) => ThousandPerAcre.Select((stand, j) => (date, PlantDensity.FromPerAcre(1000 * stand), PercentOfBest[i][j])));

    /// <summary>Yield in percent of the best; null when stand or date lies outside the table.</summary>
    /// <param name="planted">The planting date; its year does not matter.</param>
    /// <param name="stand">Plants standing.</param>
    public static double? PercentAt(DateOnly planted, PlantDensity stand)
    {
        // The table's days are months and days of any year; 2000 lets February 29 be placed.
        var day = new DateOnly(2000, planted.Month, planted.Day);
        var (row, down) = Place(Array.ConvertAll(Dates, date => (double)date.DayNumber), day.DayNumber);
        var (column, across) = Place(ThousandPerAcre, stand.PerAcre / 1000);
        return row < 0 || column < 0
            ? null
            : Mix(Mix(At(row, column), At(row, column + 1), across), Mix(At(row + 1, column), At(row + 1, column + 1), across), down);

        static double At(int row, int column) => PercentOfBest[row][column];

        static double Mix(double from, double to, double part) => from + (part * (to - from));
    }

    // The entry at or before a value and the part of the way to the next; the last entry counts as the end of the step before it.
    private static (int Index, double Part) Place(double[] entries, double value)
    {
        // A stand converted from other units may miss the table's own edge by a rounding error.
        const double Rounding = 1e-9;
        if (value < entries[0] - Rounding || value > entries[^1] + Rounding)
        {
            return (-1, 0);
        }

        var next = Math.Clamp(Array.FindIndex(entries, entry => entry >= value), 1, entries.Length - 1);
        return (next - 1, (value - entries[next - 1]) / (entries[next] - entries[next - 1]));
    }
}
