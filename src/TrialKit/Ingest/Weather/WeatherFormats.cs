using System.Text;
using System.Text.RegularExpressions;
using TrialKit.Ingest.Tables;

namespace TrialKit.Ingest.Weather;

/// <summary>Tells the forms of weather files apart by what stands in them.</summary>
internal static partial class WeatherFormats
{
    private const string PowerHeadingEnd = "-END HEADER-";
    private const int LongestHeading = 60;

    /// <summary>The form of a file.</summary>
    /// <param name="text">The file.</param>
    /// <param name="start">The byte at which its table begins.</param>
    public static WeatherFormat Detect(Utf8Text text, out int start)
    {
        start = 0;
        var place = text.MarkLength;
        var isFirst = true;
        for (var line = 0; line < LongestHeading && place < text.Bytes.Length; line++)
        {
            var rest = text.Bytes.AsSpan(place);
            var length = rest.IndexOf((byte)'\n');
            var content = Encoding.UTF8.GetString(length < 0 ? rest : rest[..length]).Trim('\r', ' ');
            var next = place + (length < 0 ? rest.Length : length + 1);
            if (content == PowerHeadingEnd)
            {
                start = next;
                return WeatherFormat.PowerGrid;
            }

            if (DaymetHeader().IsMatch(content))
            {
                start = place;
                return WeatherFormat.DaymetGrid;
            }

            if (isFirst && StationMonth().IsMatch(content))
            {
                return WeatherFormat.StationMonths;
            }

            if (isFirst && (StationValue().IsMatch(content) || IsValuesHeader(content)))
            {
                return WeatherFormat.StationValues;
            }

            isFirst &= IsPassedOver(content);
            place = next;
        }

        return WeatherFormat.Table;
    }

    /// <summary>Whether a line without blanks about it is one that every form passes over: an empty one, or a remark.</summary>
    public static bool IsPassedOver(string line) => line.Length == 0 || line[0] == '#';

    /// <summary>Whether a line is the header that a file of values may have.</summary>
    public static bool IsValuesHeader(string line) => ValuesHeader().IsMatch(line);

    /// <summary>A form in words, as a user is told it.</summary>
    public static string Words(WeatherFormat format) => format switch
    {
        WeatherFormat.StationMonths => "GHCN-Daily, a month of one element a line",
        WeatherFormat.StationValues => "GHCN-Daily, a value a line",
        WeatherFormat.PowerGrid => "NASA POWER daily grid",
        WeatherFormat.DaymetGrid => "Daymet daily grid",
        _ => "table",
    };

    [GeneratedRegex("^year,yday,", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DaymetHeader();

    [GeneratedRegex("^\"?(ID|STATION)\"?,\"?DATE\"?,\"?ELEMENT\"?,\"?(DATA_)?VALUE\"?(,|$)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ValuesHeader();

    [GeneratedRegex("^[A-Z]{2}[A-Z0-9_-]{9}[0-9]{6}[A-Z0-9]{4}[ 0-9-]{5}", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StationMonth();

    [GeneratedRegex("^\"?[A-Z]{2}[A-Z0-9_-]{9}\"?,\"?[0-9]{8}\"?,\"?[A-Z0-9]{4}\"?,", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex StationValue();
}
