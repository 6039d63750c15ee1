using TrialKit.Cli.Batch;

namespace TrialKit.Cli.Tests.Batch;

/// <summary>Names of trials for outputs.</summary>
public class TrialNamesTests
{
    [Theory]
    [InlineData("plain", "north-40", "north-40")]
    [InlineData("spaces and signs", "north 40 (west)?", "north-40--west")]
    [InlineData("letters beyond ASCII", "Äcker", "Äcker")]
    [InlineData("dots in front", "..hidden", "hidden")]
    [InlineData("a name of the system", "con", "con-trial")]
    [InlineData("a name of the system with an ending", "NUL.2026", "NUL.2026-trial")]
    [InlineData("nothing left", "...", "trial")]
    [InlineData("formula", "=1+1", "1-1")]
    public void Safe_Name_IsFitForAnySystem(string situation, string name, string expected) =>
        Assert.True(TrialNames.Safe(name) == expected, $"{situation}: {TrialNames.Safe(name)}");

    [Fact]
    public void Safe_LongName_IsCut() => Assert.Equal(80, TrialNames.Safe(new string('a', 300)).Length);

    [Fact]
    public void Of_SameNames_AreToldApartWhateverTheCase()
    {
        string[] folders = ["/a/2025/north", "/a/2026/North", "/b/2026/north", "/a/2026/south"];
        var names = TrialNames.Of(folders);

        Assert.Equal(["2025-north", "2026-North", "2026-north-2", "south"], names);
        Assert.Equal(names.Count, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void Of_NameThatAnotherWouldGetByItsParent_StaysUnique()
    {
        var names = TrialNames.Of(["/a/x", "/b/x", "/c/a-x"]);

        Assert.Equal(3, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }
}
