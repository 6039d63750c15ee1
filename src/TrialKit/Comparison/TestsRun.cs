using System.Globalization;
using TrialKit.Quantities;
using TrialKit.Results;

namespace TrialKit.Comparison;

/// <summary>Says how many comparisons were tested, and how many of them chance alone would call different.</summary>
internal static class TestsRun
{
    /// <summary>The finding; null where one comparison or none was tested.</summary>
    /// <param name="perMeasure">The comparisons tested on each measure.</param>
    /// <param name="level">The level of all of them.</param>
    /// <param name="joined">How those of one measure are joined, such as <c>together</c>.</param>
    public static Finding? Of(IEnumerable<int> perMeasure, ConfidenceLevel level, string joined)
    {
        int[] tested = [.. perMeasure.Where(count => count > 0)];
        var (tests, families) = (tested.Sum(), tested.Length);
        return tests <= 1 ? null : new("tests-run", FindingWeight.Note, Text(families switch
        {
            _ when tests == families => $"{tests} comparisons were tested at {level.Alpha:0.########}; with no true difference anywhere about {tests * level.Alpha:0.#} of them would be called different by chance.",
            1 => $"{tests} comparisons of one measure were tested, {joined} at {level.Alpha:0.########}: with no true difference anywhere about {100 * level.Alpha:0.######} of 100 such trials would show one by chance.",
            _ => (FormattableString)$"{tests} comparisons of {families} measures were tested, those of one measure {joined} at {level.Alpha:0.########}; with no true difference anywhere about {families * level.Alpha:0.#} of the measures would show one by chance.",
        }));

        static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
    }
}
