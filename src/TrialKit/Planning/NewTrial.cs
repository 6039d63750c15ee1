using System.Globalization;
using System.Text;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Planning;

/// <summary>The first files of a trial folder, from the few answers that every trial needs.</summary>
public sealed record NewTrial
{
    private const char Quote = '"';

    /// <summary>The trial's title.</summary>
    public required string Title { get; init; }

    /// <summary>The crop by its name.</summary>
    public required string Crop { get; init; }

    /// <summary>The question it asks.</summary>
    public required string Question { get; init; }

    /// <summary>The treatments, the control first, two or more.</summary>
    public required IReadOnlyList<string> Treatments { get; init; }

    /// <summary>The planting date.</summary>
    public required DateOnly Planted { get; init; }

    /// <summary>Distance between rows with its unit, such as <c>30 in</c>.</summary>
    public required string RowSpacing { get; init; }

    /// <summary>Seeds dropped with their unit, such as <c>34000 seeds/ac</c>.</summary>
    public required string SeedingRate { get; init; }

    /// <summary>Rows of the planter.</summary>
    public required int PlanterRows { get; init; }

    /// <summary>Length of the strips with its unit.</summary>
    public required string StripLength { get; init; }

    /// <summary>Pairs or blocks.</summary>
    public required int Replicates { get; init; }

    /// <summary>The units that outputs print.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>The files of the folder: <c>trial.toml</c> and a table of each kind with its header.</summary>
    public IEnumerable<(string File, string Text)> Files()
    {
        var length = Units == UnitSystem.Us ? "ft" : "m";
        var inches = Units == UnitSystem.Us ? "in" : "cm";
        var weight = Units == UnitSystem.Us ? "lb" : "kg";
        yield return ("trial.toml", Toml());
        yield return ("strips.csv", Table("One row for each strip; 'trialkit plan' draws them.", $"strip,block,treatment,order,length_{length},width_{length},rows,left_out,note"));
        yield return ("stand-counts.csv", Table("One row for each count of standing plants.", $"strip,spot,date,length_{length},plants,planter_row"));
        yield return ("emergence.csv", Table("One row for each visit to a spot, with all plants standing; a visit that found nothing is a row with 0.", $"strip,spot,date,plants,length_{length}"));
        yield return ("plants.csv", Table("One row for each plant along the tape.", $"strip,spot,plant,position_{inches},first_seen,collars,depth_{inches},note"));
        yield return ("harvest.csv", Table("One row for each strip weighed.", $"strip,weight_{weight},moisture_pct"));
    }

    private static string Table(string comment, string header) => $"# {comment}\n{header}\n";

    private string Toml()
    {
        var text = new StringBuilder();
        Line($"title = {Text(Title)}");
        Line($"crop = {Text(Crop)}");
        Line($"question = {Text(Question)}");
        Line($"units = {Text(Units == UnitSystem.Us ? "us" : "metric")}             # what reports print: \"us\" or \"metric\"");
        Line($"");
        Line($"[planting]");
        Line($"date = {Planted.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}             # change it on the day");
        Line($"row_spacing = {Text(RowSpacing)}");
        Line($"seeding_rate = {Text(SeedingRate)}");
        Line($"# depth = {Text(Units == UnitSystem.Us ? "2 in" : "5 cm")}");
        Line($"# germination = \"95 %\"        # of the seed tag");
        Line($"");
        Line($"[design]");
        Line($"layout = {Text(Treatments.Count == 2 ? "pairs" : "blocks")}             # pairs hold two treatments, blocks any number");
        Line($"control = {Text(Treatments[0])}             # what the others are compared with");
        Line($"alpha = 0.10                 # the level at which a difference counts as shown");
        Line($"");
        Line($"[field]                      # what 'trialkit plan' draws strips and spots from");
        Line($"length = {Text(StripLength)}          # of a strip, along the rows");
        Line($"planter_rows = {PlanterRows}");
        Line($"replicates = {Replicates}               # pairs or blocks");
        Line($"strip = \"pass\"               # \"pass\", or \"planter half\": both treatments in one pass");
        Line($"spots = 4                    # places for counting in each strip");
        Line($"# border_passes = 1          # passes left on each side of the trial");
        Line($"# width = {Text(Units == UnitSystem.Us ? "600 ft" : "180 m")}           # room across the rows, when it is short");
        Line($"# tramlines = {Text(Units == UnitSystem.Us ? "90 ft" : "27 m")}        # from one sprayer track to the next");
        Line($"# corner_latitude = 41.5     # the corner that strips are counted from, for a map on a phone");
        Line($"# corner_longitude = -93.6");
        Line($"# bearing = 0                # direction of the rows from there, degrees from north over east");
        foreach (var treatment in Treatments)
        {
            Line($"");
            Line($"[[treatment]]");
            Line($"name = {Text(treatment)}");
            Line($"label = {Text(treatment)}             # as printed");
            if (!Identifier.Same(treatment, Treatments[0]))
            {
                Line($"# cost = {Text(Units == UnitSystem.Us ? "1.40 $/ac" : "3.50 $/ha")}         # against the control");
            }
        }

        return text.ToString();

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    // A basic string of TOML: quotes and backslashes are escaped, control characters become spaces.
    private static string Text(string text)
    {
        var escaped = string.Concat(text.Select(letter => char.IsControl(letter) ? " " : letter is Quote or '\\' ? $"\\{letter}" : letter.ToString()));
        return Quote + escaped + Quote;
    }
}
