using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Toml;
using TrialKit.Ingest.Weather;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Ingest.Settings;

/// <summary>Reads <c>trial.toml</c>.</summary>
internal static class SettingsReader
{
    /// <summary>The file's name.</summary>
    public const string FileName = "trial.toml";

    private const string Us = "us";
    private const string Metric = "metric";

    private static readonly Dictionary<string, SoilClass> SoilClasses = Enum.GetValues<SoilClass>().ToDictionary(soil => soil.ToString().ToLowerInvariant(), StringComparer.Ordinal);

    /// <summary>Reads the settings; every fault is added to the problems, and what is sound is returned all the same.</summary>
    public static TrialSettings Read(string folder, ProblemList problems)
    {
        if (!TrialFile.Exists(folder, FileName))
        {
            problems.Add(FileProblems.Missing(FileName, "the description of the trial was expected in the folder"));
            return new TrialSettings();
        }

        return Utf8Text.Read(folder, FileName, problems, TrialFile.LongestSettings) is { } text && TomlReader.Read(text, problems) is { } map
            ? Read(new TomlSection(map, FileName, problems), folder, problems)
            : new TrialSettings();
    }

    private static TrialSettings Read(TomlSection root, string folder, ProblemList problems)
    {
        root.Require("title", "title = \"Closing wheels, north field\"");
        var settings = new TrialSettings { Title = root.Text("title"), Question = root.Text("question") };
        var money = new MoneyReader(problems);
        var crop = CropReader.Read(root, problems);
        var dates = root.Choice("date_order", ["month/day/year", "day/month/year"]) switch
        {
            "month/day/year" => DateOrder.MonthDayYear,
            "day/month/year" => DateOrder.DayMonthYear,
            _ => DateOrder.Iso,
        };
        settings = settings with { Crop = crop, Dates = dates };
        settings = ReadUnits(settings, root, problems);
        settings = settings with { Site = ReadSite(root, problems) };
        settings = ReadPlanting(settings, root, problems);
        settings = TreatmentReader.Read(settings, root, money, problems);
        settings = ReadDesign(settings, root, problems);
        settings = ReadWeather(settings, root, folder, problems);
        settings = settings with { Forecast = ForecastReader.Read(root, folder, settings.Dates, problems) };
        settings = money.ReadMoney(settings, root, crop);
        settings = settings with { Field = FieldReader.Read(root, problems) };
        root.Finish();
        return settings;
    }

    /// <summary><c>units</c> is the system that outputs print, or a section of column units with the system under <c>report</c>.</summary>
    private static TrialSettings ReadUnits(TrialSettings settings, TomlSection root, ProblemList problems)
    {
        if (!root.IsSection("units"))
        {
            return settings with { Units = System(root.Choice("units", [Us, Metric])) };
        }

        var section = root.Section("units", "[units]")!;
        var units = ColumnUnitsReader.Read(section, problems);
        return settings with { Units = System(section.Choice("report", [Us, Metric])), ColumnUnits = units };
    }

    private static UnitSystem System(string? choice) => choice == Metric ? UnitSystem.Metric : UnitSystem.Us;

    private static Site? ReadSite(TomlSection root, ProblemList problems)
    {
        if (root.Section("site", "[site]") is not { } section)
        {
            return null;
        }

        var site = new Site(
            section.Text("name"),
            section.Number("latitude", -90, 90, "a latitude from -90 to 90 degrees"),
            section.Number("longitude", -180, 180, "a longitude from -180 to 180 degrees"),
            section.Text("soil"),
            section.Text("tillage"),
            section.Text("previous_crop"))
        {
            SoilClass = section.Choice("soil_class", [.. SoilClasses.Keys]) is { } soil ? SoilClasses[soil] : null,
            CationExchange = Positive(section.Quantity("cec", UnitKinds.CationExchange), "cec", problems)?.Value,
        };
        section.Finish();
        return site;
    }

    private static TrialSettings ReadPlanting(TrialSettings settings, TomlSection root, ProblemList problems)
    {
        if (root.Section("planting", "[planting]") is not { } section)
        {
            root.Require("planting", "[planting]");
            return settings;
        }

        section.Require("date", "date = 2026-04-27");
        section.Require("row_spacing", "row_spacing = \"30 in\"");
        settings = settings with
        {
            PlantingDate = section.Date("date", settings.Dates),
            RowSpacing = Length(section, "row_spacing", problems),
            Seeds = Positive(section.Quantity("seeding_rate", UnitKinds.SeedingRate), "seeding_rate", problems) is { } rate
                ? UnitKinds.ToSeedingRate(rate.Value, rate.Unit)
                : null,
            Depth = Length(section, "depth", problems),
            Germination = Share(section, "germination", above: 0, most: 100, problems),
            Speed = Positive(section.Quantity("speed", UnitKinds.Speed), "speed", problems) is { } speed ? UnitKinds.ToSpeed(speed.Value, speed.Unit) : null,
        };
        section.Finish();
        return settings;
    }

