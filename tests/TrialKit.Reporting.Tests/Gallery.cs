using TrialKit.Heat;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Reporting.Tests;

/// <summary>Documents that are hard to lay out, and one that is as a report is. All numbers are invented.</summary>
internal static class Gallery
{
    public static readonly DateOnly Planted = new(2026, 4, 27);

    private static readonly ReportFooter Footer = new("TrialKit 0.1.0", "7f3a 91c2");

    public static TheoryData<string, PageSize> Cases()
    {
        var cases = new TheoryData<string, PageSize>();
        foreach (var name in Documents.Keys)
        {
            cases.Add(name, PageSize.Letter);
            cases.Add(name, PageSize.A4);
        }

        return cases;
    }

    private static readonly Dictionary<string, Func<IReadOnlyList<Block>>> Documents = new(StringComparer.Ordinal)
    {
        ["report"] = Report,
        ["nothing at all"] = () => [],
        ["headings only"] = () => [.. Enumerable.Range(0, 60).Select(i => new Heading(1 + (i % 3), FormattableString.Invariant($"Heading {i}")))],
        ["title of 200 letters"] = () => [new Heading(1, Words(200)), new Paragraph(Words(900)), new Heading(2, Words(200))],
        ["long words"] = () =>
        [
            new Heading(1, new string('W', 140)),
            new Paragraph(RichText.Of("before ").Then(new string('m', 400), Emphasis.Strong).Then(" after")),
            new BulletList([new string('x', 300), "short"]),
            new Note(NoteWeight.Doubt, new string('N', 120), new string('n', 260)),
            new KeyFacts([new("crop", new string('c', 150)), new("planted", "April 27, 2026")]),
            new MarkedSentences([new(new string('s', 200), new IntervalMark(-1, 0, 1, MarkTone.NotShown))], new string('l', 60), new string('r', 60)),
        ],
        ["table of 12 columns"] = () => [Grid(12, 30, "a cell of some words"), Grid(12, 8, "31,400"), Grid(14, 6, "unbrokenunbroken")],
        ["table of 300 rows"] = () => [new Paragraph("before"), Grid(5, 300, "31,400", "Every count", "after the table"), new Paragraph("after")],
        ["row higher than a page"] = () => [Table("long row", [TableRow.Of("a", Words(9000)), TableRow.Of("b", "short")])],
        ["head higher than a page"] = () => [new Table(null, [new TableColumn(Words(6000)), new TableColumn("b")], [TableRow.Of("1", "2")])],
        ["empty cells and texts"] = () =>
        [
            new Paragraph(string.Empty), new Heading(2, string.Empty), new BulletList([]), new KeyFacts([]),
            Table(string.Empty, [TableRow.Of(string.Empty, string.Empty)]), Table("no row", []), new Space(0), new Rule(), new PageBreak(), new PageBreak(),
        ],
        ["characters the font lacks"] = () =>
        [
            new Heading(1, "Trial of 玉米 on \U0001F33D hill"), new Paragraph("tab\tand line\nbreak and 種"), Table("表", [TableRow.Of("値", "1")]),
            new FigureBlock(Curves(2, "種")),
        ],
        ["paragraphs over pages"] = () => [.. Enumerable.Range(1, 40).Select(i => new Paragraph(Words(90 * i), (TextSize)(i % 3)))],
        ["figures one after another"] = () => [.. Figures().Select(figure => new FigureBlock(figure, "A caption", null, "A note below it."))],
        ["figure higher than a page"] = () => [new FigureBlock(Curves(2), Words(300), 5000, Words(300))],
        ["heading before a high figure"] = () =>
            [.. Enumerable.Range(0, 25).Select(_ => new Paragraph("A line.")), new Heading(2, "Kept with its figure"), new FigureBlock(Curves(2), "Caption", 400)],
        ["questions with room"] = () =>
        [
            new Heading(1, "Exercise"),
            .. Enumerable.Range(1, 14).SelectMany(i => (Block[])
            [
                new NumberedQuestion(i, Words(60 + (40 * i))),
                new FormGrid([new("Pair", 0.5), new("Difference", 1), new(Words(40), 1.5)], [.. Enumerable.Range(1, i).Select(row => (string[])[FormattableString.Invariant($"{row}"), "", ""])]) { IsWhole = i % 2 == 0 },
                new AnswerRoom(i % 4, [.. Enumerable.Range(1, i).Select(answer => Words(5 * answer))]),
            ]),
            new AnswerRoom(60), new AnswerRoom(0), new AnswerRoom(2, new string('W', 200)),
        ],
        ["spaces and breaks"] = () => [new Space(2000), new PageBreak(), new Paragraph("a"), new PageBreak(), new Space(600), new Paragraph("b"), new Space(600), new Paragraph("c")],
    };

