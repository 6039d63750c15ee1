using System.Globalization;

namespace TrialKit.Ingest.Messages;

/// <summary>What can be wrong with the folder, a file as a whole, and the workbook: codes TK501 to TK599.</summary>
internal static class FileProblems
{
    public static Problem NoFolder(string folder) => Error("TK501", ProblemLocation.StartOf(folder),
        "the folder does not exist", "a trial folder with trial.toml, strips.csv and stand-counts.csv was expected");

    public static Problem Missing(string file, string expected) => Error("TK502", ProblemLocation.StartOf(file),
        "the file does not exist", expected);

    public static Problem TooLong(string file, long bytes, long longest) => Error("TK503", ProblemLocation.StartOf(file),
        string.Create(CultureInfo.InvariantCulture, $"the file has {bytes / 1048576.0:0.0} MB"), $"at most {Megabytes(longest)} was expected");

    public static Problem NotUtf8(ProblemLocation at, long offset, byte value) => Error("TK504", at,
        string.Create(CultureInfo.InvariantCulture, $"byte {offset} of the file (0x{value:X2}) is not UTF-8"), "a text file saved as UTF-8 was expected");

    public static Problem Unreadable(string file, string reason) => Error("TK505", ProblemLocation.StartOf(file),
        $"the file cannot be read: {Wording.Quote(reason)}", "a file that can be opened was expected");

    public static Problem LeavesFolder(ProblemLocation at, string path) => Error("TK506", at,
        $"the path {Wording.Quote(path)} leaves the trial folder", "the name of a file inside the folder was expected, such as \"weather.csv\"");

    public static Problem NamedFileMissing(ProblemLocation at, string path) => Error("TK507", at,
        $"the file {Wording.Quote(path)} is not in the trial folder", "the name of a file that exists was expected");

    public static Problem UnusedFile(string file, IReadOnlyList<string> known) => Warning("TK508", ProblemLocation.StartOf(file),
        "the file is not used", $"the tables are {string.Join(", ", known)}; the nearest is {Wording.Quote(NearestName.Of(file, known))}");

    public static Problem UnusedWeather(string file, string used) => Warning("TK509", ProblemLocation.StartOf(file),
        $"the file is not used, since trial.toml names {Wording.Quote(used)}", "one file of weather was expected");

    public static Problem NoPlainFile(string file) => Error("TK510", ProblemLocation.StartOf(file),
        "a folder, pipe, device or socket stands here", "a file was expected");

    public static Problem TableTooLarge(ProblemLocation at, string excess) => Error("TK511", at,
        $"the table has more than {excess}", "a table of a trial was expected");

    public static Problem NotWorkbook(string file, string reason) => Error("TK520", ProblemLocation.StartOf(file),
        $"the file is not a workbook that can be read: {Wording.Quote(reason)}", "a workbook saved as .xlsx was expected");

    public static Problem Expands(string file, long largest) => Error("TK521", ProblemLocation.StartOf(file),
        $"the workbook unpacks to more than {Megabytes(largest)}", "the workbook of a trial was expected");

    public static Problem SheetAndFile(string workbook, string sheet, string file) => Error("TK522", new ProblemLocation(workbook, sheet, 1, 1),
        $"the table {Wording.Quote(sheet)} stands here and in {file}", "each table was expected once, as a sheet or as a file");

    public static Problem UnusedSheet(string workbook, string sheet, IReadOnlyList<string> known) => Warning("TK523", new ProblemLocation(workbook, sheet, 1, 1),
        $"the sheet {Wording.Quote(sheet)} is not used", $"the tables are {string.Join(", ", known)}; the nearest is {Wording.Quote(NearestName.Of(sheet, known))}");

    public static Problem SheetTwice(string workbook, string sheet, string earlier) => Error("TK524", new ProblemLocation(workbook, sheet, 1, 1),
        $"the sheets {Wording.Quote(earlier)} and {Wording.Quote(sheet)} are the same table", "each table was expected on one sheet");

    private static string Megabytes(long bytes) => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1048576.0:0.###} MB");

    private static Problem Error(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Error, at, found, expected);

    private static Problem Warning(string code, ProblemLocation at, string found, string expected) =>
        new(code, ProblemSeverity.Warning, at, found, expected);
}
