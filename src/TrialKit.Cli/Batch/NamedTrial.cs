namespace TrialKit.Cli.Batch;

/// <summary>A trial of several.</summary>
/// <param name="Folder">Its folder as named or found.</param>
/// <param name="Name">What it is called in outputs: the folder's own name, made fit for a file's name and unlike any other's.</param>
internal sealed record NamedTrial(string Folder, string Name);
