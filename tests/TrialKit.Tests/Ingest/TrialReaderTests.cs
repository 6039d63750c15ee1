using System.Globalization;
using TrialKit.Fuzz;
using TrialKit.Quantities;
using TrialKit.Trials;

namespace TrialKit.Tests.Ingest;

public class TrialReaderTests
{
    [Fact]
    public void Read_SoundFolder_HasNoProblems()
    {
        using var folder = TrialFolder.Sound();

        var reading = folder.Read();

        Assert.Empty(reading.Problems);
        Assert.NotNull(reading.Trial);
        Assert.Equal(folder.Path, reading.Folder);
    }

    [Fact]
    public void Read_FolderWithNothingMeasured_IsAPlanWithoutProblems()
    {
        using var folder = TrialFolder.Sound();
        foreach (var table in new[] { "stand-counts.csv", "emergence.csv", "plants.csv", "harvest.csv", "measures.csv" })
        {
            folder.Remove(table);
        }

        var reading = folder.Write("stand-counts.csv", "strip,length_ft,plants\n").Read();

        Assert.Empty(reading.Problems);
        Assert.True(reading.Trial!.IsPlan);
    }

    [Fact]
    public void Read_SoundFolder_HoldsTheSettings()
    {
        using var folder = TrialFolder.Sound();

        var trial = folder.Read().Trial!;

        Assert.Equal("Chains behind the closing wheels", trial.Title);
        Assert.Equal("Do drag chains bring the stand up sooner?", trial.Question);
        Assert.Equal("corn", trial.Crop.Name);
        Assert.Equal(UnitSystem.Us, trial.Units);
        Assert.Equal(new Site("North field", 41.5, -93.2, Soil: null, Tillage: null, PreviousCrop: null), trial.Site);
        Assert.Equal(new DateOnly(2026, 4, 27), trial.Planting.Date);
        Assert.Equal(30, trial.Planting.RowSpacing.Inches);
        Assert.Equal(34000, trial.Planting.Seeds!.Value.PerAcre, Tolerances.ClosedForm);
        Assert.Equal(2.25, trial.Planting.Depth!.Value.Inches);
        Assert.Equal(95, trial.Planting.Germination!.Value.Percent);
        Assert.Equal(Layout.Pairs, trial.Design.Layout);
        Assert.Equal("No chains", trial.Design.Control!.Label);
        Assert.Equal(0.10, trial.Design.Level.Alpha);
        Assert.Equal(new HeatSettings(HeatMethods.Corn, CountPlantingDay: true), trial.Heat);
        Assert.Equal(4.50, trial.GrainPrice!.Value.PerBushel(trial.Crop.Bushel!.Value), Tolerances.ClosedForm);
        Assert.Equal("$", trial.GrainPrice.Value.Currency);
    }

    [Fact]
    public void Read_SoundFolder_HoldsTreatmentsAndProducts()
    {
        using var folder = TrialFolder.Sound();

        var treatment = folder.Read().Trial!.Treatments[1];

        Assert.Equal(("chains", "Drag chains"), (treatment.Name, treatment.Label));
        Assert.Equal(1.40, treatment.Cost!.Value.PerAcre, Tolerances.ClosedForm);
        var product = Assert.Single(treatment.Products);
        Assert.Equal(new PlacedShare(Placement.InFurrow, 1), product.Placements.Single());
        Assert.True(product.Rate.IsVolume);
        Assert.Equal(5, product.Rate.PerAcreUs, Tolerances.ClosedForm);
        Assert.Equal(11.65, LiquidDensity.PoundsPerGallon(product.Density!.Value), Tolerances.ClosedForm);
        Assert.Equal(new NutrientAnalysis(10, 34, 0, 0), product.Analysis);
    }

