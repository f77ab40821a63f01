using Shaduf.Money;
using Shaduf.Power;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How the pump learns that a far tank is full.</summary>
public enum TankFullStop
{
    /// <summary>A float switch in the tank, and a cable in the trench.</summary>
    SignalCable,

    /// <summary>A float valve shuts the main, and a pressure switch at the wellhead stops the pump.</summary>
    PressureStop,
}

/// <summary>The way chosen to stop the pump when the tank is full.</summary>
/// <param name="Way">Cable or pressure.</param>
/// <param name="CableM">Signal cable bought [m]; 0 with a pressure stop.</param>
/// <param name="LoopOhm">Resistance of the cable's loop, out and back [Ω].</param>
/// <param name="Stop">Setting of a pressure switch.</param>
/// <param name="SilentRatio">Speeds between which the pump would turn against the shut valve without tripping the switch, as shares of full speed.</param>
/// <param name="Why">Why this way.</param>
public sealed record TankFull(
    TankFullStop Way,
    double CableM,
    double LoopOhm,
    PressureStop Stop,
    (double From, double To) SilentRatio,
    string Why
)
{
    // Core of a signal cable [mm2] and the largest loop that a drive's 24 V input reads; common practice, no source.
    private const double CoreMm2 = 1.5;
    private const double MostLoopOhm = 500;
    private const double SlackShare = 0.05;

    /// <summary>The way in words.</summary>
    public string Name =>
        Way == TankFullStop.SignalCable
            ? Invariant($"float switch with a signal cable of {CableM:0} m")
            : Invariant($"float valve, pressure stop at {Stop.StopBar:0.0} bar, restart at {Stop.RestartBar:0.0} bar");

    /// <summary>Chooses the way: what the brief names, else the cheaper of those that can work.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="sizing">The choice.</param>
    /// <param name="book">The price book.</param>
    /// <returns>The way.</returns>
    public static TankFull Of(Brief brief, Survey survey, Sizing sizing, PriceBook book)
    {
        var lift = sizing.Choice.Lift;
        var density = lift.Water.DensityKgPerM3;
        var shutOffM = sizing.Hydraulics.Curve.ShutOffHeadM * Math.Pow(sizing.Table.HighestRatio, 2);
        var duty = MainDuty.Of(brief, survey, sizing.Table.FullFlowM3PerH, shutOffM);
        var wellheadM = brief.Lift.Route[0].ElevationM;
        var stop = PressureStop.Between(
            MainProfile.Of(duty, lift.Lay).Points[0].RunningBar,
            duty.ClosedBar(wellheadM, 0)
        );
        var highestM = survey.Source.HighestWaterM(wellheadM);
        var stopM = PressureClass.HeadM(stop.StopBar, density) + wellheadM - highestM;
        var cableM = lift.MainM * (1 + SlackShare);
        var cable = new TankFull(
            TankFullStop.SignalCable,
            cableM,
            2 * cableM / 1000 * ConductorResistance.OhmPerKm(Conductor.CopperClass2, CoreMm2),
            stop,
            (Ratio(Lift.TopM(brief.Lift) - highestM, sizing), Ratio(stopM, sizing)),
            ""
        );
        return brief.Lift.TankFull is { } given
            ? Going(cable, given, "the brief's choice")
            : Cheaper(cable, book, Fails(brief, survey, sizing, stop));
    }

    /// <summary>Findings of the way chosen.</summary>
    /// <returns>The findings.</returns>
    public IEnumerable<Finding> Findings() =>
        Way == TankFullStop.SignalCable
            ?
            [
                Finding.AtMost(
                    "lift/tank-full-loop",
                    LoopOhm,
                    MostLoopOhm,
                    "ohm",
                    "loop of the tank's float switch: 24 V, closed while the tank wants water, so that a cut cable stops the pump; arresters at both ends",
                    "copper class 2, IEC 60228; the limit: common practice, no source"
                ),
            ]
            :
            [
                Finding.AtLeast(
                    "lift/tank-full-room",
                    Stop.RoomBar,
                    PressureStop.LeastRoomBar,
                    "bar",
                    "room between running and closed-valve pressure, by which a pressure switch tells a shut float valve",
                    "common practice, no source"
                ),
                Silent(),
            ];

    private Finding Silent() =>
        new(
            "lift/tank-full-silent",
            SilentRatio.To > SilentRatio.From ? FindingStatus.Look : FindingStatus.Holds,
            Invariant(
                $"in weak sun, from {SilentRatio.From * 100:0} to {SilentRatio.To * 100:0} % of full speed, the pump turns against the shut valve and the switch does not trip: a flow switch stops it after a minute without flow"
            ),
            SilentRatio.To * 100,
            SilentRatio.From * 100,
            "% of full speed",
            "affinity"
        );

    /// <summary>The lines of the bill, without the float itself that every tank has.</summary>
    /// <returns>The lines.</returns>
    public IEnumerable<QuantityLine> Lines()
    {
        QuantityLine Line(string item, string description, string unit, double quantity, string origin) =>
            new(item, BillSection.PipesAndTank, description, unit, quantity, origin);
        return Way == TankFullStop.SignalCable
            ?
            [
                Line(
                    "signal-cable",
                    "signal cable 2 x 1.5 mm2 in duct, for the tank's float switch",
                    "m",
                    CableM,
                    Invariant($"length of the main + {SlackShare * 100:0} %")
                ) with
                {
                    NetQuantity = CableM / (1 + SlackShare),
                },
                Line("signal-arrester", "surge arrester with earth for the signal cable", "nr", 2, "both ends"),
                Line("stop-relay", "isolating relay between float switch and drive", "nr", 1, "one drive"),
            ]
            :
            [
                Line("pressure-switch", "pressure switch at the start of the main", "nr", 1, "one main"),
                Line("flow-switch", "flow switch at the start of the main with timer", "nr", 1, "one main"),
            ];
    }

    private static double Ratio(double headM, Sizing sizing) =>
        PressureStop.SpeedRatio(Math.Max(0, headM), sizing.Hydraulics.Curve.ShutOffHeadM);

    private static TankFull Going(TankFull cable, TankFullStop way, string why) =>
        way == TankFullStop.SignalCable
            ? cable with
            {
                Why = why,
            }
            : cable with
            {
                Way = way,
                CableM = 0,
                LoopOhm = 0,
                Why = why,
            };

    private static string? Fails(Brief brief, Survey survey, Sizing sizing, PressureStop stop)
    {
        if (sizing.Choice.Pump.Rotor is not null)
        {
            return "a rotor pump climbs against a shut valve until its relief valve opens";
        }

        if (!stop.CanTell)
        {
            return Invariant(
                $"only {stop.RoomBar:0.0} bar lie between the running and the closed-valve pressure, too little for a switch to tell them apart"
            );
        }

        var shut = brief with { Lift = brief.Lift with { TankFull = TankFullStop.PressureStop } };
        var duty = MainDuty.Of(shut, survey, sizing.Table.FullFlowM3PerH, sizing.Hydraulics.Curve.ShutOffHeadM);
        var worst = MainProfile.Of(duty, sizing.Choice.Lift.Lay).Worst;
        return worst.NeededBar > worst.AllowedBar
            ? Invariant(
                $"a float valve would put {worst.NeededBar:0.0} bar on {worst.Pipe.Name}, which carries {worst.AllowedBar:0.0} bar"
            )
            : null;
    }

    private static TankFull Cheaper(TankFull cable, PriceBook book, string? fails)
    {
        if (fails is not null)
        {
            return Going(cable, TankFullStop.SignalCable, fails);
        }

        var stop = Going(cable, TankFullStop.PressureStop, "");
        var (cableCost, stopCost) = (Bill.Price([.. cable.Lines()], book), Bill.Price([.. stop.Lines()], book));
        var costs = Invariant(
            $"signal cable {cableCost.Direct:0} against float valve with pressure and flow switch {stopCost.Direct:0} {book.Currency}"
        );
        return cableCost.Unpriced.Count + stopCost.Unpriced.Count > 0
                ? Going(
                    cable,
                    TankFullStop.SignalCable,
                    "not all of it is priced; the cable also stops a pump in weak sun"
                )
            : cableCost.Direct <= stopCost.Direct
                ? Going(cable, TankFullStop.SignalCable, $"the cheaper: {costs}; a cut cable stops the pump")
            : Going(cable, TankFullStop.PressureStop, $"the cheaper, and the main holds the closed valve: {costs}");
    }
}
