using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads amounts of money per area or per weight of grain, in one currency that is kept as written.</summary>
/// <param name="problems">Takes what is wrong.</param>
internal sealed class MoneyReader(ProblemList problems)
{
    private string? _currency;

    /// <summary>A cost per area; it may be negative when money is saved.</summary>
    public MoneyPerArea? ReadCost(TomlSection section, string key) =>
        Read(section, key, ["ac", "ha"], "1.40 $/ac") switch
        {
            null => null,
            { Per: "ac" } perAcre => MoneyPerArea.FromPerAcre(perAcre.Amount, perAcre.Currency),
            var perHectare => MoneyPerArea.FromPerHectare(perHectare.Amount, perHectare.Currency),
        };

    /// <summary>The section <c>[money]</c>.</summary>
    public GrainPrice? ReadPrice(TomlSection root, Crop? crop)
    {
        if (root.Section("money", "[money]") is not { } section)
        {
            return null;
        }

        var price = Read(section, "grain_price", ["bu", "t"], "4.50 $/bu");
        section.Finish();
        if (price is null)
        {
            return null;
        }

        if (price.Amount <= 0)
        {
            problems.Add(TomlProblems.OutOfRange(price.At, "grain_price", Wording.Quote(price.Written), "a price above zero"));
            return null;
        }

        if (price.Per == "t")
        {
            return GrainPrice.FromPerTonne(price.Amount, price.Currency);
        }

        if (crop is { Bushel: null })
        {
            problems.Add(TomlProblems.OutOfRange(price.At, "grain_price", Wording.Quote(price.Written), $"a price per tonne, since {crop.Name} has no bushel (or bushel = \"60 lb\" under [crop])"));
        }

        return crop?.Bushel is { } bushel ? GrainPrice.FromPerBushel(price.Amount, price.Currency, bushel) : null;
    }

    private MoneyText? Read(TomlSection section, string key, IReadOnlyList<string> per, string example)
    {
        var money = section.Money(key, per, example);
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
