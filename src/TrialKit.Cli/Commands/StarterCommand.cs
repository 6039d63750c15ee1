using System.Collections.Immutable;
using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;
using TrialKit.Reporting.Sheets;
using TrialKit.Starter;
using TrialKit.Starter.Flow;
using TrialKit.Trials;
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

        // Whatever is wrong with the command line is said before anything is printed or written.
        var review = source.Review;
        var flows = Flows(source, request);
        var rows = request.Sheet is null ? 0 : SheetRows(source, flows, request);
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
            var bytes = PdfReport.Render(CalibrationSheet.Of($"Catch test: {source.Title}", flows, rows, source.Units, size, source.Inputs));
            WholeFile.Write(sheet, stream => stream.Write(bytes));
            Say(request, terminal, sheet);
        }

        return ExitCode.Done;
    }

    private static ImmutableArray<StreamFlow> Flows(StarterSource source, StarterRequest request)
    {
        Placement[] liquid = [.. source.Review.Liquids.Select(entry => entry.Placed.Placement).Distinct()];
        var outlets = ImmutableArray.CreateBuilder<RowOutlets>();
        foreach (var (named, coefficients) in request.Outlets)
        {
            var placement = named ?? (liquid is [var only] ? only : throw new UsageException(liquid.Length == 0
                ? "--outlets is for liquids, and no liquid is put here."
                : $"--outlets names no placement, and liquids go to {string.Join(" and ", liquid.Select(Placements.NameOf))}; its placement was expected, such as --outlets {Placements.NameOf(liquid[0])}=0.04,0.06."));
            if (!liquid.Contains(placement))
            {
                throw new UsageException($"--outlets names {Placements.NameOf(placement)}, where no liquid goes{(liquid.Length == 0 ? "" : $"; one of {string.Join(", ", liquid.Select(Placements.NameOf))} was expected")}.");
            }

            if (outlets.Any(row => row.Placement == placement))
            {
                throw new UsageException($"--outlets names {Placements.NameOf(placement)} twice; once was expected.");
            }

            outlets.Add(new(placement, coefficients));
        }

        return source.Speed is { } speed ? StreamFlow.Of(source.Review, new(speed, request.Pressure, outlets.ToImmutable())) : [];
    }

    private static int SheetRows(StarterSource source, ImmutableArray<StreamFlow> flows, StarterRequest request)
    {
        if (!source.Review.Liquids.Any())
        {
            throw new UsageException("a calibration sheet is for liquids caught in jugs, and what is put here is given by weight; a rate such as 5 gal/ac was expected.");
        }

        return flows.IsEmpty ? throw new UsageException("a calibration sheet needs the planter's speed: give --speed \"5 mph\".")
            : request.Rows ?? source.Rows ?? throw new UsageException("a calibration sheet needs the rows of the planter: give --rows 12.");
    }

    private static void Write(string output, StarterSource source, ImmutableArray<StreamFlow> flows, PageSize size, StarterRequest request, Terminal terminal)
    {
        var tables = StarterTables.Of(source.Review, flows);
        switch (Path.GetExtension(output).ToUpperInvariant())
        {
            case ".PDF":
                var bytes = PdfReport.Render(Page());
                WholeFile.Write(output, stream => stream.Write(bytes));
                break;
            case ".HTML" or ".HTM":
                var html = HtmlReport.Render(Page());
                WholeFile.Write(output, stream => stream.Write(html));
                break;
            case ".JSON":
                WholeFile.Write(output, stream => JsonResult.Write(tables, stream));
                break;
            default:
                TrialFolder.WriteTables(tables, output);
                break;
        }

        Say(request, terminal, output);

        ReportDocument Page() => StarterReport.Of(source.Title, source.Review, flows, source.Units, size, source.Inputs);
    }

    private static void Say(StarterRequest request, Terminal terminal, string path)
    {
        if (!request.Quiet)
        {
            terminal.Out.WriteLine($"Wrote {path}. {StarterCautions.LabelFirst}");
        }
    }
}
