using TrialKit.Season;
using TrialKit.Tests.Comparison;

namespace TrialKit.Tests.Season;

/// <summary>Seasons of small trials in a folder of their own that goes when the test ends.</summary>
internal sealed class SeasonTable : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("trialkit-season-").FullName;

    /// <summary>The file of the comparisons.</summary>
    public string Contrasts => Path.Combine(folder, "season.parquet");

    /// <summary>The file of the strips.</summary>
    public string Strips => SeasonReader.StripsOf(Contrasts);

    /// <summary>A trial of five pairs whose treatment makes a difference.</summary>
    public static SeasonTrial Trial(string id, double difference, double alpha = 0.10) => new(
        id,
        TrialAnalysis.Of(ComparisonTrial.Pairs([10 + difference, 12.5 + difference, 9 + difference, 11.2 + difference, 10.4 + difference], [10.2, 12, 9.1, 11, 10.8], alpha)),
        Fingerprint: "mark of " + id);

    /// <summary>Both tables of some trials.</summary>
    public static (byte[] Contrasts, byte[] Strips) Written(Func<Stream, Stream, SeasonWriter> form, params SeasonTrial[] trials)
    {
        using var contrasts = new MemoryStream();
        using var strips = new MemoryStream();
        using (var writer = form(contrasts, strips))
        {
            foreach (var trial in trials)
            {
                writer.Add(trial);
            }

            writer.Complete();
        }

        return (contrasts.ToArray(), strips.ToArray());
    }

    /// <summary>Writes both files.</summary>
    public SeasonTable Write(params SeasonTrial[] trials)
    {
        var (contrasts, strips) = Written(SeasonWriter.Parquet, trials);
        File.WriteAllBytes(Contrasts, contrasts);
        File.WriteAllBytes(Strips, strips);
        return this;
    }

    /// <summary>Writes the file of comparisons of one trial with columns and cells changed first.</summary>
    public SeasonTable WriteChanged(Func<SeasonField, SeasonField?> field, Action<List<object?[]>> rows)
    {
        var trial = Trial("north", 1);
        List<object?[]> cells = [.. ContrastRow.Of(trial).Select(row => (object?[])[.. SeasonSchema.Contrasts.Select(column => column.Cell(row))])];
        rows(cells);
        var kept = SeasonWriter.ContrastFields.Select((each, index) => (Field: field(each), index)).Where(each => each.Field is not null).ToArray();
        using var stream = File.Create(Contrasts);
        using var writer = new ParquetRows([.. kept.Select(each => each.Field!)], stream);
        foreach (var row in cells)
        {
            writer.Add([.. kept.Select(each => row[each.index])]);
        }

        writer.Complete();
        return this;
    }

    /// <summary>Reads the season back.</summary>
    public SeasonReading Read() => SeasonReader.Read(Contrasts);

    /// <summary>Where a column of the comparisons stands, from 0.</summary>
    public static int Position(string column) => SeasonWriter.ContrastFields.Select(field => field.Name).ToList().IndexOf(column);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
