using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>A number as it goes through a worked key: what a student has on paper, and beside it the same at full precision.</summary>
/// <remarks>
/// Arithmetic is done on both. <see cref="To"/> rounds what is on paper, a half away from zero, and leaves the other alone;
/// from then on the rounded one is carried, as with a pencil.
/// </remarks>
public readonly record struct Rounded
{
    private readonly int? decimals;

    private Rounded(decimal written, double exact, int? decimals) => (Written, Exact, this.decimals) = (written, exact, decimals);

    /// <summary>What is on paper.</summary>
    public decimal Written { get; }

    /// <summary>The same had nothing been rounded on the way.</summary>
    public double Exact { get; }

    /// <summary>What is on paper, as it is written there.</summary>
    /// <exception cref="InvalidOperationException">It has not been rounded yet.</exception>
    public string Text => NumberText.Number((double)Written, WrittenDecimals);

    /// <summary>The same with its sign, as differences are written.</summary>
    /// <exception cref="InvalidOperationException">It has not been rounded yet.</exception>
    public string Signed => NumberText.Difference((double)Written, WrittenDecimals);

    /// <summary>The same as part of a sum: a negative number stands in brackets.</summary>
    /// <exception cref="InvalidOperationException">It has not been rounded yet.</exception>
    public string InSum => Written < 0 ? $"({Text})" : Text;

    private int WrittenDecimals => decimals ?? throw new InvalidOperationException("The number has not been rounded; it was expected to be before it is written.");

    /// <summary>A number that is given on the sheet, exactly.</summary>
    public static Rounded Given(decimal value, int decimals) => new(decimal.Round(value, decimals, MidpointRounding.AwayFromZero), (double)decimal.Round(value, decimals, MidpointRounding.AwayFromZero), decimals);

    /// <summary>A count.</summary>
    public static Rounded Given(int value) => Given(value, 0);

    /// <summary>A number printed on the sheet with some decimals, of which more are known: a critical value.</summary>
    public static Rounded Printed(double exact, int decimals) => new(decimal.Round((decimal)exact, decimals, MidpointRounding.AwayFromZero), exact, decimals);

    /// <summary>A number read from a table with what is on paper, which is another than the table's formula gives with what was not rounded.</summary>
    public static Rounded Read(decimal written, double exact, int decimals) => new(decimal.Round(written, decimals, MidpointRounding.AwayFromZero), exact, decimals);

    /// <summary>The number as it is written down with so many decimals.</summary>
    public Rounded To(int places) => new(decimal.Round(Written, places, MidpointRounding.AwayFromZero), Exact, places);

    /// <summary>Its square root.</summary>
    public Rounded Root() => new((decimal)Math.Sqrt((double)Written), Math.Sqrt(Exact), null);

    /// <summary>Its square.</summary>
    public Rounded Square() => this * this;

    /// <summary>Its distance from zero.</summary>
    public Rounded Size() => new(Math.Abs(Written), Math.Abs(Exact), decimals);

    /// <summary>The larger of two, on paper and at full precision each.</summary>
    public static Rounded Larger(Rounded first, Rounded second) => new(Math.Max(first.Written, second.Written), Math.Max(first.Exact, second.Exact), Common(first, second));

    /// <summary>The smaller of two, on paper and at full precision each.</summary>
    public static Rounded Smaller(Rounded first, Rounded second) => new(Math.Min(first.Written, second.Written), Math.Min(first.Exact, second.Exact), Common(first, second));

    /// <summary>The sum of some; it has the decimals of what is added when they agree.</summary>
    public static Rounded Sum(IEnumerable<Rounded> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return values.Aggregate((sum, value) => sum + value);
    }

    /// <summary>The sum; whole numbers need no rounding after it.</summary>
    public static Rounded operator +(Rounded first, Rounded second) => new(first.Written + second.Written, first.Exact + second.Exact, Common(first, second));

    /// <summary>The difference.</summary>
    public static Rounded operator -(Rounded first, Rounded second) => new(first.Written - second.Written, first.Exact - second.Exact, Common(first, second));

    /// <summary>The number with its sign turned.</summary>
    public static Rounded operator -(Rounded value) => new(-value.Written, -value.Exact, value.decimals);

    /// <summary>The product, not rounded yet.</summary>
    public static Rounded operator *(Rounded first, Rounded second) => new(first.Written * second.Written, first.Exact * second.Exact, null);

    /// <summary>The quotient, not rounded yet.</summary>
    public static Rounded operator /(Rounded first, Rounded second) => new(first.Written / second.Written, first.Exact / second.Exact, null);

    /// <summary>A whole number is exact.</summary>
    public static implicit operator Rounded(int value) => Given(value);

    /// <inheritdoc/>
    public override string ToString() => decimals is null ? NumberText.Full((double)Written) : Text;

    // Adding needs no rounding: the decimals of the finer one hold the sum.
    private static int? Common(Rounded first, Rounded second) => first.decimals is { } one && second.decimals is { } other ? Math.Max(one, other) : null;
}
