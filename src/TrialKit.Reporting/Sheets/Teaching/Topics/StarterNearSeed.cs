using System.Globalization;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Report;
using TrialKit.Starter;
using TrialKit.Teaching;
using TrialKit.Trials;

namespace TrialKit.Reporting.Sheets.Teaching.Topics;

/// <summary>What a rate of starter puts beside the seed, and how it stands to published screening limits, which disagree.</summary>
/// <remarks>Amounts: gallons x pounds per gallon x percent; along the row: pounds per acre x inches of row spacing / 522.72 for 1,000 ft.</remarks>
internal static class StarterNearSeed
{
    private const int Places = 2;
    private const int RowInches = 30;
    private const int NarrowInches = 20;
    private const int Pairs = 4;
    private const int Seeds = 34;
    private const int Injury = -3;
    private const string Crop = "corn";
    private static readonly Rounded ThousandFeet = Rounded.Given(522.72m, 2);
    private static readonly string[] Products = ["10-34-0", "7-21-7", "4-10-10"];

    private static readonly Soil[] Soils =
    [
        new("sandy", 3, 6, [LimitSoil.Sandy, LimitSoil.ExchangeUpTo7, LimitSoil.ExchangeUpTo12]),
        new("medium", 8, 11, [LimitSoil.MediumAndFine, LimitSoil.ExchangeAbove7, LimitSoil.ExchangeUpTo12]),
        new("fine", 14, 24, [LimitSoil.MediumAndFine, LimitSoil.ExchangeAbove7, LimitSoil.ExchangeAbove12]),
    ];

    public static ExerciseTopic Topic { get; } = new(
        "starter",
        "Starter near the seed: how much lies where",
        30,
        "one product in the furrow: amounts, the screen, and what the stand says",
        "a rate split between furrow and band, each judged on its own, and narrower rows",
        Make);