    public static ReportDocument Named(string name, PageSize size = PageSize.Letter) =>
        new(name == "title of 200 letters" ? Words(200) : "Closing chains (invented numbers)", "A trial", "en-US", size, Footer, Documents[name]());

    public static IReadOnlyList<IFigure> Figures() => [Curves(2), Curves(7), Pairs(6), Pairs(40), Pairs(1), Forest(), ForestOfSites(), Means(), Heat(), Spacing(2), Spacing(4), RowMap(1), RowMap(36), DesignMap(12), DesignMap(120), Residuals(), Panels(2), Panels(12), Differences(11), Window(1), Window(60), Methods()];

    public static EmergenceCurvesFigure Curves(int treatments, string name = "treatment") => new(
        Planted,
        [.. Enumerable.Range(0, treatments).Select(i => Curve(i == 0 ? "control" : FormattableString.Invariant($"{name} {i}"), i, 10.4 - (0.3 * i), 0.90 + (0.005 * i)))],
        "heat, F-days",
        [new(0, 0), new(6.1, 100), new(10.1, 200), new(10.4, 210), new(15.9, 300), new(20.6, 400)],
        "Half of the seeds were up 0.3 days sooner.");

    public static RowMapFigure RowMap(int spots) => new(
        "inches along the tape",
        ["first day", "1 day behind", "2 to 3 days", "over 3 days"],
        [.. Enumerable.Range(0, spots).Select(spot => new MappedRow(FormattableString.Invariant($"S{spot:00} A"), [.. Enumerable.Range(0, 30).Select(i => new MappedPlant((6.15 * i) + (i % 7), i % 11 == 10 ? null : (i + spot) % 4))]))],
        "One plant in four came up more than 3 days behind.");

    public static PairedDifferencesFigure Pairs(int count) => new(
        "Days sooner to half up, chains less none",
        "pairs in field order",
        [.. Enumerable.Range(1, count).Select(i => new PairDifference(FormattableString.Invariant($"pair {i}"), i == 4 ? null : 0.3 + (0.2 * Math.Sin(i))))],
        count == 1 ? null : new FigureInterval(0.21, 0.346, 0.47),
        "mean 0.3 days",
        "90 % interval 0.2 to 0.5",
        1,
        "The mean difference was 0.3 days, 0.2 to 0.5.");

    public static ForestOfSitesFigure ForestOfSites() => new(
        "chains less none, bu/ac",
        [
            new("north", "+1.4 (−2.6 to +5.5)", new(-2.6, 1.4, 5.5), 0.5),
            new("a site of a very long name, on the hill behind the elevator", "+7.6 (−2.1 to +17.2)", new(-2.1, 7.6, 17.2), 0.2),
            new("south", "0.0 (−1.0 to +1.0)", new(-1, 0, 1), 0.3),
        ],
        new("together", "+1.9 (−3.1 to +6.0)", new(-3.1, 1.9, 6), 1),
        new(-6, 1.9, 9),
        "No difference was shown over three sites.");

