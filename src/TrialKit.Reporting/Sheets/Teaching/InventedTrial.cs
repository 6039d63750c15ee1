using System.Globalization;
using System.Text;
using TrialKit.Teaching;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>The trial folder of an exercise: an invented field of strips whose tables hold the sheet's data.</summary>
/// <param name="Title">The trial's title.</param>
/// <param name="Question">The question it asks.</param>
/// <param name="Treatments">Name and label of each treatment, the control first.</param>
/// <param name="Strips">The strips in field order.</param>
internal sealed record InventedTrial(string Title, string Question, IReadOnlyList<(string Name, string Label)> Treatments, IReadOnlyList<InventedStrip> Strips)
{
    /// <summary>Row of a thousandth of an acre at 30 inches, in feet.</summary>
    public const string ThousandthOfAnAcre = "17.424";

    /// <summary>The day an invented trial was planted unless it says another.</summary>
    public static readonly DateOnly Planted = new(2026, 5, 4);

    private const string Remark = "# Invented data of a teaching sheet.\n";
    private const int StripFeet = 600;
    private const int StripWidthFeet = 30;
    private const decimal SquareFeetPerAcre = 43_560;
    private const decimal PoundsPerBushel = 56;

    /// <summary>Further lines of <c>trial.toml</c>; none unless given.</summary>
    public string MoreSettings { get; init; } = string.Empty;

    /// <summary>Further lines of the last treatment, such as what it costs; none unless given.</summary>
    public string LastTreatment { get; init; } = string.Empty;

    /// <summary>The day it was planted.</summary>
    public DateOnly PlantedOn { get; init; } = Planted;

    /// <summary>The crop.</summary>
    public string Crop { get; init; } = "corn";

    /// <summary>Distance between rows, in inches.</summary>
    public int RowInches { get; init; } = 30;

    /// <summary>Seeds dropped on a thousandth of an acre.</summary>
    public int Seeds { get; init; } = 34;

    /// <summary>Strips in pairs or blocks, the order within each drawn.</summary>
    /// <param name="data">Where the order comes from.</param>
    /// <param name="blocks">Pairs or blocks.</param>
    /// <param name="treatments">Names of the treatments.</param>
    public static IReadOnlyList<InventedStrip> Laid(InventedNumbers data, int blocks, params IReadOnlyList<string> treatments) =>
    [
        .. Enumerable.Range(1, blocks)
            .SelectMany(block => data.Shuffled(treatments).Select(treatment => (Block: block, Treatment: treatment)))
            .Select((strip, index) => new InventedStrip(string.Create(CultureInfo.InvariantCulture, $"S{index + 1:00}"), strip.Block, strip.Treatment)),
    ];

    /// <summary>The files: <c>trial.toml</c>, <c>strips.csv</c> and the tables given.</summary>
    public IReadOnlyList<ExerciseFile> Files(params IReadOnlyList<ExerciseFile> tables) =>
    [
        new("trial.toml", Settings()),
        Table("strips.csv", "strip,block,treatment,order,length_ft,width_ft,rows", Strips.Select((strip, index) => string.Create(CultureInfo.InvariantCulture, $"{strip.Name},{strip.Block},{strip.Treatment},{index + 1},{StripFeet},{StripWidthFeet},12"))),
        .. tables,
    ];

    /// <summary>A table of the folder.</summary>
    public static ExerciseFile Table(string name, string header, IEnumerable<string> rows) => new(name, $"{Remark}{header}\n{string.Concat(rows.Select(row => row + "\n"))}");

    /// <summary>Counts of a thousandth of an acre, one or more on each strip.</summary>
    /// <param name="counts">Strip, spot and plants.</param>
    /// <param name="length">Length of row counted, in feet.</param>
    public static ExerciseFile StandCounts(IEnumerable<(string Strip, int Spot, int Plants)> counts, string length = ThousandthOfAnAcre) => Table(
        "stand-counts.csv",
        "strip,spot,date,length_ft,plants",
        counts.Select(count => string.Create(CultureInfo.InvariantCulture, $"{count.Strip},{count.Spot},{Planted.AddDays(28):yyyy-MM-dd},{length},{count.Plants}")));

    /// <summary>One value of a measure on each strip.</summary>
    public static ExerciseFile Measure(string name, string unit, IEnumerable<(string Strip, Rounded Value)> values) => Table(
        "measures.csv",
        "strip,measure,value,unit",
        values.Select(value => string.Create(CultureInfo.InvariantCulture, $"{value.Strip},{name},{value.Value.Written},{unit}")));

    /// <summary>Corn of the strips as it was weighed at standard moisture, from yields in bushels per acre.</summary>
    public static ExerciseFile Harvest(IEnumerable<(string Strip, Rounded Yield)> yields) => Table(
        "harvest.csv",
        "strip,weight_lb,moisture_pct",
        yields.Select(each => string.Create(CultureInfo.InvariantCulture, $"{each.Strip},{each.Yield.Written * PoundsPerBushel * StripFeet * StripWidthFeet / SquareFeetPerAcre:0.00},15.5")));

    /// <summary>The values of a trial in pairs, strip by strip in field order.</summary>
    /// <param name="pairs">The control's and the other's value in each pair.</param>
    public IEnumerable<(string Strip, Rounded Value)> ByStrip(IReadOnlyList<(Rounded Control, Rounded Treated)> pairs) =>
        Strips.Select(strip => (strip.Name, strip.Treatment == Treatments[0].Name ? pairs[strip.Block - 1].Control : pairs[strip.Block - 1].Treated));

    private string Settings()
    {
        var text = new StringBuilder(Remark);
        text.Append(CultureInfo.InvariantCulture, $"title = \"{Title}\"\ncrop = \"{Crop}\"\nquestion = \"{Question}\"\nunits = \"us\"\n");
        text.Append(CultureInfo.InvariantCulture, $"\n[planting]\ndate = {PlantedOn:yyyy-MM-dd}\nrow_spacing = \"{RowInches} in\"\nseeding_rate = \"{Seeds}000 seeds/ac\"\n");
        text.Append(CultureInfo.InvariantCulture, $"\n[design]\nlayout = \"{(Treatments.Count == 2 ? "pairs" : "blocks")}\"\ncontrol = \"{Treatments[0].Name}\"\nalpha = 0.10\n");
        text.Append(MoreSettings);
        foreach (var (name, label) in Treatments)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n[[treatment]]\nname = \"{name}\"\nlabel = \"{label}\"\n");
        }

        return text.Append(LastTreatment).ToString();
    }
}
