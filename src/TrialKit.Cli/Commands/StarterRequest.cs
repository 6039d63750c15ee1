using System.Collections.Immutable;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Commands;

/// <summary>What the command line asks of <c>trialkit starter</c>.</summary>
internal sealed record StarterRequest
{
    public string? Folder { get; init; }

    public string? Output { get; init; }

    public string? Sheet { get; init; }

    public bool Quiet { get; init; }

    public string? Name { get; init; }

    public ApplicationRate? Rate { get; init; }

    public Density? Density { get; init; }

    public NutrientAnalysis? Analysis { get; init; }

    public ImmutableArray<PlacedShare> Placements { get; init; } = [];

    public string? Crop { get; init; }

    public Length? RowSpacing { get; init; }

    public SoilClass? Soil { get; init; }

    public double? CationExchange { get; init; }

    public Speed? Speed { get; init; }

    public Pressure? Pressure { get; init; }

    /// <summary>What was given by placement; a null placement is the only one that a liquid goes to.</summary>
    public ImmutableArray<(Placement? Placement, ImmutableArray<double> Coefficients)> Outlets { get; init; } = [];

    public int? Rows { get; init; }

    public UnitSystem? Units { get; init; }
}