    [Fact]
    public void Read_SoundFolder_HoldsEveryTable()
    {
        using var folder = TrialFolder.Sound();

        var trial = folder.Read().Trial!;

        Assert.Equal(["A1", "A2", "B1", "B2"], trial.Strips.Select(strip => strip.Name));
        Assert.Equal([new DateOnly(2026, 4, 27), new DateOnly(2026, 4, 28)], trial.Strips.Select(strip => strip.Planted).Distinct());
        Assert.Same(trial.Treatments[1], trial.Strips[1].Treatment);
        Assert.Same(trial.Strips[2], trial.StandCounts[2].Strip);
        Assert.Equal(17.424, trial.StandCounts[0].Row.Feet);
        Assert.Equal([30, 31, 32, 29], trial.StandCounts.Select(count => count.Plants));
        Assert.Equal([0, 12, 30], trial.Emergence[0].Visits.Select(visit => visit.Plants));
        Assert.Equal(34, trial.Emergence[0].Seeds);
        Assert.Equal(new DateTime(2026, 5, 4, 17, 30, 0, DateTimeKind.Unspecified), trial.Plants[2].FirstSeen);
        Assert.Equal([PlantFate.Ordinary, PlantFate.Double, PlantFate.Ordinary], trial.Plants.Select(plant => plant.Fate));
        Assert.Equal(1.1, trial.Plants[0].Mesocotyl!.Value.Inches);
        Assert.Null(trial.Plants[1].Mesocotyl);
        Assert.Equal(2500, trial.Harvests[0].Weight.Pounds);
        Assert.Equal(17.5, trial.Harvests[0].Moisture.Percent);
        Assert.Equal(10_000, trial.Harvests[0].HarvestedArea!.Value.SquareFeet, Tolerances.ClosedForm);
        Assert.Null(trial.Harvests[3].TestWeight);
        Assert.Equal(("residue", 40.0, "%"), (trial.Measurements[0].Measure, trial.Measurements[0].Value, trial.Measurements[0].Unit));
        Assert.Equal(11, trial.Weather!.Days.Length);
        Assert.Equal("weather.csv", trial.Weather.Source);
        Assert.Equal(10, trial.SoilTemperature!.Days.Length);
    }

    /// <summary>A U.S. bushel is 2150.42 cubic inches, 35.239 litres (NIST Handbook 44, appendix C).</summary>
    [Fact]
    public void Read_TestWeightInPoundsPerBushel_IsADensity()
    {
        using var folder = TrialFolder.Sound();

        var density = folder.Read().Trial!.Harvests[0].TestWeight!.Value;

        Assert.Equal(56 * 0.45359237 / 35.23907016688, density.KilogramsPerLiter, Tolerances.ClosedForm);
    }

    [Fact]
    public void Read_SoundFolder_CountsTheRowsOfEachTable()
    {
        using var folder = TrialFolder.Sound();

        var rows = folder.Read().Tables.Select(table => $"{table.Table} {table.File} {table.Read} {table.Used} {table.LeftOut}");

        Assert.Equal(
            [
                "strips strips.csv 4 4 0", "stand-counts stand-counts.csv 4 4 0", "emergence emergence.csv 6 6 0", "plants plants.csv 3 3 0",
                "harvest harvest.csv 4 4 0", "measures measures.csv 2 2 0", "weather weather.csv 11 11 0", "soil-temperature soil-temperature.csv 10 10 0",
            ],
            rows);
    }

    [Fact]
    public void Read_RowsWithNothingRecorded_AreCountedAsLeftOut()
    {
        using var folder = TrialFolder.OfCase("cell-visit-not-recorded");

        var table = folder.Read().Tables.Single(rows => rows.Table == "emergence");

        Assert.Equal((6, 5, 1), (table.Read, table.Used, table.LeftOut));
    }

    [Fact]
    public void Read_SettingsStripsAndCountsOnly_IsComplete()
    {
        using var folder = TrialFolder.Empty()
            .Write("trial.toml", TrialFolder.SoundText("trial.toml").Replace("file = \"weather.csv\"\n", string.Empty, StringComparison.Ordinal))
            .Write("strips.csv", TrialFolder.SoundText("strips.csv"))
            .Write("stand-counts.csv", TrialFolder.SoundText("stand-counts.csv"));

        var reading = folder.Read();

        Assert.Empty(reading.Problems);
        Assert.Null(reading.Trial!.Weather);
        Assert.Empty(reading.Trial.Emergence);
    }