    private static TrialSettings ReadDesign(TrialSettings settings, TomlSection root, ProblemList problems)
    {
        if (root.Section("design", "[design]") is not { } section)
        {
            root.Require("design", "[design]");
            return settings;
        }

        section.Require("layout", "layout = \"pairs\"");
        Layout? layout = section.Choice("layout", ["pairs", "blocks"]) switch
        {
            "pairs" => Layout.Pairs,
            "blocks" => Layout.Blocks,
            _ => null,
        };
        var control = section.Text("control");
        var treatment = settings.Treatments.FirstOrDefault(candidate => Identifier.Same(candidate.Name, control));
        if (control is not null && treatment is null)
        {
            problems.Add(TomlProblems.UnknownControl(section.At("control"), control, [.. settings.Treatments.Select(candidate => Wording.Quote(candidate.Name))]));
        }

        var alpha = section.Number("alpha", double.Epsilon, Math.BitDecrement(0.5), "a number above 0 and below 0.5");
        var margins = MarginReader.Read(section, problems);
        section.Finish();
        return settings with
        {
            Layout = layout,
            Control = treatment,
            NamesControl = section.Has("control"),
            Level = alpha is { } given ? ConfidenceLevel.FromAlpha(given) : default,
            Margins = margins,
            DesignPlace = section.At("layout"),
        };
    }

    private static TrialSettings ReadWeather(TrialSettings settings, TomlSection root, string folder, ProblemList problems)
    {
        settings = settings with { Heat = settings.Crop?.Heat };
        if (root.Section("weather", "[weather]") is not { } section)
        {
            return settings;
        }

        if (section.Text("heat") is { } name && !Identifier.Same(name, settings.Crop?.Heat.Name))
        {
            var method = HeatMethods.Find(name) is { IsDegreeDays: true } known ? known : null;
            settings = settings with { Heat = method };
            if (method is null)
            {
                problems.Add(TomlProblems.NotChoice(section.At("heat"), "heat", name, [.. HeatMethods.All.Where(each => each.IsDegreeDays).Select(each => $"\"{each.Name}\""), HeatMethods.NameForm]));
            }
        }

        settings = settings with
        {
            WeatherFile = section.Text("file") is { } file ? FolderPath.Check(folder, file, section.At("file"), problems) : null,
            CountPlantingDay = section.Flag("count_planting_day") ?? true,
            SoilStation = section.Text("soil_station"),
            WeatherChoices = new WeatherChoices(
                section.Text("station"),
                section.Choice("unit", UnitKinds.Temperature.Units),
                (int)(section.Number("fill", 0, TemperatureSeries.LongestFill, "a gap of 0 to 3 days") ?? 0),
                section.Choice("soil_depth", ["5 cm", "10 cm", "20 cm"]) switch { "10 cm" => '2', "20 cm" => '3', _ => '1' }),
        };
        section.Finish();
        return settings;
    }

    /// <summary>A length above zero.</summary>
    internal static Length? Length(TomlSection section, string key, ProblemList problems) =>
        Positive(section.Quantity(key, UnitKinds.Length), key, problems) is { } length ? UnitKinds.ToLength(length.Value, length.Unit) : null;

    /// <summary>A percentage above one limit and up to another.</summary>
    internal static Ratio? Share(TomlSection section, string key, double above, double most, ProblemList problems)
    {
        if (section.Quantity(key, UnitKinds.Share) is not { } share)
        {
            return null;
        }

        if (share.Value > above && share.Value <= most)
        {
            return Ratio.FromPercent(share.Value);
        }

        problems.Add(TomlProblems.OutOfRange(share.At, key, Wording.Quote(share.Written), $"a share above {Wording.Number(above)} and up to {Wording.Number(most)} %"));
        return null;
    }

    /// <summary>The quantity when it is above zero; else null with an error added.</summary>
    internal static QuantityText? Positive(QuantityText? quantity, string key, ProblemList problems)
    {
        if (quantity is null or { Value: > 0 })
        {
            return quantity;
        }

        problems.Add(TomlProblems.OutOfRange(quantity.At, key, Wording.Quote(quantity.Written), "a quantity above zero"));
        return null;
    }
}
