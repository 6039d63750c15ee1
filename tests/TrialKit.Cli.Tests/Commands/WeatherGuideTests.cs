namespace TrialKit.Cli.Tests.Commands;

/// <summary>Every command line of the guide on weather files runs as it is printed.</summary>
public class WeatherGuideTests
{
    public static TheoryData<string> Lines => [.. File.ReadLines(Path.Combine(Repository.Root, "docs", "guide", "weather-files.md")).Where(line => line.StartsWith("trialkit ", StringComparison.Ordinal))];

    [Fact]
    public void Lines_OfTheGuide_AreSeveral() => Assert.True(Lines.Count >= 4, $"{Lines.Count} command lines");

    [Theory]
    [MemberData(nameof(Lines))]
    public void Run_CommandOfTheGuide_Succeeds(string line)
    {
        using var scratch = new Scratch();
        Days("weather.csv", new DateOnly(2026, 4, 1), new DateOnly(2026, 5, 31), 80);
        Days("week.csv", new DateOnly(2026, 6, 1), new DateOnly(2026, 6, 7), 82);
        File.Copy(Path.Combine(Repository.Root, "tests", "reference-data", "weather", "seattle.dly"), scratch.In("thirty-years.dly"));
        var files = new[] { "weather.csv", "week.csv", "thirty-years.dly", "heat.csv", "heat.svg", "methods.pdf", "window.svg" };

        var (exit, _, error) = Cli.Run([.. Words(line).Skip(1).Select(word => files.Contains(word, StringComparer.Ordinal) ? scratch.In(word) : word)]);

        Assert.True(exit == ExitCode.Done, error);

        void Days(string file, DateOnly first, DateOnly last, int maximum) => File.WriteAllText(
            scratch.In(file),
            "date,tmax_f,tmin_f\n" + string.Concat(Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Select(day => FormattableString.Invariant($"{first.AddDays(day):yyyy-MM-dd},{maximum},60\n"))));
    }

    private static IEnumerable<string> Words(string line) =>
        line.Split('"').SelectMany((part, place) => place % 2 == 1 ? [part] : part.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
