using TrialKit.Fuzz.Corpus;

namespace TrialKit.Fuzz;

/// <summary>Folders of one worker, one for each sound folder of the subjects, in which a file is damaged and put right again.</summary>
internal sealed class FuzzFolder : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("trialkit-fuzz-").FullName;
    private readonly Dictionary<IReadOnlyDictionary<string, byte[]>, string> _folders = new(ReferenceEqualityComparer.Instance);

    /// <summary>Runs something on the folder of a case.</summary>
    public T With<T>(FuzzCase tried, Func<string, T> run)
    {
        var folder = FolderOf(tried.Subject);
        var file = Path.Combine(folder, tried.Subject.File);
        File.WriteAllBytes(file, tried.Bytes);
        try
        {
            return run(folder);
        }
        finally
        {
            File.WriteAllBytes(file, tried.Subject.Bytes);
        }
    }

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private string FolderOf(Subject subject)
    {
        if (!_folders.TryGetValue(subject.Folder, out var folder))
        {
            folder = Directory.CreateDirectory(Path.Combine(_root, _folders.Count.ToString(System.Globalization.CultureInfo.InvariantCulture))).FullName;
            _folders.Add(subject.Folder, folder);
            foreach (var (file, bytes) in subject.Folder)
            {
                File.WriteAllBytes(Path.Combine(folder, file), bytes);
            }
        }

        return folder;
    }
}
