using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief about open water with a surface pump.</summary>
internal static class SurfaceReader
{
    private const double LowestLevelM = -430;
    private const double HighestLevelM = 5000;

    // A hose from a raft climbs no further; judgement, no source.
    private const double FarthestM = 60;

    // No pump draws water so high: the air's pressure is 10.3 m of water at the sea.
    private const double HighestLiftM = 10;

    private static IReadOnlyList<(string Word, OpenWater Value)> Kinds { get; } =
    [
        ("river", OpenWater.River),
        ("pond", OpenWater.Pond),
        ("canal", OpenWater.Canal),
        ("open well", OpenWater.OpenWell),
    ];

    private static IReadOnlyList<(string Word, PumpStand? Value)> Stands { get; } =
    [(FieldMap.ChooseWord, null), ("bank", PumpStand.Bank), ("raft", PumpStand.Raft)];

    /// <summary>Reads open water and holds its levels against one another.</summary>
    /// <param name="fields">The mapping <c>source.surface</c>.</param>
    /// <param name="waterDegC">Temperature of the water [°C].</param>
    /// <returns>The source.</returns>
    public static SurfaceBrief Read(FieldMap fields, double? waterDegC)
    {
        var surface = new SurfaceBrief(
            fields.OneOf("water", Kinds, "Kind of water."),
            fields.Quantity("normal", Measure.LengthM, LowestLevelM, HighestLevelM, "Usual level of the water."),
            Level(fields, "lowest", "Lowest level at the end of the dry season."),
            Level(fields, "flood", "Highest flood that anybody remembers."),
            Level(fields, "bed", "Bottom where the water is drawn."),
            fields.Known("mayTakePerHour", Measure.FlowM3PerH, 0.05, 500, "Flow that may be taken."),
            PerDay(fields, "mayTakePerDay", "Water that may be taken in a day; left out: nothing limits it."),
            StandOf(fields),
            fields.Chosen(
                "pumpLevel",
                Measure.LengthM,
                LowestLevelM,
                HighestLevelM,
                "Level of the pump's shaft on the bank."
            ),
            Suction(fields.OptionalMap("suction", "The pipe from the water to the pump.")),
            Months(fields.OptionalMap("months", "Months that differ from the whole year.")),
            waterDegC
        );
        if (fields.AreSound("normal", "lowest", "flood", "bed", "pumpLevel"))
        {
            CheckLevels(fields, surface);
        }

        fields.Done();
        return surface;
    }

    /// <summary>Holds the water against the ground where the main begins and where it ends.</summary>
    /// <param name="top">The brief's top mapping.</param>
    /// <param name="surface">The source.</param>
    /// <param name="lift">The way of the pipe.</param>
    public static void CheckPlace(FieldMap top, SurfaceBrief surface, LiftBrief lift)
    {
        var (groundM, topM) = (lift.Route[0].ElevationM, Lift.TopM(lift));
        if (surface.NormalM > groundM)
        {
            top.Complain(
                "source.surface.normal",
                Invariant(
                    $"the water at {surface.NormalM:0.##} m stands above the pump's place, where the route starts ({groundM:0.##} m)"
                ),
                Invariant($"at most {groundM:0.##} m is accepted")
            );
        }

        if (surface.NormalM >= topM)
        {
            top.Complain(
                "source.surface.normal",
                Invariant($"the water at {surface.NormalM:0.##} m stands above the tank's inlet ({topM:0.##} m)"),
                Invariant($"less than {topM:0.##} m is accepted: higher water needs no pump")
            );
        }

        if (lift.Riser is not null)
        {
            top.Complain(
                "lift.riser",
                "a surface pump hangs on no riser",
                "no 'riser' beside source.surface is accepted"
            );
        }

        var standM = surface.PumpM ?? groundM;
        if (surface.Stand == PumpStand.Bank && standM - surface.LowestKnownM > HighestLiftM)
        {
            top.Complain(
                surface.PumpM is null ? "source.surface.pump" : "source.surface.pumpLevel",
                Invariant($"the pump would stand {standM - surface.LowestKnownM:0.#} m above the lowest water"),
                Invariant($"at most {HighestLiftM:0} m, or 'pump: raft', is accepted: no pump draws water higher")
            );
        }

        if (groundM - surface.NormalM > FarthestM)
        {
            top.Complain(
                "source.surface.normal",
                Invariant($"{surface.NormalM:0.##} m, and the route starts at {groundM:0.##} m"),
                Invariant($"water at most {FarthestM:0} m below the start of the route is accepted")
            );
        }
    }

