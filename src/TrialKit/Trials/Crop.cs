using UnitsNet;

namespace TrialKit.Trials;

/// <summary>What the analysis needs to know of a crop.</summary>
/// <param name="Name">Its name, such as <c>corn</c>.</param>
/// <param name="Bushel">Standard weight of a bushel; null where the trade has none.</param>
/// <param name="StandardMoisture">Moisture that yields are brought to, wet basis; null where none is agreed.</param>
/// <param name="Heat">The heat-unit method that is its own.</param>
/// <param name="Source">Where these figures come from.</param>
public sealed record Crop(string Name, Mass? Bushel, Ratio? StandardMoisture, HeatMethod Heat, string Source);
