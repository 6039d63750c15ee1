namespace TrialKit.Cli.Tests;

/// <summary>Where the repository stands, and what lies in it.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find();

    /// <summary>The names of the example trials; a folder of several trials is none of them.</summary>
    public static IEnumerable<string> Examples => Directory.EnumerateDirectories(Path.Combine(Root, "example-trials")).Where(folder => File.Exists(Path.Combine(folder, "trial.toml"))).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal);

    /// <summary>The folder of an example trial.</summary>
    public static string Example(string name) => Path.Combine(Root, "example-trials", name);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TrialKit.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("TrialKit.sln was not found above the tests.");
    }
}
