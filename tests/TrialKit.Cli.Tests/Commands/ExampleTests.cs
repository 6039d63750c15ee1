using System.Globalization;

namespace TrialKit.Cli.Tests.Commands;

/// <summary>The example trials give what is committed beside them; TRIALKIT_REWRITE=1 writes it anew.</summary>
public class ExampleTests
{
    // Relative. The last digits of a transcendental function differ between processors.
    private const double LastDigits = 1e-9;

    private static readonly string[] Tables = ["comparisons", "strip-values", "findings"];

    public static TheoryData<string> Names => [.. Repository.Examples];

    [Theory]
    [MemberData(nameof(Names))]
    public void Check_Example_HasNoErrors(string name)
    {
        var (exit, _, error) = Cli.Run("check", Repository.Example(name));

        Assert.Equal(ExitCode.Done, exit);
        Assert.DoesNotContain("error", error, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Analyze_Example_PrintsWhatIsExpected(string name)
    {
        var folder = Repository.Example(name);
        var (exit, printed, _) = Cli.Run("analyze", folder);

        Assert.Equal(ExitCode.Done, exit);
        Expect(Path.Combine(folder, "expected", "console.txt"), printed.Replace(folder, $"example-trials/{name}", StringComparison.Ordinal));
    }

    [Fact]
    public void Pool_ThreeFarms_PrintsWhatIsExpected()
    {
        var folder = Repository.Example("three-farms");
        var (exit, printed, _) = Cli.Run("pool", folder);

        Assert.Equal(ExitCode.Done, exit);
        Expect(Path.Combine(folder, "expected", "console.txt"), printed);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Analyze_Example_WritesTheExpectedTables(string name)
    {
        using var scratch = new Scratch();
        var (exit, _, _) = Cli.Run("analyze", Repository.Example(name), "--output", scratch.Folder, "--quiet");

        Assert.Equal(ExitCode.Done, exit);
        Assert.All(Tables, table => ExpectTable(Path.Combine(Repository.Example(name), "expected", table + ".csv"), File.ReadAllText(scratch.In(table + ".csv"))));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Report_Example_IsTheSameBytesInAnyCulture(string name)
    {
        using var scratch = new Scratch();
        var culture = CultureInfo.CurrentCulture;
        try
        {
            Assert.Equal(ExitCode.Done, Cli.Run("report", Repository.Example(name), "--output", scratch.In("a.pdf")).Exit);
            CultureInfo.CurrentCulture = DecimalComma();
            Assert.Equal(ExitCode.Done, Cli.Run("report", Repository.Example(name), "--output", scratch.In("b.pdf")).Exit);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }

        Assert.Equal(File.ReadAllBytes(scratch.In("a.pdf")), File.ReadAllBytes(scratch.In("b.pdf")));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Analyze_DecimalCommaCulture_PrintsTheSame(string name)
    {
        var culture = CultureInfo.CurrentCulture;
        var plain = Cli.Run("analyze", Repository.Example(name));
        try
        {
            CultureInfo.CurrentCulture = DecimalComma();
            Assert.Equal(plain, Cli.Run("analyze", Repository.Example(name)));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    private static CultureInfo DecimalComma()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.DateTimeFormat.ShortDatePattern = "dd.MM.yyyy";
        culture.DateTimeFormat.DateSeparator = ".";
        return culture;
    }

    private static void Expect(string path, string text)
    {
        if (Rewrite(path, text))
        {
            return;
        }

        Assert.Equal(File.ReadAllText(path), text);
    }

    private static void ExpectTable(string path, string text)
    {
        if (Rewrite(path, text))
        {
            return;
        }

        var (expected, found) = (File.ReadAllLines(path), text.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(expected.Length, found.Length);
        foreach (var (want, have) in expected.Zip(found))
        {
            var (wanted, had) = (want.Split(','), have.Split(','));
            Assert.Equal(wanted.Length, had.Length);
            Assert.All(wanted.Zip(had), cell => AssertCell(cell.First, cell.Second, path));
        }
    }

    private static void AssertCell(string expected, string found, string path)
    {
        if (double.TryParse(expected, CultureInfo.InvariantCulture, out var wanted) && double.TryParse(found, CultureInfo.InvariantCulture, out var had))
        {
            Assert.True(Math.Abs(wanted - had) <= LastDigits * Math.Max(1, Math.Abs(wanted)), $"{path}: {expected} expected, {found} found");
        }
        else
        {
            Assert.Equal(expected, found);
        }
    }

    private static bool Rewrite(string path, string text)
    {
        if (Environment.GetEnvironmentVariable("TRIALKIT_REWRITE") != "1")
        {
            return false;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return true;
    }
}
