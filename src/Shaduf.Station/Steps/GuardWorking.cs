using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The calculations of light, lightning and earth, written out.</summary>
internal static class GuardWorking
{
    public static IEnumerable<WorkingSheet> Show(Guard guard)
    {
        yield return Strikes(guard);
        if (guard.Lightning.Protection is not null)
        {
            yield return Rods(guard);
        }

        yield return Earth(guard.Earth);
        if (guard.Light is { } light)
        {
            yield return Light(light);
        }

        foreach (var sheet in guard.PoleStrengths.SelectMany(LightColumnFindings.Show))
        {
            yield return sheet;
        }
    }

    private static WorkingSheet Strikes(Guard guard)
    {
        var (field, lightning) = (guard.Field, guard.Lightning);
        var aroundM = 3 * field.TopM;
        return new(
            "Lightning: how often it strikes the racks",
            [
                new(
                    "A_d",
                    "L W + 2 (3H) (L + W) + π (3H)²",
                    Invariant(
                        $"{field.LengthM:0.0} × {field.DepthM:0.0} + 2 × {aroundM:0.0} × ({field.LengthM:0.0} + {field.DepthM:0.0}) + π × {aroundM:0.0}²"
                    ),
                    lightning.CollectionM2,
                    "m²",
                    "power/strike-frequency",
                    "IEC 62305-2:2010, annex A"
                ),
                new(
                    "N_d",
                    "N_g A_d C_d 10⁻⁶",
                    Invariant($"{lightning.FlashesPerKm2Year:0.##} × {lightning.CollectionM2:0} × 1 × 10⁻⁶"),
                    lightning.StrikesPerYear,
                    "1/year",
                    "power/strike-frequency",
                    "IEC 62305-2:2010, annex A"
                ),
            ]
        );
    }

    // For the point of the racks that needs the highest single rod.
    private static WorkingSheet Rods(Guard guard)
    {
        var lightning = guard.Lightning;
        var (worst, asideM) = lightning
            .Points.Where(point => point.Name.StartsWith("rack", StringComparison.Ordinal))
            .Select(point =>
                (
                    point,
                    AsideM: lightning.Rods.Min(rod => double.Hypot(rod.XM - point.Place.XM, rod.YM - point.Place.YM))
                )
            )
            .MaxBy(each => each.AsideM + ChordM(lightning.SphereM, each.point.HeightM));
        var chordM = ChordM(lightning.SphereM, worst.HeightM);
        var reachM = RollingSphere.ReachM(
            lightning.SphereM,
            lightning.CountedRodM,
            Math.Min(lightning.CountedRodM, worst.HeightM)
        );
        return new(
            Invariant($"Lightning rods: {worst.Name}, {asideM:0.00} m from the nearest rod"),
            [
                new(
                    "c_z",
                    "√(2 R z − z²)",
                    Invariant($"√(2 × {lightning.SphereM:0} × {worst.HeightM:0.00} − {worst.HeightM:0.00}²)"),
                    chordM,
                    "m",
                    "power/rolling-sphere",
                    "IEC 62305-3:2010, annex A"
                ),
                new(
                    "r_z",
                    "√(2 R h − h²) − c_z",
                    Invariant(
                        $"√(2 × {lightning.SphereM:0} × {lightning.CountedRodM:0.00} − {lightning.CountedRodM:0.00}²) − {chordM:0.00}"
                    ),
                    reachM,
                    "m",
                    "power/rolling-sphere",
                    lightning.Rods.Count > 1 && reachM < asideM
                        ? "one rod alone; the rods together reach farther"
                        : "IEC 62305-3:2010, annex A"
                ),
                new(
                    "s",
                    "(k_i/k_m) k_c l",
                    Invariant($"one conductor, l = {guard.Field.TopM:0.00} m, in air, class {lightning.Protection}"),
                    lightning.DistanceM,
                    "m",
                    "power/separation-distance",
                    "IEC 62305-3:2010, 6.3"
                ),
            ]
        );
    }

