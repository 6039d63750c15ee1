using System.Globalization;
using System.Text;

namespace TrialKit.Benchmarks.Calibration;

/// <summary>Runs every simulation and writes <c>docs/methods/calibration.md</c>.</summary>
internal static class CalibrationPage
{
    private const int Trials = 10_000;
    private const ulong Seed = 20_260_501;

    /// <summary>Writes the page.</summary>
    /// <param name="path">Where to.</param>
    /// <returns>0 when every rate is as it should be, else 1.</returns>
    public static int Write(string path)
    {
        CheckedRate[] rates =
        [
            .. PairCalibration.Run(4, Trials, Seed),
            .. PairCalibration.Run(6, Trials, Seed + 1),
            .. PairCalibration.Run(8, Trials, Seed + 2),
            .. BlockCalibration.Run(4, 5, Trials, Seed + 3),
        ];
        var page = new StringBuilder();
        page.Append("# Calibration\n\n");
        page.Append(CultureInfo.InvariantCulture, $"Does a test at 5 % raise a false alarm in 5 % of trials without any difference, and does a 90 % interval hold the truth in 90 %? {Trials:N0} trials of each layout without a difference for the tests, as many more with true differences for the intervals, normal errors, drawn from seed {Seed} on and analysed by the numerics of the library.\n\n");
        page.Append("Made by `dotnet run -c Release --project tests/TrialKit.Benchmarks -- calibrate docs/methods/calibration.md`. A rate agrees with its level when it is within three Monte Carlo standard errors of it (0.0065 at 0.05, 0.0090 at 0.10); a coverage when it is within 0.01.\n\n");
        page.Append("| layout | test or interval | nominal | found | should be | is |\n|---|---|---|---|---|---|\n");
        foreach (var rate in rates)
        {
            page.Append(rate.ToRow()).Append('\n');
        }

        page.Append("\nThe randomisation tests can give few p values when there are few strips: with 4 pairs none below 0.125, so they never reject at 0.05 or 0.10. That is their limit, and reports say so. With more pairs their rate is the largest the steps allow.\n\n");
        page.Append("**The wrong test, to teach why.** In the last rows each spot is taken for a replicate, spots and strips varying alike. It calls nothing a difference far more often than it says it does. Spots of one strip share the strip's soil, its seed and the planter's pass: they know the strip better and know nothing of treatments.\n\n");
        page.Append("How emergence times and measures of evenness fare stands in [calibration-emergence.md](calibration-emergence.md).\n\n");
        page.Append("Sources: Hurlbert 1984, Ecol. Monogr. 54:187-211, for spots as replicates. The other lines follow from the definition of each test.\n");
        File.WriteAllText(path, page.ToString());
        return Array.TrueForAll(rates, rate => rate.Holds || rate.Expectation.EndsWith("wrong", StringComparison.Ordinal)) ? 0 : 1;
    }
}
