using Shaduf.Power;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings of lightning, earth and poles, with those of the light.</summary>
internal static class GuardFindings
{
    private const string Sphere = "IEC 62305-3:2010, rolling sphere";

    /// <summary>All findings of the guard.</summary>
    /// <param name="guard">The guard.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(Guard guard) =>
        [
            Need(guard.Lightning),
            .. guard.Lightning.Protection is { } protection ? Rods(guard, protection) : [],
            .. Earth(guard.Earth, guard.Lightning),
            .. guard.Light is { } light ? GuardLightFindings.Of(light, guard.Field, guard.Poles) : [],
            .. guard.Poles.Count > 0 ? new[] { Shade(guard) } : [],
            .. guard.Fence is { } fence ? FenceFindings.Of(fence) : [],
        ];

    private static Finding Need(GuardLightning lightning)
    {
        var often =
            lightning.StrikesPerYear > 0
                ? Invariant($"the racks would be struck about once in {1 / lightning.StrikesPerYear:#,0} years")
                : "no flash reaches the ground here";
        var (status, says) = lightning switch
        {
            { Protection: { } asked } => (
                FindingStatus.Holds,
                Invariant(
                    $"{often}; lightning rods of class {asked} are designed. Rods lower the chance of damage, nothing prevents lightning"
                )
            ),
            { IsNeeded: false } => (
                FindingStatus.Holds,
                Invariant($"{often}: no lightning rod is set; the owner decides with the local code")
            ),
            _ => (
                FindingStatus.Look,
                Invariant(
                    $"{often}, and near strokes are many times as frequent: the brief wants no rod. Have the owner sign for it, and set surge protection"
                )
            ),
        };
        return new(
            "guard/lightning",
            status,
            says,
            lightning.FlashesPerKm2Year,
            GuardLightning.LargestBareFlashesPerKm2Year,
            "/km2/year",
            "IEC 62305-2:2010, annex A: collection area; the limit is a judgement, no source"
        );
    }

    private static IEnumerable<Finding> Rods(Guard guard, LightningClass protection)
    {
        var lightning = guard.Lightning;
        yield return Volume(lightning);
        yield return Distance(lightning);
        if (protection is LightningClass.I or LightningClass.II)
        {
            yield return new(
                "guard/rod-class",
                FindingStatus.Look,
                $"class {protection} is for a lightning-protection specialist to design; these pages are a first estimate",
                null,
                null,
                "",
                "common practice, no source"
            );
        }

        if (!lightning.Points.Any(point => point.Name.StartsWith("tank", StringComparison.Ordinal)))
        {
            yield return new(
                "guard/rod-tank",
                FindingStatus.Look,
                "the tank does not stand under these rods: earth a metal tank or stand on two sides with rods of its own, or give guard.tankDistance where it stands beside the racks",
                null,
                null,
                "",
                "IEC 62305-3:2010, metal parts as natural conductors (from memory)"
            );
        }

        yield return new(
            "guard/step-voltage",
            FindingStatus.Look,
            "keep gate, taps, troughs and resting places this far from masts and buried wires, or lay 15 cm of gravel there; a warning sign on each mast; nobody and no animal near it when thunder is heard",
            3,
            null,
            "m",
            "IEC 62305-3:2010, clause 8 (from memory)"
        );
    }

    private static Finding Volume(GuardLightning lightning)
    {
        var isHigh = lightning.RodM > GuardLightning.HighestMastM;
        var counted =
            lightning.CountedRodM < lightning.RodM ? Invariant($", of which {lightning.CountedRodM:0} m count") : "";
        var what = Invariant(
            $"rods: {lightning.Rods.Count} of {lightning.RodM:0.0} m{counted}, class {lightning.Protection}, sphere of {lightning.SphereM:0} m"
        );
        var inside = HasMoreThanRacks(lightning)
            ? "every corner and edge of the racks and what stands with them is inside the protected volume"
            : "every corner and edge of the racks is inside the protected volume";
        return new(
            "guard/rods",
            lightning.Bare.Count > 0 ? FindingStatus.Stop
                : isHigh ? FindingStatus.Look
                : FindingStatus.Holds,
            lightning.Bare.Count > 0 ? $"{what}: {Touched(lightning)}"
                : isHigh ? $"{what}: {inside}; so high a mast is designed by an engineer"
                : $"{what}: {inside}",
            lightning.RodM,
            lightning.NeededM,
            "m",
            Sphere
        );
    }

