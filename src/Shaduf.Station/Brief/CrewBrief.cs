using Shaduf.Parts;

namespace Shaduf.Station;

/// <summary>The crew: what it comes with, what it finds on site, when it works.</summary>
/// <param name="TruckBedM">Length of the truck's bed [m]; null when unknown.</param>
/// <param name="HasPowerOnSite">Whether there is power for welding on site; null when unknown.</param>
public sealed record CrewBrief(double? TruckBedM, bool? HasPowerOnSite)
{
    /// <summary>A crew of which nothing is known.</summary>
    public static CrewBrief Unknown { get; } = new(null, null);

    /// <summary>What the truck may carry [kg]; null when unknown.</summary>
    public double? PayloadKg { get; init; }

    /// <summary>Whether a spliced part is put together on site, being longer than the truck's bed; than its bar where the bed is unknown.</summary>
    /// <param name="part">The part.</param>
    public bool IsTooLong(Part part) => part.AlongBarMm > (TruckBedM * 1000 ?? part.Section.BarMm);

    /// <summary>How many work on site; null when unknown.</summary>
    public int? PeopleCount { get; init; }

    /// <summary>Working day [h]; null when unknown.</summary>
    public double? HoursADay { get; init; }

    /// <summary>When work may begin; null when not said.</summary>
    public DateOnly? Start { get; init; }

    /// <summary>Days of the week without work.</summary>
    public IReadOnlyList<DayOfWeek> RestDays { get; init; } = [DayOfWeek.Sunday];

    /// <summary>Feasts: dates without work.</summary>
    public IReadOnlyList<DateOnly> Feasts { get; init; } = [];

    /// <summary>Days of each month on which rain stops earth work and paint [d], January first.</summary>
    public IReadOnlyList<double> RainDays { get; init; } = new double[12];

    /// <summary>Whether heat above 35 °C or thin air slows all work; null to tell by height and months.</summary>
    public bool? HasHardship { get; init; }

    /// <summary>Days until steel is in the yard [d]; null when unknown.</summary>
    public double? SteelWaitDays { get; init; }

    /// <summary>Days until modules, drive and pump are there [d]; null when unknown.</summary>
    public double? GoodsWaitDays { get; init; }
}
