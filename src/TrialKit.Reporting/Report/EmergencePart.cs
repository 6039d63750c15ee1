using TrialKit.Emergence;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Words;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Reporting.Report;

/// <summary>The share of seeds up by day, every strip behind its treatment.</summary>
internal static class EmergencePart
{
    private const double Height = 236;
    private const int CurvePoints = 121;
    private const int HeatTicks = 6;
    private static readonly int[] RoundFactors = [1, 2, 5, 10];

    public static IEnumerable<Block> Of(TrialAnalysis analysis, TreatmentTones tones)
    {
        if (Figure(analysis, tones) is { } figure)
        {
            yield return new Heading(2, "How the stand came up");
            yield return new FigureBlock(figure, ShareWords(analysis).Caption, Height, Note: Note(analysis)) { Name = "emergence" };
        }
    }

    /// <summary>The curves; null without visits.</summary>
    public static EmergenceCurvesFigure? Figure(TrialAnalysis analysis, TreatmentTones tones)
    {
        var strips = analysis.Strips.Emergence.Where(strip => strip.Strip.IsAnalysed).ToArray();
        var curves = TreatmentTones.Ordered(analysis.Trial)
            .Select(treatment => Curve(analysis, treatment, tones[treatment], [.. strips.Where(strip => Identifier.Same(strip.Strip.Treatment.Name, treatment.Name))]))
            .Where(curve => curve.Strips.Any(strip => strip.Count > 0))
            .ToArray();
        return curves.Length == 0
            ? null
            : new(analysis.Trial.Planting.Date, curves, HeatTitle(analysis), Ticks(analysis, strips), AltText(analysis), Unit(analysis), ShareWords(analysis).Axis);
    }

    private static EmergenceCurve Curve(TrialAnalysis analysis, Treatment treatment, int tone, StripEmergence[] strips)
    {
        var last = strips.Length == 0 ? 0 : strips.Max(strip => strip.LastVisit);
        var fitted = strips.Where(strip => strip.Fit.ShareAt(last) is not null).ToArray();
        var curve = fitted.Length == 0
            ? []
            : Enumerable.Range(0, CurvePoints)
                .Select(step => last * step / (CurvePoints - 1))
                .Select(day => new CurvePoint(day, fitted.Average(strip => strip.Fit.ShareAt(day)!.Value)))
                .ToArray();
        var plain = analysis.Emergence?.Treatments.FirstOrDefault(entry => Identifier.Same(entry.Treatment.Name, treatment.Name));
        UndefinedStretch[] undefined = [.. (plain?.Undefined ?? []).Select(stretch => new UndefinedStretch(stretch.FromDays, stretch.ToDays, stretch.LowShare, stretch.HighShare))];
        return new(treatment.Label, tone, curve, [.. strips.Select(strip => (IReadOnlyList<CurvePoint>)[.. strip.Curve.Select(point => new CurvePoint(point.Days, point.Share))])], undefined);
    }

    private static string HeatTitle(TrialAnalysis analysis) =>
        analysis.Heat is { } heat ? $"heat, {Unit(analysis)} ({heat.Clock.HeatMethod.Name})" : "";

    /// <summary>Round sums of heat within the days drawn.</summary>
    private static HeatTick[] Ticks(TrialAnalysis analysis, StripEmergence[] strips)
    {
        if (analysis.Heat is not { } heat || heat.Clock.HeatAt(Math.Min(heat.Clock.Ends, strips.Max(strip => strip.LastVisit))) is not { } total)
        {
            return [];
        }

        var units = analysis.Trial.Units;
        var step = RoundStep(total.In(units) / HeatTicks);
        return [.. Enumerable.Range(0, HeatTicks * 3)
            .Select(index => index * step)
            .TakeWhile(sum => sum <= total.In(units))
            .Select(sum => (Sum: sum, Day: heat.Clock.DaysAt(units == UnitSystem.Us ? Quantities.HeatSum.FromFahrenheitDays(sum) : Quantities.HeatSum.FromCelsiusDays(sum))))
            .Where(tick => tick.Day is not null)
            .Select(tick => new HeatTick(tick.Day!.Value, tick.Sum))];
    }

    private static double RoundStep(double rough)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(rough, 1))));
        return power * RoundFactors.First(factor => factor * power >= rough || factor == 10);
    }

    private static string Unit(TrialAnalysis analysis) => analysis.Trial.Units == UnitSystem.Us ? "F-days" : "C-days";

    private static string Note(TrialAnalysis analysis) =>
        (analysis.Trial.Treatments.Length > EmergenceCurvesFigure.MostJoined ? "Dots are strips at their visits" : "Thin lines join a strip's visits up to two days apart")
        + "; the strong line is the mean of the curves fitted to the strips of a treatment. Between visits the share up is not known: a light box spans each such stretch for all strips of a treatment together."
        + (analysis.Heat is { } heat ? $" Heat is counted by {heat.Clock.HeatMethod.Name}, planting day {(heat.Clock.CountsPlantingDay ? "" : "not ")}counted, from {heat.Source}." : "");

    /// <summary>What the share is of: seeds where they are known at every strip, plants where at none.</summary>
    internal static (string Caption, string Axis, string Panel) ShareWords(TrialAnalysis analysis)
    {
        var known = analysis.Strips.Emergence.Where(strip => strip.Strip.IsAnalysed).Select(strip => strip.SeedsSown is not null).Distinct().ToArray();
        return known switch
        {
            [true] => ("Share of seeds up by day", "Seeds up, %", "Seeds up by day"),
            [false] => ("Share of the plants seen that were up, by day", "Plants up, %", "Plants up by day"),
            _ => ("Share up by day, of seeds or, where they are unknown, of the plants seen", "Up, %", "Up by day"),
        };
    }

    private static string AltText(TrialAnalysis analysis)
    {
        var t50 = analysis.Measures.FirstOrDefault(measure => measure.Measure.Id == "t50");
        return t50 is null
            ? $"{ShareWords(analysis).Caption} for each treatment."
            : $"{ShareWords(analysis).Caption} for each treatment. " + string.Join(" ", t50.Contrasts.Select(contrast =>
                $"{contrast.Treatment.Label} against {contrast.Baseline.Label}: {VerdictSentence.Of(t50.Measure, contrast, TrialWords.Replicates(analysis.Trial))}"));
    }
}
