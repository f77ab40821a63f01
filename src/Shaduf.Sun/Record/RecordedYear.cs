using System.Collections.Immutable;

namespace Shaduf.Sun;

/// <summary>What was found in a record, or done to it.</summary>
public enum RecordMatter
{
    /// <summary>The file has no row for the hour.</summary>
    NoRow,

    /// <summary>The row has no global irradiance and not both of its parts.</summary>
    NoLight,

    /// <summary>Global irradiance was missing and is direct x cos(zenith) + diffuse.</summary>
    GlobalFromParts,

    /// <summary>Direct or diffuse was missing: both are split from the global irradiance.</summary>
    NoParts,

    /// <summary>A little below zero: taken as zero.</summary>
    Drift,

    /// <summary>A little light at night: taken as zero.</summary>
    NightGlow,

    /// <summary>More light at night than an instrument's fault explains: no light is taken.</summary>
    NightLight,

    /// <summary>Global irradiance that is not possible: taken as missing.</summary>
    GlobalImpossible,

    /// <summary>Direct or diffuse irradiance that is not possible: taken as missing.</summary>
    PartImpossible,

    /// <summary>Global irradiance far from the sum of its parts: both parts are split from the global irradiance.</summary>
    NotClosed,

    /// <summary>A gap of light of at most three hours: clearness from the hours beside it.</summary>
    LightBridged,

    /// <summary>A longer gap of light: clearness of the same hours of the nearest day.</summary>
    LightCopied,

    /// <summary>Air temperature is missing.</summary>
    NoAir,

    /// <summary>Air temperature that is not possible: taken as missing.</summary>
    AirImpossible,

    /// <summary>A gap of air temperature of at most three hours: from the hours beside it.</summary>
    AirBridged,

    /// <summary>A longer gap of air temperature: the same hours of the nearest day.</summary>
    AirCopied,
}

/// <summary>How often something was found.</summary>
/// <param name="Matter">What was found or done.</param>
/// <param name="HourCount">In how many hours.</param>
/// <param name="FirstLine">First line of the file that shows it.</param>
public sealed record RecordCount(RecordMatter Matter, int HourCount, int FirstLine);

/// <summary>Why a record is not used.</summary>
/// <param name="Line">Line of the file.</param>
/// <param name="Problem">What is wrong.</param>
/// <param name="Accepted">What is accepted.</param>
public sealed record RecordRefusal(int Line, string Problem, string Accepted);

/// <summary>A year of a record after the checks.</summary>
/// <param name="Year">The year; null when it is refused.</param>
/// <param name="Counts">What was found and repaired.</param>
/// <param name="ClockShiftMin">How late the light is by the clock, by month [min]; null where it cannot be told.</param>
/// <param name="FilledShare">Share of the sunlit hours whose global irradiance is not the record's own.</param>
/// <param name="Refusals">Why the year is refused; empty when it is not.</param>
public sealed record RecordedYear(
    WeatherYear? Year,
    IReadOnlyList<RecordCount> Counts,
    ImmutableArray<double?> ClockShiftMin,
    double FilledShare,
    IReadOnlyList<RecordRefusal> Refusals
);
