using TrialKit.Quantities;
using UnitsNet;

namespace TrialKit.Starter.Flow;

/// <summary>Flow and pressure of an orifice: flow goes as the square root of pressure.</summary>
/// <remarks>It holds for one orifice and one thin liquid. It does not hold across a check valve, which takes a fixed pressure to open, nor for viscous products, whose flow is not turbulent.</remarks>
public static class OrificeLaw
{
    /// <summary>The flow at another pressure.</summary>
    /// <param name="flow">The flow now, above zero.</param>
    /// <param name="pressure">The pressure now, above zero.</param>
    /// <param name="other">The other pressure, above zero.</param>
    public static VolumeFlow FlowAt(VolumeFlow flow, Pressure pressure, Pressure other) =>
        VolumeFlow.FromLitersPerMinute(Flow(flow, nameof(flow)) * Math.Sqrt(Pascals(other, nameof(other)) / Pascals(pressure, nameof(pressure))));

    /// <summary>The pressure that another flow needs.</summary>
    /// <param name="pressure">The pressure now, above zero.</param>
    /// <param name="flow">The flow now, above zero.</param>
    /// <param name="other">The other flow, above zero.</param>
    public static Pressure PressureFor(Pressure pressure, VolumeFlow flow, VolumeFlow other)
    {
        var ratio = Flow(other, nameof(other)) / Flow(flow, nameof(flow));
        return Pressure.FromPascals(Pascals(pressure, nameof(pressure)) * ratio * ratio);
    }

    private static double Flow(VolumeFlow flow, string name) => Guard.Positive(flow.LitersPerMinute, "flow, L/min", name);

    private static double Pascals(Pressure pressure, string name) => Guard.Positive(pressure.Pascals, "pressure, Pa", name);
}
