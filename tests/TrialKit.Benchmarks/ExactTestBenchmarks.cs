using BenchmarkDotNet.Attributes;
using TrialKit.Numerics;
using TrialKit.Numerics.Linear;
using TrialKit.Numerics.Pairs;

namespace TrialKit.Benchmarks;

/// <summary>The exact and sampled randomisation tests.</summary>
[MemoryDiagnoser]
public class ExactTestBenchmarks
{
    private readonly double[] differences = new double[150];
    private readonly double[] responses = new double[48];
    private readonly int[] blocks = new int[48];
    private readonly int[] treatments = new int[48];

    [GlobalSetup]
    public void Draw()
    {
        var stream = new RandomStream(2);
        for (var i = 0; i < differences.Length; i++)
        {
            differences[i] = stream.NextDouble() - 0.45;
        }

        for (var i = 0; i < responses.Length; i++)
        {
            (blocks[i], treatments[i], responses[i]) = (i / 4, i % 4, stream.NextDouble());
        }
    }

    [Benchmark]
    public double SignFlipsOf25Pairs() => SignFlips.Exact(differences.AsSpan(0, 25)).P;

    [Benchmark]
    public double SignFlipsOf40Pairs() => SignFlips.Exact(differences.AsSpan(0, 40)).P;

    [Benchmark]
    public double SampledSignFlipsOf150Pairs() => SignFlips.Test(differences).P;

    [Benchmark]
    public double AMillionArrangementsOf4By12Blocks() => BlockRandomization.Of(responses, blocks, treatments, 1_000_000, 1).P;
}
