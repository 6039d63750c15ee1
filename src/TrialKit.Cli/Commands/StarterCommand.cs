using System.Collections.Immutable;
using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Sheets;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit starter</c>: what is put near the seed, from a trial folder or from options for one product.</summary>
internal static class StarterCommand
{
    public static Command Create(Terminal terminal)
    {
        var options = new StarterOptions();
        var command = new Command("starter", "Amounts near the seed per area and along the row, held against published limits, and the flow to set. From a trial folder, or from options for one product. The product's label governs.");
        options.AddTo(command);
        command.SetAction(parsed => Run(options.Read(parsed), terminal));
        return command;
    }

    private static int Run(StarterRequest request, Terminal terminal)
    {
        var source = StarterSource.Of(request, terminal);
        if (source is null)
        {
            return ExitCode.DataErrors;
        }

        var review = source.Review;
        var flows = source.Speed is { } speed ? StreamFlow.Of(review, new(speed, request.Pressure, request.Outlets)) : [];
        if (!request.Quiet)
        {
            StarterPrinter.Print(review, flows, source.Units, terminal);
            FindingPrinter.Print(review.Findings, [], terminal);
            if (flows.IsEmpty && review.Liquids.Any())
            {
                terminal.Out.WriteLine("For the flow of a row give the planter's speed: --speed \"5 mph\".");
            }
        }

        var size = source.Units == UnitSystem.Us ? PageSize.Letter : PageSize.A4;
        if (request.Output is { } output)
        {
            Write(output, source, flows, size, request, terminal);
        }

        if (request.Sheet is { } sheet)
        {
            WriteSheet(sheet, source, flows, size, request, terminal);
        }

        return ExitCode.Done;
    }

    private static void Write(string output, StarterSource source, ImmutableArray<StreamFlow> flows, PageSize size, StarterRequest request, Terminal terminal)
    {
        var tables = StarterTables.Of(source.Review, flows);
        switch (Path.GetExtension(output).ToUpperInvariant())
        {
            case ".PDF":
                var bytes = PdfReport.Render(StarterReport.Of(source.Title, source.Review, flows, source.Units, size, source.Inputs));
                WholeFile.Write(output, stream => stream.Write(bytes));
                break;
            case ".JSON":
                WholeFile.Write(output, stream => JsonResult.Write(tables, stream));
                break;
            default:
                TrialFolder.WriteTables(tables, output);
                break;
        }

        Say(request, terminal, output);
    }

    private static void WriteSheet(string sheet, StarterSource source, ImmutableArray<StreamFlow> flows, PageSize size, StarterRequest request, Terminal terminal)
    {
        if (flows.IsEmpty)
        {
            throw new UsageException("a calibration sheet needs a liquid product and the planter's speed: give --speed \"5 mph\".");
        }

        var rows = request.Rows ?? source.Rows ?? throw new UsageException("a calibration sheet needs the rows of the planter: give --rows 12.");
        var bytes = PdfReport.Render(CalibrationSheet.Of($"Catch test: {source.Title}", flows, rows, source.Units, size, source.Inputs));
        WholeFile.Write(sheet, stream => stream.Write(bytes));
        Say(request, terminal, sheet);
    }

    private static void Say(StarterRequest request, Terminal terminal, string path)
    {
        if (!request.Quiet)
        {
            terminal.Out.WriteLine($"Wrote {path}. {StarterCautions.LabelFirst}");
        }
    }
}
