using CsCheck;
using TrialKit.Export;
using TrialKit.Season;
using TrialKit.Tests.Comparison;

namespace TrialKit.Tests.Season;

/// <summary>Seasons read back.</summary>
public sealed class SeasonReaderTests : IDisposable
{
    private readonly SeasonTable table = new();

    public void Dispose() => table.Dispose();

    [Fact]
    public void Read_WrittenSeason_PoolsToTheByteAsTheTrialsDo()
    {
        SeasonTrial[] trials =
        [
            SeasonTable.Trial("north", 1),
            SeasonTable.Trial("south", 2, alpha: 0.05),
            new("east", TrialAnalysisTests.Example("drag-chains"), "e"),
            new("west", TrialAnalysisTests.Example("drag-chains"), "w"),
            new("one pair", TrialAnalysis.Of(ComparisonTrial.Pairs([1], [0])), "o"),
        ];
        SeasonTrial[] pooled = [.. trials.Where(trial => trial.Identity.Control == "none")];
        var reading = table.Write(pooled).Read();

        Assert.Empty(reading.Problems);
        Assert.True(reading.HasStrips);
        Assert.Equal(Json([.. pooled.Select(trial => PooledSite.Of(trial.Id, trial.Analysis))]), Json(reading.Sites));
    }

    [Fact]
    public void Read_TrialsInBlocks_PoolToTheByteAsTheTrialsDo()
    {
        SeasonTrial[] trials = [new("a", TrialAnalysisTests.Example("closing-wheels"), "1"), new("b", TrialAnalysisTests.Example("closing-wheels"), "2")];
        var reading = table.Write(trials).Read();

        Assert.Equal(Json([.. trials.Select(trial => PooledSite.Of(trial.Id, trial.Analysis))]), Json(reading.Sites));
    }

    [Fact]
    public void Read_OneMeasureAsked_GivesItAlone()
    {
        var trial = new SeasonTrial("north", TrialAnalysisTests.Example("drag-chains"), "n");
        var reading = SeasonReader.Read(table.Write(trial).Contrasts, new HashSet<string>(["t50"], StringComparer.Ordinal));

        Assert.Equal("t50", Assert.Single(Assert.Single(reading.Sites).Measures).Measure.Id);
        Assert.Equal(trial.Analysis.Measures.Select(measure => measure.Measure.Id), reading.Measures);
    }

    [Fact]
    public void Read_WithoutTheStrips_LeavesOutTheMixedModelAndNothingElse()
    {
        table.Write(SeasonTable.Trial("north", 1), SeasonTable.Trial("south", 2));
        var whole = PooledTrials.Of(table.Read().Sites);
        File.Delete(table.Strips);
        var reading = table.Read();
        var pooled = PooledTrials.Of(reading.Sites);

        Assert.False(reading.HasStrips);
        Assert.Null(Assert.Single(pooled.Comparisons).Mixed);
        Assert.Equal(Assert.Single(whole.Comparisons).Reml, Assert.Single(pooled.Comparisons).Reml);
    }

