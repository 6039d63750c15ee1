using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>Differences in words, rounded as the trade rounds them and in a unit that suits their size.</summary>
internal sealed class AmountText
{
    private const double HoursPerDay = 24;
    private const double DaysToldInHours = 2;
    private const int OwnFigures = 3;
    private const int MostFiner = 3;
    private readonly Func<double, string> number;
    private readonly string unit;
    private readonly string one;

    private AmountText(Func<double, string> number, string unit, string? one = null) => (this.number, this.unit, this.one) = (number, unit, one ?? unit);

    /// <summary>The words for differences of a measure no larger than a given size.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="largest">The size of the largest difference to be told.</param>
    public static AmountText For(Measure measure, double largest) => For(measure, largest, finer: 0);

    /// <summary>The words for an interval that leaves out zero: the end near zero has as many figures more as keep it from looking like zero.</summary>
    public static AmountText FineEnough(Measure measure, double largest)
    {
        AmountText[] texts = [.. Enumerable.Range(0, MostFiner + 1).Select(finer => For(measure, largest, finer))];
        return new(value => texts.FirstOrDefault(text => !text.IsNothing(value), texts[0]).Size(value), texts[0].unit);
    }

    private static AmountText For(Measure measure, double largest, int finer) => measure.Kind switch
    {
        MeasureKind.Stand => new(value => finer == 0 ? NumberText.StandAmount(value, largest) : NumberText.Number(value, 0), MeasureText.UnitWord(measure)),
        MeasureKind.Share => new(value => NumberText.Number(Math.Min(value, MeasureText.Most(measure)), 1 + finer), "percentage points"),
        MeasureKind.Time when largest < DaysToldInHours => new(value => NumberText.Number(value * HoursPerDay, finer), "hours", "hour"),
        MeasureKind.Time => new(value => NumberText.Number(value, 1 + finer), MeasureText.UnitWord(measure)),
        MeasureKind.Heat => new(value => NumberText.Number(value, 1 + finer), measure.Unit.Symbol),
        MeasureKind.Length => new(value => NumberText.Number(value, (measure.Unit == Unit.Inches ? 2 : 1) + finer), measure.Unit == Unit.Inches ? "inches" : measure.Unit.Symbol),
        MeasureKind.Yield => new(value => NumberText.Number(value, (measure.Unit == Unit.BushelsPerAcre ? 1 : 2) + finer), MeasureText.UnitWord(measure)),
        _ => new(value => NumberText.Fitting(value, largest, OwnFigures + finer), measure.Unit.Symbol),
    };

    /// <summary>What was found, as a statement: <c>half the plants were up 8 hours sooner</c>.</summary>
    /// <param name="value">The difference.</param>
    /// <param name="words">The words of the measure.</param>
    /// <param name="opening">How the statement begins: the measure's opening, as it stands at the head of a sentence or within one.</param>
    public string Found(double value, MeasureWords words, string opening) => IsNothing(value)
        ? $"{(char.IsUpper(opening[0]) ? "The" : "the")} difference in {words.Noun} was next to none"
        : $"{opening} {Directed(value, words)}";

    /// <summary>A difference with its direction: <c>8 hours sooner</c>; <c>next to none</c> where it rounds to nothing.</summary>
    public string Directed(double value, MeasureWords words) => IsNothing(value) ? "next to none" : $"{Amount(value)} {Direction(value, words)}";

    /// <summary>A size with its unit: <c>8 hours</c>.</summary>
    public string Amount(double value) => WithUnit(Size(value));

    /// <summary>A size with its unit: <c>3 bushels an acre</c>.</summary>
    public string Told(double value) => WithUnit(Size(value));

    /// <summary>A size alone, where the unit was just said: <c>8</c>.</summary>
    public string Size(double value) => number(Math.Abs(value));

    /// <summary>A range where the unit was just said: on one side of zero the sizes in increasing order, <c>5 to 11</c>; across zero each end has its direction.</summary>
    public string Range(double low, double high, MeasureWords words)
    {
        if (low * high > 0)
        {
            return $"{Size(Math.Min(Math.Abs(low), Math.Abs(high)))} to {Size(Math.Max(Math.Abs(low), Math.Abs(high)))}";
        }

        return (IsNothing(low), IsNothing(high)) switch
        {
            (true, _) => $"{Size(low)} to {Size(high)} {words.More}",
            (_, true) => $"{Size(high)} to {Size(low)} {words.Less}",
            _ => $"{Size(low)} {words.Less} to {Size(high)} {words.More}",
        };
    }

    private bool IsNothing(double value) => !Size(value).AsSpan().ContainsAnyInRange('1', '9');

    private static string Direction(double value, MeasureWords words) => value < 0 ? words.Less : words.More;

    // A number and its unit stand on one line.
    private string WithUnit(string amount) => unit.Length == 0 ? amount : $"{amount}\u00A0{(amount == "1" ? one : unit)}";
}
