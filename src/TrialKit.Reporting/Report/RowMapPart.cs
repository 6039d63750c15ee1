using System.Globalization;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Trials;

namespace TrialKit.Reporting.Report;

/// <summary>The map of the rows: each plant at its place on the tape, toned by the day it came up, late ones marked.</summary>
internal static class RowMapPart
{
    private const int MostRows = 36;

    public static IEnumerable<FigureBlock> Of(TrialAnalysis analysis)
    {
        var dated = analysis.Strips.Evenness
            .SelectMany(strip => strip.Lags.Where(lag => lag.Plant is not null).Select(lag => (Key: (strip.Strip.Name, lag.Spot, lag.Plant!), Seen: new Dated(strip.Strip.Planted.AddDays((int)lag.Days), strip.VisitsTellLags && lag.IsLate))))
            .ToLookup(entry => entry.Key, entry => entry.Seen);
        if (dated.Count == 0)
        {
            return [];
        }

        var us = analysis.Trial.Units == UnitSystem.Us;
        var days = DayClasses.Of(dated.SelectMany(plant => plant).Select(plant => plant.Day));
        var rows =
            from plant in analysis.Trial.Plants
            where plant is { Position: not null, Fate: not PlantFate.Volunteer }
            group plant by (Strip: plant.Strip.Name, plant.Spot) into spot
            select new MappedRow(
                $"{spot.Key.Strip} {spot.Key.Spot}",
                [.. spot.Select(plant => Mapped(us ? plant.Position!.Value.Inches : plant.Position!.Value.Centimeters, dated[(plant.Strip.Name, plant.Spot, plant.Name)].FirstOrDefault()))]);
        var late = analysis.Strips.Evenness.Any(strip => strip.VisitsTellLags) ? "over 3 days behind" : null;
        var pages = rows.Chunk(MostRows).ToArray();
        return pages.Select((page, i) => new FigureBlock(
            new RowMapFigure(us ? "inches along the tape" : "centimetres along the tape", days.Names, page, AltText(page, late is not null), late),
            i == 0 ? "Map of the rows: each mark a plant, toned by the day it came up" : "Map of the rows, continued",
            Note: i == pages.Length - 1 ? Note(late is not null) : null)
        {
            Name = i == 0 ? "row-map" : string.Create(CultureInfo.InvariantCulture, $"row-map-{i + 1}"),
        });

        MappedPlant Mapped(double position, Dated? plant) => new(position, plant is null ? null : days.Step(plant.Day), plant is { IsLate: true });
    }

    private static string Note(bool marksLate) =>
        "Each line is a spot, named by strip and spot. A plant has the day of the visit that found it; a ring is one whose emergence was not dated."
        + (marksLate ? " A foot marks a plant found more than 3 days after the first of its spot." : " Visits were too far apart to tell late plants from the first of their spot.");

    private static string AltText(MappedRow[] page, bool marksLate) =>
        $"Plants along the tape at {page.Length} spots, toned by the day each came up"
        + (marksLate ? $"; {page.Sum(row => row.Plants.Count(plant => plant.IsLate))} of {page.Sum(row => row.Plants.Count)} came up more than 3 days behind the first of their spot." : ".");

    private sealed record Dated(DateOnly Day, bool IsLate);

    /// <summary>Days of emergence in classes of one length up to the day by which nearly all were up, and one for the stragglers.</summary>
    private sealed record DayClasses(DateOnly First, int Length, IReadOnlyList<string> Names)
    {
        private const double NearlyAll = 0.95;

        public static DayClasses Of(IEnumerable<DateOnly> days)
        {
            DateOnly[] all = [.. days.Order()];
            var first = all[0];
            var span = all[(int)Math.Ceiling(NearlyAll * all.Length) - 1].DayNumber - first.DayNumber + 1;
            var length = (span + RowMapFigure.MostSteps - 2) / (RowMapFigure.MostSteps - 1);
            DateOnly[] starts = [.. Enumerable.Range(0, (span + length - 1) / length).Select(step => first.AddDays(step * length))];
            var names = starts.Select((start, i) => Name(start, start.AddDays(length - 1), namesMonth: i == 0 || start.Month != starts[i - 1].Month));
            return new(first, length, all[^1] >= starts[^1].AddDays(length) ? [.. names, "later"] : [.. names]);
        }

        public int Step(DateOnly day) => Math.Min((day.DayNumber - First.DayNumber) / Length, Names.Count - 1);

        // The month stands where it begins: May 30, 31, Jun 1.
        private static string Name(DateOnly from, DateOnly to, bool namesMonth)
        {
            var start = namesMonth ? NumberText.ShortDate(from) : NumberText.Count(from.Day);
            return from == to ? start : $"{start} to {(from.Month == to.Month ? NumberText.Count(to.Day) : NumberText.ShortDate(to))}";
        }
    }
}
