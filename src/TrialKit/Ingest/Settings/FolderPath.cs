using TrialKit.Ingest.Messages;

namespace TrialKit.Ingest.Settings;

/// <summary>A path that a file of the trial names.</summary>
internal static class FolderPath
{
    /// <summary>The path when it names a file inside the folder; else null with an error added. That no link leads out is checked where the file is read.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="path">The path as written.</param>
    /// <param name="at">Where it stands.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static string? Check(string folder, string path, ProblemLocation at, ProblemList problems)
    {
        var root = Root(folder);

        // A backslash divides folders on one system only: it is refused everywhere, so that a folder reads the same anywhere.
        if (path.Contains('\0', StringComparison.Ordinal) || path.Contains('\\', StringComparison.Ordinal) || Path.IsPathRooted(path)
            || !Path.GetFullPath(Path.Combine(root, path)).StartsWith(root, StringComparison.Ordinal))
        {
            problems.Add(FileProblems.LeavesFolder(at, path));
            return null;
        }

        if (!Path.Exists(Path.Combine(root, path)))
        {
            problems.Add(FileProblems.NamedFileMissing(at, path));
            return null;
        }

        return path;
    }

    /// <summary>Whether a folder or the file on the way is a link to a place outside.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="path">The path from the folder.</param>
    public static bool LinksOut(string folder, string path)
    {
        var root = Root(folder);
        var place = root;
        foreach (var part in path.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            place = Path.Combine(place, part);
            FileSystemInfo step = Directory.Exists(place) ? new DirectoryInfo(place) : new FileInfo(place);
            if (step.ResolveLinkTarget(returnFinalTarget: true) is { } target && !target.FullName.StartsWith(root, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }

    private static string Root(string folder) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
}
