using System.Globalization;

namespace TrialKit.Ingest;

/// <summary>A place in a file of the trial folder: a line and column of text, or a cell of a sheet.</summary>
/// <param name="File">The file's path from the trial folder, such as <c>stand-counts.csv</c>.</param>
/// <param name="Sheet">The sheet of a workbook; null for a text file.</param>
/// <param name="Line">The line of text or the row of the sheet, from 1.</param>
/// <param name="Column">The character within the line or the column of the sheet, from 1.</param>
public sealed record ProblemLocation(string File, string? Sheet, int Line, int Column)
{
    /// <summary>The first character of a file, where a fault of the whole file is reported.</summary>
    /// <param name="file">The file's path from the trial folder.</param>
    /// <returns>Line 1, column 1.</returns>
    public static ProblemLocation StartOf(string file) => new(file, null, 1, 1);

    /// <summary>The place as printed: <c>stand-counts.csv:14:23</c> or <c>trial.xlsx!stand-counts!C7</c>.</summary>
    public override string ToString() => Sheet is null
        ? string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}")
        : string.Create(CultureInfo.InvariantCulture, $"{File}!{Sheet}!{SheetColumn(Column)}{Line}");

    /// <summary>The letters of a sheet's column: 1 is A, 27 is AA.</summary>
    internal static string SheetColumn(int column)
    {
        var letters = string.Empty;
        for (var rest = column; rest > 0; rest = (rest - 1) / 26)
        {
            letters = (char)('A' + ((rest - 1) % 26)) + letters;
        }

        return letters;
    }
}
