using System.Globalization;

namespace TrialKit.Ingest.Messages;

/// <summary>What can be wrong with a table and its cells, whichever table it is: codes TK101 to TK199.</summary>
internal static class TableProblems
{
    public static Problem Empty(ProblemLocation at) => Error("TK101", at,
        "the table has no header", "a first line that names the columns was expected");

    public static Problem FieldCount(ProblemLocation at, int found, int header) => Error("TK102", at,
        $"the row has {Wording.Count(found, "cell")}", $"{header.ToString(CultureInfo.InvariantCulture)} were expected, as in the header");

    public static Problem NotWhole(ProblemLocation at, string column, string text) => Error("TK103", at,
        Holds(column, text), "a whole number was expected, such as 29");

    public static Problem NotNumber(ProblemLocation at, string column, string text) => Error("TK104", at,
        Holds(column, text), "a number was expected, such as 17.5");

    public static Problem NotRecorded(ProblemLocation at, string column) => Error("TK105", at,
        $"column {Wording.Quote(column)} is empty here", "a value was expected in every row");

    public static Problem NoSuchDate(ProblemLocation at, string column, string text) => Error("TK106", at,
        Holds(column, text), "a date of the calendar was expected, and a time from 00:00 to 23:59 when there is one");

    public static Problem NotDate(ProblemLocation at, string column, string text, string form) => Error("TK107", at,
        Holds(column, text), $"a date was expected, written {form}{(text.All(char.IsAsciiDigit) ? "; in a workbook, format the column as a date" : "")}");

    public static Problem Fraction(ProblemLocation at, string column, string text) => Error("TK108", at,
        Holds(column, text), "a count without a fraction was expected");

    public static Problem Negative(ProblemLocation at, string column, string text) => Error("TK109", at,
        Holds(column, text), "zero or more was expected");

    public static Problem NotAboveZero(ProblemLocation at, string column, string text) => Error("TK110", at,
        Holds(column, text), "a value above zero was expected");

    public static Problem OutOfRange(ProblemLocation at, string column, string text, string range) => Error("TK111", at,
        Holds(column, text), $"{range} was expected");

    public static Problem TooLarge(ProblemLocation at, string column, string text, int largest) => Error("TK112", at,
        Holds(column, text), string.Create(CultureInfo.InvariantCulture, $"at most {largest} was expected"));

    public static Problem SpreadsheetError(ProblemLocation at, string column, string text) => Error("TK113", at,
        $"column {Wording.Quote(column)} holds the spreadsheet error {Wording.Quote(text)}", "a value or an empty cell was expected");

    public static Problem Quoting(ProblemLocation at, string reason) => Error("TK114", at,
        reason, "a quoted cell was expected to begin and end with a double quote, with quotes inside it doubled");

    public static Problem TypedDateAsName(ProblemLocation at, string column, string text) => Error("TK115", at,
        $"column {Wording.Quote(column)} holds the date {Wording.Quote(text)}, which the spreadsheet may have made of a name",
        "a name was expected; format the cell as text and type the name again");

    public static Problem ControlCharacter(ProblemLocation at, string column, byte value) => Error("TK116", at,
        string.Create(CultureInfo.InvariantCulture, $"column {Wording.Quote(column)} holds a control character (0x{value:X2})"), "text that can be read was expected; type it again");

    public static Problem DuplicateColumn(ProblemLocation at, string header, string earlier) => Error("TK120", at,
        $"column {Wording.Quote(header)} stands here a second time, after {Wording.Quote(earlier)}", "each column was expected once");

    public static Problem UnknownColumn(ProblemLocation at, string header, IReadOnlyList<string> known) => Warning("TK121", at,
        $"column {Wording.Quote(header)} is not used", $"the columns of this table are {string.Join(", ", known)}; the nearest is {Wording.Quote(NearestName.Of(header, known))}");

    public static Problem MissingColumn(ProblemLocation at, string column) => Error("TK122", at,
        $"there is no column {Wording.Quote(column)}", "it was expected in the header");

    public static Problem MissingUnit(ProblemLocation at, string header, string column, IReadOnlyList<string> units) => Error("TK123", at,
        $"column {Wording.Quote(header)} names no unit", $"one of {Wording.Or(units)} was expected, such as {Wording.Quote($"{column}_{HeaderForm(units[0])}")}, or a unit for it under [units] in trial.toml");

    public static Problem UnknownUnit(ProblemLocation at, string header, string unit, IReadOnlyList<string> units) => Error("TK124", at,
        $"column {Wording.Quote(header)} has the unit {Wording.Quote(unit)}", $"one of {Wording.Or(units)} was expected");

    public static Problem NamelessColumn(ProblemLocation at, ProblemLocation header) => Error("TK125", at,
        $"the cell has a value and its column has no name at {header}", "a column name was expected above every value");

    /// <summary>The code of a table without rows.</summary>
    public const string NoRowsCode = "TK126";

    public static Problem NoRows(ProblemLocation at, string table) => Warning(NoRowsCode, at,
        $"{table} has a header and no rows", "at least one row was expected");

    public static Problem MissingOneOf(ProblemLocation at, string first, string second) => Error("TK127", at,
        $"there is neither a column {Wording.Quote(first)} nor a column {Wording.Quote(second)}", "one of them was expected in the header");

    public static Problem BothColumns(ProblemLocation at, string first, string second) => Error("TK128", at,
        $"there are both a column {Wording.Quote(first)} and a column {Wording.Quote(second)}", "one of them was expected");

    private static string HeaderForm(string unit) => unit == "%" ? "pct" : unit.ToLowerInvariant().Replace('/', '_');

    private static string Holds(string column, string text) => $"column {Wording.Quote(column)} holds {Wording.Quote(text)}";

    private static Problem Error(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Error, at, found, expected);

    private static Problem Warning(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Warning, at, found, expected);
}
