namespace TrialKit.Tests.Examples;

/// <summary>An example trial: its truth, and how it was laid out, visited and weighed.</summary>
internal sealed record ExamplePlan
{
    /// <summary>Its folder under <c>example-trials</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The seed that decides every draw.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Units of its files.</summary>
    public required ExampleUnits Units { get; init; }

    /// <summary>The day of planting.</summary>
    public required DateOnly Planted { get; init; }

    /// <summary>Blocks that were planted a day later.</summary>
    public IReadOnlyList<int> PlantedNextDay { get; init; } = [];

    /// <summary>Number of blocks.</summary>
    public required int Blocks { get; init; }

    /// <summary>The treatments, the control first.</summary>
    public required IReadOnlyList<TreatmentTruth> Treatments { get; init; }

    /// <summary>What field and planter add.</summary>
    public required FieldTruth Field { get; init; }

    /// <summary>What went wrong.</summary>
    public IReadOnlyList<BlockTrouble> Troubles { get; init; } = [];

    /// <summary>Strip name from block, place within the block and place across the field, each from 1.</summary>
    public required Func<int, int, int, string> StripName { get; init; }

    /// <summary>Length of the first strip, in long units.</summary>
    public required double StripLength { get; init; }

    /// <summary>By how much each strip across the field is longer than the one before.</summary>
    public double LengthStep { get; init; }

    /// <summary>Width of a strip.</summary>
    public required double StripWidth { get; init; }

    /// <summary>Rows of a strip.</summary>
    public required int Rows { get; init; }

    /// <summary>Width that the combine took.</summary>
    public required double HarvestWidth { get; init; }

    /// <summary>Moisture that yields are brought to, %.</summary>
    public required double StandardMoisture { get; init; }

    /// <summary>Length of row of a spot.</summary>
    public required double SpotLength { get; init; }

    /// <summary>Seeds sown along a spot.</summary>
    public required int SpotSeeds { get; init; }

    /// <summary>Distance between seeds as set on the planter, in short units.</summary>
    public required double SeedSpacing { get; init; }

    /// <summary>Flagged spots of a strip, visited day by day.</summary>
    public required IReadOnlyList<string> FlaggedSpots { get; init; }

    /// <summary>Days after the first planting on which the spots were visited.</summary>
    public required IReadOnlyList<int> VisitDays { get; init; }

    /// <summary>Time of day of every visit.</summary>
    public required TimeOnly VisitHour { get; init; }

    /// <summary>Whether visits record the new plants instead of all plants standing.</summary>
    public bool NewPlants { get; init; }

    /// <summary>Spots of a strip whose final stand was counted: others than the flagged ones.</summary>
    public required int StandSpots { get; init; }

    /// <summary>Rows counted together at such a spot.</summary>
    public int StandRows { get; init; } = 1;

    /// <summary>Planter row units that stand spots were assigned to in turn; empty when not recorded.</summary>
    public IReadOnlyList<int> PlanterRows { get; init; } = [];

    /// <summary>Days after the first planting on which the stand was counted and the tape was read.</summary>
    public required int StandDay { get; init; }

    /// <summary>What plants.csv holds.</summary>
    public required PlantColumns PlantColumns { get; init; }

    /// <summary>Further measures.</summary>
    public IReadOnlyList<MeasureTruth> Measures { get; init; } = [];

    /// <summary>Whether soil temperatures were recorded.</summary>
    public bool SoilTemperature { get; init; }
}
