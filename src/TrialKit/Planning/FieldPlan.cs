using System.Collections.Immutable;
using System.Globalization;
using TrialKit.Numerics;
using TrialKit.Quantities;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;

namespace TrialKit.Planning;

/// <summary>Draws strips and spots by lot.</summary>
/// <remarks>
/// Complete blocks with the treatments in random order (Fisher 1926, J. Ministry Agric. 33:503-513); pairs are blocks of two. Of two strips in
/// one pass, the half of the planter is drawn for each pass anew.
/// </remarks>
public static class FieldPlan
{
    private const int FewestRowsWithInner = 3;

    /// <summary>Draws a plan; the same trial and seed give the same plan, on any machine.</summary>
    /// <param name="trial">The trial: treatments, row spacing, room. Strips it may have are not looked at.</param>
    /// <param name="seed">The seed, 0 or more.</param>
    /// <exception cref="PlanRefusedException">The plan could not be analysed, or does not fit.</exception>
    public static TrialPlan Draw(StripTrial trial, long seed)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentOutOfRangeException.ThrowIfNegative(seed);
        ImmutableArray<Finding> reasons = [.. PlanRefusals.Of(trial)];
        if (!reasons.IsEmpty)
        {
            throw new PlanRefusedException(reasons);
        }

        var field = trial.Field!;
        var random = new RandomStream((ulong)seed);
        var planter = field.PlanterRows!.Value * trial.Planting.RowSpacing;
        var grid = new PassGrid(planter, field.BorderPasses, field.TramlineSpacing, field.TramlineWidth);
        var halves = field.Share == StripShare.PlanterHalf;
        int[] passes = [.. Enumerable.Range(0, field.Replicates!.Value * (halves ? 1 : trial.Treatments.Length)).Select(_ => Take(grid, field.PassesPerStrip))];
        var orders = OrderLottery.Draw(trial.Treatments.Length, field.Replicates.Value, halves ? [.. passes.Select(pass => !GoesAway(pass))] : [], random);
        var strips = Lay(trial, field, orders, passes, planter);
        var width = grid.Taken * planter;
        if (field.Width is { } room && width.Meters > room.Meters * (1 + 1e-9))
        {
            throw new PlanRefusedException([PlanRefusals.TooNarrow(field, width, trial.Units)]);
        }