    private static string Touched(GuardLightning lightning) =>
        Invariant(
            $"the sphere touches {lightning.Bare.Count} of {lightning.Points.Count} points, {lightning.Bare[0].Name} first; "
        )
        + (
            lightning.NeededM is null
                ? "no height behind the racks will do: a specialist sets rods beside or on them"
                : "raise the rods"
        );

    private static bool HasMoreThanRacks(GuardLightning lightning) =>
        lightning.Points.Any(point => !point.Name.StartsWith("rack", StringComparison.Ordinal));

    private static Finding Distance(GuardLightning lightning) =>
        new(
            "guard/rod-distance",
            lightning.KeepsDistance ? FindingStatus.Holds : FindingStatus.Look,
            lightning.KeepsDistance
                ? "masts stand clear of the racks: the flash does not jump over, and they are joined in the ground only"
                : "masts stand too near: bond each to the racks and set surge protection of type 1 on the direct-current side",
            GuardLightning.ClearM,
            lightning.DistanceM,
            "m",
            "IEC 62305-3:2010, 6.3: separation distance"
        );

    private static IEnumerable<Finding> Earth(GuardEarth earth, GuardLightning lightning)
    {
        var ring =
            earth.RingWireM > 0
                ? Invariant($", a ring of {earth.RingWireM:0} m of bare wire {GuardEarth.WireDepthM} m deep")
                : ", in a line";
        var more = earth.MoreWireM switch
        {
            0 => "",
            { } wireM => Invariant(
                $"; {wireM:0} m of bare wire in the pipe trench would bring it to {earth.AimOhm:0} ohm"
            ),
            null => "; 200 m of bare wire in the pipe trench would not bring it there: ask for an earthing design",
        };
        yield return new(
            "guard/earth",
            earth.EarthOhm <= earth.AimOhm ? FindingStatus.Holds : FindingStatus.Look,
            Invariant(
                $"one {GuardEarth.RodM:0.0} m rod should give about {earth.RodOhm:0} ohm, {earth.Rods.Count} of them{ring}, about {earth.EarthOhm:0.0} ohm{more}; soil differs by a factor of three: measure in the dry season and add rods until the local rules' target is met"
            ),
            earth.EarthOhm,
            earth.AimOhm,
            "ohm",
            lightning.Protection is null
                ? "BS 7430 rod formula; the aim is common practice, no source"
                : "BS 7430, Dwight 1936; aim of IEC 62305-3:2010, 5.4.1"
        );
        if (lightning.Protection is not null && earth.EarthOhm > GuardEarth.LightningAimOhm)
        {
            yield return new(
                "guard/earth-length",
                earth.CountedM >= earth.LeastRadiusM ? FindingStatus.Holds : FindingStatus.Look,
                earth.CountedM >= earth.LeastRadiusM
                    ? "electrodes are long enough to pass where 10 ohm cannot be had"
                    : "electrodes are too short to pass where 10 ohm cannot be had: lengthen the ring or the rods; an earthing specialist decides",
                earth.CountedM,
                earth.LeastRadiusM,
                "m",
                "IEC 62305-3:2010, figure 3: radius of the ring and twice the rods (from memory)"
            );
        }
    }

    private static Finding Shade(Guard guard)
    {
        var isBetween = guard.Poles.Any(pole => pole.Place.YM < guard.Field.DepthM);
        return new(
            "guard/pole-shade",
            isBetween || guard.NoonShadeM > 0 ? FindingStatus.Look : FindingStatus.Holds,
            isBetween ? "poles stand between the racks: their shadow crosses the rack behind them every day"
                : guard.NoonShadeM > 0
                    ? "the shadow of a pole reaches this far onto the top modules at noon of the worst day: set it farther back if you can"
                : "no pole shades the racks at noon; early and late its thin shadow may cross them",
            guard.NoonShadeM,
            0,
            "m",
            "sun at noon of the solstices"
        );
    }
}
