namespace TrialKit.Ingest;

/// <summary>What became of the rows of one table. Rows read that are neither in use nor left out had errors.</summary>
/// <param name="Table">The table's name, such as <c>stand-counts</c>.</param>
/// <param name="File">The file it was read from.</param>
/// <param name="Read">Rows below the header, blank lines and comments not counted.</param>
/// <param name="Used">Rows that are in the trial.</param>
/// <param name="LeftOut">Rows left out because nothing was recorded; each is listed by a warning.</param>
public sealed record TableRows(string Table, string File, int Read, int Used, int LeftOut)
{
    /// <summary>Rows of a weather file that the trial has no use for: those of other stations, elements or seasons, and those that say that nothing was recorded.</summary>
    public int PassedOver { get; init; }

    /// <summary>The form in which a file of weather was recognised, in words; null for other tables.</summary>
    public string? Form { get; init; }
}
