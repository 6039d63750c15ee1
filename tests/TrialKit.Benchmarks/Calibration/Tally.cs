using System.Globalization;

namespace TrialKit.Benchmarks.Calibration;

/// <summary>Counts how often something happened over trials.</summary>
internal sealed class Tally
{
    private const double StandardErrors = 3;
    private int hits;
    private int trials;

    /// <summary>The share of trials in which it happened.</summary>
    public double Share => (double)hits / trials;

    /// <summary>Counts one trial.</summary>
    public void Count(bool happened)
    {
        trials++;
        hits += happened ? 1 : 0;
    }

    /// <summary>Whether the share lies within three Monte Carlo standard errors of a probability.</summary>
    public bool Agrees(double probability) => Math.Abs(Share - probability) <= StandardErrors * Error(probability);

    /// <summary>Whether the share lies no more than three Monte Carlo standard errors above a probability.</summary>
    public bool IsAtMost(double probability) => Share <= probability + (StandardErrors * Error(probability));

    /// <summary>The share as a cell.</summary>
    public override string ToString() => Share.ToString("0.0000", CultureInfo.InvariantCulture);

    private double Error(double probability) => Math.Sqrt(probability * (1 - probability) / trials);
}
