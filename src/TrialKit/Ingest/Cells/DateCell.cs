namespace TrialKit.Ingest.Cells;

/// <summary>Dates and times as cells hold them.</summary>
internal static class DateCell
{
    /// <summary>Reads a date, or a date and a time of day, as the whole cell.</summary>
    /// <param name="cell">UTF-8 without outer spaces.</param>
    /// <param name="order">The order in which the trial writes dates; the ISO order is always read.</param>
    /// <param name="value">The date and time; midnight when no time is given.</param>
    public static DateResult Read(ReadOnlySpan<byte> cell, DateOrder order, out DateTime value)
    {
        value = default;
        var split = cell.IndexOfAny((byte)' ', (byte)'T');
        var date = split < 0 ? cell : cell[..split];
        if (!TryParts(date, order, out var year, out var month, out var day))
        {
            return DateResult.NotDate;
        }

        var time = TimeSpan.Zero;
        if (split >= 0 && !TryTime(cell[(split + 1)..], out time))
        {
            return DateResult.NotDate;
        }

        if (year is < 1 or > 9999 || month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(year, month) || time >= TimeSpan.FromDays(1))
        {
            return DateResult.NoSuchDate;
        }

        value = new DateTime(year, month, day, 0, 0, 0, DateTimeKind.Unspecified) + time;
        return DateResult.Date;
    }

    /// <summary>How the trial's dates are written, for messages.</summary>
    public static string Form(DateOrder order) => order switch
    {
        DateOrder.MonthDayYear => "2026-05-04 or 5/4/2026 (month/day/year)",
        DateOrder.DayMonthYear => "2026-05-04 or 4/5/2026 (day/month/year)",
        _ => "2026-05-04 or 2026-05-04 17:30 (for another order, set date_order in trial.toml)",
    };

    private static bool TryParts(ReadOnlySpan<byte> text, DateOrder order, out int year, out int month, out int day)
    {
        if (text.Length == 10 && text[4] == '-' && text[7] == '-')
        {
            month = day = 0;
            return TryDigits(text[..4], out year) && TryDigits(text[5..7], out month) && TryDigits(text[8..], out day);
        }

        year = month = day = 0;
        var first = text.IndexOfAny((byte)'/', (byte)'.', (byte)'-');
        if (order == DateOrder.Iso || first is < 1 or > 2)
        {
            return false;
        }

        var rest = text[(first + 1)..];
        var second = rest.IndexOf(text[first]);
        if (second is < 1 or > 2 || rest.Length - second - 1 != 4)
        {
            return false;
        }

        if (!TryDigits(text[..first], out var a) || !TryDigits(rest[..second], out var b) || !TryDigits(rest[(second + 1)..], out year))
        {
            return false;
        }

        (month, day) = order == DateOrder.MonthDayYear ? (a, b) : (b, a);
        return true;
    }

    private static bool TryTime(ReadOnlySpan<byte> text, out TimeSpan time)
    {
        time = default;
        var hourLength = text.IndexOf((byte)':');
        if (hourLength is < 1 or > 2 || text.Length - hourLength is not (3 or 6))
        {
            return false;
        }

        var second = 0;
        if (!TryDigits(text[..hourLength], out var hour) || !TryDigits(text.Slice(hourLength + 1, 2), out var minute) ||
            (text.Length - hourLength == 6 && (text[hourLength + 3] != ':' || !TryDigits(text[(hourLength + 4)..], out second))))
        {
            return false;
        }

        // 24:00, 12:60 and the like are times that do not exist: the caller tells them from text that is no time.
        time = minute > 59 || second > 59 || hour > 23 ? TimeSpan.FromDays(1) : new TimeSpan(hour, minute, second);
        return true;
    }

    private static bool TryDigits(ReadOnlySpan<byte> text, out int value)
    {
        value = 0;
        foreach (var digit in text)
        {
            if (digit is < (byte)'0' or > (byte)'9')
            {
                return false;
            }

            value = (value * 10) + (digit - '0');
        }

        return !text.IsEmpty;
    }
}