    private static WorkingSheet Earth(GuardEarth earth)
    {
        var lines = new List<Line>
        {
            new(
                "R_rod",
                "ρ/(2π L) (ln(8 L/d) − 1)",
                Invariant(
                    $"{earth.ResistivityOhmM:0}/(2π × {GuardEarth.RodM:0.0}) × (ln(8 × {GuardEarth.RodM:0.0}/{GuardEarth.RodDiameterM}) − 1)"
                ),
                earth.RodOhm,
                "Ω",
                "power/earth-rod",
                "BS 7430:2011"
            ),
            new(
                "R_rods",
                "one voltage on all rods, each raised by the others' currents ρ/(2π s)",
                Invariant($"{earth.Rods.Count} rods where they stand"),
                RodGroup.ResistanceOhm(earth.ResistivityOhmM, GuardEarth.RodM, GuardEarth.RodDiameterM, earth.Rods),
                "Ω",
                "power/rod-group",
                "BS 7430:2011"
            ),
        };
        if (earth.RingWireM > 0)
        {
            var ringM = 2 * earth.RingRadiusM;
            lines.Add(
                new(
                    "R_ring",
                    "ρ/(2π² D) (ln(8 D/d) + ln(2 D/h))",
                    Invariant(
                        $"{earth.ResistivityOhmM:0}/(2π² × {ringM:0.0}) × (ln(8 × {ringM:0.0}/{GuardEarth.WireDiameterM}) + ln(2 × {ringM:0.0}/{GuardEarth.WireDepthM}))"
                    ),
                    earth.RingOhm,
                    "Ω",
                    "power/buried-wire",
                    "Dwight 1936"
                )
            );
            lines.Add(
                new(
                    "R",
                    "1.2/(1/R_ring + 1/R_rods)",
                    "electrodes close together share the soil: 20 % added",
                    earth.EarthOhm,
                    "Ω",
                    "power/buried-wire",
                    "10 to 20 %, from memory"
                )
            );
        }

        return new("Earth", lines);
    }

    private static WorkingSheet Light(GuardLight light)
    {
        var battery = light.Card.Battery;
        var (depth, cold) = (LampBattery.DepthShare(battery.Kind), LampBattery.ColdShare(battery.Kind, light.ColdDegC));
        var lamp = light.Lamps[0];
        return new(
            "Night light: one lamp",
            [
                new(
                    "E_0",
                    "MF I_0/H²",
                    Invariant(
                        $"{GuardLight.KeptShare} × {light.Card.Luminaire.IntensityCd(0):0} / {lamp.HeightM:0.0}²"
                    ),
                    light.Card.Luminaire.Lux(lamp.HeightM, 0, GuardLight.KeptShare),
                    "lx",
                    "power/point-light",
                    "inverse-square law"
                ),
                new(
                    "W",
                    "P t",
                    Invariant($"{light.Card.LampW:0.#} × {light.HoursPerNight:0.00}"),
                    light.NightlyWh,
                    "Wh",
                    "power/lamp-battery",
                    "longest night, or as asked"
                ),
                new(
                    "C",
                    "W N/(DoD η k)",
                    Invariant(
                        $"{light.NightlyWh:0} × {light.Nights:0.#}/({depth} × {GuardLight.BatteryShare} × {cold:0.##})"
                    ),
                    light.NeededWh,
                    "Wh",
                    "power/lamp-battery",
                    "IEEE 1562, IEC 61427 form"
                ),
                new(
                    "P_pv",
                    "m W/(η PSH)",
                    Invariant(
                        $"{light.MarginRatio:0.##} × {light.NightlyWh:0}/({light.ChargeShare:0.##} × {light.WorstSunKWhPerM2Day:0.00})"
                    ),
                    light.NeededW ?? 0,
                    "W",
                    "power/charging-module",
                    light.NeededW is null ? "too little sun to charge" : "IEC 62124, IEEE 1562 form"
                ),
            ]
        );
    }

    private static double ChordM(double sphereM, double atM) => Math.Sqrt(atM * ((2 * sphereM) - atM));
}
