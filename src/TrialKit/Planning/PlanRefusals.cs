using System.Globalization;
using TrialKit.Results;
using TrialKit.Trials;
using UnitsNet;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Planning;

/// <summary>What keeps a plan from being drawn: what cannot be analysed, and what does not fit.</summary>
public static class PlanRefusals
{
    /// <summary>The reasons against a plan; none when it can be drawn.</summary>
    /// <param name="trial">The trial with its treatments and its room.</param>
    public static IEnumerable<Finding> Of(StripTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        return trial.Field is { } field
            ? Incomplete(field).Concat(NotToAnalyse(trial, field)).Concat(Halves(trial, field)).Concat(TooShort(trial, field))
            : [Refuse("no-field", "trial.toml has no section [field]: write one with the length of the strips, the rows of the planter and the pairs or blocks wanted, such as length = \"1180 ft\", planter_rows = 8 and replicates = 6.")];
    }

    internal static Finding TooNarrow(FieldSpace field, Length needed, UnitSystem units) => Refuse(
        "field-too-narrow",
        Text($"The strips, borders and sprayer tracks need {Measure(needed, units)} across the rows; the field has {Measure(field.Width!.Value, units)}. Take fewer blocks, fewer passes in a strip or a narrower border."));

    internal static Finding Crossed() => Refuse("tramlines-too-close", "Sprayer tracks cross every place where a strip could lie: narrow the strips or widen the distance between tracks.");

    private static IEnumerable<Finding> Incomplete(FieldSpace field)
    {
        if (field.Length is null)
        {
            yield return Refuse("field-incomplete", "[field] has no length: the length of the strips along the rows is needed, such as length = \"1180 ft\".");
        }

        if (field.PlanterRows is null)
        {
            yield return Refuse("field-incomplete", "[field] has no planter_rows: the rows of the planter are needed, such as planter_rows = 8.");
        }

        if (field.Replicates is null)
        {
            yield return Refuse("field-incomplete", "[field] has no replicates: the pairs or blocks wanted are needed, such as replicates = 6. 'trialkit replicates' helps to choose.");
        }

        var known = new[] { field.CornerLatitude, field.CornerLongitude, field.Bearing }.Count(part => part is not null);
        if (known is 1 or 2)
        {
            yield return Refuse("corner-incomplete", "A map for a phone or a monitor needs corner_latitude, corner_longitude and bearing; some of them are missing from [field].");
        }
    }

    private static IEnumerable<Finding> NotToAnalyse(StripTrial trial, FieldSpace field)
    {
        if (trial.Treatments.Length < 2)
        {
            yield return Refuse("one-treatment", "One treatment has nothing to be compared with: two or more were expected.");
        }

        if (field.Replicates is 1)
        {
            yield return Refuse("one-block", "One block cannot be analysed: each treatment would have one strip, and whatever else differs between the strips (soil, slope, drainage, the pass it was planted in) is confounded with the treatment. Two blocks are the least, five or six are usual.");
        }
    }

    private static IEnumerable<Finding> Halves(StripTrial trial, FieldSpace field)
    {
        if (field.SidesAreFixed)
        {
            yield return Refuse("side-fixed", "The treatment would stay with one half of the planter in every pass. It is then confounded with everything else by which the halves differ: row units, seed meters, down force, the wheel tracks they follow. No number of passes takes that apart. Set sides = \"drawn\" and change the halves as the plan says, or lay the strips out by whole passes.");
        }

        if (field.Share != StripShare.PlanterHalf)
        {
            yield break;
        }

        if (trial.Treatments.Length != 2)
        {
            yield return Refuse("half-needs-pairs", Text($"The halves of a planter hold two treatments; the trial has {trial.Treatments.Length}. Lay it out by whole passes."));
        }

        if (field.PlanterRows % 2 == 1)
        {
            yield return Refuse("half-needs-even-rows", Text($"A planter of {field.PlanterRows} rows has no halves. Lay the strips out by whole passes."));
        }

        if (field.PassesPerStrip > 1)
        {
            yield return Refuse("half-is-one-pass", Text($"A strip is half of one pass; passes = {field.PassesPerStrip} does not fit that."));
        }
    }

    private static IEnumerable<Finding> TooShort(StripTrial trial, FieldSpace field)
    {
        if (field.Length is not { } length)
        {
            yield break;
        }

        var (room, spot) = FieldPlan.Steps(trial, field, length);
        if (room < spot * field.Spots)
        {
            yield return Refuse("strip-too-short", Text($"{field.Spots} spots of {Measure(FieldPlan.SpotLength(trial, field), trial.Units)} do not fit into strips of {Measure(length, trial.Units)} with {Measure(field.EndMargin, trial.Units)} left at each end. Take fewer spots or a smaller end_margin."));
        }
    }

    private static Finding Refuse(string id, string message) => new(id, FindingWeight.Serious, message);

    private static string Measure(Length length, UnitSystem units) =>
        units == UnitSystem.Us ? Text($"{length.Feet:0.#} ft") : Text($"{length.Meters:0.#} m");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
