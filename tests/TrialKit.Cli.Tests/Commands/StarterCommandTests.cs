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
        Assert.All(["5 gal/ac", "36.7 fl oz/1000 ft", "0.334 lb/1000 ft", "0.126 gal/min", "478 mL/min", "31.3 psi", "239 (227-251)", "1.09 mL/ft"], text => Assert.Contains(text, printed, StringComparison.Ordinal));
    }

    [Fact]
    public void Run_SoilNotGiven_AsksForItAndAppliesNoLimit()
    {
        var (_, printed, _) = Cli.Run(OneProduct);
        Assert.Contains("--soil", printed, StringComparison.Ordinal);
        Assert.DoesNotContain("under the", printed, StringComparison.Ordinal);
        Assert.Contains("under the 8 lb/ac of Kansas", Words(Cli.Run([.. OneProduct, "--soil", "medium"]).Out), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Outputs_WritesEachForm()
    {
        using var scratch = new Scratch();
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("starter.json")).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("tables")).Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("starter.pdf"), "--sheet", scratch.In("sheet.pdf"), "--rows", "8").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("starter", Example, "--quiet", "--output", scratch.In("starter.html")).Exit);
        var page = Words(System.Net.WebUtility.HtmlDecode(File.ReadAllText(scratch.In("starter.html"))));
        Assert.All(StarterCautions.All, caution => Assert.Contains(caution.Text, page, StringComparison.Ordinal));
        using var json = JsonDocument.Parse(File.ReadAllText(scratch.In("starter.json")));
        Assert.Equal(StarterCautions.All.Select(caution => caution.Text), json.RootElement.GetProperty("tables").GetProperty("starter-cautions").EnumerateArray().Select(row => row.GetProperty("caution").GetString()!));
        Assert.All(["starter-products", "starter-nutrients", "starter-screen", "starter-flow", "starter-catch"], table => Assert.Contains(StarterCautions.LabelFirst, File.ReadAllText(Path.Combine(scratch.In("tables"), table + ".csv")), StringComparison.Ordinal));
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
    [InlineData("rows not whole", new[] { "starter", "--rows", "3.5" }, "--rows is 3.5; a whole number from 1 to 120")]
    [InlineData("unknown crop", new[] { "starter", "--crop", "turnip" }, "one of corn")]
    [InlineData("empty crop", new[] { "starter", "--crop", "" }, "--crop is empty")]
    [InlineData("empty name", new[] { "starter", "--name", " " }, "--name is empty")]
    [InlineData("placement twice", new[] { "starter", "--placement", "2x2=0.5,2X2=0.5" }, "2x2 was found twice")]
    [InlineData("unknown placement of outlets", new[] { "starter", "--outlets", "3x3=0.04,0.06" }, "in-furrow")]
    [InlineData("usual density of a material", new[] { "starter", "--rate", "5 gal/ac", "--analysis", "32-0-0", "--placement", "2x2", "--crop", "corn", "--row-spacing", "30 in" }, "11.06 lb/gal is usual for UAN-32")]
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

    public static TheoryData<string, string[], string> UnfitSheets => new()
    {
        { "no speed", ["--rows", "8"], "--speed" },
        { "no rows", ["--speed", "5 mph"], "--rows" },
        { "no PDF", ["--speed", "5 mph", "--rows", "8", "--sheet", "sheet.txt"], ".pdf" },
        { "outlets of several placements", ["--speed", "5 mph", "--rows", "8", "--placement", "in-furrow=0.4,2x2x2=0.6", "--outlets", "0.04,0.06"], "--outlets in-furrow=0.04,0.06" },
        { "outlets where nothing flows", ["--speed", "5 mph", "--rows", "8", "--outlets", "2x2=0.04,0.06"], "where no liquid goes" },
        { "outlets twice", ["--speed", "5 mph", "--rows", "8", "--outlets", "0.04,0.06", "--outlets", "in-furrow=1,2"], "twice" },
    };

    [Theory]
    [MemberData(nameof(UnfitSheets))]
    public void Run_UnfitSheet_ExitsWithUsageBeforeAnythingIsPrintedOrWritten(string situation, string[] options, string expected)
    {
        using var scratch = new Scratch();
        string[] sheet = options.Contains("--sheet", StringComparer.Ordinal) ? [] : ["--sheet", scratch.In("new/sheet.pdf")];
        var product = options.Contains("--placement", StringComparer.Ordinal) ? OneProduct.Where(word => word is not ("--placement" or "in-furrow")) : OneProduct;
        var (exit, printed, error) = Cli.Run([.. product, .. options, .. sheet, "--output", scratch.In("other/tables")]);
        Assert.True(exit == ExitCode.Usage, $"{situation}: exit {exit}");
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Empty(printed);
        Assert.Empty(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void Run_SheetOfADryProduct_SaysThatItIsForLiquids()
    {
        using var scratch = new Scratch();
        var (exit, printed, error) = Cli.Run("starter", "--rate", "50 lb/ac", "--analysis", "11-52-0", "--placement", "2x2", "--crop", "corn", "--row-spacing", "30 in", "--speed", "5 mph", "--rows", "8", "--sheet", scratch.In("sheet.pdf"));
        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("for liquids", error, StringComparison.Ordinal);
        Assert.Empty(printed);
    }

    [Fact]
    public void Run_SheetInThePlaceOfATrial_IsRefused()
    {
        using var scratch = new Scratch();
        var trial = scratch.Copy(Example);
        var named = scratch.In("trial.pdf");
        Directory.Move(trial, named);
        var (exit, _, error) = Cli.Run("starter", Example, "--rows", "8", "--sheet", named);
        Assert.Equal(ExitCode.Usage, exit);
        Assert.Contains("holds a trial", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_SheetAndOutputOfOneName_AreRefused()
    {
        using var scratch = new Scratch();
        Assert.Equal(ExitCode.Usage, Cli.Run("starter", Example, "--rows", "8", "--sheet", scratch.In("a.pdf"), "--output", scratch.In("a.pdf")).Exit);
    }

    [Fact]
    public void Run_OutletsOfAPlacement_ShareThatOneAlone()
    {
        var (_, printed, _) = Cli.Run("starter", Example, "--outlets", "2x2=0.04,0.06");
        var text = Words(printed);
        Assert.Contains("Split, ammonium polyphosphate 10-34-0, 2x2: 0.106 gal/min, 401 mL/min a row at 5 mph, 161 and 241 mL/min from its 2 outlets.", text, StringComparison.Ordinal);
        Assert.Contains("Split, ammonium polyphosphate 10-34-0, in-furrow: 0.0707 gal/min, 268 mL/min a row at 5 mph. With", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OneProductWithoutAName_IsNamedOnceByItsAnalysis()
    {
        var text = Words(Cli.Run([.. OneProduct, "--speed", "5 mph"]).Out);
        Assert.Contains("10-34-0, in-furrow: 0.126 gal/min", text, StringComparison.Ordinal);
        Assert.DoesNotContain("10-34-0, 10-34-0", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Showing))]
    public void Run_OutputWithLimits_SaysWhatEachSourceSaysAndWhatTheSaltIndexDoesNot(string situation, string[] args)
    {
        var printed = Words(Cli.Run(args).Out);
        Assert.All(LimitSources.All, source => Assert.True(printed.Contains(source.Note, StringComparison.Ordinal), $"{situation}: {source.Name}"));
        Assert.Contains("does not predict a loss of stand", printed, StringComparison.Ordinal);
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
        Assert.DoesNotContain("The chances hold", text, StringComparison.Ordinal);
        Assert.DoesNotContain("is worth", text.Replace("What the difference is worth", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(scratch.In("out"), "money-curves.csv")));
    }

    private static string Words(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