    [Fact]
    public void Read_NoFolder_IsAnError()
    {
        using var folder = TrialFolder.Empty();
        var nowhere = Path.Combine(folder.Path, "nowhere");

        var reading = global::TrialKit.Ingest.TrialReader.Read(nowhere);

        Assert.Null(reading.Trial);
        Assert.Equal($"{nowhere}:1:1: error TK501: the folder does not exist; a trial folder with trial.toml, strips.csv and stand-counts.csv was expected", Assert.Single(reading.Problems).ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    public void Read_NoPath_Throws(string? path) =>
        Assert.ThrowsAny<ArgumentException>(() => global::TrialKit.Ingest.TrialReader.Read(path!));

    [Fact]
    public void Read_UnderADecimalCommaCulture_ReadsAndReportsTheSame()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            using var folder = TrialFolder.Sound();
            using var broken = TrialFolder.OfCase("weather-outlandish");
            var (expected, expectedProblems) = (TrialText.Of(folder.Read().Trial!), broken.Problems());
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.Equal(expected, TrialText.Of(folder.Read().Trial!));
            Assert.Equal(expectedProblems, broken.Problems());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Read_NewPlants_AreSummedToThePlantsStanding()
    {
        using var folder = TrialFolder.Sound()
            .Write("emergence.csv", "strip,spot,date,new plants\nA1,1,2026-05-02,0\na1 ,1,2026-05-04,12\nA1,1,2026-05-06,18\n");

        var spot = Assert.Single(folder.Read().Trial!.Emergence);

        Assert.Equal([0, 12, 30], spot.Visits.Select(visit => visit.Plants));
    }

    [Fact]
    public void Read_HourlyTemperatures_BecomeTheExtremesOfEachWholeDay()
    {
        var hours = string.Concat(Enumerable.Range(0, 24 * 10).Select(hour =>
            new DateTime(2026, 4, 27, 0, 30, 0, DateTimeKind.Unspecified).AddHours(hour).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)
            + string.Create(CultureInfo.InvariantCulture, $",{10 + (hour % 24)}\n")));
        using var folder = TrialFolder.Sound().Write("soil-temperature.csv", "Date-Time,Temp (C)\n" + hours);

        var series = folder.Read().Trial!.SoilTemperature!;

        Assert.Equal(10, series.Days.Length);
        Assert.All(series.Days, day => Assert.Equal((10.0, 33.0), (day.Minimum.DegreesCelsius, day.Maximum.DegreesCelsius)));
    }

    [Fact]
    public void Read_OwnCrop_HasItsFiguresAndKeepsTheOthers()
    {
        using var folder = TrialFolder.Sound()
            .Replace("trial.toml", "crop = \"corn\"\n", string.Empty)
            .Replace("trial.toml", "heat = \"corn 86/50\"\n", string.Empty)
            .Replace("trial.toml", "[site]", "[crop]\nname = \"corn\"\nstandard_moisture = \"15 %\"\nheat_base = \"10 C\"\nheat_ceiling = \"30 C\"\n\n[site]");

        var trial = folder.Read().Trial!;

        Assert.Equal(15, trial.Crop.StandardMoisture!.Value.Percent);
        Assert.Equal(56, trial.Crop.Bushel!.Value.Pounds);
        Assert.Equal(("corn 30 C/10 C", HeatRule.ExtremesClipped), (trial.Heat.Method.Name, trial.Heat.Method.Rule));
    }

    [Fact]
    public void Read_LinkOutOfTheFolder_IsAnError()
    {
        using var outside = TrialFolder.Sound();
        using var folder = TrialFolder.Sound().Remove("weather.csv");
        File.CreateSymbolicLink(Path.Combine(folder.Path, "weather.csv"), Path.Combine(outside.Path, "weather.csv"));

        Assert.Equal(
            ["weather.csv:1:1: error TK506: the path 'weather.csv' leaves the trial folder; the name of a file inside the folder was expected, such as \"weather.csv\""],
            folder.Problems());
    }

    [Fact]
    public void Read_FileBehindALinkOutOfTheFolder_IsAnError()
    {
        using var outside = TrialFolder.Sound();
        using var folder = TrialFolder.Sound().Replace("trial.toml", "\"weather.csv\"", "\"station/weather.csv\"");
        Directory.CreateSymbolicLink(Path.Combine(folder.Path, "station"), outside.Path);

        Assert.Equal("TK506", Assert.Single(folder.Read().Errors).Code);
    }

    [Fact]
    public void Read_FileInAFolderWithin_IsRead()
    {
        using var folder = TrialFolder.Sound().Replace("trial.toml", "\"weather.csv\"", "\"station/weather.csv\"");
        Directory.CreateDirectory(Path.Combine(folder.Path, "station"));
        File.Move(Path.Combine(folder.Path, "weather.csv"), Path.Combine(folder.Path, "station", "weather.csv"));

        Assert.Equal("station/weather.csv", folder.Read().Trial!.Weather!.Source);
    }

    [Theory]
    [InlineData("trial.toml")]
    [InlineData("measures.csv")]
    [InlineData("trial.xlsx")]
    public void Read_FileHeldByAnotherProgram_IsAnError(string file)
    {
        using var folder = TrialFolder.Sound().Write("trial.xlsx", new SheetWriter().AddCsv("remarks", "a\n").ToBytes());
        using var held = new FileStream(Path.Combine(folder.Path, file), FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        var problem = Assert.Single(folder.Read().Errors);

        Assert.Equal(("TK505", $"{file}:1:1"), (problem.Code, problem.Location.ToString()));
    }

    [Fact]
    public void Read_FileBeyondTheLimit_IsAnErrorAndIsNotRead()
    {
        using var folder = TrialFolder.Sound();
        using (var file = File.OpenWrite(Path.Combine(folder.Path, "measures.csv")))
        {
            file.SetLength((256L * 1024 * 1024) + 1);
        }

        Assert.Equal(["measures.csv:1:1: error TK503: the file has 256.0 MB; at most 256 MB was expected"], folder.Problems());
    }
}
