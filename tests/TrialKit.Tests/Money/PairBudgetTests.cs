using System.Text.Json;
using CsCheck;
using TrialKit.Money;
using TrialKit.Numerics;
using TrialKit.Quantities;
using TrialKit.Tests.Numerics;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Tests.Money;

public class PairBudgetTests
{
    private const string Formula = "computed from the formula, no published value";
    private static readonly Mass Bushel = Mass.FromPounds(56);
    private static readonly Treatment Dear = SmallTrial.Other with { Cost = MoneyPerArea.FromPerAcre(18, "$") };

    [Fact]
    public void PartialBudget_PublishedForm_GivesItsNet()
    {
        // The form's two sides are printed as sums: how they are made up does not matter to the net.
        Assert.Equal(-4500, new PartialBudget(AddedReturns: 150_000, ReducedCosts: 2_500, AddedCosts: 155_000, ReducedReturns: 2_000).Net);
    }

    [Theory]
    [InlineData("corn", 40, 4.25, 9.4)]
    [InlineData("corn", 40, 6.95, 5.8)]
    [InlineData("soybean", 40, 11, 3.6)]
    public void BreakEven_Published_GivesItsBushels(string crop, double cost, double price, double bushels)
    {
        var bushel = CropTable.Find(crop)!.Bushel!.Value;
        var response = BreakEven.Response(MoneyPerArea.FromPerAcre(cost, "$"), GrainPrice.FromPerBushel(price, "$", bushel));
        Close.Absolute(bushels, response.BushelsPerAcre(bushel), Tolerances.PrintedToOneDecimal, "farmdoc daily 14:83, 2024");
    }

