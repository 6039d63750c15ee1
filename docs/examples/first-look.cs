// The results of a trial as data frames, in a file that runs as it is:
//
//     dotnet run docs/examples/first-look.cs example-trials/drag-chains
//
// Outside this repository the line below is "#:package TrialKit.DataFrames@0.1.0".
#:project ../../src/TrialKit.DataFrames/TrialKit.DataFrames.csproj
#:property PublishAot=false

using System.Globalization;
using Microsoft.Data.Analysis;
using TrialKit;
using TrialKit.DataFrames;
using TrialKit.Ingest;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

var reading = TrialReader.Read(args[0]);
foreach (var problem in reading.Problems)
{
    Console.Error.WriteLine(problem);
}

if (reading.Trial is not { } trial)
{
    return 1;
}

// Every table that the runner writes as CSV is a frame of the same name.
var analysis = TrialAnalysis.Of(trial);
var comparisons = analysis.ToDataFrame("comparisons");
var shown = comparisons.Filter(comparisons["p"].ElementwiseLessThan(trial.Design.Level.Alpha)).OrderBy("p");
Console.WriteLine($"{trial.Title}: {shown.Rows.Count} of {comparisons.Rows.Count} comparisons below {trial.Design.Level.Alpha}");
for (var row = 0L; row < shown.Rows.Count; row++)
{
    Console.WriteLine($"{shown["measure"][row],-18} {shown["difference"][row],9:0.00} {shown["unit"][row],-10} p {shown["p"][row]:0.0000}");
}

// What each strip came to, by treatment: the strip is the unit.
var strips = analysis.ToDataFrame("strip-values");
var t50 = strips.Filter(strips["measure"].ElementwiseEquals("t50"));
var means = t50.GroupBy("treatment").Mean("value");
for (var row = 0L; row < means.Rows.Count; row++)
{
    Console.WriteLine($"t50 of {means["treatment"][row],-10} {means["value"][row]:0.00} d");
}

return 0;
