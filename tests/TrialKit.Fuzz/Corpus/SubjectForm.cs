namespace TrialKit.Fuzz.Corpus;

/// <summary>What a file is: it decides how its structure is damaged and how its rows are counted.</summary>
internal enum SubjectForm
{
    /// <summary>Settings in TOML.</summary>
    Settings,

    /// <summary>A table of a trial.</summary>
    Table,

    /// <summary>A weather file.</summary>
    Weather,

    /// <summary>A workbook.</summary>
    Workbook,
}
