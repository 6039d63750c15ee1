using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Benchmarks.EmergenceCalibration;

/// <summary>Pairs of strips whose truth is known: log-logistic times whose median differs from pair to pair and from strip to strip.</summary>
/// <param name="Pairs">Pairs of strips.</param>
/// <param name="VisitEvery">Days between visits, the first on day 4.</param>
internal sealed record SimulatedEmergence(int Pairs, int VisitEvery)
{
    public const int Spots = 4;
    public const int Seeds = 34;

    /// <summary>Median of the control, days.</summary>
    public const double Median = 9.4;

    /// <summary>Steepness; the spread is then 3.0 days.</summary>
    public const double Steepness = 14;

    /// <summary>Share that ever comes up.</summary>
    public const double Share = 0.92;

    /// <summary>Days by which the treatment is sooner.</summary>
    public const double Sooner = 0.4;

    private const double PairSpread = 0.3;
    private const double StripSpread = 0.25;
    private const int LastDay = 25;

    private static readonly DateOnly Planted = new(2026, 5, 1);
    private static readonly Treatment Control = new("none", "None", Cost: null, Products: []);
    private static readonly Treatment Treated = new("treated", "Treated", Cost: null, Products: []);

    /// <summary>T90 - T10 of a strip of median length.</summary>
    public static double Spread(double median) => median * (Math.Pow(9, 1 / Steepness) - Math.Pow(9, -1 / Steepness));

    /// <summary>A trial and the true median of each of its strips.</summary>
    public (StripTrial Trial, Dictionary<string, double> Medians) Draw(RandomStream random)
    {
        var medians = new Dictionary<string, double>(StringComparer.Ordinal);
        var strips = ImmutableArray.CreateBuilder<Strip>();
        var spots = ImmutableArray.CreateBuilder<EmergenceSpot>();
        for (var pair = 0; pair < Pairs; pair++)
        {
            var shift = PairSpread * Gauss(random);
            foreach (var treatment in new[] { Control, Treated })
            {
                var strip = new Strip(FormattableString.Invariant($"{treatment.Name}-{pair}"), FormattableString.Invariant($"{pair}"), treatment, strips.Count + 1, Length: null, Width: null, Rows: null, Planted, LeftOut: null, Note: null);
                var median = Median - (treatment == Treated ? Sooner : 0) + shift + (StripSpread * Gauss(random));
                medians.Add(strip.Name, median);
                strips.Add(strip);
                spots.AddRange(Enumerable.Range(0, Spots).Select(spot => Spot(strip, spot, median, random)));
            }
        }

        var trial = StripTrial.Create(new TrialDraft
        {
            Title = "Simulated",
            Crop = CropTable.Find("corn")!,
            Planting = new(Planted, Length.FromInches(30), SeedingRate.FromPerAcre(34_000), Depth: null, Germination: null),
            Design = new(Layout.Pairs, Control, default),
            Heat = new(HeatMethods.Corn, CountPlantingDay: true),
            Treatments = [Control, Treated],
            Strips = strips.ToImmutable(),
            Emergence = spots.ToImmutable(),
        });
        return (trial, medians);
    }

    private EmergenceSpot Spot(Strip strip, int spot, double median, RandomStream random)
    {
        var times = Enumerable.Range(0, Seeds).Select(_ =>
        {
            var u = random.NextDouble();
            return random.NextDouble() < Share ? median * Math.Pow(u / (1 - u), 1 / Steepness) : double.PositiveInfinity;
        }).ToArray();
        var visits = ImmutableArray.CreateBuilder<EmergenceVisit>();
        for (var day = 4; day <= LastDay; day += VisitEvery)
        {
            visits.Add(new(Planted.ToDateTime(TimeOnly.MinValue).AddDays(day), times.Count(time => time <= day)));
        }

        return new(strip, FormattableString.Invariant($"{spot}"), Row: null, Seeds, visits.ToImmutable());
    }

    private static double Gauss(RandomStream random) => Normal.Quantile((random.NextBits() >> 11) * (1.0 / (1UL << 53)) is var u && u > 0 ? u : 1e-17);
}
