using System.Globalization;
using TrialKit.Emergence;

namespace TrialKit.Tests.Emergence;

public class LatePlantsTests
{
    [Theory]
    [InlineData("10 to 12", 11.0, 10.7, 10.9, 11.1)]
    [InlineData("21 to 27", 10.5, 9.2, 9.1, 10.4)]
    public void Published_Nafziger1991_IsThePercentOfItsYields(string setting, params double[] tonnes)
    {
        // Mg/ha of the abstract, all early 11.8; 25, 50, 75 % and all late.
        var found = LatePlants.Published.Single(finding => finding.Setting.StartsWith(setting, StringComparison.Ordinal)).Found;

        Assert.All(tonnes, yield => Assert.Contains(((100 * yield / 11.8) - 100).ToString("0.0", CultureInfo.InvariantCulture).Replace('-', '\u2212'), found, StringComparison.Ordinal));
    }
}
