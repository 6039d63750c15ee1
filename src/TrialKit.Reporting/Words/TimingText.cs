using TrialKit.Reporting.Document;
using TrialKit.Results;

namespace TrialKit.Reporting.Words;

/// <summary>Times after planting and their intervals in a table.</summary>
public static class TimingText
{
    /// <summary>An interval to the hundredth of a day on one line, a dash where there is none.</summary>
    public static string Range(Interval? interval) => Of(interval, decimals: 2);

    /// <summary>An interval of a ratio of times to three decimals.</summary>
    public static string Ratio(Interval? interval) => Of(interval, decimals: 3);

    private static string Of(Interval? interval, int decimals) => interval is { } range
        ? NumberText.Range(range.Low, range.High, end => NumberText.Number(end, decimals)).Replace(' ', '\u00A0')
        : NumberText.Dash;
}
