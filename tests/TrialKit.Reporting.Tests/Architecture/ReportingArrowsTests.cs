using NetArchTest.Rules;

namespace TrialKit.Reporting.Tests.Architecture;

/// <summary>What a report says knows nothing of how it is printed.</summary>
public class ReportingArrowsTests
{
    [Theory]
    [InlineData("Document", "PdfSharp")]
    [InlineData("Document", "ScottPlot")]
    [InlineData("Document", "TrialKit.Reporting.Pdf")]
    [InlineData("Figures", "PdfSharp")]
    [InlineData("Figures", "TrialKit.Reporting.Pdf")]
    [InlineData("Pdf", "ScottPlot")]
    public void Folder_KnowsNothingOf(string folder, string forbidden)
    {
        var result = Types.InAssembly(typeof(global::TrialKit.Reporting.Document.ReportDocument).Assembly)
            .That().ResideInNamespaceStartingWith($"TrialKit.Reporting.{folder}")
            .ShouldNot().HaveDependencyOn(forbidden)
            .GetResult();

        Assert.True(result.IsSuccessful, $"{folder} knows {forbidden}: {string.Join(", ", result.FailingTypes?.Select(type => type.FullName) ?? [])}");
    }
}