    private static ExercisePaper Make(InventedNumbers data, ExerciseLevel level)
    {
        var isFirst = level == ExerciseLevel.First;
        var soil = data.Shuffled(Soils)[0];
        var exchange = data.Whole(soil.Least, soil.Most);
        var liquid = Liquid.Of(data.Shuffled(Products)[0]);
        Rounded rate = isFirst ? data.Whole(3, 9) : data.Whole(8, 15);
        Rounded percent = isFirst ? 100 : 10 * data.Whole(3, 5);
        var furrow = Placed.Of(liquid, (rate * percent / 100).To(1));
        var band = Placed.Of(liquid, rate - furrow.Gallons);
        var hazards = FurrowHazards.All.Where(hazard => hazard.IsNever && hazard.Material is not null).Select(hazard => hazard.What).ToArray();
        var offered = data.Shuffled([.. hazards, "monopotassium phosphate", "potassium sulfate"])[0];
        var injury = data.Coin() ? Injury : 0;
        var pairs = Enumerable.Range(0, Pairs).Select(_ => Pair(data, injury)).ToArray();
        var strips = InventedTrial.Laid(data, Pairs, "none", "starter");
        return new()
        {
            Given =
            [
                new Paragraph($"A grower plants {Crop} in rows {RowInches} inches apart on {soil.Class} soil whose cation exchange capacity (CEC) is {NumberText.Count(exchange)} meq/100 g. The starter is {liquid.Name}: {liquid.N.Text} % N, {liquid.P2O5.Text} % P2O5 and {liquid.K2O.Text} % K2O, no sulfur, {liquid.Density.Text} pounds a gallon. The planter puts out {rate.Text} gallons per acre{(isFirst ? ", all of it in the furrow with the seed." : $": {percent.Text} % of it in the furrow with the seed, the rest in a band two inches beside and two below.")} The dealer offers to mix in some {offered}."),
                Limits("with the seed", SeedDistance.WithSeed),
                .. isFirst ? [] : (Block[])[Limits("in a 2x2 band", SeedDistance.OverTwoInches, SeedDistance.BesideAndBelowBand)],
                new Paragraph("N+K2O and N+K2O+S are the pounds of these per acre, added. A CEC just at the mark takes the smaller limit.", TextSize.Small),
                new Table(
                    "Kept out of the furrow by published sources",
                    [new("What"), new("Why"), new("Who says so")],
                    [.. FurrowHazards.All.Where(hazard => hazard.IsNever).Select(hazard => TableRow.Of(hazard.What, hazard.Reason, hazard.Source))]),
                new Table(
                    "Plants in a thousandth of an acre, in June",
                    [new("Pair", Alignment: ColumnAlignment.Right), new("No starter", Alignment: ColumnAlignment.Right), new("Starter as above", Alignment: ColumnAlignment.Right)],
                    [.. pairs.Select((pair, i) => TableRow.Of(NumberText.Count(i + 1), pair.Control.Text, pair.Treated.Text))]),
            ],
            Questions =
            [
                .. isFirst ? [] : (Question[])[Split(rate, percent, furrow, band)],
                Amounts(furrow, "", isFirst ? "How many pounds of product, N, P2O5 and K2O per acre lie in the furrow?" : "The furrow: how many pounds of product, N, P2O5 and K2O per acre lie there?"),
                .. isFirst ? [] : (Question[])[Amounts(band, "band-", "The band: how many pounds of product, N, P2O5 and K2O per acre lie there?")],
                AlongRow(furrow, isFirst),
                Screen(furrow, band, soil, isFirst),
                Reached(liquid, soil),
                Offer(offered, hazards),
                Stand(pairs),
            ],
            Wrong = GallonsForPounds(furrow, soil),
            Truths = [new("Starter less none, thousand plants per acre", injury, pairs.Average(pair => (pair.Treated - pair.Control).Exact))],
            Drawn = $"A coin said whether the starter took {NumberText.Number(-Injury, 0)} thousand plants per acre from the stand or none; neither rate nor soil had a say. So sheets of a class have injury under every limit, and none over all of them. Each seed of {Seeds} came up with a chance that changes from pair to pair.",
            Sources =
            [
                .. LimitSources.All.Select(source => $"{Capital(source.Name)}: {source.Title}."),
                "Factors between units: NIST Handbook 44, Appendix C.",
            ],
            Cautions = [.. CautionNotes.All()],
            Files = Trial(strips, pairs, soil, exchange, liquid, rate, percent),
        };
    }

    private static Table Limits(string where, params SeedDistance[] distances) => new(
        $"Published screening limits for corn {where}, pounds per acre",
        [new("Source"), new("Soil"), new("Rows"), new("Added up"), new("Limit", Alignment: ColumnAlignment.Right), new("Value")],
        [
            .. from source in LimitSources.All
               from limit in source.Limits
               where limit.Crop is null or Crop && distances.Contains(limit.Distance)
               select TableRow.Of(
                   Capital(source.Name),
                   limit.SoilWords,
                   limit.RowInches is { } inches ? $"{NumberText.Number(inches, 0)} in" : "not stated",
                   limit.SumWords,
                   NumberText.Number(limit.PoundsPerAcre, 0),
                   limit.IsFromMemory ? "from memory" : "as printed"),
        ]);

    private static Question Split(Rounded rate, Rounded percent, Placed furrow, Placed band) => new(
        "How many gallons per acre go into the furrow, and how many into the band? One decimal.",
        [new AnswerRoom(1, "furrow, gal/ac", "band, gal/ac")],
        [
            KeyStep.Of("gallons", "Furrow, gal/ac", $"{rate.Text} × {percent.Text} ÷ 100", furrow.Gallons),
            KeyStep.Of("band-gallons", "Band, gal/ac", $"{rate.Text} − {furrow.Gallons.Text}", band.Gallons),
        ])
    {
        Remark = "Each placement is judged on its own amount.",
    };

