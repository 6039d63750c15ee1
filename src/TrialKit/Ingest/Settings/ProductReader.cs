using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads one product put near the seed.</summary>
internal static class ProductReader
{
    // Shares are written as decimals: what their sum may be off is rounding of the sum.
    private const double Rounding = 1e-9;

    /// <summary>The product; null with errors added when its name, placement or rate is missing or faulty.</summary>
    public static Product? Read(TomlSection section, MoneyReader money, ProblemList problems)
    {
        section.Require("name", "name = \"starter\"");
        section.Require("placement", "placement = \"in-furrow\"");
        section.Require("rate", "rate = \"5 gal/ac\"");
        var name = section.Text("name");
        var placements = ReadPlacements(section, problems);
        var rate = SettingsReader.Positive(section.Quantity("rate", UnitKinds.ProductRate), "rate", problems);
        var density = SettingsReader.Positive(section.Quantity("density", UnitKinds.ProductDensity), "density", problems);
        var analysis = ReadAnalysis(section, problems);
        var mixture = ReadMixture(section, problems);
        var price = money.ReadProductPrice(section);
        section.Finish();
        if (name is null || placements.IsEmpty || rate is null)
        {
            return null;
        }

        var product = new Product(
            name,
            placements,
            UnitKinds.ToProductRate(rate.Value, rate.Unit),
            density is null ? null : UnitKinds.ToProductDensity(density.Value, density.Unit),
            analysis)
        {
            MadeFrom = mixture,
            Price = price,
        };
        if (product.Rate.IsVolume && analysis is not null && !section.Has("density"))
        {
            problems.Add(TomlProblems.DensityMissing(rate.At, rate.Written, Materials.Recognise(product)?.DensityWords));
        }
        else if (price is not null && product.Cost is null && !section.Has("density"))
        {
            problems.Add(TomlProblems.PriceWithoutDensity(section.At("price"), section.Text("price")!));
        }

        return product;
    }

    /// <summary>One placement by name, or several with their shares.</summary>
    private static ImmutableArray<PlacedShare> ReadPlacements(TomlSection section, ProblemList problems)
    {
        const string key = "placement";
        if (!section.IsSection(key))
        {
            return section.Choice(key, Placements.Names) is { } placement ? [new(Placements.Find(placement)!.Value, 1)] : [];
        }

        var split = section.Section(key, key)!;
        var shares = split.Shares();
        foreach (var (name, at) in split.Keys.Where(entry => Placements.Find(entry.Key) is null))
        {
            problems.Add(TomlProblems.NotChoice(at, key, name, Placements.Names));
            shares = null;
        }

        // TOML refuses the same key twice, not the same name in other letters.
        var seen = new HashSet<Placement?>();
        foreach (var (name, at) in split.Keys.Where(entry => Placements.Find(entry.Key) is { } placement && !seen.Add(placement)))
        {
            problems.Add(TomlProblems.PlacementTwice(at, name));
            shares = null;
        }

        if (shares is null)
        {
            return [];
        }

        var sum = shares.Sum(share => share.Share);
        if (Math.Abs(sum - 1) > Rounding)
        {
            problems.Add(TomlProblems.SharesNotOne(section.At(key), key, sum));
            return [];
        }

        return [.. shares.Select(share => new PlacedShare(Placements.Find(share.Key)!.Value, share.Share))];
    }

    private static NutrientAnalysis? ReadAnalysis(TomlSection section, ProblemList problems)
    {
        if (section.Text("analysis") is not { } text)
        {
            return null;
        }

        if (!NutrientAnalysis.TryParse(text, out var analysis))
        {
            problems.Add(TomlProblems.NotAnalysis(section.At("analysis"), text));
            return null;
        }

        if (analysis.Total > 100)
        {
            problems.Add(TomlProblems.AnalysisAboveWhole(section.At("analysis"), text, analysis.Total));
            return null;
        }

        return analysis;
    }

    private static ImmutableArray<MixedShare> ReadMixture(TomlSection section, ProblemList problems)
    {
        const string key = "made_from";
        if (section.Section(key, key) is not { } mixture || mixture.Shares() is not { } shares)
        {
            return [];
        }

        var known = true;
        foreach (var (name, at, _) in shares.Where(share => Materials.Find(share.Key) is null))
        {
            problems.Add(TomlProblems.UnknownMaterial(at, name, [.. Materials.All.Select(material => material.Name)]));
            known = false;
        }

        var sum = shares.Sum(share => share.Share);
        if (sum > 1 + Rounding)
        {
            problems.Add(TomlProblems.MixtureAboveWhole(section.At(key), sum));
            return [];
        }

        return known ? [.. shares.Select(share => new MixedShare(Materials.Find(share.Key)!.Name, share.Share))] : [];
    }
}
