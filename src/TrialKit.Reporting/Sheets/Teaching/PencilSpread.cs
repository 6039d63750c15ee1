namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>Mean and spread of some numbers as a pencil works them out, two decimals at each step.</summary>
/// <remarks>Sum of squares about the mean over n - 1, its root, and that over the root of n (Student 1908, Biometrika 6:1-25).</remarks>
internal sealed class PencilSpread
{
    private const int Places = 2;

    private readonly Rounded[] values;
    private readonly Rounded[] deviations;
    private readonly Rounded[] squares;

    /// <summary>The spread of two numbers or more.</summary>
    /// <param name="values">The numbers, rounded.</param>
    public PencilSpread(IEnumerable<Rounded> values)
    {
        this.values = [.. values];
        var n = this.values.Length;
        Sum = Rounded.Sum(this.values);
        Mean = (Sum / n).To(Places);
        deviations = [.. this.values.Select(value => value - Mean)];
        squares = [.. deviations.Select(each => each.Square().To(Places))];
        SquareSum = Rounded.Sum(squares);
        Variance = (SquareSum / (n - 1)).To(Places);
        Deviation = Variance.Root().To(Places);
        Root = ((Rounded)n).Root().To(Places);
        Error = (Deviation / Root).To(Places);
    }

    /// <summary>How many there are.</summary>
    public int Count => values.Length;

    /// <summary>The sum.</summary>
    public Rounded Sum { get; }

    /// <summary>The mean.</summary>
    public Rounded Mean { get; }

    /// <summary>The standard error of the mean.</summary>
    public Rounded Error { get; }

    /// <summary>The numbers as a sum is written.</summary>
    public string Added => string.Join(" + ", values.Select(value => value.InSum));

    private Rounded SquareSum { get; }

    private Rounded Variance { get; }

    private Rounded Deviation { get; }

    private Rounded Root { get; }

    /// <summary>The steps from the mean to the standard error.</summary>
    public IEnumerable<KeyStep> Steps() => [.. Squares(), .. ToError()];

    /// <summary>The steps from the mean to the sum of squares.</summary>
    public IEnumerable<KeyStep> Squares() =>
    [
        .. values.Select((value, i) => KeyStep.Of($"square{i + 1}", $"Square of pair {i + 1}", $"({value.Text} − {Mean.InSum})² = {deviations[i].InSum}²", squares[i])),
        KeyStep.Of("squares", "Sum of squares", string.Join(" + ", squares.Select(each => each.Text)), SquareSum),
    ];

    /// <summary>The steps from the sum of squares to the standard error.</summary>
    public IEnumerable<KeyStep> ToError() =>
    [
        KeyStep.Of("variance", "Variance", $"{SquareSum.Text} ÷ {values.Length - 1}", Variance),
        KeyStep.Of("deviation", "Standard deviation", $"√{Variance.Text}", Deviation),
        KeyStep.Of("root", "Root of the number of pairs", $"√{values.Length}", Root),
        KeyStep.Of("error", "Standard error", $"{Deviation.Text} ÷ {Root.Text}", Error),
    ];
}