    private static Question Amounts(Placed placed, string prefix, string text) => new(
        $"{text} Gallons times pounds a gallon, then times the percent of each; two decimals. Add N and K2O.",
        [new AnswerRoom(2), new FormGrid([new("Product, lb/ac", 1.2), new("N", 1), new("P2O5", 1), new("K2O", 1), new("N+K2O", 1)], [["", "", "", "", ""]])],
        [
            KeyStep.Of($"{prefix}product", "Product, lb/ac", $"{placed.Gallons.Text} × {placed.Liquid.Density.Text}", placed.Pounds),
            KeyStep.Of($"{prefix}n", "N, lb/ac", $"{placed.Pounds.Text} × {placed.Liquid.N.Text} ÷ 100", placed.N),
            KeyStep.Of($"{prefix}p2o5", "P2O5, lb/ac", $"{placed.Pounds.Text} × {placed.Liquid.P2O5.Text} ÷ 100", placed.P2O5),
            KeyStep.Of($"{prefix}k2o", "K2O, lb/ac", $"{placed.Pounds.Text} × {placed.Liquid.K2O.Text} ÷ 100", placed.K2O),
            KeyStep.Of($"{prefix}added", "N+K2O, lb/ac", $"{placed.N.Text} + {placed.K2O.Text}", placed.Added),
        ]);

    private static Question AlongRow(Placed furrow, bool isFirst) => new(
        $"What lies beside the seed lies along the row. Pounds per acre times the row spacing in inches, divided by 522.72, are pounds in 1,000 feet of row. How many pounds of N+K2O is that in the furrow, to three decimals{(isFirst ? "" : ", and how many in rows 20 inches apart with the same rate per acre")}?",
        [isFirst ? new AnswerRoom(1, "lb in 1,000 ft") : new AnswerRoom(1, "rows of 30 in", "rows of 20 in")],
        [
            KeyStep.Of("row", $"Rows of {RowInches} in", $"{furrow.Added.Text} × {RowInches} ÷ {ThousandFeet.Text}", furrow.AlongRow(RowInches)),
            .. isFirst ? [] : (KeyStep[])[KeyStep.Of("row-narrow", $"Rows of {NarrowInches} in", $"{furrow.Added.Text} × {NarrowInches} ÷ {ThousandFeet.Text}", furrow.AlongRow(NarrowInches))],
        ])
    {
        Remark = "The wider the rows, the more of a rate per acre lies along each foot. That is why one source prints a limit for each row spacing.",
    };

    private static Question Screen(Placed furrow, Placed band, Soil soil, bool isFirst) => new(
        $"Hold the furrow{(isFirst ? "" : ", and then the band,")} against each source that has a limit for it: find the line for these rows and this soil, round the amount to whole pounds, as the limits are printed, and say whether it is over the limit or not. There is no sulfur here, so N+K2O+S is N+K2O.",
        [new AnswerRoom(1, "Kansas State", "laboratory's guide", "Tri-State"), .. isFirst ? [] : (Block[])[new AnswerRoom(0, "band: laboratory's guide", "band: Ohio State")]],
        [
            Held("kansas", "Kansas State", LimitSources.KansasState, SeedDistance.WithSeed, furrow, soil),
            Held("laboratory", "Laboratory's guide", LimitSources.LaboratoryGuide, SeedDistance.WithSeed, furrow, soil),
            Held("tri-state", "Tri-State", LimitSources.TriState, SeedDistance.WithSeed, furrow, soil),
            .. isFirst ? [] : (KeyStep[])
            [
                Held("band-laboratory", "Band: laboratory's guide", LimitSources.LaboratoryGuide, SeedDistance.OverTwoInches, band, soil),
                Held("band-ohio", "Band: Ohio State", LimitSources.OhioState, SeedDistance.BesideAndBelowBand, band, soil),
            ],
        ])
    {
        Remark = "The sources disagree, and that is not settled here. A limit is a screening figure of the source beside it.",
    };

    private static KeyStep Held(string id, string label, LimitSource source, SeedDistance distance, Placed placed, Soil soil)
    {
        var limit = soil.Limit(source, distance);
        return Against(id, label, placed.Added, limit);
    }

