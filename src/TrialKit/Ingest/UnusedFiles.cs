using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest;

/// <summary>Finds files whose names look like mistyped tables. Any other file of the folder is its owner's business.</summary>
internal static class UnusedFiles
{
    private const int NearEnough = 3;

    /// <summary>Adds a warning for each such file.</summary>
    public static void Report(string folder, string? weatherFile, ProblemList problems)
    {
        IReadOnlyList<string> known = [.. Schema.TableNames.Select(TableSource.FileOf)];
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
