using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit;

/// <summary>What tells a trial from others, without its records: where and when it was, and how it was laid out and judged.</summary>
public sealed record TrialIdentity
{
    /// <summary>Its title.</summary>
    public required string Title { get; init; }

    /// <summary>The field's name; null when not given.</summary>
    public string? Site { get; init; }

    /// <summary>Degrees north; null when not given.</summary>
    public double? Latitude { get; init; }

    /// <summary>Degrees east; null when not given.</summary>
    public double? Longitude { get; init; }

    /// <summary>The day of planting, whose year is the trial's.</summary>
    public required DateOnly Planted { get; init; }

    /// <summary>The crop's name.</summary>
    public required string Crop { get; init; }

    /// <summary>The units its measures are in.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Pairs or blocks.</summary>
    public required Layout Layout { get; init; }

    /// <summary>How many pairs or blocks.</summary>
    public required int Blocks { get; init; }

    /// <summary>How many treatments.</summary>
    public required int Treatments { get; init; }

    /// <summary>Strips left out of the analysis.</summary>
    public required int LeftOut { get; init; }

    /// <summary>The control's name; null in blocks without one.</summary>
    public string? Control { get; init; }

    /// <summary>The level of its intervals and verdicts.</summary>
    public required ConfidenceLevel Level { get; init; }

    /// <summary>How it counts heat.</summary>
    public required string HeatMethod { get; init; }

    /// <summary>The identity of a trial.</summary>
    public static TrialIdentity Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return new()
        {
            Title = trial.Title,
            Site = trial.Site?.Name,
            Latitude = trial.Site?.Latitude,
            Longitude = trial.Site?.Longitude,
            Planted = trial.Planting.Date,
            Crop = trial.Crop.Name,
            Units = trial.Units,
            Layout = trial.Design.Layout,
            Blocks = trial.Blocks.Length,
            Treatments = trial.Treatments.Length,
            LeftOut = trial.Strips.Count(strip => !strip.IsAnalysed),
            Control = trial.Design.Control?.Name,
            Level = trial.Design.Level,
            HeatMethod = trial.Heat.Method.Name,
        };
    }
}
