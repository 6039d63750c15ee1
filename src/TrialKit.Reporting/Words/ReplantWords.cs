using TrialKit.Reporting.Document;
using TrialKit.Stand;

namespace TrialKit.Reporting.Words;

/// <summary>The comparison of keeping and replanting as a sentence; a table of another place and time decides nothing.</summary>
public static class ReplantWords
{
    /// <summary>The sentence.</summary>
    /// <param name="comparison">What was compared.</param>
    public static string Of(KeepOrReplant comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        if (comparison.Gain is not { } gain)
        {
            return "the stand or a date lies outside the table, so it says nothing.";
        }

        return Math.Round(gain, MidpointRounding.AwayFromZero) switch
        {
            > 0 => $"by the table replanting gains {NumberText.Number(gain, 0)} points, before its cost.",
            0 => "by the table replanting gains nothing, before its cost.",
            _ => $"by the table the stand kept is {NumberText.Number(-gain, 0)} points ahead of replanting, and replanting costs besides.",
        };
    }
}
