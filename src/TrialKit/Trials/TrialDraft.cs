using System.Collections.Immutable;
using TrialKit.Quantities;

namespace TrialKit.Trials;

/// <summary>Everything a trial holds, before it has been held against the <see cref="DesignRules"/>.</summary>
public sealed record TrialDraft
{
    /// <summary>The trial's title.</summary>
    public required string Title { get; init; }

    /// <summary>The question it asks; null when not written down.</summary>
    public string? Question { get; init; }

    /// <summary>The crop.</summary>
    public required Crop Crop { get; init; }

    /// <summary>The units that outputs print.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Where it lies; null when not written down.</summary>
    public Site? Site { get; init; }

    /// <summary>How and when it was planted.</summary>
    public required Planting Planting { get; init; }

    /// <summary>The plan of comparison.</summary>
    public required Design Design { get; init; }

    /// <summary>How heat is counted.</summary>
    public required HeatSettings Heat { get; init; }

    /// <summary>Net price of grain; null when not given.</summary>
    public GrainPrice? GrainPrice { get; init; }

    /// <summary>What else is said of money.</summary>
    public MoneySettings Money { get; init; } = new();

    /// <summary>The treatments in the order they were written down.</summary>
    public required ImmutableArray<Treatment> Treatments { get; init; }

    /// <summary>The strips in the order they were written down.</summary>
    public required ImmutableArray<Strip> Strips { get; init; }

    /// <summary>Counts of standing plants; may be empty.</summary>
    public ImmutableArray<StandCount> StandCounts { get; init; } = [];

    /// <summary>Flagged spots with their visits; may be empty.</summary>
    public ImmutableArray<EmergenceSpot> Emergence { get; init; } = [];

    /// <summary>Plants looked at one by one; may be empty.</summary>
    public ImmutableArray<Plant> Plants { get; init; } = [];

    /// <summary>Strips weighed; may be empty.</summary>
    public ImmutableArray<StripHarvest> Harvests { get; init; } = [];

    /// <summary>Other values of strips; may be empty.</summary>
    public ImmutableArray<StripMeasurement> Measurements { get; init; } = [];

    /// <summary>The room the trial has; null when not written down.</summary>
    public FieldSpace? Field { get; init; }

    /// <summary>Places drawn for counting; may be empty.</summary>
    public ImmutableArray<PlannedSpot> PlannedSpots { get; init; } = [];

    /// <summary>The seed that strips and spots were drawn with; null when they were not drawn here.</summary>
    public long? PlanSeed { get; init; }

    /// <summary>The mark that tells this plan from any other; null when the strips were not drawn here.</summary>
    public string? PlanId { get; init; }

    /// <summary>Air temperatures; null when there are none.</summary>
    public TemperatureSeries? Weather { get; init; }

    /// <summary>Temperatures at seed depth; null when there are none.</summary>
    public TemperatureSeries? SoilTemperature { get; init; }

    /// <summary>How the emergence date is foretold.</summary>
    public ForecastSettings Forecast { get; init; } = new();
}
