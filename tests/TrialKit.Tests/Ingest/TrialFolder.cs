using System.Text;
using TrialKit.Ingest;

namespace TrialKit.Tests.Ingest;

/// <summary>A trial folder in the system's place for temporary files, gone when disposed.</summary>
internal sealed class TrialFolder : IDisposable
{
    private const string Base = "broken/_base";

    private TrialFolder() => Directory.CreateDirectory(Path);

    /// <summary>Its path.</summary>
    public string Path { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "trialkit-" + Guid.NewGuid().ToString("N"));

    /// <summary>An empty folder.</summary>
    public static TrialFolder Empty() => new();

    /// <summary>A copy of the sound trial that the broken ones vary.</summary>
    public static TrialFolder Sound() => Empty().CopyFrom(Base);

    /// <summary>The sound trial with the files of a case over it; <c>remove.txt</c> lists files that the case lacks.</summary>
    public static TrialFolder OfCase(string name)
    {
        var folder = Sound().CopyFrom($"broken/{name}");
        var remove = System.IO.Path.Combine(folder.Path, "remove.txt");
        if (File.Exists(remove))
        {
            foreach (var file in File.ReadAllLines(remove))
            {
                folder.Remove(file);
            }

            folder.Remove("remove.txt");
        }

        folder.Remove("expected.txt");
        return folder;
    }

    /// <summary>The text of a file of the sound trial.</summary>
    public static string SoundText(string file) => File.ReadAllText(System.IO.Path.Combine(ReferenceData.Root, Base, file));

    /// <summary>Reads the trial.</summary>
    public TrialReading Read() => TrialReader.Read(Path);

    /// <summary>The problems as printed.</summary>
    public string[] Problems() => [.. Read().Problems.Select(problem => problem.ToString())];

    /// <summary>Writes a file as UTF-8.</summary>
    public TrialFolder Write(string file, string text) => Write(file, Encoding.UTF8.GetBytes(text));

    /// <summary>Writes a file.</summary>
    public TrialFolder Write(string file, byte[] bytes)
    {
        File.WriteAllBytes(System.IO.Path.Combine(Path, file), bytes);
        return this;
    }

    /// <summary>Replaces text in a file that holds it.</summary>
    public TrialFolder Replace(string file, string old, string replacement)
    {
        var text = File.ReadAllText(System.IO.Path.Combine(Path, file));
        Assert.Contains(old, text, StringComparison.Ordinal);
        return Write(file, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    /// <summary>Removes a file.</summary>
    public TrialFolder Remove(string file)
    {
        File.Delete(System.IO.Path.Combine(Path, file));
        return this;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private TrialFolder CopyFrom(string relative)
    {
        foreach (var file in Directory.GetFiles(System.IO.Path.Combine(ReferenceData.Root, relative)))
        {
            File.Copy(file, System.IO.Path.Combine(Path, System.IO.Path.GetFileName(file)), overwrite: true);
        }

        return this;
    }
}