    [Fact]
    public void Read_SameFilesTwice_Warns()
    {
        var reading = table.Write(SeasonTable.Trial("north", 1), SeasonTable.Trial("south", 2) with { Fingerprint = "mark of north" }).Read();

        Assert.True(reading.IsSound);
        Assert.Contains(reading.Problems, problem => problem.Code == "TK610" && problem.Found.Contains("'north'", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("alpha out of range", "alpha", 7.0, "TK607")]
    [InlineData("error of zero", "standard_error", 0.0, "TK607")]
    [InlineData("difference not a number", "difference", double.NaN, "TK607")]
    [InlineData("degrees of freedom without end", "df", double.PositiveInfinity, "TK607")]
    [InlineData("error without degrees of freedom", "df", null, "TK607")]
    [InlineData("no replicate", "replicates", 0, "TK607")]
    [InlineData("unknown units", "units", "imperial", "TK607")]
    [InlineData("unknown layout", "layout", "rows", "TK607")]
    [InlineData("unknown kind", "kind", "", "TK607")]
    [InlineData("fewer than no blocks", "blocks", -1, "TK607")]
    public void Read_CellThatCannotBe_IsNamedWithItsPlace(string situation, string column, object? cell, string code)
    {
        var reading = table.WriteChanged(field => field, rows => rows[0][SeasonTable.Position(column)] = cell).Read();

        var problem = Assert.Single(reading.Problems);
        Assert.True(problem.Code == code, $"{situation}: {problem}");
        Assert.Equal(1, problem.Location.Line);
        Assert.Empty(reading.Sites);
    }

    [Fact]
    public void Read_EmptyCellThatEveryRowNeeds_IsNamed()
    {
        var reading = table.WriteChanged(field => field with { IsRequired = false }, rows => rows[0][SeasonTable.Position("treatment")] = null).Read();

        Assert.Equal(("TK606", SeasonTable.Position("treatment") + 1), reading.Problems.Select(problem => (problem.Code, problem.Location.Column)).Single());
    }

    [Fact]
    public void Read_RowTwice_IsAnError() =>
        Assert.Equal("TK609", Assert.Single(table.WriteChanged(field => field, rows => rows.Add(rows[0])).Read().Problems).Code);

    [Fact]
    public void Read_RowsOfOneTrialThatDisagree_AreAnError() =>
        Assert.Equal("TK608", Assert.Single(table.WriteChanged(field => field, rows => rows.Add(Changed(rows[0], "title", "another"))).Read().Problems).Code);

    [Fact]
    public void Read_ColumnMissingOrOfAnotherType_IsNamed()
    {
        var missing = table.WriteChanged(field => field.Name == "alpha" ? null : field, _ => { }).Read();
        var other = table.WriteChanged(field => field.Name == "blocks" ? field with { Type = SeasonType.Text } : field, rows => rows.ForEach(row => row[SeasonTable.Position("blocks")] = "5")).Read();

        Assert.Equal("TK603", Assert.Single(missing.Problems).Code);
        Assert.Equal("TK604", Assert.Single(other.Problems).Code);
    }

    [Fact]
    public void Read_ColumnsOptionalAndInAnotherOrder_AreReadAllTheSame()
    {
        // As another engine writes them: nothing is required, and partition columns may have moved.
        table.WriteChanged(field => field with { IsRequired = false }, _ => { });
        var reading = table.Read();

        Assert.Empty(reading.Problems);
        Assert.Single(Assert.Single(reading.Sites).Measures);
    }

    [Fact]
    public void Read_NoParquet_IsAProblem()
    {
        File.WriteAllText(table.Contrasts, "trial,measure\n");

        Assert.Equal("TK601", Assert.Single(table.Read().Problems).Code);
    }

    [Fact]
    public void Read_DamagedFile_NeverThrows()
    {
        var (whole, _) = SeasonTable.Written(SeasonWriter.Parquet, SeasonTable.Trial("north", 1));
        var damages = Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Bool);
        damages.Sample(
            damage =>
            {
                var (at, value, cut) = damage;
                byte[] bytes = cut ? whole[..at] : [.. whole[..at], value, .. whole[(at + 1)..]];
                File.WriteAllBytes(table.Contrasts, bytes);
                var reading = table.Read();
                Assert.True(reading.IsSound || reading.Sites.IsEmpty);
            },
            iter: 200,
            threads: 1);
    }

    private static object?[] Changed(object?[] row, string column, object? cell)
    {
        object?[] changed = [.. row];
        changed[SeasonTable.Position(column)] = cell;
        return changed;
    }

    private static string Json(IReadOnlyList<PooledSite> sites)
    {
        using var stream = new MemoryStream();
        JsonResult.Write(PooledTrials.Of(sites), [], stream);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }
}
