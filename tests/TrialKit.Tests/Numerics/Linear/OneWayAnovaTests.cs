using TrialKit.Numerics.Linear;

namespace TrialKit.Tests.Numerics.Linear;

public class OneWayAnovaTests
{
    [Theory]
    [InlineData("SiRstv", Tolerances.CertifiedDigitsEasy)]
    [InlineData("SmLs01", Tolerances.CertifiedDigitsEasy)]
    [InlineData("SmLs02", Tolerances.CertifiedDigitsEasy)]
    [InlineData("SmLs03", Tolerances.CertifiedDigitsEasy)]
    [InlineData("AtmWtAg", Tolerances.CertifiedDigitsAverage)]
    [InlineData("SmLs04", Tolerances.CertifiedDigitsAverage)]
    [InlineData("SmLs05", Tolerances.CertifiedDigitsAverage)]
    [InlineData("SmLs06", Tolerances.CertifiedDigitsAverage)]
    [InlineData("SmLs07", Tolerances.CertifiedDigitsHard)]
    [InlineData("SmLs08", Tolerances.CertifiedDigitsHard)]
    [InlineData("SmLs09", Tolerances.CertifiedDigitsHard)]
    public void Of_NistStrdSet_ReachesTheCertifiedF(string set, double digits)
    {
        var certified = ReferenceData.Csv("nist-anova/certified.csv").Single(row => row[0] == set);
        var rows = File.ReadLines(Path.Combine(ReferenceData.Root, "nist-anova", $"{set}.dat"))
            .Skip(60)
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Where(parts => parts.Length == 2)
            .ToArray();

        var analysis = OneWayAnova.Of(
            [.. rows.Select(row => ReferenceData.Number(row[1]))], [.. rows.Select(row => (int)ReferenceData.Number(row[0]) - 1)]);

        var f = ReferenceData.Number(certified[6]);
        var reached = -Math.Log10(Math.Max(Math.Abs(analysis.Groups.F!.Value - f) / f, 1e-16));
        Assert.Equal(int.Parse(certified[3], System.Globalization.CultureInfo.InvariantCulture), analysis.Groups.DegreesOfFreedom);
        Assert.Equal(int.Parse(certified[7], System.Globalization.CultureInfo.InvariantCulture), analysis.Error.DegreesOfFreedom);
        Assert.True(reached >= digits, $"{set} (NIST StRD): {reached:F2} digits of F were reached, {digits} were expected.");
        TestContext.Current.SendDiagnosticMessage($"{set}: {reached:F2} digits");
    }

    [Theory]
    [InlineData("plantgrowth_crd")]
    [InlineData("fabric_crd")]
    [InlineData("chickwts_crd")]
    public void Of_Groups_AgreesWithTheReference(string name)
    {
        var trial = BlockCase.Load(name);

        var analysis = OneWayAnova.Of(trial.Y, trial.Treatment);

        var lines = trial.Values.GetProperty("anova");
        Close.Relative(lines[0].GetProperty("SS").GetDouble(), analysis.Groups.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        Close.Relative(lines[0].GetProperty("F").GetDouble(), analysis.Groups.F, Tolerances.ClosedForm, trial.Name);
        Close.Relative(lines[0].GetProperty("p").GetDouble(), analysis.Groups.P, Tolerances.ClosedForm, trial.Name);
        Close.Relative(lines[1].GetProperty("SS").GetDouble(), analysis.Error.SumOfSquares, Tolerances.ClosedForm, trial.Name);
        foreach (var pair in trial.Values.GetProperty("pairwise").EnumerateArray())
        {
            var contrast = pair.GetProperty("contrast").GetString()!;
            var sides = contrast.Split(" - ").Select(trial.TreatmentOf).ToArray();
            Close.Relative(pair.GetProperty("se").GetDouble(), analysis.DifferenceStandardError(sides[0], sides[1]), Tolerances.ClosedForm, contrast);
        }
    }

    [Fact]
    public void Of_OneObservationInEachGroup_GivesMeansAndNoF()
    {
        var analysis = OneWayAnova.Of([3, 5], [0, 1]);

        Assert.Equal(FStatus.NoErrorDegrees, analysis.Groups.Status);
        Assert.Null(analysis.DifferenceStandardError(0, 1));
    }

    [Fact]
    public void DifferenceStandardError_GroupWithItself_IsRefused()
    {
        var analysis = OneWayAnova.Of([3, 5, 4, 6], [0, 0, 1, 1]);

        Assert.Throws<ArgumentException>(() => analysis.DifferenceStandardError(1, 1));
    }
}
