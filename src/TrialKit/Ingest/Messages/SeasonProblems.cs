using System.Globalization;

namespace TrialKit.Ingest.Messages;

/// <summary>What can be wrong with a season table: codes TK601 to TK699. A place is row and column, each from 1.</summary>
internal static class SeasonProblems
{
    public static Problem Unreadable(string file, string reason) => Error("TK601", ProblemLocation.StartOf(file),
        $"the file cannot be read as Parquet: {Wording.Quote(reason)}", "a file written by 'trialkit collect' was expected");

    public static Problem OtherSchema(string file, string version) => Error("TK602", ProblemLocation.StartOf(file),
        $"the file's columns are of version {Wording.Quote(version)}", "version 1 was expected; collect the season anew with this program");

    public static Problem MissingColumn(string file, string column) => Error("TK603", ProblemLocation.StartOf(file),
        $"there is no column {Wording.Quote(column)}", "every column of docs/guide/season-table.md was expected");

    public static Problem OtherType(string file, string column, string found, object expected) => Error("TK604", ProblemLocation.StartOf(file),
        $"column {Wording.Quote(column)} is of the type {found}", $"{expected.ToString()!.ToLowerInvariant()} was expected");

    public static Problem GroupTooLarge(string file, long rows, long most) => Error("TK605", ProblemLocation.StartOf(file),
        string.Create(CultureInfo.InvariantCulture, $"a row group says it has {rows} rows"), string.Create(CultureInfo.InvariantCulture, $"0 to {most} were expected"));

    public static Problem Empty(ProblemLocation at, string column) => Error("TK606", at,
        $"column {Wording.Quote(column)} is empty", "a value was expected in every row");

    public static Problem Wrong(ProblemLocation at, string column, string found, string expected) => Error("TK607", at,
        $"column {Wording.Quote(column)} holds {Wording.Quote(found)}", expected);

    public static Problem OtherTrial(ProblemLocation at, string trial) => Error("TK608", at,
        $"the columns that tell the trial {Wording.Quote(trial)} differ from those of its rows before", "one title, site, date, layout, level and fingerprint was expected for one trial");

    public static Problem Twice(ProblemLocation at, string trial, string measure) => Error("TK609", at,
        $"trial {Wording.Quote(trial)} has this row of {Wording.Quote(measure)} a second time", "each row once was expected; a trial collected twice belongs out of the table");

    public static Problem SameFiles(ProblemLocation at, string trial, string other) => Warning("TK610", at,
        $"trial {Wording.Quote(trial)} was read from the same files as {Wording.Quote(other)}", "each trial once was expected: twice it counts double");

    private static Problem Error(string code, ProblemLocation at, string found, string expected) => new(code, ProblemSeverity.Error, at, found, expected);

    private static Problem Warning(string code, ProblemLocation at, string found, string expected) => new(code, ProblemSeverity.Warning, at, found, expected);
}
