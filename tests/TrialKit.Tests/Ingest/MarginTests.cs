using TrialKit.Ingest.Settings;
using TrialKit.Trials;

namespace TrialKit.Tests.Ingest;

/// <summary>Margins of equivalence in <c>trial.toml</c>.</summary>
public class MarginTests
{
    [Fact]
    public void Read_Margins_AreKeptWithTheirUnits()
    {
        var margins = Read("stand = \"1000 plants/ac\"\nt50 = \"6 hours\"\nown-crust-strength = \"20 kPa\"\n").Trial!.Design.Margins;

        Assert.Equal([new EquivalenceMargin("stand", 1000, "plants/ac"), new EquivalenceMargin("t50", 6, "h"), new EquivalenceMargin("own-crust-strength", 20, "kPa")], margins);
    }

    [Theory]
    [InlineData("yeild = \"3 bu/ac\"", "TK223")]
    [InlineData("yield = 3", "TK204")]
    [InlineData("yield = \"3 d\"", "TK206")]
    [InlineData("yield = \"-3 bu/ac\"", "TK209")]
    [InlineData("yield = \"0 bu/ac\"", "TK209")]
    [InlineData("yield = \"some\"", "TK205")]
    [InlineData("own-score = \"some\"", "TK205")]
    [InlineData("own-score = \"-1\"", "TK209")]
    [InlineData("own-score = true", "TK203")]
    public void Read_FaultyMargin_IsLocatedAndStopsTheTrial(string line, string code)
    {
        var reading = Read(line + "\n");

        Assert.Null(reading.Trial);
        Assert.Equal(code, Assert.Single(reading.Problems, problem => problem.Severity == TrialKit.Ingest.ProblemSeverity.Error).Code);
    }

    [Theory]
    [InlineData("drag-chains")]
    [InlineData("closing-wheels")]
    public void Measures_OfAnExample_CanEachHaveAMargin(string name) => Assert.Empty(
        TrialAnalysisTests.Example(name).Measures.Select(measure => measure.Measure.Id).Where(id => !id.StartsWith("own-", StringComparison.Ordinal)).Except(MarginReader.Measures, StringComparer.Ordinal));

    private static TrialKit.Ingest.TrialReading Read(string lines)
    {
        using var folder = TrialFolder.Sound();
        folder.Write("trial.toml", TrialFolder.SoundText("trial.toml") + "\n[design.margin]\n" + lines);
        return folder.Read();
    }
}
