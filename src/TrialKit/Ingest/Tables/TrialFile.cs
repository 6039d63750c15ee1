using System.Formats.Tar;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Settings;

namespace TrialKit.Ingest.Tables;

/// <summary>A file of the trial folder as bytes; whatever is no plain file, or too long, is refused before it is opened.</summary>
internal static class TrialFile
{
    /// <summary>The longest table or workbook that is read.</summary>
    public const long Longest = 256L << 20;

    /// <summary>The longest settings that are read: a thousand times what a trial needs.</summary>
    public const long LongestSettings = 1L << 20;

    /// <summary>Whether something of the name is there, be it a file or not: what is no file is refused when it is read, and not passed over.</summary>
    public static bool Exists(string folder, string file) => Path.Exists(Path.Combine(folder, file));

    /// <summary>Reads a file, or says why it cannot be read.</summary>
    /// <param name="folder">The trial folder.</param>
    /// <param name="file">The file's path from the folder.</param>
    /// <param name="problems">Takes a file that is too long, no plain file or not readable.</param>
    /// <param name="longest">The longest that is read, in bytes.</param>
    /// <returns>The bytes, or null with an error added.</returns>
    public static byte[]? Read(string folder, string file, ProblemList problems, long longest = Longest)
    {
        if (FolderPath.LinksOut(folder, file))
        {
            problems.Add(FileProblems.LeavesFolder(ProblemLocation.StartOf(file), file));
            return null;
        }

        try
        {
            var path = new FileInfo(Path.Combine(folder, file));
            path = path.ResolveLinkTarget(returnFinalTarget: true) as FileInfo ?? path;
            if (Directory.Exists(path.FullName) || !IsPlain(path))
            {
                problems.Add(FileProblems.NoPlainFile(file));
                return null;
            }

            if (path.Length > longest)
            {
                problems.Add(FileProblems.TooLong(file, path.Length, longest));
                return null;
            }

            return File.ReadAllBytes(path.FullName);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            problems.Add(FileProblems.Unreadable(file, exception.Message));
            return null;
        }
    }

    /// <summary>Whether a file is none of a pipe, a device or a socket, which would keep whoever opens it waiting or never end.</summary>
    private static bool IsPlain(FileInfo path)
    {
        // Those have no length. The archive writer tells kinds of file apart without opening any but a plain one.
        if (path.Length > 0 || OperatingSystem.IsWindows())
        {
            return true;
        }

        using var archive = new MemoryStream();
        using (var writer = new TarWriter(archive, leaveOpen: true))
        {
            writer.WriteEntry(path.FullName, "file");
        }

        archive.Position = 0;
        using var reader = new TarReader(archive);
        return reader.GetNextEntry()?.EntryType is TarEntryType.RegularFile or TarEntryType.V7RegularFile;
    }
}
