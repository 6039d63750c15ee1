using System.Globalization;

namespace TrialKit.Cli.Tests.Commands;

/// <summary>The whole job gives the same bytes under any culture and in any time zone, also over the nights on which clocks are changed.</summary>
[CollectionDefinition(nameof(ElsewhereTests), DisableParallelization = true)]
[Collection(nameof(ElsewhereTests))]
public class ElsewhereTests
{
    /// <summary>Clocks in Chicago go from 2:00 to 3:00 on 8 March and from 2:00 back to 1:00 on 1 November 2026; those in Kolkata stand half an hour off and stay.</summary>
    public static TheoryData<string, string> Places => new()
    {
        { "de-DE", "Europe/Berlin" },
        { "ar-SA", "Asia/Riyadh" },
        { "fa-IR", "Asia/Kolkata" },
        { "en-US", "America/Chicago" },
        { "tr-TR", "Pacific/Apia" },
    };

    private static readonly Lazy<SortedDictionary<string, string>> AtHome = new(() => Job("", "UTC"));

    [Theory]
    [MemberData(nameof(Places))]
    public void Run_WholeJobElsewhere_WritesTheSameBytes(string culture, string zone)
    {
        var home = AtHome.Value;
        var away = Job(culture, zone);

        Assert.Equal(home.Keys, away.Keys);
        Assert.All(away, file => Assert.True(home[file.Key] == file.Value, $"{file.Key} differs under {culture} in {zone}"));
    }

    /// <summary>12 hours on the clock are half a day, in the night of a change too: what was written down is what counts.</summary>
    [Theory]
    [InlineData("2026-03-07 18:00", "2026-03-08 06:00")]
    [InlineData("2026-10-31 18:00", "2026-11-01 06:00")]
    [InlineData("2026-03-08 02:30", "2026-03-08 14:30")]
    public void Read_VisitsAcrossAChangeOfClocks_AreAsFarApartAsTheyWereWritten(string first, string second)
    {
        using var scratch = new Scratch();
        var planted = first[..10];
        File.WriteAllText(scratch.In("trial.toml"), $"title = \"t\"\ncrop = \"corn\"\n[planting]\ndate = {planted}\nrow_spacing = \"30 in\"\n[design]\nlayout = \"pairs\"\ncontrol = \"a\"\n[[treatment]]\nname = \"a\"\n[[treatment]]\nname = \"b\"\n");
        File.WriteAllText(scratch.In("strips.csv"), "strip,block,treatment\nS1,1,a\nS2,1,b\n");
        File.WriteAllText(scratch.In("emergence.csv"), $"strip,spot,date,plants,length_ft,seeds\nS1,1,{first},0,17.424,34\nS1,1,{second},30,17.424,34\n");

        var apart = In("America/Chicago", "en-US", () =>
        {
            var reading = Ingest.TrialReader.Read(scratch.Folder);
            Assert.True(reading.Trial is not null, string.Join("; ", reading.Problems));
            var visits = reading.Trial!.Emergence[0].Visits;
            return visits[1].At - visits[0].At;
        });

        Assert.Equal(TimeSpan.FromHours(12), apart);
    }

    private static SortedDictionary<string, string> Job(string culture, string zone) => In(zone, culture, () =>
    {
        using var scratch = new Scratch();
        var trial = Changing(scratch);
        Assert.Equal(ExitCode.Done, Cli.Run("analyze", trial, "--output", scratch.In("out"), "--quiet").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("report", trial, "--output", Path.Combine(scratch.In("out"), "a.pdf"), "--quiet").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("report", trial, "--output", Path.Combine(scratch.In("out"), "a.html"), "--quiet").Exit);
        Assert.Equal(ExitCode.Done, Cli.Run("sheets", trial, "--output", scratch.In("out"), "--quiet").Exit);
        return new SortedDictionary<string, string>(Directory.EnumerateFiles(scratch.In("out")).ToDictionary(file => Path.GetFileName(file), file => Convert.ToHexString(File.ReadAllBytes(file)), StringComparer.Ordinal), StringComparer.Ordinal);
    });

    /// <summary>The example with its season moved so that the night of the change to summer time lies between planting and the last visit.</summary>
    private static string Changing(Scratch scratch)
    {
        var trial = scratch.Copy(Repository.Example("drag-chains"));
        var days = new DateOnly(2026, 3, 4).DayNumber - new DateOnly(2014, 5, 8).DayNumber;
        foreach (var file in Directory.EnumerateFiles(trial).Where(file => Path.GetExtension(file) is ".csv" or ".toml"))
        {
            File.WriteAllText(file, Dates().Replace(File.ReadAllText(file), match => DateOnly.ParseExact(match.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture).AddDays(days).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)));
        }

        Assert.Contains("2026-03-08", File.ReadAllText(Path.Combine(trial, "weather.csv")), StringComparison.Ordinal);
        return trial;
    }

    private static System.Text.RegularExpressions.Regex Dates() => new("20[0-9]{2}-[0-9]{2}-[0-9]{2}", System.Text.RegularExpressions.RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5));

    private static T In<T>(string zone, string culture, Func<T> run)
    {
        var (zoneBefore, cultureBefore) = (Environment.GetEnvironmentVariable("TZ"), CultureInfo.CurrentCulture);
        try
        {
            Environment.SetEnvironmentVariable("TZ", zone);
            TimeZoneInfo.ClearCachedData();
            if (!OperatingSystem.IsWindows())
            {
                Assert.Equal(TimeZoneInfo.FindSystemTimeZoneById(zone).BaseUtcOffset, TimeZoneInfo.Local.BaseUtcOffset);
            }

            CultureInfo.CurrentCulture = new CultureInfo(culture);
            return run();
        }
        finally
        {
            Environment.SetEnvironmentVariable("TZ", zoneBefore);
            TimeZoneInfo.ClearCachedData();
            CultureInfo.CurrentCulture = cultureBefore;
        }
    }
}
