using System.Globalization;
using System.Text;

namespace TrialKit.Tests.Examples;

/// <summary>Builds the text of one table: remarks, a header, rows; lines end with a line feed.</summary>
/// <remarks>A column without a single cell is left out, as a person would leave it out.</remarks>
internal sealed class CsvText(IEnumerable<string> remarks, params IEnumerable<string> header)
{
    private readonly string[] columns = [.. header];
    private readonly List<string[]> rows = [];

    /// <summary>Adds a row; an empty text is a cell that was not recorded.</summary>
    public void Row(params IEnumerable<string> cells) => rows.Add([.. cells]);

    /// <summary>A number as short as it reads back.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number read off a scale of this step, with the digits that the step has.</summary>
    public static string Stepped(double value, double step)
    {
        var point = Number(step).IndexOf('.', StringComparison.Ordinal);
        var digits = point < 0 ? 0 : Number(step).Length - point - 1;
        return (Math.Round(value / step) * step).ToString($"F{digits}", CultureInfo.InvariantCulture);
    }

    /// <summary>A date.</summary>
    public static string Date(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A date and a time of day.</summary>
    public static string Moment(DateOnly date, TimeOnly time) =>
        date.ToDateTime(time).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override string ToString()
    {
        var kept = Enumerable.Range(0, columns.Length).Where(column => rows.Exists(row => row[column].Length > 0)).ToArray();
        var text = new StringBuilder();
        foreach (var remark in remarks)
        {
            text.Append("# ").Append(remark).Append('\n');
        }

        foreach (var row in rows.Prepend(columns))
        {
            text.AppendJoin(',', kept.Select(column => row[column].Contains(',', StringComparison.Ordinal) ? $"\"{row[column]}\"" : row[column])).Append('\n');
        }

        return text.ToString();
    }
}
