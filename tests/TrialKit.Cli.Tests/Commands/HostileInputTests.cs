using System.Globalization;
using System.Xml.Linq;

namespace TrialKit.Cli.Tests.Commands;

/// <summary>Names and titles that would do something if anybody let them: run in a spreadsheet, become a tag, name a file elsewhere.</summary>
public class HostileInputTests
{
    private const string Formula = "=HYPERLINK(1)";
    private const string Tag = "<script>alert(1)</script>";

    /// <summary>The example with the names of its treatments replaced.</summary>
    private static string Trial(Scratch scratch, string none, string chains)
    {
        var trial = scratch.Copy(Repository.Example("drag-chains"));
        Replace(trial, "trial.toml", text => text
            .Replace("name = \"none\"", $"name = \"{none}\"", StringComparison.Ordinal)
            .Replace("control = \"none\"", $"control = \"{none}\"", StringComparison.Ordinal)
            .Replace("name = \"chains\"", $"name = \"{chains}\"", StringComparison.Ordinal)
            .Replace("label = \"Drag chains\"", $"label = \"{chains}\"", StringComparison.Ordinal)
            .Replace("title = \"", $"title = \"{Tag} ", StringComparison.Ordinal));
        Replace(trial, "strips.csv", text => text.Replace(",none,", $",{none},", StringComparison.Ordinal).Replace(",chains,", $",{chains},", StringComparison.Ordinal));
        return trial;
    }

    private static void Replace(string trial, string file, Func<string, string> change) =>
        File.WriteAllText(Path.Combine(trial, file), change(File.ReadAllText(Path.Combine(trial, file))));

    [Fact]
    public void Analyze_NameThatIsAFormula_IsWrittenAsText()
    {
        using var scratch = new Scratch();
        var trial = Trial(scratch, "none", Formula);

        Assert.Equal(ExitCode.Done, Cli.Run("analyze", trial, "--output", scratch.In("out"), "--quiet").Exit);

        var cells = Directory.EnumerateFiles(scratch.In("out"), "*.csv").SelectMany(File.ReadLines).SelectMany(line => line.Split(',')).Select(cell => cell.Trim('"')).ToArray();
        Assert.Contains("'" + Formula, cells);
        Assert.Contains(cells, cell => cell.StartsWith('-'));
        Assert.All(cells.Where(cell => cell.Length > 0 && "=+-@\t\r".Contains(cell[0], StringComparison.Ordinal)), cell => Assert.True(double.TryParse(cell, CultureInfo.InvariantCulture, out _), cell));
    }

    [Fact]
    public void Plan_TreatmentThatIsAFormula_ReadsBackFromTheTablesWritten()
    {
        using var scratch = new Scratch();
        var trial = scratch.In("planned");
        Assert.Equal(ExitCode.Done, Cli.Run("new", trial, "--title", "t", "--crop", "corn", "--question", "q", "--treatments", $"none,{Formula}", "--planted", "2026-05-04", "--row-spacing", "30 in", "--seeding-rate", "34000 seeds/ac", "--planter-rows", "8", "--length", "1180 ft", "--replicates", "4", "--quiet").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("plan", trial, "--seed", "5", "--quiet").Exit);

        Assert.Contains("'" + Formula, File.ReadAllText(Path.Combine(trial, "strips.csv")), StringComparison.Ordinal);
        var (exit, _, error) = Cli.Run("check", trial);
        Assert.True(exit == ExitCode.Done, error);
    }

    [Fact]
    public void Report_NameThatIsATag_IsText()
    {
        using var scratch = new Scratch();
        var trial = Trial(scratch, "none", "</td><img src=x onerror=alert(1)>");

        Assert.Equal(ExitCode.Done, Cli.Run("report", trial, "--output", scratch.In("a.html"), "--quiet").Exit);

        var html = File.ReadAllText(scratch.In("a.html"));
        Assert.Contains("&lt;script&gt;alert(1)", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", html, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Names of files are made of names of treatments: none leads out of the folder, is kept by a system for itself, or takes another's place.</summary>
    [Theory]
    [InlineData("../../escape", "/etc/passwd")]
    [InlineData("CON", "nul.txt")]
    [InlineData("a b", "a-b")]
    [InlineData("<b>&", "c:/x|y*?")]
    public void Figures_NamesOfTreatments_BecomeSafeNamesOfFiles(string none, string chains)
    {
        using var scratch = new Scratch();
        var trial = Trial(scratch, none, chains);
        using var plain = new Scratch();
        Assert.Equal(ExitCode.Done, Cli.Run("figures", Repository.Example("drag-chains"), "--output", plain.In("out"), "--quiet").Exit);

        var (exit, _, error) = Cli.Run("figures", trial, "--output", scratch.In("out"), "--quiet");

        Assert.True(exit == ExitCode.Done, error);
        var files = Directory.EnumerateFiles(scratch.In("out")).Select(file => Path.GetFileName(file)!).ToArray();
        Assert.Equal(Directory.EnumerateFiles(plain.In("out")).Count(), files.Length);
        Assert.All(files, file => Assert.Matches("^[A-Za-z0-9_-]{1,90}\\.(svg|png)$", file));
        Assert.Equal(["out", "trial"], Directory.EnumerateFileSystemEntries(scratch.Folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.All(files.Where(file => file.EndsWith(".svg", StringComparison.Ordinal)), file => XDocument.Load(Path.Combine(scratch.In("out"), file)));
    }

    [Fact]
    public void Sheets_NameThatIsATag_IsTextInPageAndWorkbook()
    {
        using var scratch = new Scratch();
        var trial = Trial(scratch, "none", "</script><b>");

        Assert.Equal(ExitCode.Done, Cli.Run("sheets", trial, "--output", scratch.In("out"), "--quiet").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("sheets", trial, "--page", "--output", scratch.In("out"), "--quiet").Exit);

        Assert.Single(File.ReadAllText(Path.Combine(scratch.In("out"), "field-page.html")).Split("</script").Skip(1));
    }
}
