using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using TrialKit.Ingest;
using TrialKit.Reporting.Sheets;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Commands;

/// <summary>The options of <c>trialkit starter</c>, and what they come to.</summary>
internal sealed class StarterOptions
{
    // Shares are written as decimals: what their sum may be off is rounding of the sum.
    private const double Rounding = 1e-9;

    private static readonly string[] Soils = [.. Enum.GetNames<SoilClass>().Select(name => name.ToLowerInvariant())];

    private readonly Argument<string?> folder = new("FOLDER") { Description = "The trial folder; leave it out to give one product by options.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> output = new("--output", "-o") { Description = "Also write FILE.pdf, FILE.html, FILE.json, or CSV tables into a folder.", HelpName = "FILE|DIR" };
    private readonly Option<string?> sheet = new("--sheet") { Description = "Also write a calibration sheet with boxes for each row.", HelpName = "FILE.pdf" };
    private readonly Option<string?> name = new("--name") { Description = "Name of the product; materials such as urea are recognised by it.", HelpName = "NAME" };
    private readonly Option<string?> rate = new("--rate") { Description = "Rate of the product, such as \"5 gal/ac\".", HelpName = "RATE" };
    private readonly Option<string?> density = new("--density") { Description = "Weight of a volume, such as \"11.65 lb/gal\".", HelpName = "DENSITY" };
    private readonly Option<string?> analysis = new("--analysis") { Description = "Guaranteed analysis, such as 10-34-0 or 9-18-9-0.5Zn.", HelpName = "N-P-K" };
    private readonly Option<string?> placement = new("--placement") { Description = "in-furrow, 2x2, 2x0, 2x2x2 or dribble; or shares: in-furrow=0.4,2x2=0.6.", HelpName = "WHERE" };
    private readonly Option<string?> crop = new("--crop") { Description = "The crop; limits depend on it.", HelpName = "CROP" };
    private readonly Option<string?> spacing = new("--row-spacing") { Description = "Distance between rows, such as \"30 in\".", HelpName = "LENGTH" };
    private readonly Option<string?> soil = new("--soil") { Description = "The soil's class: sandy, medium or fine. It is never assumed.", HelpName = "CLASS" };
    private readonly Option<string?> exchange = new("--cec") { Description = "Cation exchange capacity, such as \"14 meq/100g\".", HelpName = "CEC" };
    private readonly Option<string?> speed = new("--speed") { Description = "Speed of the planter, such as \"5 mph\".", HelpName = "SPEED" };
    private readonly Option<string?> pressure = new("--pressure") { Description = "Pressure at the outlets of every placement now, such as \"20 psi\".", HelpName = "PRESSURE" };
    private readonly Option<string[]> outlets = new("--outlets") { Description = "Flow coefficients of a row's outlets that share a pressure, by placement: 2x2x2=0.04,0.06; the placement may be left out where liquids go to one alone. Give it again for another placement.", HelpName = "WHERE=K,K", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> rows = new("--rows") { Description = "Rows of the planter, for the calibration sheet.", HelpName = "N" };
    private readonly Option<string?> units = new("--units") { Description = "Units printed: us or metric; the trial's own when not given.", HelpName = "UNITS" };
    private readonly Option<bool> quiet = CommonOptions.Quiet();

    public void AddTo(Command command)
    {
        soil.AcceptOnlyFromAmong(Soils);
        units.AcceptOnlyFromAmong("us", "metric");
        command.Arguments.Add(folder);
        Option[] options = [output, sheet, name, rate, density, analysis, placement, crop, spacing, soil, exchange, speed, pressure, outlets, rows, units, quiet];
        foreach (var option in options)
        {
            command.Options.Add(option);
        }
    }

    /// <summary>The request.</summary>
    /// <exception cref="UsageException">An option cannot be read, or options exclude each other.</exception>
    public StarterRequest Read(ParseResult parsed)
    {
        var isFolder = parsed.GetValue(folder) is not null;
        foreach (var option in new[] { name, rate, density, analysis, placement, crop, spacing })
        {
            if (isFolder && parsed.GetValue(option) is not null)
            {
                throw new UsageException($"{option.Name} is for one product without a folder; the folder's trial.toml says this.");
            }
        }

        CheckPaths(parsed);

        return new StarterRequest
        {
            Folder = parsed.GetValue(folder),
            Output = parsed.GetValue(output),
            Sheet = parsed.GetValue(sheet),
            Quiet = parsed.GetValue(quiet),
            Name = parsed.GetValue(name) is { } named ? Filled(name, named) : null,
            Rate = Value(parsed, rate, OptionText.Rate),
            Density = Value(parsed, density, OptionText.Density),
            Analysis = Value(parsed, analysis, Analysis),
            Placements = parsed.GetValue(placement) is { } where ? Shares(where) : [],
            Crop = parsed.GetValue(crop) is { } grown ? Crop(grown) : null,
            RowSpacing = Value(parsed, spacing, OptionText.Length),
            Soil = Value(parsed, soil, text => Enum.Parse<SoilClass>(text, ignoreCase: true)),
            CationExchange = Value(parsed, exchange, OptionText.CationExchange),
            Speed = Value(parsed, speed, OptionText.Speed),
            Pressure = Value(parsed, pressure, OptionText.Pressure),
            Outlets = [.. (parsed.GetValue(outlets) ?? []).Select(Outlets)],
            Rows = parsed.GetValue(rows) is { } count ? Rows(count) : null,
            Units = Value(parsed, units, text => text == "us" ? UnitSystem.Us : UnitSystem.Metric),
        };
    }

    private static T? Value<T>(ParseResult parsed, Option<string?> option, Func<string, T> read)
        where T : struct
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        try
        {
            return read(text);
        }
        catch (FormatException wrong)
        {
            throw new UsageException($"{option.Name}: {wrong.Message}.");
        }
    }

    private static NutrientAnalysis Analysis(string text) =>
        !NutrientAnalysis.TryParse(text, out var analysis) ? throw new FormatException($"'{text}' was found; the percentages of N, P2O5 and K2O were expected, such as 10-34-0")
        : analysis.Total > 100 ? throw new FormatException(string.Create(CultureInfo.InvariantCulture, $"'{text}' adds up to {analysis.Total} %; 100 % or less was expected"))
        : analysis;

    private ImmutableArray<PlacedShare> Shares(string text)
    {
        ImmutableArray<PlacedShare> shares = [.. text.Split(',', StringSplitOptions.TrimEntries).Select(part => part.Split('=', StringSplitOptions.TrimEntries)).Select(part => new PlacedShare(
            Placements.Find(part[0]) ?? throw new UsageException($"{placement.Name}: '{part[0]}' was found; one of {string.Join(", ", Placements.Names)} was expected."),
            part.Length == 1 ? 1 : Number(placement, part[1])))];
        if (shares.GroupBy(share => share.Placement).FirstOrDefault(group => group.Count() > 1) is { } twice)
        {
            throw new UsageException($"{placement.Name}: {Placements.NameOf(twice.Key)} was found twice; each placement once was expected, with its whole share.");
        }

        var sum = shares.Sum(share => share.Share);
        return Math.Abs(sum - 1) <= Rounding
            ? shares
            : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"{placement.Name}: the shares add up to {sum}; 1 was expected, such as in-furrow=0.4,2x2=0.6."));
    }

    private (Placement? Placement, ImmutableArray<double> Coefficients) Outlets(string text)
    {
        var parts = text.Split('=', StringSplitOptions.TrimEntries);
        Placement? where = parts.Length == 1 ? null
            : Placements.Find(parts[0]) ?? throw new UsageException($"{outlets.Name}: '{parts[0]}' was found; one of {string.Join(", ", Placements.Names)} was expected.");
        return (where, [.. parts[^1].Split(',', StringSplitOptions.TrimEntries).Select(part => Number(outlets, part))]);
    }

    private string Crop(string text) => CropTable.Find(Filled(crop, text))?.Name
        ?? throw new UsageException($"{crop.Name}: '{text}' was found; one of {string.Join(", ", CropTable.Crops.Select(known => known.Name))} was expected.");

    private int Rows(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= CalibrationSheet.MostRows
        ? count
        : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"{rows.Name} is {text}; a whole number from 1 to {CalibrationSheet.MostRows} was expected."));

    /// <summary>Refuses a file that is not written here, and the folder of a trial.</summary>
    private void CheckPaths(ParseResult parsed)
    {
        if (parsed.GetValue(sheet) is { } page)
        {
            TrialFolder.KeepTrials(Filled(sheet, page));
            if (!page.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
            {
                throw new UsageException($"'{page}' is no name of a PDF file; a name that ends in .pdf was expected.");
            }

            if (parsed.GetValue(output) is { } both && string.Equals(Path.GetFullPath(both), Path.GetFullPath(page), StringComparison.OrdinalIgnoreCase))
            {
                throw new UsageException($"{sheet.Name} and {output.Name} both name '{page}'; two files were expected.");
            }
        }

        if (parsed.GetValue(output) is { } written)
        {
            TrialFolder.KeepTrials(Filled(output, written));
            if (Path.GetExtension(written).ToUpperInvariant() is not ("" or ".PDF" or ".HTML" or ".HTM" or ".JSON"))
            {
                throw new UsageException($"'{written}' is no form that is written; FILE.pdf, FILE.html, FILE.json, or a folder for CSV tables was expected.");
            }
        }
    }

    private static string Filled(Option option, string text) => !string.IsNullOrWhiteSpace(text)
        ? text
        : throw new UsageException($"{option.Name} is empty; text was expected.");

    private static double Number(Option option, string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value > 0
            ? value
            : throw new UsageException($"{option.Name}: '{text}' was found; a number above 0 was expected, such as 0.4.");
}
