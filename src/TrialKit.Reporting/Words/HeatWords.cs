using TrialKit.Analysis;

namespace TrialKit.Reporting.Words;

/// <summary>How the heat of a trial is spoken of.</summary>
public static class HeatWords
{
    /// <summary>By which method, from whose temperatures in which file, and whether the planting day counts.</summary>
    /// <param name="heat">The heat.</param>
    public static string Method(TrialHeat heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        return $"By {heat.Clock.HeatMethod.Name} from {(heat.IsSoil ? "temperatures at seed depth" : "air temperatures")} in {heat.Source}; planting day {(heat.Clock.CountsPlantingDay ? "" : "not ")}counted.";
    }
}
