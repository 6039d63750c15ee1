using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads amounts of money per area or per weight of grain, in one currency that is kept as written.</summary>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class MoneyReader(ProblemList problems)
{
    private const double KilogramsPerTonne = 1000;
    private const double MostYears = 100;

    private string? _currency;

    /// <summary>A cost per area; it may be negative when money is saved.</summary>
    public MoneyPerArea? ReadCost(TomlSection section, string key) =>
        Read(section, key, ["ac", "ha"], "1.40 $/ac") switch
        {
            null => null,
            { Per: "ac" } perAcre => MoneyPerArea.FromPerAcre(perAcre.Amount, perAcre.Currency),
            var perHectare => MoneyPerArea.FromPerHectare(perHectare.Amount, perHectare.Currency),
        };

    /// <summary>What an amount of product costs; null with an error added when it is negative.</summary>
    public ProductPrice? ReadProductPrice(TomlSection section) =>
        NotNegative(Read(section, "price", ["gal", "L", "lb", "kg", "t"], "4.10 $/gal"), "price") switch
        {
            null => null,
            { Per: "gal" } price => new(price.Amount / ApplicationRate.LitresPerGallon, IsPerVolume: true, price.Currency),
            { Per: "l" } price => new(price.Amount, IsPerVolume: true, price.Currency),
            { Per: "lb" } price => new(price.Amount / ApplicationRate.KilogramsPerPound, IsPerVolume: false, price.Currency),
            { Per: "t" } price => new(price.Amount / KilogramsPerTonne, IsPerVolume: false, price.Currency),
            var price => new(price.Amount, IsPerVolume: false, price.Currency),
        };

    /// <summary>A machine; null with errors added when a part is missing or faulty.</summary>
    public Machine? ReadMachine(TomlSection section)
    {
        section.Require("name", "name = \"tank, pump and tubes\"");
        section.Require("price", "price = \"6000 $\"");
        section.Require("years", "years = 8");
        section.Require("interest", "interest = \"7 %\"");
        section.Require("area", "area = \"1200 ac\"");
        var name = section.Text("name");
        var price = Positive(OneCurrency(section.Sum("price", "6000 $"), "price"), "price");
        var salvage = NotNegative(OneCurrency(section.Sum("salvage", "1500 $"), "salvage"), "salvage");
        var years = section.Number("years", 1, MostYears, "a number of years from 1 to 100");
        var interest = section.Quantity("interest", UnitKinds.Share);
        var area = SettingsReader.Positive(section.Quantity("area", UnitKinds.Land), "area", problems);
        section.Finish();
        if (interest is not null and not { Value: >= 0 and <= 100 })
        {
            problems.Add(TomlProblems.OutOfRange(interest.At, "interest", Wording.Quote(interest.Written), "interest from 0 to 100 % a year"));
            return null;
        }

        if (salvage is not null && price is not null && salvage.Amount > price.Amount)
        {
            problems.Add(TomlProblems.OutOfRange(salvage.At, "salvage", Wording.Quote(salvage.Written), "no more than the price"));
            return null;
        }

        if (years is { } given && given != Math.Floor(given))
        {
            problems.Add(TomlProblems.OutOfRange(section.At("years"), "years", Wording.Number(given), "a whole number of years"));
            return null;
        }

        return name is null || price is null || years is null || interest is null || area is null
            ? null
            : new(name, price.Amount, salvage?.Amount ?? 0, (int)years, Ratio.FromPercent(interest.Value), UnitKinds.ToLand(area.Value, area.Unit), price.Currency);
    }

    /// <summary>The section <c>[money]</c>: the price of grain, what comes off it, what an hour costs, and the margin.</summary>
    public TrialSettings ReadMoney(TrialSettings settings, TomlSection root, Crop? crop)
    {
        if (root.Section("money", "[money]") is not { } section)
        {
            RequireWage(settings, wage: null);
            return settings;
        }

        var paid = Positive(Read(section, "grain_price", ["bu", "t"], "4.50 $/bu"), "grain_price");
        var hauling = NotNegative(Read(section, "hauling", ["bu", "t"], "0.15 $/bu"), "hauling");
        var drying = NotNegative(Read(section, "drying", ["bu", "t"], "0.20 $/bu"), "drying");
        var wage = Positive(Read(section, "wage", ["h"], "25 $/h"), "wage");
        var margin = section.Quantity("margin", UnitKinds.Share);
        section.Finish();
        if (margin is not null and not { Value: >= 0 and <= 1000 })
        {
            problems.Add(TomlProblems.OutOfRange(margin.At, "margin", Wording.Quote(margin.Written), "a margin from 0 to 1000 % of the cost"));
            margin = null;
        }

        RequireWage(settings, wage);
        var money = new MoneySettings
        {
            PaidPrice = ToPrice(paid, "grain_price", crop),
            Hauling = ToPrice(hauling, "hauling", crop),
            Drying = ToPrice(drying, "drying", crop),
            WagePerHour = wage?.Amount,
            WageCurrency = wage?.Currency,
        };
        return settings with
        {
            Money = margin is null ? money : money with { Margin = Ratio.FromPercent(margin.Value) },
            GrainPrice = money.PaidPrice is { } price && paid is not null ? Net(price, money, paid) : null,
        };
    }

    private void RequireWage(TrialSettings settings, MoneyText? wage)
    {
        if (wage is null && settings.TimePlace is { } place)
        {
            problems.Add(TomlProblems.TimeWithoutWage(place));
        }
    }

    private GrainPrice? Net(GrainPrice price, MoneySettings money, MoneyText paid)
    {
        var net = price.PerKilogram - (money.Hauling?.PerKilogram ?? 0) - (money.Drying?.PerKilogram ?? 0);
        if (net > 0)
        {
            return GrainPrice.FromPerTonne(net * KilogramsPerTonne, price.Currency);
        }

        problems.Add(TomlProblems.OutOfRange(paid.At, "grain_price", Wording.Quote(paid.Written), "a price above hauling and drying together"));
        return null;
    }

    /// <summary>The price per weight; null when there is none, and for hauling or drying that costs nothing.</summary>
    private GrainPrice? ToPrice(MoneyText? price, string key, Crop? crop)
    {
        if (price is null or { Amount: 0 })
        {
            return null;
        }

        if (price.Per == "t")
        {
            return GrainPrice.FromPerTonne(price.Amount, price.Currency);
        }

        if (crop is { Bushel: null })
        {
            problems.Add(TomlProblems.OutOfRange(price.At, key, Wording.Quote(price.Written), $"a price per tonne, since {crop.Name} has no bushel (or bushel = \"60 lb\" under [crop])"));
        }

        return crop?.Bushel is { } bushel ? GrainPrice.FromPerBushel(price.Amount, price.Currency, bushel) : null;
    }

    private MoneyText? Positive(MoneyText? money, string key) => Check(money, key, money is null or { Amount: > 0 }, key == "grain_price" ? "a price above zero" : "an amount above zero");

    private MoneyText? NotNegative(MoneyText? money, string key) => Check(money, key, money is null or { Amount: >= 0 }, "an amount of zero or more");

    private MoneyText? Check(MoneyText? money, string key, bool isSound, string expected)
    {
        if (isSound)
        {
            return money;
        }

        problems.Add(TomlProblems.OutOfRange(money!.At, key, Wording.Quote(money.Written), expected));
        return null;
    }

    private MoneyText? Read(TomlSection section, string key, IReadOnlyList<string> per, string example) => OneCurrency(section.Money(key, per, example), key);

    private MoneyText? OneCurrency(MoneyText? money, string key)
    {
        if (money is null)
        {
            return null;
        }

        _currency ??= money.Currency;
        if (_currency == money.Currency)
        {
            return money;
        }

        problems.Add(TomlProblems.OtherCurrency(money.At, key, money.Currency, _currency));
        return null;
    }
}
