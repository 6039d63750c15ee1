namespace TrialKit.Cli.Tests;

/// <summary>A folder of its own that goes when the test ends.</summary>
internal sealed class Scratch : IDisposable
{
    public Scratch() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(Path.GetTempPath(), $"trialkit-{Guid.NewGuid():N}");

    public string In(string name) => System.IO.Path.Combine(Folder, name);

    /// <summary>A copy of a folder's files.</summary>
    public string Copy(string folder)
    {
        var copy = In("trial");
        Directory.CreateDirectory(copy);
        foreach (var file in Directory.EnumerateFiles(folder))
        {
            File.Copy(file, System.IO.Path.Combine(copy, System.IO.Path.GetFileName(file)));
        }

        return copy;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
