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
        foreach (var line in Lines(problems, eachWarning))
        {
            writer.WriteLine(line);
        }

        var errors = problems.Count(problem => problem.Severity == ProblemSeverity.Error);
        if (errors > 0)
        {
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{errors} {(errors == 1 ? "error" : "errors")}: mend {(errors == 1 ? "it" : "them")} and run the command again. Nothing was analysed."));
        }
    }

    /// <summary>Prints the problems of one trial of several under its folder; nothing when there is none.</summary>
    /// <param name="folder">Its folder.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="writer">Where to.</param>
    /// <param name="withWarnings">Whether warnings of a trial without errors are printed too.</param>
    public static void PrintUnder(string folder, TrialReading reading, TextWriter writer, bool withWarnings)
    {
        var errors = reading.Errors.Count();
        var isPlan = reading.Trial is { IsPlan: true };
        if (errors == 0 && !isPlan && (!withWarnings || reading.Problems.Count == 0))
        {
            return;
        }

        writer.WriteLine($"{folder}: {(errors > 0 ? string.Create(CultureInfo.InvariantCulture, $"{errors} {(errors == 1 ? "error" : "errors")}; not analysed") : isPlan ? "a plan, nothing measured yet; not analysed" : "analysed, with warnings")}");
        foreach (var line in Lines(reading.Problems, eachWarning: false))
        {
            writer.WriteLine($"  {Path.Combine(folder, line)}");
        }
    }

    private static IEnumerable<string> Lines(IReadOnlyList<Problem> problems, bool eachWarning)
    {
        var counts = problems.CountBy(problem => problem.Code, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var said = new HashSet<string>(StringComparer.Ordinal);
        foreach (var problem in problems)
        {
            if (problem.Severity == ProblemSeverity.Error || eachWarning || counts[problem.Code] == 1)
            {
                yield return problem.ToString();
            }
            else if (said.Add(problem.Code))
            {
                yield return string.Create(CultureInfo.InvariantCulture, $"{problem} (and {counts[problem.Code] - 1} more like it; 'trialkit check' lists each)");
            }
        }
    }
}
