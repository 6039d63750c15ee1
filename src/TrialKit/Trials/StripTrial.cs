using System.Collections.Immutable;
using TrialKit.Quantities;

namespace TrialKit.Trials;

/// <summary>A strip trial that obeys the <see cref="DesignRules"/>: immutable, and valid once it exists.</summary>
public sealed class StripTrial
{
    private readonly TrialDraft draft;

    private StripTrial(TrialDraft draft)
    {
        this.draft = draft;
        Blocks = [.. draft.Strips.Select(strip => strip.Block.Trim()).Distinct(Identifier.Comparer)];
    }

    /// <summary>The trial's title.</summary>
    public string Title => draft.Title;

    /// <summary>The question it asks; null when not written down.</summary>
    public string? Question => draft.Question;

    /// <summary>The crop.</summary>
    public Crop Crop => draft.Crop;

    /// <summary>The units that outputs print.</summary>
    public UnitSystem Units => draft.Units;

    /// <summary>Where it lies; null when not written down.</summary>
    public Site? Site => draft.Site;

    /// <summary>How and when it was planted.</summary>
    public Planting Planting => draft.Planting;

    /// <summary>The plan of comparison.</summary>
    public Design Design => draft.Design;

    /// <summary>How heat is counted.</summary>
    public HeatSettings Heat => draft.Heat;

    /// <summary>Net price of grain; null when not given.</summary>
    public GrainPrice? GrainPrice => draft.GrainPrice;

    /// <summary>What else is said of money.</summary>
    public MoneySettings Money => draft.Money;

    /// <summary>The treatments in the order they were written down.</summary>
    public ImmutableArray<Treatment> Treatments => draft.Treatments;

    /// <summary>The strips in the order they were written down.</summary>
    public ImmutableArray<Strip> Strips => draft.Strips;

    /// <summary>The names of the blocks in the order they first appear.</summary>
    public ImmutableArray<string> Blocks { get; }

    /// <summary>Counts of standing plants; may be empty.</summary>
    public ImmutableArray<StandCount> StandCounts => draft.StandCounts;

    /// <summary>Flagged spots with their visits; may be empty.</summary>
    public ImmutableArray<EmergenceSpot> Emergence => draft.Emergence;

    /// <summary>Plants looked at one by one; may be empty.</summary>
    public ImmutableArray<Plant> Plants => draft.Plants;

    /// <summary>Strips weighed; may be empty.</summary>
    public ImmutableArray<StripHarvest> Harvests => draft.Harvests;

    /// <summary>Other values of strips; may be empty.</summary>
    public ImmutableArray<StripMeasurement> Measurements => draft.Measurements;

    /// <summary>The room the trial has; null when not written down.</summary>
    public FieldSpace? Field => draft.Field;

    /// <summary>Places drawn for counting; may be empty.</summary>
    public ImmutableArray<PlannedSpot> PlannedSpots => draft.PlannedSpots;

    /// <summary>The seed that strips and spots were drawn with; null when they were not drawn here.</summary>
    public long? PlanSeed => draft.PlanSeed;

    /// <summary>The mark that tells this plan from any other; null when the strips were not drawn here.</summary>
    public string? PlanId => draft.PlanId;

    /// <summary>Whether there is something to analyse: a count, a weight, a value, or a spot that was visited twice.</summary>
    public bool HasResults => !StandCounts.IsEmpty || Emergence.Any(spot => spot.IsTimed) || !Plants.IsEmpty || !Harvests.IsEmpty || !Measurements.IsEmpty;

    /// <summary>Whether nothing has been measured yet: a plan, with or without strips.</summary>
    public bool IsPlan => StandCounts.IsEmpty && Emergence.IsEmpty && Plants.IsEmpty && Harvests.IsEmpty && Measurements.IsEmpty;

    /// <summary>Air temperatures; null when there are none.</summary>
    public TemperatureSeries? Weather => draft.Weather;

    /// <summary>Temperatures at seed depth; null when there are none.</summary>
    public TemperatureSeries? SoilTemperature => draft.SoilTemperature;

    /// <summary>How the emergence date is foretold.</summary>
    public ForecastSettings Forecast => draft.Forecast;

    /// <summary>A trial from a draft that breaks no rule.</summary>
    /// <param name="draft">What the trial holds.</param>
    /// <exception cref="ArgumentException">The draft breaks a rule; the message lists each.</exception>
    public static StripTrial Create(TrialDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var errors = DesignRules.Check(draft).Where(violation => violation.IsError).Select(violation => violation.ToString()).ToArray();
        return errors.Length == 0
            ? new(draft)
            : throw new ArgumentException("The trial breaks its rules:" + Environment.NewLine + string.Join(Environment.NewLine, errors), nameof(draft));
    }

    /// <summary>A trial from a draft whose rules were checked by the caller.</summary>
    internal static StripTrial FromChecked(TrialDraft draft) => new(draft);
}
