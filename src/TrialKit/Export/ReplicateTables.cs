using TrialKit.Planning;

namespace TrialKit.Export;

/// <summary>What numbers of replicates can show, as a table.</summary>
public static class ReplicateTables
{
    /// <summary>The table <c>replicates</c>.</summary>
    /// <param name="rows">Its rows.</param>
    public static ResultTable Of(IEnumerable<ReplicateRow> rows) => ResultTable.Of(
        "replicates",
        "one number of pairs or blocks",
        rows,
        ("replicates", "pairs or blocks", row => row.Replicates),
        ("degrees_of_freedom", "of the error", row => row.DegreesOfFreedom),
        ("detectable_percent", "difference shown with the power asked, percent of the mean", row => row.Detectable),
        ("power", "chance to show the difference asked about", row => row.Power),
        ("f_power", "chance that the F test of all treatments finds it", row => row.FPower),
        ("smallest_exact_p", "smallest p that the exact test can give", row => row.SmallestExactP));
}
