namespace TrialKit.Cli.Output;

/// <summary>Writes a file whole or not at all: beside its final name first, then moved there.</summary>
internal static class WholeFile
{
    /// <summary>Writes a file; a failure leaves an older one as it was.</summary>
    /// <param name="path">Its final name.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">It cannot be written; the message names the file.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var draft = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
        try
        {
            Directory.CreateDirectory(folder);
            using (var stream = new FileStream(draft, FileMode.Create, FileAccess.Write, FileShare.None))
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
    }

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
