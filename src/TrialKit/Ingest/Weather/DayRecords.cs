using System.Collections.Immutable;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Ingest.Weather;

/// <summary>Days of temperatures and the rows behind them.</summary>
/// <param name="Days">The days whose temperatures are known.</param>
/// <param name="Rows">Rows that became part of a day.</param>
/// <param name="LeftOut">Rows left out, whose days count as missing.</param>
internal sealed record DayRecords(ImmutableArray<DailyTemperature> Days, int Rows, int LeftOut)
{
    /// <summary>Rows of other stations, elements or seasons, and rows that say that nothing was recorded.</summary>
    public int PassedOver { get; init; }

    /// <summary>The mean of each hour of the days that were recorded hour by hour.</summary>
    public IReadOnlyDictionary<DateOnly, ImmutableArray<Temperature>> Hours { get; init; } = ImmutableDictionary<DateOnly, ImmutableArray<Temperature>>.Empty;
}
