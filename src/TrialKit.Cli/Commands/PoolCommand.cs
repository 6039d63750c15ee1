using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit pool</c>: the same comparison at several sites or in several years, put together.</summary>
internal static class PoolCommand
{
    public static Command Create(Terminal terminal)
    {
        var folders = new Argument<string[]>("FOLDER") { Description = "The trial folders, or a folder that holds trial folders, or one season table that 'trialkit collect' wrote (FILE.parquet).", Arity = ArgumentArity.OneOrMore };
        var output = new Option<string?>("--output", "-o") { Description = "Also write a report (FILE.pdf), one document (FILE.json), or a folder with a CSV file per table and pool.json.", HelpName = "FILE.pdf|FILE.json|DIR" };
        var measures = new Option<string[]>("--measure", "-m") { Description = "Put this measure together and no other, by its id, such as t50; may be given several times.", HelpName = "ID" };
        var quiet = CommonOptions.Quiet();
        var command = new Command("pool", "Put the same comparison at several sites or in several years together: each site, the mean over sites, how sites differ, and what to expect at another.")
        {
            folders,
            measures,
            output,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folders), new HashSet<string>(parsed.GetValue(measures) ?? [], StringComparer.Ordinal), parsed.GetValue(output), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string[] named, HashSet<string> measures, string? output, bool quiet, Terminal terminal)
    {
        if (output is not null)
        {
            TrialFolder.KeepTrials(output);
        }

        if (PoolSource.Of(named, measures, terminal) is not { } source)
        {
            return ExitCode.DataErrors;
        }

        var mismatches = PooledTrials.Mismatches(source.Sites).ToArray();
        if (mismatches.Length > 0)
        {
            foreach (var mismatch in mismatches)
            {
                terminal.Error.WriteLine($"trialkit: {mismatch}.");
            }

            return ExitCode.DataErrors;
        }

        terminal.Step("Putting the trials together");
        var pooled = PooledTrials.Of(source.Sites);
        if (!quiet)
        {
            PoolPrinter.Print(pooled, terminal);
        }

        if (output is not null)
        {
            terminal.Step($"Writing {output}");
            Write(pooled, source, output);
            if (!quiet)
            {
                terminal.Out.WriteLine($"Wrote {output}");
            }
        }

        return ExitCode.Done;
    }

    private static void Write(PooledTrials pooled, PoolSource source, string output)
    {
        if (output.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
        {
            var size = pooled.Sites[0].Trial.Units == Quantities.UnitSystem.Us ? PageSize.Letter : PageSize.A4;
            var bytes = PdfReport.Render(PoolReport.Of(pooled, new ReportSettings(size, source.Inputs, [.. source.Warnings])));
            WholeFile.Write(output, stream => stream.Write(bytes));
            return;
        }

        var json = output.EndsWith(".json", StringComparison.OrdinalIgnoreCase) ? output : Path.Combine(output, "pool.json");
        WholeFile.Write(json, stream => JsonResult.Write(pooled, source.Inputs.Select(file => (file.Name, file.Sha256)), stream));
        if (json != output)
        {
            TrialFolder.WriteTables(PoolTables.Of(pooled), output);
        }
    }
}
