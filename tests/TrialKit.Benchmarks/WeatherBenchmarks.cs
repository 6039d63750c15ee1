using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using TrialKit.Ingest;

namespace TrialKit.Benchmarks;

/// <summary>Reading one station of a file of ten stations and a hundred years of daily data in fixed columns, about 36 MB of made-up values.</summary>
[MemoryDiagnoser]
public class WeatherBenchmarks
{
    private const string Station = "XXTIMING005";

    private static readonly string[] Elements = ["TMAX", "TMIN", "PRCP", "SNOW", "SNWD", "TAVG", "TOBS", "AWND", "WDF2", "WSF2", "EVAP"];
    private readonly string file = Path.Combine(Path.GetTempPath(), $"trialkit-{Guid.NewGuid():N}.dly");

    [GlobalSetup]
    public void Write()
    {
        using var writer = new StreamWriter(file, append: false, Encoding.ASCII) { NewLine = "\n" };
        var months = from station in Enumerable.Range(1, 10) from year in Enumerable.Range(1920, 100) from month in Enumerable.Range(1, 12) select (station, year, month);
        foreach (var (station, year, month) in months)
        {
            for (var element = 0; element < Elements.Length; element++)
            {
                writer.WriteLine(Line(station, year, month, element));
            }
        }
    }

    [GlobalCleanup]
    public void Delete() => File.Delete(file);

    [Benchmark]
    public WeatherReading Read() => WeatherReader.Read(file, new WeatherOptions { Station = Station });

    private static string Line(int station, int year, int month, int element)
    {
        var line = new StringBuilder().Append(CultureInfo.InvariantCulture, $"XXTIMING{station:000}{year}{month:00}{Elements[element]}");
        for (var day = 1; day <= 31; day++)
        {
            var tenths = (int)Math.Round(120 + (110 * Math.Sin((month - 4 + (day / 31.0)) * Math.PI / 6)) + (20 * Math.Sin((day * 2.1) + year)) - (element == 0 ? 0 : 90));
            line.Append(day <= DateTime.DaysInMonth(year, month) ? string.Create(CultureInfo.InvariantCulture, $"{tenths,5}  X") : "-9999   ");
        }

        return line.ToString();
    }
}
