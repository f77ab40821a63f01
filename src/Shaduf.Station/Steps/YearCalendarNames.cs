namespace Shaduf.Station;

/// <summary>Names of the months.</summary>
public static class YearCalendarNames
{
    /// <summary>Names, January first.</summary>
    public static IReadOnlyList<string> Months { get; } =
    [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
}
