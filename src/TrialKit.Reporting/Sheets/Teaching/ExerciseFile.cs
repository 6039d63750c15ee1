namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>A file of the trial folder that holds an exercise's data.</summary>
/// <param name="Name">Its name, such as <c>trial.toml</c>.</param>
/// <param name="Text">Its text.</param>
public sealed record ExerciseFile(string Name, string Text);
