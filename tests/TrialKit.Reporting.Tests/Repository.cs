namespace TrialKit.Reporting.Tests;

/// <summary>Files of the repository that tests read.</summary>
internal static class Repository
{
    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "TrialKit.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException($"No folder above {AppContext.BaseDirectory} holds TrialKit.sln.");
        }

        return folder.FullName;
    }
}