    public static ForestOfMeasuresFigure Forest() => new(
        "less with chains",
        "more with chains",
        [
            new("Final stand", "+600 (−20 to 1,190) plants/ac", new(-20, 600, 1190, MarkTone.NotShown)),
            new("Days to half up", "−0.3 (−0.5 to −0.2) days", new(-0.47, -0.346, -0.21, MarkTone.Shown)),
            new("Nine in ten up", "−0.4 days or less", new(double.NegativeInfinity, -0.6, -0.4, MarkTone.Shown)),
            new("Yield", "not recorded", null),
        ],
        "Days to half up differed; final stand was not shown to.");

    public static TreatmentMeansFigure Means() => new(
        "Stand, plants per acre",
        0,
        [.. Enumerable.Range(0, 5).Select(i => new TreatmentMean(
            FormattableString.Invariant($"treatment {i}"), i, [30000, 31000 + (100 * i), 30500], new(30200, 30500 + (30 * i), 31000), "30,500"))],
        "Five treatments lay within 120 plants.");

    public static HeatFigure Heat() => new(
        "F-days",
        [.. Enumerable.Range(0, 30).Select(i => new HeatDay(Planted.AddDays(i), i == 13 ? null : 8 + (0.35 * i), (DayKind)Math.Min(3, i / 6)))],
        [new(Planted, "planted"), new(Planted.AddDays(10), "half up"), new(Planted.AddDays(11), "nine in ten up")],
        "Half of the seeds were up after 98 F-days.");

    public static PlantingWindowFigure Window(int dates) => new(
        [.. Enumerable.Range(0, dates).Select(i => new WindowRow(Planted.AddDays(i), Planted.AddDays(i + 12), i == 3 ? null : Planted.AddDays(i + 14), [DayKind.Observed, DayKind.Filled, DayKind.Forecast, DayKind.Normal], i > 55 ? "not reached" : null))],
        "Planted a day later, emergence is a day later.");

    public static HeatMethodsFigure Methods() => new(
        Planted,
        [.. Enumerable.Range(0, 9).Select(i => new HeatSeries(FormattableString.Invariant($"method {i} of some length"), i == 8 ? "CHU" : "F-days", [.. Enumerable.Range(1, 30).Select(day => (8.0 + i) * day)], i == 4 ? 20 : 30, "240"))],
        "2 days filled",
        "Nine methods lie between 240 and 480 F-days; one stops at a missing day.");

    public static SpacingFigure Spacing(int treatments) => new(
        "space between plants, inches",
        [.. Enumerable.Range(0, 25).Select(i => 0.75 * i)],
        [
            new("no chains", 0, [.. Enumerable.Range(0, 24).Select(i => i is > 3 and < 12 ? 0.1 : 0.0125)]),
            .. Enumerable.Range(1, treatments - 1).Select(tone => new SpacingSeries(FormattableString.Invariant($"chains {tone}"), tone, [.. Enumerable.Range(0, 24).Select(i => i is > 4 and < 11 ? 0.14 : 0.01)])),
        ],
        [new(0, 3.1, "double"), new(3.1, 9.3, "single"), new(9.3, double.PositiveInfinity, "skip")],
        "Spacings were alike.");

    public static DesignMapFigure DesignMap(int strips) => new(
        [.. Enumerable.Range(0, strips).Select(i => new MapCell(FormattableString.Invariant($"S{i + 1:00}"), FormattableString.Invariant($"block {1 + (i / 2)}"), i % 2, i != 5))],
        [new("no chains", 0), new("chains", 1)],
        "Strips alternate.");

    public static ResidualFigure Residuals() => new(
        "difference less its mean, days", "mean of the pair, days", [.. Enumerable.Range(0, 9).Select(i => new ResidualPoint(9 + (0.2 * i), Math.Sin(i), i % 3))], "Pair 5 lies furthest from the mean.");

