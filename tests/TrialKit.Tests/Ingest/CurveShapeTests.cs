using TrialKit.Trials;

namespace TrialKit.Tests.Ingest;

/// <summary>The shape of the emergence curves set in <c>trial.toml</c>.</summary>
public class CurveShapeTests
{
    [Theory]
    [InlineData("log-logistic", CurveShape.LogLogistic)]
    [InlineData("log-normal", CurveShape.LogNormal)]
    [InlineData("weibull", CurveShape.Weibull)]
    public void Read_Curve_IsKept(string written, CurveShape shape) => Assert.Equal(shape, Read($"curve = \"{written}\"").Trial!.Design.Curve);

    [Fact]
    public void Read_NoCurve_LeavesTheChoiceToTheCounts() => Assert.Null(Read("").Trial!.Design.Curve);

    private static TrialKit.Ingest.TrialReading Read(string line)
    {
        using var folder = TrialFolder.Sound();
        folder.Write("trial.toml", TrialFolder.SoundText("trial.toml").Replace("[design]\n", $"[design]\n{line}\n", StringComparison.Ordinal));
        return folder.Read();
    }
}
