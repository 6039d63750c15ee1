using TrialKit.Fuzz;

namespace TrialKit.Tests.Ingest;

/// <summary>The same trial written otherwise reads the same.</summary>
public class EquivalentFormsTests
{
    private static readonly string[] Tables = ["strips", "stand-counts", "emergence", "plants", "harvest", "measures", "weather", "soil-temperature"];

    private static string Expected()
    {
        using var folder = TrialFolder.Sound();
        return TrialText.Of(folder.Read().Trial!);
    }

    public static TheoryData<string, Func<string, string>> Rewritings => new()
    {
        { "semicolons and decimal commas", text => text.Replace(',', ';').Replace('.', ',') },
        { "semicolons and decimal points", text => text.Replace(',', ';') },
        { "tabs and decimal commas", text => text.Replace(',', '\t').Replace('.', ',') },
        { "a byte-order mark", text => "\uFEFF" + text },
        { "CR LF", text => text.Replace("\n", "\r\n", StringComparison.Ordinal) },
        { "no last line break", text => text.TrimEnd('\n') },
        { "comments and blank lines", text => "# \"as typed\n\n" + text.Replace("\n", "\n\n# it's a note, with commas\n", StringComparison.Ordinal) },
        { "rows of separators", text => text + new string(',', text.Split('\n')[0].Count(character => character == ',')) + "\n" },
        { "every cell quoted", text => string.Join('\n', text.TrimEnd('\n').Split('\n').Select(line => "\"" + line.Replace(",", "\",\"", StringComparison.Ordinal) + "\"")) + "\n" },
        { "spaces around cells", text => text.Replace(",", " , ", StringComparison.Ordinal) },
        { "NA for nothing", text => text.Replace(",,", ",NA,", StringComparison.Ordinal).Replace(",,", ",.,", StringComparison.Ordinal) },
    };

    [Theory]
    [MemberData(nameof(Rewritings), DisableDiscoveryEnumeration = true)]
    public void Read_TablesRewritten_GivesTheSameTrial(string name, Func<string, string> rewrite)
    {
        using var folder = TrialFolder.Sound();
        foreach (var table in Tables)
        {
            folder.Write(table + ".csv", rewrite(TrialFolder.SoundText(table + ".csv")));
        }

        var reading = folder.Read();

        Assert.True(reading.Problems.Count == 0, $"{name}: {string.Join("; ", reading.Problems)}");
        Assert.Equal(Expected(), TrialText.Of(reading.Trial!));
    }

    [Theory]
    [InlineData("length (ft)")]
    [InlineData("\"Length, ft\"")]
    [InlineData("LENGTH-FT")]
    [InlineData("length [feet]")]
    [InlineData("Length ft")]
    [InlineData("length_foot")]
    public void Read_HeaderWithItsUnitOtherwise_GivesTheSameTrial(string header)
    {
        using var folder = TrialFolder.Sound().Replace("stand-counts.csv", "length_ft", header);

        Assert.Equal(Expected(), TrialText.Of(folder.Read().Trial!));
    }

    [Theory]
    [InlineData("in", 12)]
    [InlineData("yd", 1 / 3.0)]
    [InlineData("cm", 30.48)]
    [InlineData("m", 0.3048)]
    public void Read_LengthInAnotherUnit_IsTheSameLength(string unit, double perFoot)
    {
        using var folder = TrialFolder.Sound()
            .Write("stand-counts.csv", FormattableString.Invariant($"strip,length_{unit},plants\nA1,{17.424 * perFoot:R},30\n"));

        Assert.Equal(17.424, folder.Read().Trial!.StandCounts[0].Row.Feet, Tolerances.ClosedForm);
    }

    [Theory]
    [InlineData("[units]\nreport = \"us\"\nlength = \"ft\"\n")]
    [InlineData("[units.stand-counts]\nlength = \"ft\"\n")]
    [InlineData("[units]\nlength = \"m\"\n[units.stand-counts]\nlength = \"feet\"\n")]
    public void Read_UnitSetInSettings_StandsInForTheHeader(string units)
    {
        using var folder = TrialFolder.Sound()
            .Replace("stand-counts.csv", "length_ft", "length")
            .Replace("trial.toml", "units = \"us\"\n", string.Empty)
            .Replace("trial.toml", "[site]", units + "\n[site]");

        Assert.Equal(Expected(), TrialText.Of(folder.Read().Trial!));
    }

    [Fact]
    public void Read_UnitInHeaderAndInSettings_TheHeaderHolds()
    {
        using var folder = TrialFolder.Sound()
            .Replace("trial.toml", "units = \"us\"\n", string.Empty)
            .Replace("trial.toml", "[site]", "[units]\nlength = \"m\"\n\n[site]");

        Assert.Equal(Expected(), TrialText.Of(folder.Read().Trial!));
    }

    [Theory]
    [InlineData("month/day/year", "5/20/2026")]
    [InlineData("month/day/year", "05-20-2026")]
    [InlineData("day/month/year", "20.5.2026")]
    [InlineData("day/month/year", "2026-05-20")]
    public void Read_DatesInAnotherOrder_AreTheSameDates(string order, string date)
    {
        using var folder = TrialFolder.Sound()
            .Replace("trial.toml", "units = \"us\"", $"units = \"us\"\ndate_order = \"{order}\"")
            .Replace("stand-counts.csv", "2026-05-20", date);

        Assert.Equal(Expected(), TrialText.Of(folder.Read().Trial!));
    }

    [Fact]
    public void Read_NamesInAnotherCase_MeanTheSame()
    {
        using var folder = TrialFolder.Sound()
            .Replace("stand-counts.csv", "A1,", " a1 ,")
            .Replace("strips.csv", "chains", "CHAINS");

        Assert.Equal(Expected(), TrialText.Of(folder.Read().Trial!));
    }

    [Fact]
    public void Read_Workbook_GivesTheSameTrial()
    {
        using var folder = TrialFolder.Sound();
        var workbook = new SheetWriter();
        foreach (var table in Tables)
        {
            workbook.AddCsv(table, TrialFolder.SoundText(table + ".csv"));
            folder.Remove(table + ".csv");
        }

        folder.Replace("trial.toml", "file = \"weather.csv\"\n", string.Empty).Write("trial.xlsx", workbook.ToBytes());

        var reading = folder.Read();

        Assert.Empty(reading.Problems);
        Assert.Equal(Expected(), TrialText.Of(reading.Trial!));
        Assert.All(reading.Tables, table => Assert.Equal("trial.xlsx", table.File));
    }

    [Fact]
    public void Read_WorkbookBesideFiles_TakesEachTableFromWhereItIs()
    {
        using var folder = TrialFolder.Sound().Remove("harvest.csv")
            .Write("trial.xlsx", new SheetWriter().AddCsv("Harvest", TrialFolder.SoundText("harvest.csv")).ToBytes());

        Assert.Equal(Expected(), TrialText.Of(folder.Read().Trial!));
    }
}
