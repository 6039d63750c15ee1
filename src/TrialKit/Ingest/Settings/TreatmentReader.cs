using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Toml;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads the treatments and the products put near the seed.</summary>
internal static class TreatmentReader
{
    private static readonly Dictionary<string, Placement> Placements = new(StringComparer.Ordinal)
    {
        ["in-furrow"] = Placement.InFurrow,
        ["2x2"] = Placement.BesideAndBelow,
        ["2x0"] = Placement.BesideOnSurface,
        ["2x2x2"] = Placement.BesideAndBelowBothSides,
        ["dribble"] = Placement.SurfaceDribble,
    };

    /// <summary>Adds the treatments to the settings; a treatment without a name is an error and left out.</summary>
    public static TrialSettings Read(TrialSettings settings, TomlSection root, MoneyReader money, ProblemList problems)
    {
        root.Require("treatment", "[[treatment]]");
        var treatments = ImmutableArray.CreateBuilder<Treatment>();
        var places = ImmutableArray.CreateBuilder<ProblemLocation>();
        var sections = root.Sections("treatment", "[[treatment]]");
        foreach (var section in sections)
        {
            section.Require("name", "name = \"chains\"");
            var name = section.Text("name");
            var label = section.Text("label") ?? name;
            var cost = money.ReadCost(section, "cost");
            var products = section.Sections("product", "[[treatment.product]]").Select(product => ReadProduct(product, problems)).OfType<Product>();
            var treatment = new Treatment(name ?? string.Empty, label ?? string.Empty, cost, [.. products]);
            section.Finish();
            if (name is not null)
            {
                treatments.Add(treatment);
                places.Add(section.At("name"));
            }
        }

        return settings with { KnowsTreatments = treatments.Count > 0 && treatments.Count == sections.Count, Treatments = treatments.ToImmutable(), TreatmentPlaces = places.ToImmutable() };
    }

    private static Product? ReadProduct(TomlSection section, ProblemList problems)
    {
        section.Require("name", "name = \"starter\"");
        section.Require("placement", "placement = \"in-furrow\"");
        section.Require("rate", "rate = \"5 gal/ac\"");
        var name = section.Text("name");
        var placement = section.Choice("placement", [.. Placements.Keys]);
        var rate = SettingsReader.Positive(section.Quantity("rate", UnitKinds.ProductRate), "rate", problems);
        var density = SettingsReader.Positive(section.Quantity("density", UnitKinds.ProductDensity), "density", problems);
        var analysis = ReadAnalysis(section, problems);
        section.Finish();
        return name is null || placement is null || rate is null
            ? null
            : new Product(
                name,
                Placements[placement],
                UnitKinds.ToProductRate(rate.Value, rate.Unit),
                density is null ? null : UnitKinds.ToProductDensity(density.Value, density.Unit),
                analysis);
    }

    private static NutrientAnalysis? ReadAnalysis(TomlSection section, ProblemList problems)
    {
        if (section.Text("analysis") is not { } text)
        {
            return null;
        }

        var parts = text.Split('-', StringSplitOptions.TrimEntries);
        var shares = new double[4];
        var sound = parts.Length is 3 or 4;
        for (var i = 0; sound && i < parts.Length; i++)
        {
            var digits = i == 3 ? parts[i].TrimEnd('S', 's', ' ') : parts[i];
            sound = QuantityText.TrySplit(digits, out shares[i], out var rest) && rest.Length == 0 && shares[i] is >= 0 and <= 100;
        }

        if (sound && shares.Sum() <= 100)
        {
            return new NutrientAnalysis(shares[0], shares[1], shares[2], shares[3]);
        }

        problems.Add(TomlProblems.NotAnalysis(section.At("analysis"), text));
        return null;
    }
}
