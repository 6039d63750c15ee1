using System.Globalization;
using System.Text;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Weather;

/// <summary>Reads <c>.dly</c> files of the Global Historical Climatology Network.</summary>
/// <remarks>Columns, from 1: station 1-11, year 12-15, month 16-17, element 18-21, and for each day 1 to 31 a value of 5 characters and three flags,
/// the first at 22; the second flag is that of a failed quality check. Source: NOAA, GHCN-Daily readme.txt, section III.</remarks>
internal static class StationMonthsReader
{
    private const int FirstValue = 21;
    private const int ValueWidth = 5;
    private const int DayWidth = 8;
    private const int QualityFlag = 6;

    /// <summary>Reads every line.</summary>
    /// <returns>The days, and the lines of the file.</returns>
    public static (DayRecords Days, int Lines) Read(Utf8Text text, StationDays days, ProblemList problems)
    {
        var place = text.MarkLength;
        var lines = 0;
        var used = 0;
        while (place < text.Bytes.Length)
        {
            var rest = text.Bytes.AsSpan(place);
            var end = rest.IndexOf((byte)'\n');
            var line = Encoding.UTF8.GetString(end < 0 ? rest : rest[..end]).TrimEnd('\r');
            if (line.Length > 0)
            {
                lines++;
                used += ReadLine(line, place, text, days, problems) ? 1 : 0;
            }

            place += end < 0 ? rest.Length : end + 1;
        }

        return (days.Build(used), lines);
    }

    private static bool ReadLine(string line, int place, Utf8Text text, StationDays days, ProblemList problems)
    {
        // Blanks at the end of a line are often lost on the way.
        line = line.PadRight(FirstValue + (DayWidth * 31));
        if (!int.TryParse(line.AsSpan(11, 4), NumberStyles.None, CultureInfo.InvariantCulture, out var year)
            || !int.TryParse(line.AsSpan(15, 2), NumberStyles.None, CultureInfo.InvariantCulture, out var month)
            || year < 1 || month is < 1 or > 12)
        {
            problems.Add(WeatherProblems.NotStationLine(text.Locate(place), line[..17]));
            return false;
        }

        if (!days.IsSameStation(line[..11], place))
        {
            return false;
        }

        var element = line.Substring(17, 4);
        for (var day = 1; day <= DateTime.DaysInMonth(year, month); day++)
        {
            var at = FirstValue + ((day - 1) * DayWidth);
            var value = line.AsSpan(at, ValueWidth).Trim();
            if (value.IsEmpty)
            {
                continue;
            }

            if (int.TryParse(value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var tenths))
            {
                days.Add(element, new DateOnly(year, month, day), tenths, line[at + QualityFlag], place + at);
            }
            else
            {
                problems.Add(WeatherProblems.NotStationLine(text.Locate(place + at), value.ToString()));
            }
        }

        return element is "TMAX" or "TMIN";
    }
}
