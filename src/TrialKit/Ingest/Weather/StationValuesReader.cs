using System.Text;
using TrialKit.Ingest.Cells;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Weather;

/// <summary>Reads the yearly files of the Global Historical Climatology Network: a station, a day, an element and its value on each line, with or without a header.</summary>
/// <remarks>Cells: station, date as yyyymmdd, element, value in tenths of a degree Celsius, measurement flag, quality flag, source flag, time.
/// Source: NOAA, GHCN-Daily by_year readme.</remarks>
internal static class StationValuesReader
{
    /// <summary>Reads every line.</summary>
    /// <returns>The days, and the lines of the file.</returns>
    public static (DayRecords Days, int Lines) Read(Utf8Text text, StationDays days, ProblemList problems)
    {
        var place = text.MarkLength;
        var lines = 0;
        var uses = new RowUses();
        while (place < text.Bytes.Length)
        {
            var rest = text.Bytes.AsSpan(place);
            var end = rest.IndexOf((byte)'\n');
            var line = Encoding.UTF8.GetString(end < 0 ? rest : rest[..end]).Trim('\r', ' ');
            if (!WeatherFormats.IsPassedOver(line) && !WeatherFormats.IsValuesHeader(line))
            {
                lines++;
                uses.Add(ReadLine(line, place, text, days, problems));
            }

            place += end < 0 ? rest.Length : end + 1;
        }

        return (days.Build(uses), lines);
    }

    private static RowUse ReadLine(string line, int place, Utf8Text text, StationDays days, ProblemList problems)
    {
        var cells = Array.ConvertAll(line.Split(','), cell => cell.Trim(' ', '"'));
        if (cells.Length < 4 || cells[1].Length != 8
            || DateCell.Read(Encoding.UTF8.GetBytes($"{cells[1][..4]}-{cells[1][4..6]}-{cells[1][6..]}"), DateOrder.Iso, out var date) != DateResult.Date
            || !NumberCell.TryRead(Encoding.UTF8.GetBytes(cells[3]), decimalComma: false, out var value) || value != Math.Floor(value) || Math.Abs(value) > 99999)
        {
            problems.Add(WeatherProblems.NotStationLine(text.Locate(place), line));
            return RowUse.Faulty;
        }

        if (!days.IsRead(Encoding.UTF8.GetBytes(cells[0]), place) || days.IsMaximum(Encoding.UTF8.GetBytes(cells[2])) is not { } isMaximum)
        {
            return RowUse.PassedOver;
        }

        return days.Add(isMaximum, DateOnly.FromDateTime(date), (int)value, cells.Length > 5 && cells[5].Length > 0 ? cells[5][0] : ' ', place);
    }
}
