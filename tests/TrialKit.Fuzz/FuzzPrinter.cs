using System.Globalization;
using TrialKit.Fuzz.Mutation;

namespace TrialKit.Fuzz;

/// <summary>Prints what came of a run.</summary>
internal static class FuzzPrinter
{
    private const int MostPrinted = 40;

    public static void Print(FuzzSettings settings, FuzzTally tally, TimeSpan took, TextWriter writer)
    {
        var rows = tally.Counts.ToArray();
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"seed {settings.Seed}, cases {settings.First} to {settings.First + settings.Cases - 1}, {took.TotalSeconds:0} s"));
        writer.WriteLine();
        writer.WriteLine("| file | bytes | tokens | structure | read all the same | analysed |");
        writer.WriteLine("|---|---|---|---|---|---|");
        foreach (var subject in rows.GroupBy(row => row.Key.Subject, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            var cases = subject.ToDictionary(row => row.Key.Kind, row => row.Value.Cases);
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {subject.Key} | {cases.GetValueOrDefault(MutationKind.Bytes)} | {cases.GetValueOrDefault(MutationKind.Tokens)} | {cases.GetValueOrDefault(MutationKind.Structure)} | {subject.Sum(row => row.Value.Read)} | {subject.Sum(row => row.Value.Analysed)} |"));
        }

        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| all | {Cases(MutationKind.Bytes)} | {Cases(MutationKind.Tokens)} | {Cases(MutationKind.Structure)} | {rows.Sum(row => row.Value.Read)} | {rows.Sum(row => row.Value.Analysed)} |"));
        writer.WriteLine();
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"slowest: case {tally.Slowest.Case}, {tally.Slowest.Took.TotalSeconds:0.00} s"));
        var broken = tally.Broken.ToArray();
        writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"promises broken: {broken.Length}"));
        foreach (var (number, text) in broken.Take(MostPrinted))
        {
            writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"case {number}: {text}"));
        }

        int Cases(MutationKind kind) => rows.Where(row => row.Key.Kind == kind).Sum(row => row.Value.Cases);
    }
}
