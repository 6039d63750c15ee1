namespace TrialKit.Numerics.EventTimes;

/// <summary>A coefficient of a pooled fit with both of its standard errors.</summary>
/// <param name="Value">The estimate on the working scale.</param>
/// <param name="SeedStandardError">Standard error if seeds were independent: too small when strips differ.</param>
/// <param name="StripStandardError">Sandwich standard error with strips as clusters.</param>
internal readonly record struct PooledEffect(double Value, double? SeedStandardError, double? StripStandardError);
