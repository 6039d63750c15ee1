using System.Collections.Immutable;
using TrialKit.Numerics;
using TrialKit.Numerics.Distributions;
using TrialKit.Quantities;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Benchmarks.EmergenceCalibration;

/// <summary>Pairs of strips whose truth is known: log-logistic times whose median differs from pair to pair and from strip to strip.</summary>
/// <param name="Pairs">Pairs of strips.</param>
/// <param name="VisitEvery">Days between visits.</param>
internal sealed record SimulatedEmergence(int Pairs, double VisitEvery)
{
    public const int Spots = 4;
    public const int Seeds = 34;

    /// <summary>Median of the control, days.</summary>
    public const double Median = 9.4;

    /// <summary>Share that ever comes up.</summary>
    public const double Share = 0.92;

    private const double PairSpread = 0.3;
    private const int LastDay = 25;

    private static readonly DateOnly Planted = new(2026, 5, 1);
    private static readonly Treatment Control = new("none", "None", Cost: null, Products: []);
    private static readonly Treatment Treated = new("treated", "Treated", Cost: null, Products: []);

    /// <summary>Day of the first visit.</summary>
    public double FirstVisit { get; init; } = 4;

    /// <summary>Day up to which visits are daily.</summary>
    public double DailyUntil { get; init; }

    /// <summary>Steepness; at 14 the spread is 3.0 days.</summary>
    public double Steepness { get; init; } = 14;

    /// <summary>Days by which the treatment is sooner.</summary>
    public double Sooner { get; init; } = 0.4;

    /// <summary>Standard deviation between strips of a pair, days.</summary>
    public double StripSpread { get; init; } = 0.25;

    /// <summary>Whether an early strip has every plant sooner by the same days, so that its evenness is exactly that of a late one; else times are multiplied.</summary>
    public bool Shifts { get; init; }

    /// <summary>T90 - T10 of a strip of a median.</summary>
    public double Spread(double median) => (Shifts ? Median : median) * (Math.Pow(9, 1 / Steepness) - Math.Pow(9, -1 / Steepness));

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
            var part = Math.Pow(u / (1 - u), 1 / Steepness);
            var time = Shifts ? (Median * part) + median - Median : median * part;
            return random.NextDouble() < Share ? time : double.PositiveInfinity;
        }).ToArray();
        var visits = ImmutableArray.CreateBuilder<EmergenceVisit>();
        for (var day = FirstVisit; day <= LastDay; day += day < DailyUntil ? 1 : VisitEvery)
        {
            visits.Add(new(Planted.ToDateTime(TimeOnly.MinValue).AddDays(day), times.Count(time => time <= day)));
        }

        return new(strip, FormattableString.Invariant($"{spot}"), Row: null, Seeds, visits.ToImmutable());
    }

    private static double Gauss(RandomStream random) => Normal.Quantile((random.NextBits() >> 11) * (1.0 / (1UL << 53)) is var u && u > 0 ? u : 1e-17);
}
