using System.Globalization;
using System.Text.Json;

namespace TrialKit.Tests;

/// <summary>The files under <c>tests/reference-data</c> and where the repository stands.</summary>
internal static class ReferenceData
{
    /// <summary>The repository's root: the folder that holds the solution.</summary>
    public static string Repository { get; } = FindRepository();

    /// <summary>The folder of reference files.</summary>
    public static string Root { get; } = Path.Combine(Repository, "tests", "reference-data");

    /// <summary>The root element of a JSON reference file.</summary>
    public static JsonElement Json(string relativePath)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Root, relativePath)));
        return document.RootElement.Clone();
    }

    /// <summary>The rows of a CSV reference file without its heading; lines that begin with # are passed over.</summary>
    public static IEnumerable<string[]> Csv(string relativePath) =>
        File.ReadLines(Path.Combine(Root, relativePath))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Skip(1)
            .Select(line => line.Split(','));

    /// <summary>A number of a reference file.</summary>
    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string FindRepository()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TrialKit.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("TrialKit.sln was not found above the tests.");
    }
}