        return new(
            seed,
            field,
            field.Length!.Value,
            trial.Planting.RowSpacing,
            strips,
            DrawSpots(trial, field, strips, random),
            [.. grid.Tracks()],
            width,
            [.. Findings(trial, field, strips)]);
    }

    /// <summary>The length of row at a spot: as set, or a thousandth of an acre or hectare.</summary>
    internal static Length SpotLength(StripTrial trial, FieldSpace field) => field.SpotLength ?? PlantDensity.RowOfThousandth(trial.Planting.RowSpacing, trial.Units);

    /// <summary>The room for spots along a strip and the length of a spot, in steps of the plan's unit.</summary>
    internal static (int Room, int Spot) Steps(StripTrial trial, FieldSpace field, Length length)
    {
        var step = PlanUnits.Of(trial.Units).Step;
        return ((int)Math.Floor(((length - (2 * field.EndMargin)) / step) + 1e-9), (int)Math.Ceiling((SpotLength(trial, field) / step) - 1e-9));
    }

    private static ImmutableArray<PlannedStrip> Lay(StripTrial trial, FieldSpace field, int[][] orders, int[] passes, Length planter)
    {
        var strips = new List<PlannedStrip>();
        for (var block = 0; block < orders.Length; block++)
        {
            strips.AddRange(field.Share == StripShare.PlanterHalf
                ? LayHalves(trial, orders[block], block, passes[block], planter)
                : orders[block].Select((treatment, place) => Whole(trial, treatment, block, passes[(block * orders[block].Length) + place], field.PassesPerStrip, planter)));
        }

        var digits = strips.Count > 99 ? "S{0:000}" : "S{0:00}";
        return [.. strips.OrderBy(strip => strip.Left.Meters).Select((strip, index) => strip with
        {
            Strip = strip.Strip with { Name = string.Format(CultureInfo.InvariantCulture, digits, index + 1), Order = index + 1 },
        })];
    }

    private static int Take(PassGrid grid, int passes) => grid.Take(passes) ?? throw new PlanRefusedException([PlanRefusals.Crossed()]);

    private static PlannedStrip Whole(StripTrial trial, int treatment, int block, int first, int passes, Length planter)
    {
        var strip = Strip(trial, treatment, block, passes * trial.Field!.PlanterRows!.Value, passes * planter, passes == 1
            ? string.Create(CultureInfo.InvariantCulture, $"pass {first + 1}")
            : string.Create(CultureInfo.InvariantCulture, $"passes {first + 1} to {first + passes}"));
        return new(strip, first * planter, passes * planter, first + 1, first + passes, Half: null);
    }

    // The planter turns at each end: coming back, its left half lies to the right of the field.
    private static IEnumerable<PlannedStrip> LayHalves(StripTrial trial, int[] order, int block, int pass, Length planter)
    {
        for (var side = 0; side < 2; side++)
        {
            var half = side == 0 ? PlanterSide.Left : PlanterSide.Right;
            var liesLeft = (half == PlanterSide.Left) == GoesAway(pass);
            var note = string.Create(CultureInfo.InvariantCulture, $"pass {pass + 1}, {(half == PlanterSide.Left ? "left" : "right")} half of the planter");
            var strip = Strip(trial, order[side], block, trial.Field!.PlanterRows!.Value / 2, planter / 2, note);
            yield return new(strip, (pass * planter) + (liesLeft ? Length.Zero : planter / 2), planter / 2, pass + 1, pass + 1, half);
        }
    }

    private static bool GoesAway(int pass) => pass % 2 == 0;

    private static Strip Strip(StripTrial trial, int treatment, int block, int rows, Length width, string note) => new(
        string.Empty,
        (block + 1).ToString(CultureInfo.InvariantCulture),
        trial.Treatments[treatment],
        Order: null,
        trial.Field!.Length,
        width,
        rows,
        trial.Planting.Date,
        LeftOut: null,
        note);

    private static ImmutableArray<SpotPlace> DrawSpots(StripTrial trial, FieldSpace field, ImmutableArray<PlannedStrip> strips, RandomStream random)
    {
        var step = PlanUnits.Of(trial.Units).Step;
        var (room, length) = Steps(trial, field, field.Length!.Value);
        var rows = field.Share == StripShare.PlanterHalf ? field.PlanterRows!.Value / 2 : field.PlanterRows!.Value;
        var drawn = new Dictionary<string, int[]>(StringComparer.Ordinal);
        var spots = ImmutableArray.CreateBuilder<SpotPlace>();
        foreach (var planned in strips)
        {
            // The strips of a block are counted in the same rows of the planter, so that a row unit of its own kind is in all of them.
            if (!drawn.TryGetValue(planned.Strip.Block, out var inRows))
            {
                inRows = [.. Enumerable.Range(0, field.Spots).Select(_ => InnerRow(rows, random))];
                drawn.Add(planned.Strip.Block, inRows);
            }

            var places = SpotLottery.Draw(room, length, field.Spots, random);
            for (var i = 0; i < places.Length; i++)
            {
                var row = inRows[i] + (planned.Half == PlanterSide.Right ? rows : 0);
                var spot = new PlannedSpot(planned.Strip, ((char)('A' + i)).ToString(), field.EndMargin + (places[i] * step), row, SpotLength(trial, field)) { Pass = CountedPass(planned) };
                spots.Add(new(spot, Across(spot, field, trial.Planting.RowSpacing)));
            }
        }

        return spots.ToImmutable();
    }

    // Rows at the edge have the neighbour's treatment beside them.
    private static int InnerRow(int rows, RandomStream random) => rows < FewestRowsWithInner ? 1 + random.NextInt(rows) : 2 + random.NextInt(rows - 2);

    // Of several passes the middle one is counted, the one further to the left where there are two.
    private static int CountedPass(PlannedStrip strip) => (strip.FirstPass + strip.LastPass) / 2;

    private static Length Across(PlannedSpot spot, FieldSpace field, Length spacing)
    {
        var pass = spot.Pass!.Value - 1;
        var left = pass * field.PlanterRows!.Value * spacing;
        var fromLeft = (spot.PlanterRow!.Value - 0.5) * spacing;
        return left + (GoesAway(pass) ? fromLeft : (field.PlanterRows.Value * spacing) - fromLeft);
    }

    private static IEnumerable<Finding> Findings(StripTrial trial, FieldSpace field, ImmutableArray<PlannedStrip> strips)
    {
        var smallest = ReplicateTable.SmallestExactP(trial.Treatments.Length, field.Replicates!.Value);
        if (smallest > trial.Design.Level.Alpha)
        {
            yield return new("few-replicates", FindingWeight.Caution, string.Create(CultureInfo.InvariantCulture, $"With {field.Replicates} {(trial.Design.Layout == Layout.Pairs ? "pairs" : "blocks")} the exact test cannot give a p below {smallest:0.###}, whatever happens; the level is {trial.Design.Level.Alpha:0.##}. More of them would mend that."));
        }

        if (field is { Share: StripShare.PlanterHalf, Replicates: 2 })
        {
            var side = strips.First(strip => trial.Design.Control is not { } control || !Identifier.Same(strip.Strip.Treatment.Name, control.Name));
            var isLeft = strips.First(strip => strip.Strip.Block == side.Strip.Block).Strip == side.Strip;
            yield return new("one-side", FindingWeight.Caution, $"With two passes {side.Strip.Treatment.Label} lies {(isLeft ? "left" : "right")} of its neighbour in both: the planter turns between them, so halves that change leave the side of the field as it was. A slope across the rows would look like the treatment; three passes or more mend that.");
        }

        var split = strips.GroupBy(strip => strip.Strip.Block, StringComparer.Ordinal).Where(block => block.Max(strip => strip.LastPass) - block.Min(strip => strip.FirstPass) + 1 > block.Select(strip => strip.FirstPass).Distinct().Count() * field.PassesPerStrip).Select(block => block.Key).ToArray();
        if (split.Length > 0)
        {
            yield return new("block-split", FindingWeight.Note, $"A sprayer track runs through {(split.Length == 1 ? "block" : "blocks")} {string.Join(", ", split)}: the pass it crosses lies between strips and is not used.");
        }
    }
}
