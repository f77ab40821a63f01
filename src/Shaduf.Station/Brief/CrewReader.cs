namespace Shaduf.Station;

/// <summary>Reads the part of the brief about the crew and its calendar.</summary>
internal static class CrewReader
{
    private const int LongestFeastDays = 31;

    private static readonly IReadOnlyList<(string Word, IReadOnlyList<DayOfWeek> Days)> Rests =
    [
        ("sunday", [DayOfWeek.Sunday]),
        ("friday", [DayOfWeek.Friday]),
        ("saturday", [DayOfWeek.Saturday]),
        ("saturday-sunday", [DayOfWeek.Saturday, DayOfWeek.Sunday]),
        ("friday-saturday", [DayOfWeek.Friday, DayOfWeek.Saturday]),
        ("none", []),
    ];

    /// <summary>Reads the crew.</summary>
    /// <param name="fields">Its mapping; null when it is left out.</param>
    /// <returns>The crew.</returns>
    public static CrewBrief Read(FieldMap? fields)
    {
        if (fields is null)
        {
            return CrewBrief.Unknown;
        }

        var crew = new CrewBrief(
            fields.Known("truckBed", Measure.LengthM, 2, 14, "Length of the truck's bed: no piece is longer."),
            fields.OptionalOneOf("powerOnSite", BriefReader.YesNo, "Whether there is power for welding on site.")
        )
        {
            PayloadKg = fields.Known("payload", Measure.MassKg, 200, 40_000, "What the truck may carry on one trip."),
            PeopleCount = fields.OptionalCount("people", 1, 200, "How many work on site.", FieldMap.UnknownWord),
            HoursADay = fields.Known("hours", Measure.TimeH, 1, 14, "Working day without its breaks."),
            Start = fields.OptionalDate("start", "When work may begin; left out: a fortnight after the date of issue."),
            RestDays = Rest(fields),
            SteelWaitDays = fields.Known("steelWait", Measure.TimeDays, 0, 365, "Time until the steel is in the yard."),
            GoodsWaitDays = fields.Known(
                "goodsWait",
                Measure.TimeDays,
                0,
                365,
                "Time until modules, drive, pump and tank are there."
            ),
            RainDays = LostDays(fields),
            HasHardship = fields.OptionalOneOf(
                "hardship",
                BriefReader.YesNo,
                "Whether heat or thin air slows all work; left out: above 2500 m, or in months with noons above 35 degC."
            ),
            Feasts = [.. fields.Items("feasts", 0, 60, "Dates without work.", Feast).SelectMany(days => days)],
        };
        fields.Done();
        return crew;
    }

    private static IReadOnlyList<DayOfWeek> Rest(FieldMap fields)
    {
        var given = fields.OptionalOneOf(
            "rest",
            [.. Rests.Select((rest, i) => (rest.Word, i))],
            "Days of the week without work; left out: sunday."
        );
        return Rests[given ?? 0].Days;
    }

    private static IReadOnlyList<double> LostDays(FieldMap fields)
    {
        var lost = fields.OptionalMap("rainDays", "Days of each month on which rain stops earth work and paint.");
        var heavy = fields.OptionalMap(
            "heavyRainDays",
            "Days of each month with more than 10 mm of rain: half of them are lost."
        );
        if (lost is not null && heavy is not null && fields.AreSound("rainDays", "heavyRainDays"))
        {
            fields.Complain("heavyRainDays", "stands beside rainDays", "one of the two is accepted");
        }

        var read = (Lost: Rain(lost), Heavy: Rain(heavy));
        return lost is null ? [.. read.Heavy.Select(days => days * Programme.RainDays.LostShare)] : read.Lost;
    }

    private static double[] Rain(FieldMap? fields)
    {
        double[] days =
        [
            .. BriefReader.Months.Select(month =>
                fields?.OptionalNumber(month, 0, 28, "Days lost to rain; left out: none.") ?? 0
            ),
        ];
        fields?.Done();
        return days;
    }

    private static IReadOnlyList<DateOnly> Feast(FieldMap fields)
    {
        var name = fields.Text("name", "What is kept.", 60);
        var from = fields.OptionalDate("from", "First day without work.");
        var until = fields.OptionalDate("until", "Last day without work; left out: the first.") ?? from;
        if (fields.AreSound("from") && from is null)
        {
            fields.Complain("from", $"'{name}' has no date", "a date as 2026-04-03 is accepted");
        }

        if (fields.AreSound("from", "until") && !(until >= from && until < from?.AddDays(LongestFeastDays)))
        {
            fields.Complain(
                "until",
                "not within a month after the first day",
                "a later date within 31 days is accepted"
            );
        }

        fields.Done();
        return from is { } first && until is { } last && last >= first && last < first.AddDays(LongestFeastDays)
            ? [.. Enumerable.Range(0, last.DayNumber - first.DayNumber + 1).Select(first.AddDays)]
            : [];
    }
}