    // Whole pounds are held against a limit of whole pounds, on paper and where nothing else is rounded.
    private static KeyStep Against(string id, string label, Rounded amount, Rounded limit)
    {
        var (written, exact) = (amount.To(0), Rounded.Given((decimal)amount.Exact, 0));
        return KeyStep.Words(id, label, $"{amount.Text} is {written.Text}, against {limit.Text}", Verdict(written), Verdict(exact));

        string Verdict(Rounded pounds) => pounds.Written > limit.Written ? "over" : "not over";
    }

    private static Question Reached(Liquid liquid, Soil soil)
    {
        var pounds = (liquid.Density * (liquid.N + liquid.K2O) / 100).To(3);
        return new(
            "How many pounds of N+K2O does one gallon hold, to three decimals? At how many gallons per acre in the furrow would each of the three sources' limits be reached, to one decimal? This finds where the screen changes its answer; it is no rate to apply.",
            [new AnswerRoom(1, "lb in a gallon"), new AnswerRoom(0, "Kansas State", "laboratory's guide", "Tri-State")],
            [
                KeyStep.Of("gallon", "N+K2O in a gallon, lb", $"{liquid.Density.Text} × ({liquid.N.Text} + {liquid.K2O.Text}) ÷ 100", pounds),
                Reach("reach-kansas", "Kansas State, gal/ac", LimitSources.KansasState),
                Reach("reach-laboratory", "Laboratory's guide, gal/ac", LimitSources.LaboratoryGuide),
                Reach("reach-tri-state", "Tri-State, gal/ac", LimitSources.TriState),
            ]);

        KeyStep Reach(string id, string label, LimitSource source)
        {
            var limit = soil.Limit(source, SeedDistance.WithSeed);
            return KeyStep.Of(id, label, $"{limit.Text} ÷ {pounds.Text}", (limit / pounds).To(1));
        }
    }

    private static Question Offer(string offered, string[] hazards)
    {
        var answer = hazards.Contains(offered, StringComparer.Ordinal) ? "never" : "not on the list";
        return new(
            "May what the dealer offers go into the furrow, by the table of what is kept out?",
            [new AnswerRoom(1, "never, or not on the list")],
            [KeyStep.Words("offered", "By the table", offered, answer, answer)])
        {
            Remark = "Not on the list does not mean safe: read the label, and know what a blend is made from. A blend's name does not always tell.",
        };
    }

    private static Question Stand((Rounded Control, Rounded Treated)[] pairs)
    {
        var d = pairs.Select(pair => pair.Treated - pair.Control).ToArray();
        var sum = Rounded.Sum(d);
        return new(
            "Now the stand. A thousandth of an acre was counted, so a count is thousands of plants per acre. What is the mean difference, starter less none, to two decimals? In how many pairs is the stand lower with starter? Does the screen tell you beforehand what you find?",
            [new AnswerRoom(2, "mean difference", "pairs with fewer plants")],
            [
                KeyStep.Of("stand", "Mean difference", $"({string.Join(" + ", d.Select(each => each.InSum))}) ÷ {Pairs}", (sum / Pairs).To(Places)),
                KeyStep.Words("lower", "Pairs with fewer plants", "counted in the table", Lower(d), Lower(d)),
            ])
        {
            Remark = "Four pairs are few: see the sheet on how many strips. Over a limit is no proof of injury, under it no proof of safety; the stand of your own strips is what tells, for that year's soil and rain.",
        };

        static string Lower(Rounded[] d) => NumberText.Count(d.Count(each => each.Written < 0));
    }

