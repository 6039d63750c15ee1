using NetArchTest.Rules;

namespace TrialKit.Tests.Architecture;

/// <summary>The arrows of DEVELOPERS.md: which folder of the library may know which.</summary>
public class ArrowsTests
{
    private static readonly string[] Folders =
    [
        "Quantities", "Trials", "Ingest", "Heat", "Stand", "Emergence", "Numerics",
        "Comparison", "Planning", "Starter", "Money", "Results", "Analysis", "Export", "Season", "Teaching",
    ];

    [Theory]
    [InlineData("Quantities", "")]
    [InlineData("Numerics", "")]
    [InlineData("Trials", "Quantities")]
    [InlineData("Results", "Quantities,Numerics")]
    [InlineData("Ingest", "Quantities,Trials")]
    [InlineData("Heat", "Trials,Quantities,Numerics,Results")]
    [InlineData("Stand", "Trials,Quantities,Numerics,Results")]
    [InlineData("Emergence", "Trials,Quantities,Numerics,Results,Heat")]
    [InlineData("Comparison", "Trials,Quantities,Numerics,Results")]
    [InlineData("Planning", "Trials,Quantities,Numerics,Results")]
    [InlineData("Money", "Trials,Quantities,Numerics,Results")]
    [InlineData("Starter", "Trials,Quantities,Numerics,Results")]
    [InlineData("Teaching", "Quantities,Numerics")]
    [InlineData("Analysis", "Trials,Quantities,Numerics,Results,Heat,Stand,Emergence,Comparison,Planning,Starter,Money")]
    [InlineData("Season", "Trials,Quantities,Results,Comparison,Ingest,Export")]
    [InlineData("Export", "Trials,Quantities,Results,Heat,Stand,Emergence,Comparison,Planning,Starter,Money,Analysis")]
    public void Folder_KnowsOnlyTheFoldersItsArrowsAllow(string folder, string allowed)
    {
        var forbidden = Folders
            .Except([folder, .. allowed.Split(',')], StringComparer.Ordinal)
            .Select(name => $"TrialKit.{name}")
            .ToArray();

        var result = Types.InAssembly(typeof(global::TrialKit.Library).Assembly)
            .That().ResideInNamespaceStartingWith($"TrialKit.{folder}")
            .ShouldNot().HaveDependencyOnAny(forbidden)
            .GetResult();

        Assert.True(result.IsSuccessful, Describe(folder, result));
    }

    [Theory]
    [InlineData("MathNet.Numerics", "Numerics")]
    [InlineData("Tomlyn", "Ingest")]
    [InlineData("Parquet", "Season")]
    [InlineData("CsvHelper", "Ingest", "Export")]
    public void Package_IsUsedOnlyInItsFolder(string package, params string[] folders)
    {
        var result = Types.InAssembly(typeof(global::TrialKit.Library).Assembly)
            .That().HaveDependencyOn(package)
            .GetTypes()
            .Where(type => !folders.Any(folder => type.FullName!.StartsWith($"TrialKit.{folder}.", StringComparison.Ordinal)))
            .Select(type => type.FullName)
            .ToArray();

        Assert.True(result.Length == 0, $"{package} is used outside {string.Join(", ", folders)}: {string.Join(", ", result)}");
    }

    private static string Describe(string folder, NetArchTest.Rules.TestResult result) =>
        $"{folder} knows what it should not: {string.Join(", ", result.FailingTypes?.Select(type => type.FullName) ?? [])}";
}
