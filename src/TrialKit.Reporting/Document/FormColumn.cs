namespace TrialKit.Reporting.Document;

/// <summary>A column of a form.</summary>
/// <param name="Header">What the column holds.</param>
/// <param name="Share">Its width beside the others, above 0.</param>
public sealed record FormColumn(string Header, double Share)
{
    /// <summary>Its width beside the others, above 0.</summary>
    public double Share { get; init; } = Share is > 0 and < double.PositiveInfinity
        ? Share
        : throw new ArgumentOutOfRangeException(nameof(Share), Share, "A column of a form takes a share above 0.");
}
