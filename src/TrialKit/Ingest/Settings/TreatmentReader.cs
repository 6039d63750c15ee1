using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Toml;
using TrialKit.Trials;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads the treatments and the products put near the seed.</summary>
internal static class TreatmentReader
{
    /// <summary>Adds the treatments to the settings; a treatment without a name is an error and left out.</summary>
    public static TrialSettings Read(TrialSettings settings, TomlSection root, MoneyReader money, ProblemList problems)
    {
        root.Require("treatment", "[[treatment]]");
        var treatments = ImmutableArray.CreateBuilder<Treatment>();
        var places = ImmutableArray.CreateBuilder<ProblemLocation>();
        ProblemLocation? timePlace = null;
        var sections = root.Sections("treatment", "[[treatment]]");
        foreach (var section in sections)
        {
            section.Require("name", "name = \"chains\"");
            var name = section.Text("name");
            var label = section.Text("label") ?? name;
            var cost = money.ReadCost(section, "cost");
            var saved = money.ReadCost(section, "saved");
            var products = section.Sections("product", "[[treatment.product]]").Select(product => ProductReader.Read(product, money, problems)).OfType<Product>();
            var treatment = new Treatment(name ?? string.Empty, label ?? string.Empty, cost, [.. products])
            {
                Saved = saved,
                Machines = [.. section.Sections("machine", "[[treatment.machine]]").Select(money.ReadMachine).OfType<Machine>()],
                HoursPerHectare = SettingsReader.Positive(section.Quantity("time", UnitKinds.WorkingTime), "time", problems) is { } time
                    ? UnitKinds.ToHoursPerHectare(time.Value, time.Unit)
                    : null,
            };
            timePlace ??= section.Has("time") ? section.At("time") : null;
            section.Finish();
            if (name is not null)
            {
                treatments.Add(treatment);
                places.Add(section.At("name"));
            }
        }

        return settings with { KnowsTreatments = treatments.Count > 0 && treatments.Count == sections.Count, Treatments = treatments.ToImmutable(), TreatmentPlaces = places.ToImmutable(), TimePlace = timePlace };
    }
}
