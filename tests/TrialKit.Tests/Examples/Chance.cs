using TrialKit.Numerics;

namespace TrialKit.Tests.Examples;

/// <summary>The draws that the example trials are made of; the seed alone decides them.</summary>
internal sealed class Chance(ulong seed)
{
    private readonly RandomStream stream = new(seed);

    /// <summary>Whether something of this probability happens.</summary>
    public bool Happens(double probability) => stream.NextDouble() < probability;

    /// <summary>A normal deviate by the polar form of Box and Muller (1958), one of each couple.</summary>
    public double Normal(double mean, double standardDeviation) =>
        mean + (standardDeviation * Math.Sqrt(-2 * Math.Log(Open())) * Math.Cos(Math.Tau * stream.NextDouble()));

    /// <summary>A log-logistic time: median <paramref name="median"/>, F(t) = 1/(1 + (t/median)^-steepness).</summary>
    public double LogLogistic(double median, double steepness)
    {
        var u = Open();
        return median * Math.Pow(u / (1 - u), 1 / steepness);
    }

    /// <summary>The items in an order that is one of all orders with equal chance.</summary>
    public T[] Shuffled<T>(IEnumerable<T> items)
    {
        var order = items.ToArray();
        stream.Shuffle<T>(order);
        return order;
    }

    /// <summary>A number above 0 and below 1.</summary>
    private double Open()
    {
        double u;
        do
        {
            u = stream.NextDouble();
        }
        while (u <= 0);

        return u;
    }
}
