using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;

namespace TrialKit.Benchmarks.Calibration;

/// <summary>Normal numbers from a seeded stream by inversion, so that a seed gives the same trials anywhere.</summary>
internal sealed class NormalDraws(ulong seed)
{
    private readonly RandomStream stream = new(seed);

    /// <summary>A standard normal number.</summary>
    public double Next()
    {
        double uniform;
        do
        {
            uniform = stream.NextDouble();
        }
        while (uniform == 0);

        return Normal.Quantile(uniform);
    }
}
