using System.Globalization;
using TrialKit.Ingest;

namespace TrialKit.Cli.Output;

/// <summary>Prints the problems of a reading, each clickable, and what to do next.</summary>
internal static class ProblemPrinter
{
    /// <summary>Prints problems in file order.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="eachWarning">Whether each warning is printed; otherwise warnings of one code are printed once with their number.</param>
    public static void Print(TrialReading reading, TextWriter writer, bool eachWarning) => Print(reading.Problems, writer, eachWarning);

    /// <summary>Prints problems in their order.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="eachWarning">Whether each warning is printed.</param>
    public static void Print(IReadOnlyList<Problem> problems, TextWriter writer, bool eachWarning)
    {
        var counts = problems.CountBy(problem => problem.Code, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (var problem in problems)
        {
            if (problem.Severity == ProblemSeverity.Error || eachWarning || counts[problem.Code] == 1)
            {
                writer.WriteLine(problem);
            }
            else if (said.Add(problem.Code))
            {
                writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{problem} (and {counts[problem.Code] - 1} more like it; 'trialkit check' lists each)"));
            }
        }

        var errors = problems.Count(problem => problem.Severity == ProblemSeverity.Error);
        if (errors > 0)
        {
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{errors} {(errors == 1 ? "error" : "errors")}: mend {(errors == 1 ? "it" : "them")} and run the command again. Nothing was analysed."));
        }
    }
}
