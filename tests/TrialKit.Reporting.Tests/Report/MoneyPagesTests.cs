using TrialKit.Money;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Words;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Tests.Report;

/// <summary>What a difference is worth: whose it is, at which level, and what is drawn of it.</summary>
public class MoneyPagesTests
{
    private static readonly Mass Bushel = Mass.FromPounds(56);
    private static readonly Treatment Band = new("band", "2x2 band", Cost: null, []);
    private static readonly Treatment Split = new("split", "Split", MoneyPerArea.FromPerAcre(18, "$"), []);

    private static MoneyText Text => new(UnitSystem.Us, Bushel);

    [Fact]
    public void Of_SeveralComparisons_NamesBaselineLevelAndWhichFigureIsOfHowMany()
    {
        var trial = TrialReportTests.Report("starter-placement").Analysis.Trial;
        var text = string.Join(' ', MoneyWords.Of(Budget(Split, comparisons: 2), trial));
        Assert.Contains("found with Split against 2x2 band is worth +9.00 $/ac (90 % interval \u221213.50 to +31.50, for both comparisons at once)", text, StringComparison.Ordinal);
        Assert.Contains("Of this comparison by itself, the chance that it pays is 77\u00A0%", text, StringComparison.Ordinal);
        Assert.Contains("for all 3 comparisons at once", MoneyWords.Answer(Budget(Split, comparisons: 3), trial), StringComparison.Ordinal);
        Assert.Contains("The chance that it pays, by itself, is 77\u00A0%.", MoneyWords.Answer(Budget(Split, comparisons: 3), trial), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_OneComparison_SpeaksOfNoOthers()
    {
        var trial = TrialReportTests.Report("starter-placement").Analysis.Trial;
        var text = string.Join(' ', MoneyWords.Of(Budget(Split, comparisons: 1), trial));
        Assert.Contains("(90 % interval \u221213.50 to +31.50). The chance", text, StringComparison.Ordinal);
        Assert.DoesNotContain("at once", text, StringComparison.Ordinal);
        Assert.DoesNotContain("wider", MoneyWords.Basis([Budget(Split, comparisons: 1)]), StringComparison.Ordinal);
        Assert.Contains("wider", MoneyWords.Basis([Budget(Split, comparisons: 2)]), StringComparison.Ordinal);
    }

    [Fact]
    public void Basis_NoChanceGiven_IsNotPrinted()
    {
        Assert.Null(MoneyWords.Basis([Budget(Split, comparisons: 1, error: null)]));
        Assert.Null(MoneyWords.Basis([PairBudget.Of(Split, Band, response: null, GrainPrice.FromPerBushel(4.5, "$", Bushel), new())]));
        Assert.Null(MoneyWords.Basis([]));
    }

    [Fact]
    public void Of_OneReplicate_SaysWhyThereIsNoChance()
    {
        var trial = TrialReportTests.Report("starter-placement").Analysis.Trial;
        Assert.Contains("no chance that it pays can be given", string.Join(' ', MoneyWords.Of(Budget(Split, comparisons: 1, error: null), trial)), StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_AddedCost_AreDrawnOverPriceAndCost()
    {
        var captions = Curves(Budget(Split, comparisons: 1)).OfType<FigureBlock>().Select(figure => figure.Caption);
        Assert.Equal(["The chance that it pays, over the price", "The chance that it pays, over the cost"], captions);
    }

    [Fact]
    public void Curves_CostsAlike_HaveNoneOverThePriceAndSayWhy()
    {
        var blocks = Curves(Budget(Band with { Name = "furrow", Label = "Other" }, comparisons: 1)).ToArray();
        Assert.Contains("no curve over the price is drawn", Assert.Single(blocks.OfType<Paragraph>()).Text.Plain, StringComparison.Ordinal);
        Assert.Equal("The chance that it pays, over the cost", Assert.Single(blocks.OfType<FigureBlock>()).Caption);
    }

    [Fact]
    public void Curves_CostsAlikeAndNothingEarned_HaveNoneAtAll() =>
        Assert.Empty(Curves(Budget(Band with { Name = "furrow", Label = "Other" }, comparisons: 1, bushels: 0, reach: 0)).OfType<FigureBlock>());

    [Fact]
    public void Curves_NothingVaried_HaveNoneAndSayWhy()
    {
        var blocks = Curves(Budget(Split, comparisons: 1, error: 0)).ToArray();
        Assert.Contains("0 or 1", Assert.IsType<Paragraph>(Assert.Single(blocks)).Text.Plain, StringComparison.Ordinal);
        Assert.Empty(Curves(Budget(Split, comparisons: 1, error: null)));
    }

    [Fact]
    public void ChanceRows_AddedCost_GivesTheTrialsOwnFirstAndEachOtherOnce()
    {
        var rows = ChanceRows.Of(Budget(Split, comparisons: 1), Text).ToArray();
        Assert.Equal(["4.50 $/bu", "18.00 $/ac", "4.0 bu/ac", "+9.00", "77\u00A0%", "65\u00A0%"], rows[0]);
        Assert.Equal(["2.25 $/bu", "3.38 $/bu", "5.63 $/bu", "6.75 $/bu"], rows.Skip(1).Take(4).Select(row => row[0].Replace("5.62", "5.63", StringComparison.Ordinal).Replace("3.37", "3.38", StringComparison.Ordinal)));
        Assert.Equal(["0.00 $/ac", "9.00 $/ac", "27.00 $/ac", "36.00 $/ac"], rows.Skip(5).Select(row => row[1]));
        Assert.All(rows, row => Assert.Equal(ChanceRows.Heads(Budget(Split, comparisons: 1), Text).Count, row.Count));
    }

    [Fact]
    public void TrialReport_OfAnExample_HasTheChancesAsATableAndAsCurves()
    {
        var document = TrialReportTests.Report("starter-placement").Document;
        Assert.Equal(2, document.Blocks.OfType<Table>().Count(table => table.Caption == ChanceRows.Caption));
        Assert.Equal(3, document.Blocks.OfType<FigureBlock>().Count(figure => figure.Caption?.StartsWith("The chance that it pays", StringComparison.Ordinal) == true));
    }

    private static IEnumerable<Block> Curves(PairBudget budget) =>
        MoneyPart.Curves(budget, Text, TreatmentTones.Of(TrialReportTests.Report("starter-placement").Analysis.Trial));

    /// <summary>6.0 bu/ac with a standard error of 2.5 and 5 degrees of freedom, at 4.50 $/bu; the interval 5 bu to either side.</summary>
    private static PairBudget Budget(Treatment treatment, int comparisons, double? error = 2.5, double bushels = 6, double reach = 5)
    {
        var scale = Bushel.Kilograms / Land.HectaresPerAcre;
        var response = new YieldResponse(GrainYieldDifference.FromKilogramsPerHectare(bushels * scale), error * scale, 5, (bushels - reach) * scale, (bushels + reach) * scale, default, comparisons);
        return PairBudget.Of(treatment, Band, response, GrainPrice.FromPerBushel(4.5, "$", Bushel), new());
    }
}
