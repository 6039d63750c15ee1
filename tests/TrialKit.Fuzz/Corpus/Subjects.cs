using System.Text;

namespace TrialKit.Fuzz.Corpus;

/// <summary>Every kind of file that the program reads, each in a folder that reads without an error.</summary>
internal static class Subjects
{
    private const string Planted = "2026-04-27";
    private const string Settings = "trial.toml";
    private const string Workbook = "trial.xlsx";

    /// <summary>Weather files of the reference data: file, planting date, and what is to be added to the settings.</summary>
    private static readonly (string File, string Planted, string Choices)[] Weather =
    [
        ("ACW00011604.dly", "1949-01-02", ""),
        ("seattle.dly", "2012-03-20", ""),
        ("seattle-by-year.csv", "2012-03-20", ""),
        ("seattle-access.csv", "2012-03-20", "unit = \"0.1 C\"\n"),
        ("seattle-order.csv", "2012-03-20", "unit = \"F\"\n"),
        ("seattle-daymet.csv", "2012-03-20", ""),
        ("seattle-power.csv", "2012-03-20", ""),
        ("seattle-plain.csv", "2012-03-20", "fill = 3\n"),
        ("hours.csv", "2012-03-20", ""),
    ];

    /// <summary>The subjects of a repository.</summary>
    /// <param name="repository">Its folder.</param>
    /// <param name="holding">Only those whose names hold this.</param>
    public static IReadOnlyList<Subject> Of(string repository, string holding = "") =>
        [.. All(repository).Where(subject => subject.Name.Contains(holding, StringComparison.Ordinal))];

    private static Subject[] All(string repository)
    {
        var data = Path.Combine(repository, "tests", "reference-data");
        var sound = Read(Path.Combine(data, "broken", "_base"));
        sound.Remove("expected.txt");
        sound["plan.toml"] = Bytes("seed = 481516\nprogram = \"TrialKit\"\n");
        sound["spots.csv"] = Bytes("strip,spot,from_start_ft,planter_row,length_ft\nA1,1,120,2,17.424\nA2,1,120,3,17.424\nB1,1,340.5,2,17.424\nB2,1,340.5,7,17.424\n");
        var starter = Read(Path.Combine(repository, "example-trials", "starter-placement"));
        foreach (var large in (string[])["plants.csv", "emergence.csv", "README.md"])
        {
            starter.Remove(large);
        }

        return
        [
            .. sound.Keys.Select(file => new Subject(file, file, FormOf(file), sound)),
            .. starter.Keys.Select(file => new Subject($"starter/{file}", file, FormOf(file), starter)),
            .. Weather.Select(weather => WeatherOf(weather.File, weather.Planted, weather.Choices, sound, data)),
            .. Workbooks(sound),
        ];
    }

    private static SubjectForm FormOf(string file) => file.EndsWith(".toml", StringComparison.Ordinal) ? SubjectForm.Settings
        : file is "weather.csv" or "soil-temperature.csv" ? SubjectForm.Weather
        : SubjectForm.Table;

    private static Subject WeatherOf(string file, string planted, string choices, SortedDictionary<string, byte[]> sound, string data)
    {
        var settings = Encoding.UTF8.GetString(sound[Settings])
            .Replace(Planted, planted, StringComparison.Ordinal)
            .Replace("file = \"weather.csv\"\n", $"file = \"{file}\"\n{choices}", StringComparison.Ordinal);
        var folder = new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
        {
            [Settings] = Bytes(settings),
            ["strips.csv"] = Bytes("strip,block,treatment\nA1,1,none\nA2,1,chains\n"),
            ["stand-counts.csv"] = Bytes("strip,length_ft,plants\nA1,17.424,30\nA2,17.424,31\n"),
            [file] = File.ReadAllBytes(Path.Combine(data, "weather", file)),
        };
        return new(file, file, SubjectForm.Weather, folder);
    }

    /// <summary>A workbook that holds every table, and one that holds a single table beside the files.</summary>
    private static IEnumerable<Subject> Workbooks(SortedDictionary<string, byte[]> sound)
    {
        var tables = sound.Keys.Where(file => file.EndsWith(".csv", StringComparison.Ordinal) && file != "weather.csv").ToArray();
        yield return InWorkbook("workbook of all tables", tables, sound);
        yield return InWorkbook("workbook of one table", ["harvest.csv"], sound);
    }

    private static Subject InWorkbook(string name, string[] tables, SortedDictionary<string, byte[]> sound)
    {
        var folder = new SortedDictionary<string, byte[]>(sound, StringComparer.Ordinal);
        var sheets = new SheetWriter();
        foreach (var table in tables)
        {
            sheets.AddCsv(Path.GetFileNameWithoutExtension(table), Encoding.UTF8.GetString(sound[table]));
            folder.Remove(table);
        }

        folder[Workbook] = sheets.ToBytes();
        return new(name, Workbook, SubjectForm.Workbook, folder);
    }

    private static SortedDictionary<string, byte[]> Read(string folder) =>
        new(Directory.GetFiles(folder).ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes, StringComparer.Ordinal), StringComparer.Ordinal);

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
