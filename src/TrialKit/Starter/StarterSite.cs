using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Starter;

/// <summary>What limits depend on beside the amounts.</summary>
/// <param name="Crop">The crop's name.</param>
/// <param name="RowSpacing">Distance between rows, above zero.</param>
/// <param name="Soil">The soil's class; null when not given, which is never filled in by a guess.</param>
/// <param name="CationExchange">Cation exchange capacity, meq per 100 g; null when not given.</param>
public sealed record StarterSite(string Crop, Length RowSpacing, SoilClass? Soil, double? CationExchange)
{
    /// <summary>The site of a trial.</summary>
    public static StarterSite Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return new(trial.Crop.Name, trial.Planting.RowSpacing, trial.Site?.SoilClass, trial.Site?.CationExchange);
    }
}
