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
        if (weatherFile is not null && weatherFile != weather && File.Exists(Path.Combine(folder, weather)))
        {
            problems.Add(FileProblems.UnusedWeather(weather, weatherFile));
        }

        var files = Directory.EnumerateFiles(folder)
            .Select(path => Path.GetFileName(path))
            .Where(file => !known.Contains(file, StringComparer.Ordinal) && file != weatherFile)
            .Order(StringComparer.Ordinal);
        foreach (var file in files)
        {
            var nearest = NearestName.Of(file, known);
            if (NearestName.Distance(file, nearest) <= NearEnough && !File.Exists(Path.Combine(folder, nearest)))
            {
                problems.Add(FileProblems.UnusedFile(file, known));
            }
        }
    }
}
