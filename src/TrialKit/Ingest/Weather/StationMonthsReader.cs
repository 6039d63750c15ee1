using System.Buffers.Text;
using System.Text;
using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Weather;

/// <summary>Reads <c>.dly</c> files of the Global Historical Climatology Network.</summary>
/// <remarks>Columns, from 1: station 1-11, year 12-15, month 16-17, element 18-21, and for each day 1 to 31 a value of 5 characters and three flags,
/// the first at 22; the second flag is that of a failed quality check. Blanks at the end of a line are often lost on the way.
/// Source: NOAA, GHCN-Daily readme.txt, section III.</remarks>
internal static class StationMonthsReader
{
    private const int StationWidth = 11;
    private const int FirstValue = 21;
    private const int ValueWidth = 5;
    private const int DayWidth = 8;
    private const int QualityFlag = 6;
    private const int DaysInLine = 31;

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
            var line = (end < 0 ? rest : rest[..end]).TrimEnd((byte)'\r');
            if (!line.Trim((byte)' ').IsEmpty && line[0] != '#')
            {
                lines++;
                uses.Add(ReadLine(line, place, text, days, problems));
            }

            place += end < 0 ? rest.Length : end + 1;
        }

        return (days.Build(uses), lines);
    }

    private static RowUse ReadLine(ReadOnlySpan<byte> line, int place, Utf8Text text, StationDays days, ProblemList problems)
    {
        if (line.Length < FirstValue || line.Length > FirstValue + (DayWidth * DaysInLine)
            || !TryWhole(line.Slice(StationWidth, 4), out var year) || !TryWhole(line.Slice(15, 2), out var month) || year < 1 || month is < 1 or > 12)
        {
            problems.Add(WeatherProblems.NotStationLine(text.Locate(place), Encoding.UTF8.GetString(line[..Math.Min(line.Length, FirstValue)])));
            return RowUse.Faulty;
        }

        if (!days.IsRead(line[..StationWidth], place) || days.IsMaximum(line.Slice(17, 4)) is not { } isMaximum)
        {
            return RowUse.PassedOver;
        }

        var last = DateTime.DaysInMonth(year, month);
        var first = new DateOnly(year, month, 1);
        for (var day = 1; day <= DaysInLine; day++)
        {
            var at = FirstValue + ((day - 1) * DayWidth);
            var value = at < line.Length ? line.Slice(at, Math.Min(ValueWidth, line.Length - at)).Trim((byte)' ') : default;
            if (value.IsEmpty)
            {
                continue;
            }

            if (!TryWhole(value, out var tenths) || (day > last && tenths != StationDays.Missing))
            {
                problems.Add(WeatherProblems.NotStationLine(text.Locate(place + at), Encoding.UTF8.GetString(value)));
            }
            else if (day <= last)
            {
                days.Add(isMaximum, first.AddDays(day - 1), tenths, at + QualityFlag < line.Length ? (char)line[at + QualityFlag] : ' ', place + at);
            }
        }

        // A line is a month: values that failed a check are listed day by day, and the line stays in use.
        return RowUse.Used;
    }

    private static bool TryWhole(ReadOnlySpan<byte> text, out int value) =>
        Utf8Parser.TryParse(text, out value, out var consumed) && consumed == text.Length;
}