    public static PanelsFigure Panels(int treatments) => new([new("Seeds up by day", Curves(treatments), 1.5), new("Half up, pair by pair", Pairs(6))], "Half of the seeds were up 0.3 days sooner.");

    public static TreatmentMeansFigure Differences(int treatments) => new(
        "less no chains, days",
        0,
        [.. Enumerable.Range(1, treatments).Select(i => new TreatmentMean(FormattableString.Invariant($"treatment {i}"), i, [-0.2 * i, 0.1, 0.05 * i], new(-0.1 * i, -0.01 * i, 0.1), "−0.1"))],
        "No treatment was sooner.",
        aroundZero: true);

    public static string Words(int letters)
    {
        string[] words = ["strips", "of", "corn", "came", "up", "a", "day", "sooner", "behind", "the", "chains", "than", "without"];
        var text = string.Join(' ', Enumerable.Range(0, letters).Select(i => words[i % words.Length]));
        return text[..letters].TrimEnd();
    }

    private static EmergenceCurve Curve(string name, int tone, double half, double top)
    {
        double At(double day) => day <= 0 ? 0 : top / (1 + Math.Exp(-16 * (Math.Log(day) - Math.Log(half))));
        return new(
            name,
            tone,
            [.. Enumerable.Range(0, 100).Select(i => new CurvePoint(0.217 * i, At(0.217 * i)))],
            [[.. new[] { 7, 8, 9, 10, 11, 12, 14, 17, 21 }.Select(day => new CurvePoint(day, At(day)))]],
            [new UndefinedStretch(2, 7, 0, At(7))]);
    }

    private static Table Table(string caption, IReadOnlyList<TableRow> rows) => new(caption, [new("Strip"), new("Words")], rows);

    private static Table Grid(int columns, int rows, string cell, string? caption = null, string? note = null) => new(
        caption,
        [.. Enumerable.Range(1, columns).Select(i => new TableColumn(
            FormattableString.Invariant($"Column {i}"), i % 2 == 0 ? "plants/ac" : null, (ColumnAlignment)(i % 3)))],
        [.. Enumerable.Range(1, rows).Select(row => new TableRow(
            [.. Enumerable.Range(1, columns).Select(i => i == 1 ? FormattableString.Invariant($"r{row}") : cell)], row % 7 == 0))],
        note);

    private static IReadOnlyList<Block> Report() =>
    [
        new Heading(1, "Do closing chains bring corn up sooner?"),
        new KeyFacts([new("crop", "corn"), new("planted", "April 27, 2026"), new("layout", "6 pairs of strips"), new("site", "north quarter, silt loam")]),
        new MarkedSentences(
            [
                new(RichText.Of("The chains brought the stand up a third of a day sooner", Emphasis.Strong).Then(" (8 hours; 5 to 11)."), new(-0.47, -0.346, -0.21, MarkTone.Shown)),
                new("No difference in final stand was shown: 600 plants an acre more, 20 fewer to 1,190 more.", new(-20, 600, 1190, MarkTone.NotShown)),
                new("Yield was not recorded."),
            ],
            "less",
            "more with chains"),
        new FigureBlock(Curves(2), "Share of seeds up by day", 230),
        new FigureBlock(Pairs(6), "How much sooner each pair was half up", 120),
        new Heading(2, "Doubts"),
        new Note(NoteWeight.Doubt, "Strip 7 was counted in one spot only", "Its stand rests on 17.5 ft of row."),
        new Note(NoteWeight.Grave, "Two strips share a name", "Give each its own."),
        new Heading(2, "The measures side by side"),
        Grid(5, 6, "31,400", "Measures by treatment", "Differences are chains less none."),
        new BulletList(["Counts are of plants standing.", RichText.Of("An interval that ").Then("holds zero", Emphasis.Italic).Then(" leaves the direction open.")]),
        new Rule(),
        new Paragraph("Method: paired t (Student 1908).", TextSize.Small),
    ];
}
