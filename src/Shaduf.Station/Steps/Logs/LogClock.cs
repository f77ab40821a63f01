namespace Shaduf.Station;

/// <summary>Reads times of a log: 2026-03-01 06:00, with seconds and an offset where they are told.</summary>
internal struct LogClock
{
    private const int SPerDay = 86_400;
    private uint lastYear;
    private uint lastDay;
    private long lastDaySecond;

    /// <summary>Reads a time.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="utcOffsetMin">Clock of the site, ahead of UTC [min].</param>
    /// <param name="second">Seconds from the start of year 1, by the clock of the site.</param>
    /// <returns>Whether it is a time.</returns>
    public bool TrySecond(ReadOnlySpan<byte> cell, int utcOffsetMin, out long second)
    {
        second = 0;
        if (
            cell.Length < 16
            || cell[4] != '-'
            || cell[7] != '-'
            || cell[10] is not ((byte)' ' or (byte)'T')
            || cell[13] != ':'
        )
        {
            return false;
        }

        if (
            !TryNumber(cell[..4], out var year)
            || !TryNumber(cell[5..7], out var month)
            || !TryNumber(cell[8..10], out var day)
            || !TryNumber(cell[11..13], out var hour)
            || !TryNumber(cell[14..16], out var minute)
            || hour > 24
            || minute > 59
            || !TryDay(year, month, day)
        )
        {
            return false;
        }

        var rest = cell[16..];
        var seconds = 0u;
        if (rest.Length >= 3 && rest[0] == ':')
        {
            if (!TryNumber(rest[1..3], out seconds) || seconds > 59)
            {
                return false;
            }

            rest = rest[3..];
            while (rest.Length > 0 && (rest[0] == '.' || char.IsAsciiDigit((char)rest[0])))
            {
                rest = rest[1..];
            }
        }

        second = lastDaySecond + (hour * 3600) + (minute * 60) + seconds;
        return TryOffset(rest, utcOffsetMin, ref second);
    }

    // Days come many rows in a row: the last one is remembered.
    private bool TryDay(uint year, uint month, uint day)
    {
        var key = (month * 100) + day;
        if (year == lastYear && key == lastDay)
        {
            return true;
        }

        if (
            year is < 1 or > 9998
            || month is < 1 or > 12
            || day < 1
            || day > DateTime.DaysInMonth((int)year, (int)month)
        )
        {
            return false;
        }

        lastDaySecond = (long)new DateOnly((int)year, (int)month, (int)day).DayNumber * SPerDay;
        (lastYear, lastDay) = (year, key);
        return true;
    }

    private static bool TryOffset(ReadOnlySpan<byte> rest, int utcOffsetMin, ref long second)
    {
        if (rest.IsEmpty)
        {
            return true;
        }

        if (rest is [(byte)'Z'])
        {
            second += utcOffsetMin * 60;
            return true;
        }

        if (
            rest.Length != 6
            || rest[0] is not ((byte)'+' or (byte)'-')
            || rest[3] != ':'
            || !TryNumber(rest[1..3], out var hours)
            || !TryNumber(rest[4..6], out var minutes)
        )
        {
            return false;
        }

        var ahead = (int)((hours * 60) + minutes) * (rest[0] == '-' ? -1 : 1);
        second += (utcOffsetMin - ahead) * 60;
        return true;
    }

    private static bool TryNumber(ReadOnlySpan<byte> digits, out uint number)
    {
        number = 0;
        foreach (var digit in digits)
        {
            if (digit is < (byte)'0' or > (byte)'9')
            {
                return false;
            }

            number = (number * 10) + digit - '0';
        }

        return true;
    }
}
