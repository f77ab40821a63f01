using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>The earth: rods, and around the racks a ring of bare wire where rods alone do not reach the aim.</summary>
/// <param name="ResistivityOhmM">Soil resistivity [Ω·m].</param>
/// <param name="Rods">Where the rods stand.</param>
/// <param name="RodOhm">Expected resistance of one rod [Ω].</param>
/// <param name="RingWireM">Wire of the ring [m]; 0 without one.</param>
/// <param name="RingOhm">Expected resistance of the ring alone [Ω]; 0 without one.</param>
/// <param name="EarthOhm">Expected resistance of all together [Ω].</param>
/// <param name="AimOhm">Aimed at [Ω].</param>
/// <param name="LeastRadiusM">Radius of a ring that a lightning earth needs where 10 Ω cannot be had [m]; 0 without lightning rods.</param>
/// <param name="RingRadiusM">Radius of the circle of the ring's area [m]; 0 without one.</param>
/// <param name="MoreWireM">Bare wire in the pipe trench that would bring it to the aim [m]; 0 when none is needed, null when 200 m do not.</param>
public sealed record GuardEarth(
    double ResistivityOhmM,
    IReadOnlyList<GroundPlace> Rods,
    double RodOhm,
    double RingWireM,
    double RingOhm,
    double EarthOhm,
    double AimOhm,
    double LeastRadiusM,
    double RingRadiusM,
    double? MoreWireM
)
{
    /// <summary>Length of an earth rod [m]: two joined pieces; more than the 2.5 m of the shortest lightning electrode.</summary>
    public const double RodM = 3.0;

    /// <summary>Diameter of an earth rod [m].</summary>
    public const double RodDiameterM = 0.016;

    /// <summary>Bare copper wire in the ground: section of 50 mm², as one round wire [m].</summary>
    public const double WireDiameterM = 0.008;

    /// <summary>Outside of the earth pit round a rod's head, along, across and down: a ring of concrete 50 mm thick with a lid [m]; common practice, no source.</summary>
    public const double PitM = 0.4;

    /// <summary>Depth of the wire [m].</summary>
    public const double WireDepthM = 0.7;

    /// <summary>From the racks and masts to the ring [m].</summary>
    public const double RingOffM = 1;

    /// <summary>Aim of an earth that no lightning rod feeds [Ω]; common practice, no source.</summary>
    public const double PlainAimOhm = 30;

    /// <summary>Aim of a lightning earth [Ω]; IEC 62305-3:2010, 5.4.1, recommended.</summary>
    public const double LightningAimOhm = 10;

    /// <summary>Electrodes close to each other share the soil: added to those in parallel, from memory (10 to 20 %).</summary>
    public const double SharedRatio = 1.2;

    // More rods in a line: a ring serves better, or an earthing design is asked for.
    private const int MostInLine = 6;
    private const int MostPlain = 4;
    private static readonly int[] OnRing = [2, 4, 6, 8];

    /// <summary>Sizes the earth.</summary>
    /// <param name="askedRods">Rods that the brief asks for; null to choose.</param>
    /// <param name="resistivityOhmM">Soil resistivity [Ω·m], 1 to 20000.</param>
    /// <param name="field">The racks.</param>
    /// <param name="lightning">The lightning rods.</param>
    /// <returns>The earth.</returns>
    public static GuardEarth Of(int? askedRods, double resistivityOhmM, GuardField field, GuardLightning lightning)
    {
        var aimOhm = lightning.Protection is null ? PlainAimOhm : LightningAimOhm;
        GuardEarth InLine(int count) => WithLine(count, resistivityOhmM, aimOhm, field, lightning);
        if (askedRods is { } asked)
        {
            return InLine(asked);
        }

        var most = lightning.Protection is null ? MostPlain : MostInLine;
        var lines = Enumerable.Range(2, most - 1).Select(InLine).ToList();
        var enough = lines.Find(each => each.EarthOhm <= aimOhm);
        return lightning.Protection is null ? enough ?? lines[^1]
            : enough is null || lightning.Rods.Count > 1 ? WithRing(resistivityOhmM, aimOhm, field, lightning)
            : enough;
    }

    /// <summary>What counts against that radius [m]: the ring's own, and twice the rods on it or, without a ring, of the line.</summary>
    public double CountedM => RingRadiusM + (Rods.Count >= 2 ? 2 * RodM : 0);

    private static GuardEarth WithLine(
        int count,
        double resistivityOhmM,
        double aimOhm,
        GuardField field,
        GuardLightning lightning
    )
    {
        var places = Enumerable
            .Range(0, count)
            .Select(i => new GroundPlace(
                (field.LengthM / 2) + ((i - ((count - 1) / 2.0)) * 2 * RodM),
                field.DepthM + GuardField.BehindM + RingOffM
            ))
            .ToList();
        var ohm = RodGroup.ResistanceOhm(resistivityOhmM, RodM, RodDiameterM, places);
        return Settled(new(resistivityOhmM, places, 0, 0, 0, ohm, aimOhm, 0, 0, 0), lightning);
    }

    private static GuardEarth WithRing(
        double resistivityOhmM,
        double aimOhm,
        GuardField field,
        GuardLightning lightning
    )
    {
        var (lengthM, depthM) = RingSides(field);
        var circleM = 2 * Math.Sqrt(lengthM * depthM / Math.PI);
        var ringOhm = BuriedWire.RingOhm(resistivityOhmM, circleM, WireDiameterM, WireDepthM);
        var tried = OnRing
            .Select(count => AlongRing(field, count))
            .Where(AreApart)
            .Select(places =>
            {
                var rodsOhm = RodGroup.ResistanceOhm(resistivityOhmM, RodM, RodDiameterM, places);
                return new GuardEarth(
                    resistivityOhmM,
                    places,
                    0,
                    2 * (lengthM + depthM),
                    ringOhm,
                    SharedRatio / ((1 / ringOhm) + (1 / rodsOhm)),
                    aimOhm,
                    0,
                    circleM / 2,
                    0
                );
            })
            .ToList();
        return Settled(tried.Find(each => each.EarthOhm <= aimOhm) ?? tried[^1], lightning);
    }

    private static GuardEarth Settled(GuardEarth earth, GuardLightning lightning) =>
        earth with
        {
            RodOhm = EarthRod.ResistanceOhm(earth.ResistivityOhmM, RodM, RodDiameterM),
            LeastRadiusM = lightning.Protection is { } asked ? ElectrodeLength.LeastM(asked, earth.ResistivityOhmM) : 0,
            MoreWireM = MoreWire(earth),
        };

    private static double? MoreWire(GuardEarth earth) =>
        earth.EarthOhm <= earth.AimOhm
            ? 0
            : Enumerable
                .Range(2, 39)
                .Select(i => i * 5.0)
                .Where(wireM =>
                    SharedRatio
                        / (
                            (1 / earth.EarthOhm)
                            + (1 / BuriedWire.StraightOhm(earth.ResistivityOhmM, wireM, WireDiameterM, WireDepthM))
                        )
                    <= earth.AimOhm
                )
                .Cast<double?>()
                .FirstOrDefault();

    /// <summary>Sides of the ring along and across the racks [m].</summary>
    /// <param name="field">The racks.</param>
    /// <returns>Length and depth [m].</returns>
    public static (double LengthM, double DepthM) RingSides(GuardField field) =>
        (field.LengthM + (2 * RingOffM), field.DepthM + GuardField.BehindM + (2 * RingOffM));

    // Evenly along the ring, from the corner at the left of the low edge on.
    private static IReadOnlyList<GroundPlace> AlongRing(GuardField field, int count)
    {
        var (lengthM, depthM) = RingSides(field);
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => i * 2 * (lengthM + depthM) / count)
                .Select(way =>
                    way <= lengthM ? (way, 0)
                    : way <= lengthM + depthM ? (lengthM, way - lengthM)
                    : way <= (2 * lengthM) + depthM ? ((2 * lengthM) + depthM - way, depthM)
                    : (0, (2 * (lengthM + depthM)) - way)
                )
                .Select(at => new GroundPlace(at.Item1 - RingOffM, at.Item2 - RingOffM)),
        ];
    }

    private static bool AreApart(IReadOnlyList<GroundPlace> places) =>
        places
            .Index()
            .All(each =>
                places
                    .Skip(each.Index + 1)
                    .All(other => double.Hypot(other.XM - each.Item.XM, other.YM - each.Item.YM) >= RodM)
            );
}
