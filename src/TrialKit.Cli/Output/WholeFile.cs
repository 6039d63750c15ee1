namespace TrialKit.Cli.Output;

/// <summary>
/// Writes a file whole or not at all: into a draft in the same folder first, which then takes the file's name in one step. Whenever the program
/// is ended, the file is the old one or the new one.
/// </summary>
internal static class WholeFile
{
    private const string DraftStart = ".trialkit-";
    private const string DraftEnd = ".part";

    // A draft is a second old when it gets its name: one of yesterday is of a run that was ended.
    private static readonly TimeSpan Stale = TimeSpan.FromDays(1);

    /// <summary>Writes a file; a failure leaves an older one as it was.</summary>
    /// <param name="path">Its final name.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">It cannot be written; the message names the file.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var draft = Path.Combine(folder, DraftStart + Path.GetRandomFileName() + DraftEnd);
        try
        {
            Directory.CreateDirectory(folder);
            using (var stream = new FileStream(draft, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(draft, path, overwrite: true);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new IOException($"'{path}' cannot be written: {failure.Message}", failure);
        }
        finally
        {
            Discard(draft);
        }

        foreach (var left in Directory.EnumerateFiles(folder, DraftStart + "*" + DraftEnd).Where(IsStale))
        {
            Discard(left);
        }
    }

    private static bool IsStale(string draft) => DateTime.UtcNow - File.GetLastWriteTimeUtc(draft) > Stale;

    private static void Discard(string draft)
    {
        try
        {
            File.Delete(draft);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The draft could not be made, or its folder is gone: there is nothing left to tidy.
        }
    }
}
