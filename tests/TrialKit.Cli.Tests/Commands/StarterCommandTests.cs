using System.Text.Json;
using TrialKit.Starter;

namespace TrialKit.Cli.Tests.Commands;

public class StarterCommandTests
{
    private static readonly string[] OneProduct =
        ["starter", "--rate", "5 gal/ac", "--density", "11.65 lb/gal", "--analysis", "10-34-0", "--placement", "in-furrow", "--crop", "corn", "--row-spacing", "30 in"];

    private static string Example => Repository.Example("starter-placement");

    public static TheoryData<string, string[]> Showing => new()
    {
        { "one product", OneProduct },
        { "a trial", ["starter", Example] },
        { "a trial in metric", ["starter", Example, "--units", "metric"] },
        { "the analysis of a trial", ["analyze", Example] },
    };

    [Theory]
    [MemberData(nameof(Showing))]
    public void Run_OutputWithFurrowAmounts_CarriesEveryCaution(string situation, string[] args)
    {
        var (exit, printed, _) = Cli.Run(args);
        Assert.Equal(ExitCode.Done, exit);
        Assert.All(StarterCautions.All, caution => Assert.True(Words(printed).Contains(Words(caution.Text), StringComparison.Ordinal), $"{situation}: {caution.Id}"));
    }

    [Theory]
    [MemberData(nameof(Showing))]
    public void Run_Printed_StaysWithinEightyColumns(string situation, string[] args)
    {
        var (_, printed, _) = Cli.Run(args);
        Assert.All(printed.Split('\n').Where(line => !line.Contains(Example, StringComparison.Ordinal)), line => Assert.True(line.Length <= 80, $"{situation}: {line}"));
    }

    [Fact]
    public void Run_OneProduct_PrintsTheWorkedAmountsAndFlow()
    {
        var (exit, printed, _) = Cli.Run([.. OneProduct, "--speed", "5 mph", "--pressure", "20 psi"]);
        Assert.Equal(ExitCode.Done, exit);
        Assert.All(["5 gal/ac", "36.7 fl oz/1000 ft", "0.334 lb/1000 ft", "0.126 gal/min", "478 mL/min", "31.3 psi", "239 (227-251)"], text => Assert.Contains(text, printed, StringComparison.Ordinal));
    }

    [Fact]
    public void Run_SoilNotGiven_AsksForItAndAppliesNoLimit()
    {
        var (_, printed, _) = Cli.Run(OneProduct);
        Assert.Contains("--soil", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("not over", printed, StringComparison.Ordinal);
        Assert.Contains("not over the 8.0 lb/ac of Kansas", Words(Cli.Run([.. OneProduct, "--soil", "medium"]).Out), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Outputs_WritesEachForm()
    {
        using var scratch = new Scratch();
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("starter.json")).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("tables")).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("starter.pdf"), "--sheet", scratch.In("sheet.pdf"), "--rows", "8").Exit);
        using var json = JsonDocument.Parse(File.ReadAllText(scratch.In("starter.json")));
        Assert.Equal(StarterCautions.All.Select(caution => caution.Text), json.RootElement.GetProperty("tables").GetProperty("starter-cautions").EnumerateArray().Select(row => row.GetProperty("caution").GetString()!));
        Assert.All(["starter-products", "starter-nutrients", "starter-screen"], table => Assert.Contains(StarterCautions.LabelFirst, File.ReadAllText(Path.Combine(scratch.In("tables"), table + ".csv")), StringComparison.Ordinal));
        Assert.All(["starter.pdf", "sheet.pdf"], file => Assert.StartsWith("%PDF", File.ReadAllText(scratch.In(file)), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no density", new[] { "starter", "--rate", "5 gal/ac", "--analysis", "10-34-0", "--placement", "in-furrow", "--crop", "corn", "--row-spacing", "30 in" }, "density")]
    [InlineData("no rate", new[] { "starter", "--placement", "in-furrow", "--crop", "corn", "--row-spacing", "30 in" }, "--rate")]
    [InlineData("no placement", new[] { "starter", "--rate", "5 lb/ac", "--crop", "corn", "--row-spacing", "30 in" }, "--placement")]
    [InlineData("negative rate", new[] { "starter", "--rate", "-5 gal/ac" }, "above zero")]
    [InlineData("rate without unit", new[] { "starter", "--rate", "5" }, "gal/ac")]
    [InlineData("analysis above the whole", new[] { "starter", "--analysis", "50-40-30" }, "120")]
    [InlineData("shares not 1", new[] { "starter", "--placement", "in-furrow=0.4,2x2=0.5" }, "0.9")]
    [InlineData("unknown placement", new[] { "starter", "--placement", "3x3" }, "in-furrow")]
    [InlineData("unknown soil", new[] { "starter", "--soil", "loamy" }, "loamy")]
    [InlineData("rows out of range", new[] { "starter", "--rows", "0" }, "1 to 120")]
    [InlineData("negative outlet", new[] { "starter", "--outlets", "0.04,-1" }, "above 0")]
    public void Run_WrongOptions_ExitsWithUsageAndSaysWhatWasExpected(string situation, string[] args, string expected)
    {
        var (exit, printed, error) = Cli.Run(args);
        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}");
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Empty(printed);
    }

    [Theory]
    [InlineData("options of a product beside a folder", "--rate", "5 gal/ac")]
    [InlineData("a form that is not written", "--output", "starter.docx")]
    [InlineData("one file of CSV", "--output", "starter.csv")]
    public void Run_TrialWithUnfitOptions_ExitsWithUsage(string situation, string option, string value)
    {
        var exit = Cli.Run("starter", Example, option, value).Exit;
        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}");
    }

    [Fact]
    public void Run_TrialWithoutProducts_ExitsWithUsageAndSaysWhatToAdd()
    {
        var (exit, _, error) = Cli.Run("starter", Repository.Example("drag-chains"));
        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("[[treatment.product]]", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SheetWithoutSpeed_ExitsWithUsage()
    {
        using var scratch = new Scratch();
        Assert.Equal(ExitCode.Usage, Cli.Run([.. OneProduct, "--rows", "8", "--sheet", scratch.In("sheet.pdf")]).Exit);
    }

    [Fact]
    public void Analyze_TrialWithoutYield_GivesNoMoneyButTheBreakEvenResponseAndWhy()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        File.Delete(Path.Combine(trial, "harvest.csv"));
        var (exit, printed, _) = Cli.Run("analyze", trial, "--output", scratch.In("out"));
        var text = Words(printed);
        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("more grain to pay for that", text, StringComparison.Ordinal);
        Assert.Contains("not turned into money by a guess", text, StringComparison.Ordinal);
        Assert.DoesNotContain("chance that it pays", text, StringComparison.Ordinal);
        Assert.DoesNotContain("is worth", text.Replace("What the difference is worth", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(scratch.In("out"), "money-curves.csv")));
    }

    private static string Words(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