    private static WrongAnswer GallonsForPounds(Placed furrow, Soil soil)
    {
        var wrong = (furrow.Gallons * (furrow.Liquid.N + furrow.Liquid.K2O) / 100).To(Places);
        var limit = soil.Limit(LimitSources.KansasState, SeedDistance.WithSeed);
        return new(
            "Percent of gallons in place of percent of pounds",
            "The figures of an analysis are percents by weight. A gallon of these liquids weighs more than ten pounds, so leaving the weight out makes the amount beside the seed look more than ten times too small, and nearly anything passes the screen.",
            KeyStep.Of("wrong-added", "N+K2O of the wrong way", $"{furrow.Gallons.Text} × ({furrow.Liquid.N.Text} + {furrow.Liquid.K2O.Text}) ÷ 100", wrong),
            Against("wrong-kansas", "Kansas State", wrong, limit));
    }

    private static (Rounded Control, Rounded Treated) Pair(InventedNumbers data, int injury)
    {
        var share = data.Between(0.86, 0.94);
        return (data.Binomial(Seeds, share), data.Binomial(Seeds, share + (injury / (double)Seeds)));
    }

    private static IReadOnlyList<ExerciseFile> Trial(IReadOnlyList<InventedStrip> strips, (Rounded Control, Rounded Treated)[] pairs, Soil soil, int exchange, Liquid liquid, Rounded rate, Rounded percent)
    {
        var placement = percent.Written == 100 ? "\"in-furrow\"" : string.Create(CultureInfo.InvariantCulture, $"{{ in-furrow = {percent.Written / 100}, 2x2 = {1 - (percent.Written / 100)} }}");
        var trial = new InventedTrial("Starter near the seed, a teaching sheet", "What does the starter do to the stand?", [("none", "No starter"), ("starter", "Starter")], strips)
        {
            MoreSettings = string.Create(CultureInfo.InvariantCulture, $"\n[site]\nsoil_class = \"{soil.Class}\"\ncec = \"{exchange} meq/100g\"\n"),
            LastTreatment = string.Create(CultureInfo.InvariantCulture, $"\n[[treatment.product]]\nname = \"{liquid.Name}\"\nplacement = {placement}\nrate = \"{rate.Written} gal/ac\"\ndensity = \"{liquid.Density.Written} lb/gal\"\nanalysis = \"{liquid.Name}\"\n"),
        };
        return trial.Files(InventedTrial.StandCounts(trial.ByStrip(pairs).Select(each => (each.Strip, 1, (int)each.Value.Written))));
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A soil: its class, the range of its exchange capacity, and the limits that hold for it.</summary>
    private sealed record Soil(string Class, int Least, int Most, LimitSoil[] Held)
    {
        public Rounded Limit(LimitSource source, SeedDistance distance) => Rounded.Given(
            (decimal)source.Limits.First(limit => limit.Crop is null or Crop && limit.Distance == distance && limit.RowInches is null or RowInches && (limit.Soil == LimitSoil.Any || Held.Contains(limit.Soil))).PoundsPerAcre,
            0);
    }

    /// <summary>A liquid as its label has it.</summary>
    private sealed record Liquid(string Name, Rounded N, Rounded P2O5, Rounded K2O, Rounded Density)
    {
        public static Liquid Of(string name)
        {
            var material = Materials.Find(name)!;
            return new(
                name,
                Rounded.Given((decimal)material.Analysis.N, 0),
                Rounded.Given((decimal)material.Analysis.P2O5, 0),
                Rounded.Given((decimal)material.Analysis.K2O, 0),
                Rounded.Given((decimal)LiquidDensity.PoundsPerGallon(material.Density!.Value), Places));
        }
    }

    /// <summary>What lies at one placement, pounds per acre.</summary>
    private sealed record Placed(Liquid Liquid, Rounded Gallons, Rounded Pounds)
    {
        public Rounded N => Part(Liquid.N);

        public Rounded P2O5 => Part(Liquid.P2O5);

        public Rounded K2O => Part(Liquid.K2O);

        public Rounded Added => N + K2O;

        public static Placed Of(Liquid liquid, Rounded gallons) => new(liquid, gallons, (gallons * liquid.Density).To(Places));

        public Rounded AlongRow(int inches) => (Added * inches / ThousandFeet).To(3);

        private Rounded Part(Rounded percent) => (Pounds * percent / 100).To(Places);
    }
}
