using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the part of the brief that says what holds the water.</summary>
internal static class TankReader
{
    /// <summary>Reads the tank.</summary>
    /// <param name="fields">The mapping <c>tank</c>; null when there is none.</param>
    /// <returns>The tank.</returns>
    public static TankBrief Read(FieldMap? fields)
    {
        var tank = new TankBrief(
            BriefReader.Name(fields, "card", "Card of the tank."),
            fields?.OptionalCount("count", 1, 4, "How many tanks alike.", FieldMap.ChooseWord),
            fields?.OptionalOneOf("existing", BriefReader.YesNo, "Whether the tank stands already and is not bought.")
                ?? false,
            fields?.Chosen(
                "stand",
                Measure.LengthM,
                0,
                12,
                "Height of the tank's floor above ground; chosen by the head that the taps need."
            ),
            fields?.Known(
                "reserve",
                Measure.TimeDays,
                0,
                10,
                "Water for people, animals and fixed uses that the tank must hold at least."
            )
        )
        {
            RestartShare = fields?.Known(
                "restart",
                Measure.Share,
                0.1,
                1,
                "Share of the useful volume at which a pump stopped by the full tank starts again; 100 %: a float valve, which only throttles."
            ),
            Stand = StandReader.Read(
                fields?.OptionalMap("standing", "What it stands on, from 1 m up; left out: a stand of steel, chosen.")
            ),
            LowStop = LowStop(
                fields?.OptionalMap("lowStop", "Levels at which the outlet closes and opens; left out: it stays open.")
            ),
        };
        if (tank is { IsExisting: true, Card: null } && fields!.AreSound("card"))
        {
            fields.Complain("card", "missing for an existing tank", "the card of the tank that stands there is needed");
        }

        if (tank is { IsExisting: true, Count: null } && fields!.AreSound("count"))
        {
            fields.Complain("count", "missing for an existing tank", "how many tanks stand there is needed");
        }

        fields?.Done();
        return tank;
    }

    private static LowStopBrief? LowStop(FieldMap? fields)
    {
        if (fields is null)
        {
            return null;
        }

        var stop = new LowStopBrief(
            fields.Quantity("close", Measure.Share, 0, 0.5, "Share of the useful volume at which the outlet closes."),
            fields.Quantity("reopen", Measure.Share, 0, 0.9, "Share of the useful volume at which it opens again.")
        );
        if (fields.AreSound("close", "reopen") && stop.ReopenShare <= stop.CloseShare)
        {
            fields.Complain(
                "reopen",
                Invariant($"the outlet would open at {stop.ReopenShare * 100:0.#} %, no higher than it closes"),
                Invariant($"more than {stop.CloseShare * 100:0.#} % is accepted")
            );
        }

        fields.Done();
        return stop;
    }
}
