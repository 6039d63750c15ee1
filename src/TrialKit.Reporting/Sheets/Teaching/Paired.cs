namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>The paired t of some differences, each step to two decimals.</summary>
/// <param name="Differences">The differences, two or more.</param>
/// <param name="Alpha">The level.</param>
internal sealed record Paired(Rounded[] Differences, double Alpha)
{
    private const int Places = 2;

    public Rounded Mean { get; } = (Rounded.Sum(Differences) / Differences.Length).To(Places);

    public Rounded SumOfSquares => Rounded.Sum(Differences.Select(each => (each - Mean).Square().To(Places)));

    public Rounded Variance => (SumOfSquares / (Differences.Length - 1)).To(Places);

    public Rounded Error => (Variance / Differences.Length).Root().To(Places);

    public Rounded T => (Mean / Error).To(Places);

    public Rounded Critical => CriticalTable.T(Differences.Length - 1, Alpha);

    /// <summary>The steps of a key.</summary>
    /// <param name="prefix">What their ids begin with.</param>
    public IEnumerable<KeyStep> Steps(string prefix)
    {
        var n = Differences.Length;
        yield return KeyStep.Of(prefix + "mean", "Mean difference", $"sum {Rounded.Sum(Differences).Text} ÷ {n}", Mean);
        yield return KeyStep.Of(prefix + "squares", "Sum of squares", string.Join(" + ", Differences.Select(each => (each - Mean).Square().To(Places).Text)), SumOfSquares);
        yield return KeyStep.Of(prefix + "variance", "Variance", $"{SumOfSquares.Text} ÷ {n - 1}", Variance);
        yield return KeyStep.Of(prefix + "error", "Standard error", $"√({Variance.Text} ÷ {n})", Error);
        yield return KeyStep.Of(prefix + "t", "t", $"{Mean.Text} ÷ {Error.Text}", T);
        yield return KeyStep.Of(prefix + "critical", "Value of the table", $"{n - 1} degrees of freedom, at the level", Critical);
        yield return KeyStep.Comparison(prefix + "verdict", "Shown?", $"{T.Size().Text} against {Critical.Text}", T.Size(), Critical, "shown", "not shown");
    }
}
