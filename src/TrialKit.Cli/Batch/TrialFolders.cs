namespace TrialKit.Cli.Batch;

/// <summary>The trials that a command line names.</summary>
/// <param name="Trials">The trials, each once, in the order named; those within a folder by name.</param>
/// <param name="PassedOver">Folders within a folder of trials that hold no <c>trial.toml</c>.</param>
internal sealed record TrialFolders(IReadOnlyList<NamedTrial> Trials, IReadOnlyList<string> PassedOver)
{
    private const string Settings = "trial.toml";

    /// <summary>Whether one trial is meant, named by its own folder.</summary>
    /// <param name="named">The arguments.</param>
    public static bool IsOne(IReadOnlyList<string> named) => named.Count == 1 && !(Directory.Exists(named[0]) && !IsTrial(named[0]) && Inner(named[0]).Length > 0);

    /// <summary>Finds the trials of trial folders and folders of trial folders.</summary>
    /// <param name="named">The arguments.</param>
    /// <exception cref="UsageException">A folder is not there, or holds no trial.</exception>
    public static TrialFolders Of(IReadOnlyList<string> named)
    {
        var (trials, passedOver) = (new List<string>(), new List<string>());
        foreach (var folder in named)
        {
            if (!Directory.Exists(folder))
            {
                throw new UsageException($"there is no folder '{folder}'; a trial folder, or a folder of trial folders, was expected.");
            }

            if (IsTrial(folder))
            {
                trials.Add(folder);
                continue;
            }

            var inner = Inner(folder);
            if (inner.Length == 0)
            {
                throw new UsageException($"'{folder}' holds no {Settings} and no folder with one; a trial folder, or a folder of trial folders, was expected.");
            }

            trials.AddRange(inner.Order(StringComparer.Ordinal));
            passedOver.AddRange(Directory.EnumerateDirectories(folder).Where(each => !IsTrial(each)));
        }

        // Named in one order, whatever the command line's, so that a trial keeps its name.
        string[] byPath = [.. trials.DistinctBy(Path.GetFullPath, StringComparer.Ordinal).OrderBy(Path.GetFullPath, StringComparer.Ordinal)];
        var names = byPath.Zip(TrialNames.Of(byPath)).ToDictionary(named => named.First, named => named.Second, StringComparer.Ordinal);
        return new([.. trials.Where(names.ContainsKey).Distinct(StringComparer.Ordinal).Select(folder => new NamedTrial(folder, names[folder]))], [.. passedOver.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)]);
    }

    /// <summary>The same trials, ordered by path, whatever the order they were named in.</summary>
    public TrialFolders ByPath() => this with { Trials = [.. Trials.OrderBy(trial => trial.Folder, StringComparer.Ordinal)] };

    private static bool IsTrial(string folder) => File.Exists(Path.Combine(folder, Settings));

    private static string[] Inner(string folder) => [.. Directory.EnumerateDirectories(folder).Where(IsTrial)];
}
