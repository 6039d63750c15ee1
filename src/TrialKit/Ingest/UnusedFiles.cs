using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest;

/// <summary>Finds files that look as if they should be read and are not: a mistyped table, a second weather file. Any other file of the folder is its owner's business.</summary>
internal static class UnusedFiles
{
    private const int NearEnough = 3;

    /// <summary>Adds a warning for each such file.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="weatherFile">The weather file that <c>trial.toml</c> names; null when it names none.</param>
    /// <param name="problems">Takes the warnings.</param>
    public static void Report(string folder, string? weatherFile, ProblemList problems)
    {
        IReadOnlyList<string> known = [.. Schema.TableNames.Select(TableSource.FileOf)];
        var weather = TableSource.FileOf("weather");
        if (weatherFile is not null && weatherFile != weather && TrialFile.Exists(folder, weather))
        {
            problems.Add(FileProblems.UnusedWeather(weather, weatherFile));
        }

        var files = Files(folder, problems)
            .Where(file => !known.Contains(file, StringComparer.Ordinal) && file != weatherFile)
            .Order(StringComparer.Ordinal);
        foreach (var file in files)
        {
            var nearest = NearestName.Of(file, known);
            if (NearestName.Distance(file, nearest) <= NearEnough && !TrialFile.Exists(folder, nearest))
            {
                problems.Add(FileProblems.UnusedFile(file, known));
            }
        }
    }

    private static string[] Files(string folder, ProblemList problems)
    {
        try
        {
            return [.. Directory.EnumerateFiles(folder).Select(path => Path.GetFileName(path))];
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            problems.Add(FileProblems.Unreadable(folder, exception.Message));
            return [];
        }
    }
}
