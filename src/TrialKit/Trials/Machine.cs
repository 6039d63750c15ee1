using UnitsNet;

namespace TrialKit.Trials;

/// <summary>A machine bought for a treatment.</summary>
/// <param name="Name">Its name as printed.</param>
/// <param name="Price">What it costs, above 0.</param>
/// <param name="Salvage">What it is worth at the end, from 0 to its price.</param>
/// <param name="Years">Years it is kept, 1 or more.</param>
/// <param name="Interest">Interest a year, 0 or more.</param>
/// <param name="AreaPerYear">Area it is used on in a year, above zero.</param>
/// <param name="Currency">Of price and salvage, as written.</param>
public sealed record Machine(string Name, double Price, double Salvage, int Years, Ratio Interest, Area AreaPerYear, string Currency);