    private static double? Level(FieldMap fields, string name, string about) =>
        fields.Known(name, Measure.LengthM, LowestLevelM, HighestLevelM, about);

    private static double? PerDay(FieldMap fields, string name, string about) =>
        fields.Known(name, Measure.LitresPerDay, 0, 2e7, about) / 1000;

    private static PumpStand? StandOf(FieldMap fields) =>
        fields.OptionalOneOf(
            "pump",
            [.. Stands.Select((each, i) => (each.Word, i))],
            "Where the pump stands: on the bank above the flood, or on a raft."
        )
            is { } at
            ? Stands[at].Value
            : null;

    private static SuctionBrief Suction(FieldMap? fields)
    {
        var suction = new SuctionBrief(
            BriefReader.Name(fields, "pipe", "Card of the suction pipe."),
            fields?.Known("length", Measure.LengthM, 1, 50, "Length from the strainer to the pump."),
            fields?.Known("hose", Measure.LengthM, 1, 200, "Length of the hose from a raft to the bank."),
            fields is null
                ? []
                : LiftReader.Fittings(fields, "Fittings of the suction pipe: foot valve, strainer, bends.")
        );
        fields?.Done();
        return suction;
    }

    private static IReadOnlyList<SurfaceMonthBrief> Months(FieldMap? fields)
    {
        if (fields is null)
        {
            return [];
        }

        SurfaceMonthBrief[] months =
        [
            .. BriefReader.Months.Select(name => Month(fields.OptionalMap(name, "What differs in this month."))),
        ];
        fields.Done();
        return months;
    }

    private static SurfaceMonthBrief Month(FieldMap? fields)
    {
        if (fields is null)
        {
            return new(null, null, null, null);
        }

        var month = new SurfaceMonthBrief(
            Level(fields, "level", "Lowest level of the month."),
            fields.Known("temperature", Measure.TemperatureDegC, 5, 40, "Hottest water of the month."),
            PerDay(fields, "mayTakePerDay", "Water that may be taken in a day."),
            fields.Known("mayTakePerHour", Measure.FlowM3PerH, 0.05, 500, "Flow that may be taken.")
        );
        fields.Done();
        return month;
    }

    private static void CheckLevels(FieldMap fields, SurfaceBrief surface)
    {
        void Refuse(bool isWrong, string name, double? levelM)
        {
            if (isWrong)
            {
                fields.Complain(
                    name,
                    Invariant($"{levelM:0.##} m contradicts the other levels"),
                    "bed, lowest, normal and flood, each above the one before, are accepted"
                );
            }
        }

        Refuse(surface.LowestM > surface.NormalM, "lowest", surface.LowestM);
        Refuse(surface.FloodM < surface.NormalM, "flood", surface.FloodM);
        Refuse(surface.BedM >= surface.LowestKnownM, "bed", surface.BedM);
        if (surface.PumpM < surface.LowestKnownM)
        {
            fields.Complain(
                "pumpLevel",
                Invariant($"{surface.PumpM:0.##} m is under the lowest water"),
                Invariant($"at least {surface.LowestKnownM:0.##} m is accepted")
            );
        }

        for (var i = 0; i < surface.Months.Count; i++)
        {
            if (surface.Months[i].LevelM < surface.LowestKnownM || surface.Months[i].LevelM > surface.FloodM)
            {
                fields.Complain(
                    $"months.{BriefReader.Months[i]}.level",
                    Invariant($"{surface.Months[i].LevelM:0.##} m lies outside lowest and flood"),
                    Invariant($"{surface.LowestKnownM:0.##} m or more, up to the flood, is accepted")
                );
            }
        }
    }
}
