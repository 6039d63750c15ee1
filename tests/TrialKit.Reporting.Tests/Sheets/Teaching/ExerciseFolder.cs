using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Reporting.Tests.Sheets.Teaching;

/// <summary>The trial folder of an exercise on disk, for as long as a test needs it.</summary>
internal sealed class ExerciseFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("trialkit-exercise-");

    public ExerciseFolder(Exercise exercise)
    {
        foreach (var file in exercise.Paper.Files)
        {
            File.WriteAllText(System.IO.Path.Combine(folder.FullName, file.Name), file.Text);
        }
    }

    public string Path => folder.FullName;

    public void Dispose() => folder.Delete(recursive: true);
}
