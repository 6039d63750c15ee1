using System.Globalization;
using TrialKit.Export;
using TrialKit.Fuzz.Corpus;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Report;

namespace TrialKit.Fuzz;

/// <summary>Holds the program to what it promises of any input: a located problem or a result, never an exception, and no row lost without a word.</summary>
internal static class Promises
{
    /// <summary>Reads the folder of a case, analyses what reads, and says which promise was broken.</summary>
    /// <param name="folder">A folder that holds the case.</param>
    /// <param name="tried">The case.</param>
    /// <param name="writesReport">Whether a trial that reads is put into a report as well.</param>
    public static Outcome Check(string folder, FuzzCase tried, bool writesReport)
    {
#pragma warning disable CA1031 // Any exception at all breaks the promise, and the run goes on to the next case.
        try
        {
            var reading = TrialReader.Read(folder);
            var broken = Located(reading.Problems, reading.Trial is null) ?? Rows(reading, tried) ?? WeatherAlone(folder, tried);
            var isAnalysed = broken is null && reading.Trial is { IsPlan: false };
            if (isAnalysed)
            {
                Analyse(reading, writesReport);
            }

            return new(broken, reading.Trial is not null, isAnalysed);
        }
        catch (Exception exception)
        {
            return new($"exception {exception}", IsRead: false, IsAnalysed: false);
        }
#pragma warning restore CA1031
    }

    /// <summary>No figure comes from files with an error, and every problem has a code and a place and stays on its line.</summary>
    private static string? Located(IReadOnlyList<Problem> problems, bool isRefused)
    {
        if (isRefused != problems.Any(problem => problem.Severity == ProblemSeverity.Error))
        {
            return isRefused ? "refused without an error" : "read in spite of an error";
        }

        var odd = problems.FirstOrDefault(problem => problem.Code.Length != 5 || problem.Location.Line < 1 || problem.Location.Column < 1 || problem.ToString().Any(char.IsControl));
        return odd is null ? null : $"problem without a place, or not on one line: {odd}";
    }

    private static string? Rows(TrialReading reading, FuzzCase tried)
    {
        foreach (var table in reading.Tables)
        {
            var rest = table.Read - table.Used - table.LeftOut - table.PassedOver;
            if (rest < 0 || (rest > 0 && reading.Trial is not null))
            {
                return string.Create(CultureInfo.InvariantCulture, $"{table}: {rest} rows neither used nor listed");
            }

            if (table.LeftOut > 0 && !reading.Warnings.Any(warning => warning.Location.File == table.File))
            {
                return $"{table}: rows left out and none listed";
            }

            if (RowsIn(table, tried) is { } rows && rows != table.Read)
            {
                return string.Create(CultureInfo.InvariantCulture, $"{table}: {rows} rows went in");
            }
        }

        return null;
    }

    /// <summary>Rows of the damaged table as another counts them; null where that cannot be told.</summary>
    private static int? RowsIn(TableRows table, FuzzCase tried) => tried.Subject.Form switch
    {
        SubjectForm.Workbook => table.File == tried.Subject.File && RowCount.OfSheets(tried.Bytes).TryGetValue(table.Table, out var rows) ? rows : null,
        _ when table.File != tried.Subject.File => null,
        SubjectForm.Table => RowCount.OfTable(tried.Bytes),
        SubjectForm.Weather when table.Form?.StartsWith("GHCN", StringComparison.Ordinal) == true => RowCount.OfLines(tried.Bytes),
        SubjectForm.Weather when table.Form?.Contains("grid", StringComparison.Ordinal) == true => null,
        SubjectForm.Weather => RowCount.OfTable(tried.Bytes),
        _ => null,
    };

    private static string? WeatherAlone(string folder, FuzzCase tried)
    {
        if (tried.Subject.Form != SubjectForm.Weather)
        {
            return null;
        }

        var reading = WeatherReader.Read(Path.Combine(folder, tried.Subject.File), new WeatherOptions { Unit = "F", Fill = 3 });
        return Located(reading.Problems, reading.Series is null);
    }

    private static void Analyse(TrialReading reading, bool writesReport)
    {
        var analysis = TrialAnalysis.Of(reading.Trial!);
        JsonResult.Write(analysis, [], Stream.Null);
        if (writesReport)
        {
            HtmlReport.Render(TrialReport.Of(analysis, new ReportSettings(PageSize.Letter, [], [.. reading.Warnings.Select(warning => warning.ToString())])));
        }
    }
}
