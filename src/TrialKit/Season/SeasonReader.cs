using TrialKit.Ingest;

namespace TrialKit.Season;

/// <summary>Reads a season table back, so that its trials can be put together without their folders.</summary>
public static class SeasonReader
{
    /// <summary>Problems after which reading stops: what follows is hardly news.</summary>
    private const int MostProblems = 100;

    /// <summary>The file that holds a season's strips beside that of its comparisons: <c>season-strips.parquet</c> beside <c>season.parquet</c>.</summary>
    /// <param name="path">The file of the comparisons.</param>
    public static string StripsOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Path.Combine(Path.GetDirectoryName(path) ?? "", $"{Path.GetFileNameWithoutExtension(path)}-strips{Path.GetExtension(path)}");
    }

    /// <summary>Reads a season in Parquet: the comparisons, and the strips where their file lies beside.</summary>
    /// <param name="path">The file of the comparisons.</param>
    /// <param name="measures">Ids of the measures wanted; null for all.</param>
    public static SeasonReading Read(string path, IReadOnlySet<string>? measures = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var problems = new List<Problem>();
        var sites = new SeasonSites(measures);
        var strips = StripsOf(path);
        var hasStrips = File.Exists(strips);
        if (hasStrips)
        {
            // The strips know every measure in its order, those without a comparison too.
            ParquetTable.Read(strips, SeasonWriter.StripFields, problems, Bounded(sites.AddStrip));
        }

        ParquetTable.Read(path, SeasonWriter.ContrastFields, problems, Bounded(sites.AddContrast));
        var isSound = problems.TrueForAll(problem => problem.Severity != ProblemSeverity.Error);
        return new(isSound ? sites.ToSites() : [], [.. sites.Measures], hasStrips, [.. problems.Take(MostProblems)]);

        Action<SeasonCells> Bounded(Action<SeasonCells> add) => cells =>
        {
            if (problems.Count < MostProblems)
            {
                add(cells);
            }
        };
    }
}
