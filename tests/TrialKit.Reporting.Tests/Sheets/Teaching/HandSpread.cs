namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>Mean and spread as a student works them out with two decimals at each step.</summary>
internal sealed class HandSpread
{
    public HandSpread(IReadOnlyList<decimal> values, Hand hand)
    {
        var n = values.Count;
        Mean = hand.Round(values.Sum() / n, 2);
        Squares = [.. values.Select(value => hand.Round((value - Mean) * (value - Mean), 2))];
        Variance = hand.Round(Squares.Sum() / (n - 1), 2);
        Deviation = hand.Root(Variance, 2);
        Root = hand.Root(n, 2);
        Error = hand.Round(Deviation / Root, 2);
    }

    public decimal Mean { get; }

    public decimal Variance { get; }

    public decimal Deviation { get; }

    public decimal Root { get; }

    public decimal Error { get; }

    private decimal[] Squares { get; }

    public IEnumerable<Derived> Answers() =>
    [
        .. Squares.Select((square, i) => Derived.Of($"square{i + 1}", square)),
        Derived.Of("squares", Squares.Sum()),
        Derived.Of("variance", Variance),
        Derived.Of("deviation", Deviation),
        Derived.Of("root", Root),
        Derived.Of("error", Error),
    ];
}
