using System.Collections.Immutable;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Weather;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Ingest.Settings;

/// <summary>What <c>trial.toml</c> says. A part that is absent or faulty is null; whether that stops the trial is said by the problems.</summary>
internal sealed record TrialSettings
{
    public string? Title { get; init; }

    public string? Question { get; init; }

    public Crop? Crop { get; init; }

    public UnitSystem Units { get; init; }

    public DateOrder Dates { get; init; }

    /// <summary>Units of columns by <c>column</c> or <c>table.column</c>.</summary>
    public IReadOnlyDictionary<string, string> ColumnUnits { get; init; } = ImmutableDictionary<string, string>.Empty;

    public Site? Site { get; init; }

    public DateOnly? PlantingDate { get; init; }

    public Length? RowSpacing { get; init; }

    public SeedingRate? Seeds { get; init; }

    public Length? Depth { get; init; }

    public Ratio? Germination { get; init; }

    public Speed? Speed { get; init; }

    public Layout? Layout { get; init; }

    /// <summary>The control; null when none is named or the name is not known.</summary>
    public Treatment? Control { get; init; }

    /// <summary>Whether a control is named, known or not.</summary>
    public bool NamesControl { get; init; }

    public ConfidenceLevel Level { get; init; }

    /// <summary>Margins of equivalence, each sound.</summary>
    public ImmutableArray<EquivalenceMargin> Margins { get; init; } = [];

    /// <summary>The shape of curve that is set beforehand; null when none is.</summary>
    public CurveShape? Curve { get; init; }

    public HeatMethod? Heat { get; init; }

    public bool CountPlantingDay { get; init; } = true;

    /// <summary>The weather file that is named and exists; null for the table's own.</summary>
    public string? WeatherFile { get; init; }

    /// <summary>What <c>[weather]</c> says of the weather file.</summary>
    public WeatherChoices WeatherChoices { get; init; } = new();

    /// <summary>The station whose soil temperatures are read; null when none is chosen.</summary>
    public string? SoilStation { get; init; }

    /// <summary>What <c>[forecast]</c> says.</summary>
    public ForecastDraft Forecast { get; init; } = new();

    public GrainPrice? GrainPrice { get; init; }

    public MoneySettings Money { get; init; } = new();

    public FieldSpace? Field { get; init; }

    /// <summary>The seed that <c>plan.toml</c> keeps; null when there is no such file or no seed in it.</summary>
    public long? PlanSeed { get; init; }

    /// <summary>The mark of the plan that <c>plan.toml</c> keeps; null when there is none.</summary>
    public string? PlanId { get; init; }

    public ImmutableArray<Treatment> Treatments { get; init; } = [];

    /// <summary>Where working time of a treatment stands first; null when none is given.</summary>
    public ProblemLocation? TimePlace { get; init; }

    /// <summary>Whether every treatment could be read; when not, a strip of a treatment that is not among them may be right.</summary>
    public bool KnowsTreatments { get; init; }

    /// <summary>Where the names of the treatments stand, in the same order.</summary>
    public ImmutableArray<ProblemLocation> TreatmentPlaces { get; init; } = [];

    /// <summary>Where the layout stands.</summary>
    public ProblemLocation DesignPlace { get; init; } = ProblemLocation.StartOf(SettingsReader.FileName);
}