    [Fact]
    public void BreakEven_NoPrice_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() => BreakEven.Response(MoneyPerArea.FromPerAcre(1, "$"), default));

    [Fact]
    public void CapitalRecovery_WorkedMachine_GivesItsCost()
    {
        var machine = Machine(6000, 1500, 8, 7);
        Close.Absolute(0.167468, CapitalRecovery.Factor(machine.Interest, 8), Tolerances.Printed(6), Formula);
        Close.Absolute(858.60, CapitalRecovery.PerYear(machine), Tolerances.PrintedToTwoDecimals, Formula);
        Close.Absolute(0.7155, CapitalRecovery.PerArea(machine).PerAcre, Tolerances.Printed(4), Formula);
    }

    [Fact]
    public void CapitalRecovery_WithoutInterest_SpreadsTheLossOfValue() =>
        Close.Relative(4500.0 / 8, CapitalRecovery.PerYear(Machine(6000, 1500, 8, 0)), Tolerances.FewRoundings, "straight line");

    [Fact]
    public void CapitalRecovery_VanishingInterest_NearsTheStraightLine() =>
        Close.Relative(1.0 / 8, CapitalRecovery.Factor(Ratio.FromPercent(1e-9), 8), Tolerances.Limit, "limit of the formula");

    [Fact]
    public void CapitalRecovery_ImpossibleInput_Throws()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.Factor(Ratio.FromPercent(-1), 8));
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.Factor(Ratio.FromPercent(7), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.PerYear(Machine(6000, 7000, 8, 7)));
        Assert.Throws<ArgumentOutOfRangeException>(() => CapitalRecovery.PerArea(Machine(6000, 0, 8, 7) with { AreaPerYear = Area.Zero }));
    }

    [Theory]
    [InlineData("ex")]
    [InlineData("ex2")]
    public void Above_RPosterior_Agrees(string name)
    {
        var values = ReferenceData.Json("glm/glm_misc.json").GetProperty("breakeven_posterior").GetProperty("values").GetProperty(name);
        var (mean, sd, n, value) = (Number(values, "dbar"), Number(values, "sd"), Number(values, "n"), Number(values, "b"));
        Close.Relative(Number(values, "p"), ChanceOfPaying.Above(mean, sd / Math.Sqrt(n), n - 1, value)!.Value.Value, Tolerances.ChanceOfPaying, $"breakeven_posterior, {name}, R");
    }

    [Fact]
    public void Of_WorkedCase_GivesItsChancesAndItsWorth()
    {
        var budget = Budget(Dear, 6, 2.5, 5, margin: 25);
        Close.Absolute(4, budget.BreakEven!.Value.BushelsPerAcre(Bushel), Tolerances.ClosedForm, Formula);
        Close.Absolute(0.76999, budget.At!.Pays!.Value.Value, Tolerances.Printed(5), Formula);
        Close.Absolute(0.64716, budget.At.PaysWithMargin!.Value.Value, Tolerances.Printed(5), Formula);
        Close.Absolute(0.96919, budget.AboveZero!.Value.Value, Tolerances.Printed(5), Formula);
        Close.Absolute(9, budget.At.Net.PerAcre, Tolerances.ClosedForm, Formula);
        Close.Relative(budget.At.Net.PerHectare, budget.Budget!.Value.Net, Tolerances.FewRoundings, "the four sides add up to the net");
    }

    [Fact]
    public void Of_WorkedPairs_GiveTheirChances()
    {
        double[] pairs = [9.1, 2.4, 7.8, 5.5, 1.2, 10.0];
        var (mean, sd) = (Summary.Mean(pairs), Summary.StandardDeviation(pairs));
        Close.Absolute(6, mean, Tolerances.ClosedForm, Formula);
        Close.Absolute(3.60832, sd, Tolerances.Printed(5), Formula);
        var error = sd / Math.Sqrt(pairs.Length);
        Close.Absolute(1.47309, error, Tolerances.Printed(5), Formula);
        var estimate = new Results.TEstimate(mean, error, 5, 6, Results.Unit.BushelsPerAcre, StripYields.Method);
        Close.Absolute(3.7867, estimate.IntervalAt(ConfidenceLevel.FromAlpha(0.05)).High - mean, Tolerances.Printed(4), Formula);
        var budget = Budget(Dear, mean, error, 5, margin: 25);
        Close.Absolute(0.88369, budget.At!.Pays!.Value.Value, Tolerances.Printed(5), Formula);
        Close.Absolute(0.99520, budget.AboveZero!.Value.Value, Tolerances.Printed(5), Formula);
    }

    [Fact]
    public void Of_OnePair_GivesNoChance()
    {
        var budget = Budget(Dear, 6, standardError: null, 0, margin: 25);
        Assert.Null(budget.At!.Pays);
        Assert.Null(budget.AboveZero);
        Assert.Contains(budget.Findings, finding => finding.Id == "money-one-replicate");
    }

    [Theory]
    [InlineData(6, 1)]
    [InlineData(3, 0)]
    public void Of_EveryPairAlike_GivesNoughtOrOneAndSaysSo(double bushels, double chance)
    {
        var budget = Budget(Dear, bushels, 0, 0, margin: 25);
        Assert.Equal(chance, budget.At!.Pays!.Value.Value);
        Assert.Contains(budget.Findings, finding => finding.Id == "money-no-spread");
    }

    [Fact]
    public void Of_WithoutYield_GivesTheBreakEvenResponseAloneAndWhy()
    {
        var budget = PairBudget.Of(Dear, SmallTrial.Control, response: null, GrainPrice.FromPerBushel(4.5, "$", Bushel), new());
        Close.Absolute(4, budget.BreakEven!.Value.BushelsPerAcre(Bushel), Tolerances.ClosedForm, Formula);
        Assert.Null(budget.At);
        Assert.Null(budget.AboveZero);
        Assert.Null(budget.Budget);
        Assert.Empty(budget.OverPrice);
        Assert.Contains(budget.Findings, finding => finding.Id == "money-no-yield");
    }

    [Fact]
    public void Of_WithoutPrice_GivesNeitherAndSaysWhy()
    {
        var budget = PairBudget.Of(Dear, SmallTrial.Control, Response(6, 2.5, 5), price: null, new());
        Assert.Null(budget.BreakEven);
        Assert.Null(budget.At);
        Assert.Contains(budget.Findings, finding => finding.Id == "money-no-price");
    }

    [Fact]
    public void Of_EveryKindOfCost_AddsUp()
    {
        var treatment = Dear with
        {
            Saved = MoneyPerArea.FromPerAcre(3, "$"),
            Machines = [Machine(6000, 1500, 8, 7)],
            HoursPerHectare = 0.1 / Land.HectaresPerAcre,
            Products = [Starter.Products.Polyphosphate(5) with { Price = new(4 / 3.785411784, IsPerVolume: true, "$") }],
        };
        var baseline = SmallTrial.Control with { Cost = MoneyPerArea.FromPerAcre(2, "$") };
        var budget = PairBudget.Of(treatment, baseline, Response(6, 2.5, 5), GrainPrice.FromPerBushel(4.5, "$", Bushel), new() { WagePerHour = 20, WageCurrency = "$" });
        Close.Absolute(18 - 3 + 20 + 0.7155 + 2 - 2, budget.Cost.PerAcre, Tolerances.Printed(4), Formula);
        Assert.Equal(["stated", "saved", "product", "machine", "time"], budget.Costs.Select(line => line.Kind));
        Close.Relative(budget.At!.Net.PerHectare, budget.Budget!.Value.Net, Tolerances.FewRoundings, "the four sides add up to the net");
    }

    [Fact]
    public void Of_CostsEqualButForRounding_CostNothing()
    {
        var whole = SmallTrial.Other with { Cost = MoneyPerArea.FromPerHectare(0.3, "$") };
        var parts = SmallTrial.Control with { Cost = MoneyPerArea.FromPerHectare(0.1, "$"), Saved = MoneyPerArea.FromPerHectare(-0.2, "$") };
        var budget = PairBudget.Of(whole, parts, Response(6, 2.5, 5), GrainPrice.FromPerBushel(4.5, "$", Bushel), new());
        Assert.NotEqual(0.3, 0.1 + 0.2);
        Assert.Equal(0, budget.Cost.PerHectare);
        Assert.All(budget.OverCost, point => Assert.InRange(point.Cost.PerHectare, 0, Math.Abs(budget.At!.Net.PerHectare)));
    }

    [Theory]
    [InlineData("volume price, volume rate", 4.0, true, 5.0)]
    [InlineData("weight price, volume rate", 1.0, false, 5 * 1.4)]
    public void ProductPrice_AmountOf_ConvertsByDensity(string situation, double price, bool perVolume, double litresOrKilograms)
    {
        var amount = new ProductPrice(price, perVolume, "$").AmountOf(ApplicationRate.FromLitresPerHectare(5), Density.FromKilogramsPerLiter(1.4));
        Close.Relative(price * litresOrKilograms, amount!.Value, Tolerances.FewRoundings, situation);
        Assert.Null(new ProductPrice(price, !perVolume, "$").AmountOf(perVolume ? ApplicationRate.FromLitresPerHectare(5) : ApplicationRate.FromKilogramsPerHectare(5), density: null));
    }

    [Fact]
    public void OverPrice_DearerGrain_NeverLowersTheChanceOfAnAddedCost()
    {
        var budget = Budget(Dear, 6, 2.5, 5, margin: 25);
        Assert.Equal(21, budget.OverPrice.Length);
        Assert.All(budget.OverPrice.Zip(budget.OverPrice.Skip(1)), step => Assert.True(step.Second.Pays!.Value.Value >= step.First.Pays!.Value.Value));
        Assert.All(budget.OverCost.Zip(budget.OverCost.Skip(1)), step => Assert.True(step.Second.Pays!.Value.Value <= step.First.Pays!.Value.Value));
        Assert.Equal(budget.At!.Pays!.Value.Value, budget.OverPrice[10].Pays!.Value.Value, Tolerances.ClosedForm);
        Assert.Equal(budget.At.Pays.Value.Value, budget.OverCost[10].Pays!.Value.Value, Tolerances.ClosedForm);
    }

    [Fact]
    public void Of_SwappedTreatments_FlipsWorthAndChance() =>
        Gen.Select(Gen.Double[-20, 20], Gen.Double[0.1, 10]).Sample((difference, error) =>
        {
            var one = PairBudget.Of(Dear, SmallTrial.Control, Response(difference, error, 5), GrainPrice.FromPerBushel(4.5, "$", Bushel), new());
            var other = PairBudget.Of(SmallTrial.Control, Dear, Response(-difference, error, 5), GrainPrice.FromPerBushel(4.5, "$", Bushel), new());
            Close.Absolute(one.At!.Net.PerHectare, -other.At!.Net.PerHectare, Tolerances.ShiftAndScale, "net");
            Close.Absolute(1, one.At.Pays!.Value.Value + other.At.Pays!.Value.Value, Tolerances.ClosedForm, "chance");
        });

    private static PairBudget Budget(Treatment treatment, double bushels, double? standardError, double df, double margin) => PairBudget.Of(
        treatment,
        SmallTrial.Control,
        Response(bushels, standardError, df),
        GrainPrice.FromPerBushel(4.5, "$", Bushel),
        new() { Margin = Ratio.FromPercent(margin) });

    private static YieldResponse Response(double bushels, double? standardError, double df)
    {
        var scale = Bushel.Kilograms / Land.HectaresPerAcre;
        return new(GrainYieldDifference.FromKilogramsPerHectare(bushels * scale), standardError * scale, df, Low: null, High: null, default, Comparisons: 1);
    }

    private static Machine Machine(double price, double salvage, int years, double interest) =>
        new("machine", price, salvage, years, Ratio.FromPercent(interest), Area.FromSquareMeters(1200 * Land.SquareMetresPerAcre), "$");

    private static double Number(JsonElement values, string name) => values.GetProperty(name).GetDouble();
}
