// One question to a season table, answered by an engine that runs inside this program:
//
//     trialkit collect FOLDER-OF-TRIALS --output season.parquet
//     dotnet run docs/examples/season-query.cs season.parquet
//
// The mean difference in time to 50 % up by crop and year, each trial weighed by its own error.
#:package DuckDB.NET.Data.Full@1.5.6.1
#:property PublishAot=false

using DuckDB.NET.Data;

const string Query = """
    SELECT year, crop, treatment, baseline, unit,
           count(*)                                                             AS trials,
           sum(difference / standard_error ^ 2) / sum(1 / standard_error ^ 2)   AS common_difference,
           count(*) FILTER (verdict = 'shown')                                  AS shown
    FROM read_parquet($season)
    WHERE measure = 't50' AND standard_error IS NOT NULL
    GROUP BY ALL ORDER BY ALL
    """;

using var connection = new DuckDBConnection("DataSource=:memory:");
connection.Open();
using var command = connection.CreateCommand();
command.CommandText = Query;
command.Parameters.Add(new DuckDBParameter("season", args[0]));
using var reader = command.ExecuteReader();
Console.WriteLine(string.Join('\t', Enumerable.Range(0, reader.FieldCount).Select(reader.GetName)));
while (reader.Read())
{
    Console.WriteLine(string.Join('\t', Enumerable.Range(0, reader.FieldCount).Select(column => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{reader.GetValue(column)}"))));
}
