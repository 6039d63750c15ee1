using System.Text;
using TrialKit.Ingest;
using TrialKit.Season;

namespace TrialKit.Tests.Season;

/// <summary>Seasons written.</summary>
public class SeasonWriterTests
{
    [Fact]
    public void Parquet_SameTrials_GiveTheSameBytes()
    {
        var (first, second) = (Written(), Written());

        Assert.Equal(first.Contrasts, second.Contrasts);
        Assert.Equal(first.Strips, second.Strips);

        static (byte[] Contrasts, byte[] Strips) Written() => SeasonTable.Written(SeasonWriter.Parquet, SeasonTable.Trial("north", 1), SeasonTable.Trial("south", 2));
    }

    [Fact]
    public void Csv_OfATrial_HasOneRowPerComparisonAndOnePerStrip()
    {
        var trial = new SeasonTrial("north", TrialAnalysisTests.Example("drag-chains"), "f");
        var (contrasts, strips) = SeasonTable.Written(SeasonWriter.Csv, trial);
        var (contrastLines, stripLines) = (Lines(contrasts), Lines(strips));

        Assert.Equal(string.Join(',', SeasonWriter.ContrastFields.Select(field => field.Name)), contrastLines[0]);
        Assert.Equal(string.Join(',', SeasonWriter.StripFields.Select(field => field.Name)), stripLines[0]);
        Assert.Equal(trial.Analysis.Measures.Sum(measure => measure.Contrasts.Length), contrastLines.Length - 1);
        Assert.Equal(trial.Analysis.Measures.Length * trial.Analysis.Trial.Strips.Length, stripLines.Length - 1);
        Assert.StartsWith("2014,corn,north,", contrastLines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Parquet_MoreRowsThanAGroupHolds_AllComeBackInOrder()
    {
        const int Rows = 70_000;
        var path = Path.GetTempFileName();
        try
        {
            SeasonField[] fields = [new("n", SeasonType.Whole, IsRequired: true, "", "a number"), new("text", SeasonType.Text, IsRequired: false, "", "a text")];
            using (var stream = File.Create(path))
            using (var writer = new ParquetRows([.. fields], stream))
            {
                for (var n = 0; n < Rows; n++)
                {
                    writer.Add([n, n % 3 == 0 ? null : "text"]);
                }

                writer.Complete();
            }

            var problems = new List<Problem>();
            var next = 0;
            ParquetTable.Read(path, fields, problems, cells =>
            {
                Assert.Equal(next, cells.Whole("n", least: 0));
                Assert.Equal(next % 3 == 0 ? null : "text", cells.OptionalText("text"));
                Assert.Equal(next + 1, cells.At("n").Line);
                next++;
            });

            Assert.Empty(problems);
            Assert.Equal(Rows, next);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void Guide_SeasonTable_ListsEveryColumnWithTypeUnitAndMeaning()
    {
        var page = File.ReadAllText(Path.Combine(ReferenceData.Repository, "docs", "guide", "season-table.md"));
        var listed = page.Split('\n').Where(line => line.StartsWith("| `", StringComparison.Ordinal)).ToHashSet(StringComparer.Ordinal);
        var expected = SeasonWriter.ContrastFields.Concat(SeasonWriter.StripFields).Select(Line).ToHashSet(StringComparer.Ordinal);

        Assert.Equal(expected.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
    }

    /// <summary>A column as the guide lists it.</summary>
    private static string Line(SeasonField field) => $"| `{field.Name}` | {Type(field.Type)} | {(field.IsRequired ? "yes" : "")} | {field.Unit} | {field.Meaning} |";

    private static string Type(SeasonType type) => type switch
    {
        SeasonType.Text => "string",
        SeasonType.Whole => "int32",
        SeasonType.Number => "double",
        SeasonType.YesNo => "boolean",
        _ => "date",
    };

    private static string[] Lines(byte[] csv) => Encoding.UTF8.GetString(csv).TrimEnd('\n').Split('\n');
}
