using System.Runtime.InteropServices;

namespace TrialKit.Heat;

/// <summary>How many days of each kind a sum of heat rests on.</summary>
/// <param name="Observed">Days that were measured.</param>
/// <param name="Filled">Days interpolated between those about them.</param>
/// <param name="Forecast">Days of a weather forecast.</param>
/// <param name="Normal">Days that are means of earlier years.</param>
/// <param name="AirForSoil">Of all these, days of the air's temperature although the record is of the soil's.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct DayCounts(int Observed, int Filled, int Forecast, int Normal, int AirForSoil)
{
    /// <summary>All days.</summary>
    public int All => Observed + Uncertain;

    /// <summary>Days that were not observed.</summary>
    public int Uncertain => Filled + Forecast + Normal;
}
