namespace TrialKit.Ingest;

/// <summary>Whether a problem stops the run.</summary>
public enum ProblemSeverity
{
    /// <summary>The trial is not analysed until this is put right.</summary>
    Error,

    /// <summary>The trial is analysed; the reader of the report should know this.</summary>
    Warning,
}
