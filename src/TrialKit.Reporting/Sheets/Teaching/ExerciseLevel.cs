namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>How much an exercise asks.</summary>
public enum ExerciseLevel
{
    /// <summary>Few data, and a table that leads through the working.</summary>
    First,

    /// <summary>More data, less guidance, and questions further on.</summary>
    Second,
}
