using System.Globalization;
using System.Text;
using System.Text.Json;
using TrialKit.Export;

namespace TrialKit.Tests.Export;

public class WrittenTablesTests
{
    [Fact]
    public void Json_OfAnExample_HoldsEveryCellOfEveryTable()
    {
        var analysis = TrialAnalysisTests.Example("drag-chains");
        using var stream = new MemoryStream();
        JsonResult.Write(analysis, [("trial.toml", "00ff")], stream);
        using var json = JsonDocument.Parse(stream.ToArray());

        Assert.Equal(ResultTables.SchemaVersion, json.RootElement.GetProperty("schema_version").GetInt32());
        Assert.Equal("trial.toml", json.RootElement.GetProperty("inputs")[0].GetProperty("file").GetString());
        foreach (var table in ResultTables.Of(analysis))
        {
            var rows = json.RootElement.GetProperty("tables").GetProperty(table.Name);
            Assert.Equal(table.Rows.Count, rows.GetArrayLength());
            for (var i = 0; i < table.Rows.Count; i++)
            {
                for (var j = 0; j < table.Columns.Length; j++)
                {
                    Assert.Equal(table.Rows[i][j], Cell(rows[i].GetProperty(table.Columns[j].Name), table.Rows[i][j]));
                }
            }
        }
    }

    [Fact]
    public void Tables_OfWhatIsNearTheSeed_CarryTheCautionOnEveryLine()
    {
        var tables = ResultTables.Of(TrialAnalysisTests.Example("starter-placement")).Where(table => table.Name.StartsWith("starter-", StringComparison.Ordinal)).ToArray();

        Assert.Equal(["starter-products", "starter-nutrients", "starter-screen", "starter-salt-index", "starter-flow", "starter-catch", "starter-cautions"], tables.Select(table => table.Name));
        Assert.All(tables.Where(table => table.Name is not ("starter-salt-index" or "starter-cautions")), table => Assert.All(table.Rows, row => Assert.Contains(TrialKit.Starter.StarterCautions.LabelFirst, row)));
        var screen = tables.Single(table => table.Name == "starter-screen");
        var note = screen.Columns.Select(column => column.Name).ToList().IndexOf("source_note");
        Assert.All(TrialKit.Starter.LimitSources.All, source => Assert.Contains(screen.Rows, row => Equals(row[note], source.Note)));
    }

    [Fact]
    public void Csv_NumbersTextAndNothing_AreWrittenSoThatTheyComeBack()
    {
        var table = ResultTable.Of<double>("case", "a row", [0.1 + 0.2, -1e-300], ("number", "a number", value => value), ("text", "a text", _ => "a, \"b\""), ("nothing", "nothing", _ => null), ("flag", "a flag", _ => true));
        using var stream = new MemoryStream();
        CsvTables.Write(table, stream);

        Assert.Equal("number,text,nothing,flag\n0.30000000000000004,\"a, \"\"b\"\"\",,true\n-1E-300,\"a, \"\"b\"\"\",,true\n", Encoding.UTF8.GetString(stream.ToArray()));
    }

    [Fact]
    public void Csv_CellOfAnotherType_IsRefused()
    {
        var table = ResultTable.Of<int>("case", "a row", [1], ("date", "a date", _ => new DateOnly(2026, 5, 1)));
        using var stream = new MemoryStream();

        Assert.Throws<ArgumentException>(() => CsvTables.Write(table, stream));
    }

    private static object? Cell(JsonElement cell, object? like) => cell.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.String => cell.GetString(),
        JsonValueKind.True or JsonValueKind.False => cell.GetBoolean(),
        _ when like is int => cell.GetInt32(),
        _ => double.Parse(cell.GetRawText(), CultureInfo.InvariantCulture),
    };
}
