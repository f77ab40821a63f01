using Shaduf.Power;

namespace Shaduf.Station;

/// <summary>Lightning: how often it strikes, and the rods that keep it off the racks.</summary>
/// <param name="Wish">What the brief asks.</param>
/// <param name="FlashesPerKm2Year">Flashes to ground [1/km²/year].</param>
/// <param name="CollectionM2">Ground from which the racks draw strokes [m²].</param>
/// <param name="StrikesPerYear">Strikes to the racks [1/year].</param>
/// <param name="Protection">Class of the rods; null when there are none.</param>
/// <param name="Rods">Where the rods stand, all of one height; empty when there are none.</param>
/// <param name="RodM">Height of their tips above ground [m]; 0 when there are none.</param>
/// <param name="NeededM">Height that the points need [m]; 0 when there are none, null when no height that the sphere allows will do.</param>
/// <param name="Points">What is to be protected.</param>
/// <param name="Bare">Those of them that the rods do not protect.</param>
/// <param name="DistanceM">Least distance of the racks from a mast, so that the flash does not jump over [m].</param>
public sealed record GuardLightning(
    LightningWish Wish,
    double FlashesPerKm2Year,
    double CollectionM2,
    double StrikesPerYear,
    LightningClass? Protection,
    IReadOnlyList<GroundPlace> Rods,
    double RodM,
    double? NeededM,
    IReadOnlyList<GuardPoint> Points,
    IReadOnlyList<GuardPoint> Bare,
    double DistanceM
)
{
    /// <summary>Flash density above which rods are set when the brief leaves it open [1/km²/year]; judgement, no source.</summary>
    public const double LargestBareFlashesPerKm2Year = 2;

    /// <summary>Class when the brief leaves it open: common practice for arrays in the open, no source.</summary>
    public const LightningClass UsualClass = LightningClass.III;

    /// <summary>Highest mast that is chosen [m]; beyond it an engineer designs it.</summary>
    public const double HighestMastM = 9;

    // A tip stands above the highest thing by this much.
    private const double LeastOverM = 0.5;
    private const double StepM = 0.1;
    private const int MostInLine = 4;

    /// <summary>Whether the flash density asks for rods.</summary>
    public bool IsNeeded => FlashesPerKm2Year > LargestBareFlashesPerKm2Year;

    /// <summary>Whether a flash in a mast keeps off the racks, which then need no bond to it above ground.</summary>
    public bool KeepsDistance => ClearM >= DistanceM;

    /// <summary>From the skin of the thickest mast to the nearest rack [m].</summary>
    public static double ClearM => GuardField.BehindM - (LightColumnSize.All.Max(size => size.DiameterMm) / 2000);

    /// <summary>Radius of the rolling sphere [m]; that of the usual class when there are no rods.</summary>
    public double SphereM => RollingSphere.RadiusM(Protection ?? UsualClass);

    /// <summary>How high the rods protect at a place [m].</summary>
    /// <param name="place">The place.</param>
    /// <returns>Height [m]; 0 where nothing is protected.</returns>
    public double ProtectedM(GroundPlace place)
    {
        var oneM = Rods.Select(rod => double.Hypot(rod.XM - place.XM, rod.YM - place.YM))
            .Select(asideM => RollingSphere.ProtectedM(SphereM, CountedRodM, asideM))
            .DefaultIfEmpty(0)
            .Max();
        return Rods.Count > 1 ? Math.Max(oneM, ProtectedVolume.HeightM(SphereM, CountedRodM, Rods, place)) : oneM;
    }

    /// <summary>Works out need, rods and their height.</summary>
    /// <param name="wish">What the brief asks.</param>
    /// <param name="flashesPerKm2Year">Flashes to ground [1/km²/year], 0 to 200.</param>
    /// <param name="field">The racks.</param>
    /// <param name="lamps">Lamps: to be protected, and their poles may carry the rods.</param>
    /// <param name="tank">Points of the tank; empty when it does not stand beside the racks.</param>
    /// <returns>The lightning.</returns>
    public static GuardLightning Of(
        LightningBrief wish,
        double flashesPerKm2Year,
        GuardField field,
        IReadOnlyList<GuardPoint> lamps,
        IReadOnlyList<GuardPoint> tank
    )
    {
        var areaM2 = StrikeFrequency.CollectionM2(field.LengthM, field.DepthM, field.TopM);
        var bare = new GuardLightning(
            wish.Wish,
            flashesPerKm2Year,
            areaM2,
            StrikeFrequency.PerYear(flashesPerKm2Year, areaM2, 1),
            null,
            [],
            0,
            0,
            [],
            [],
            0
        );
        var protection = wish.Asked ?? (wish.Wish == LightningWish.Choose && bare.IsNeeded ? UsualClass : null);
        return protection is { } asked
            ? bare.With(asked, wish.RodM, Layouts(field, lamps), [.. field.Edges, .. lamps, .. tank]) with
            {
                DistanceM = SeparationDistance.LeastM(asked, 1, field.TopM, SeparatedBy.Air),
            }
            : bare;
    }

    private GuardLightning With(
        LightningClass protection,
        double? givenM,
        IEnumerable<IReadOnlyList<GroundPlace>> layouts,
        IReadOnlyList<GuardPoint> points
    )
    {
        var sphereM = RollingSphere.RadiusM(protection);
        var mostM = givenM ?? HighestMastM;
        var tried = new List<(IReadOnlyList<GroundPlace> Rods, double? NeededM)>();
        foreach (var layout in layouts.TakeWhile(_ => !tried.Exists(each => each.NeededM <= mostM)))
        {
            tried.Add((layout, NeededHeightM(sphereM, layout, points)));
        }

        var (rods, neededM) = tried.MinBy(each => each.NeededM <= mostM ? 0 : each.NeededM ?? double.MaxValue);
        var rodM = givenM ?? neededM ?? Math.Min(sphereM, HighestMastM);
        var countedM = Math.Min(sphereM, rodM);
        return this with
        {
            Protection = protection,
            Rods = rods,
            RodM = rodM,
            NeededM = neededM,
            Points = points,
            Bare = [.. points.Where(point => !IsInside(sphereM, countedM, rods, point))],
        };
    }

    /// <summary>What counts of the rods' height [m]: above the sphere's radius lightning strikes their sides.</summary>
    public double CountedRodM => Math.Min(SphereM, RodM);

    // The lamps' poles first; then few rods before many, and behind the last rack, where they shade least, before behind
    // every rack.
    private static IEnumerable<IReadOnlyList<GroundPlace>> Layouts(GuardField field, IReadOnlyList<GuardPoint> lamps) =>
        (field.RackCount > 1 ? new[] { false, true } : [false])
            .SelectMany(everyRack => Enumerable.Range(1, MostInLine).Select(count => field.Behind(count, everyRack)))
            .OrderBy(rods => rods.Count)
            .Prepend([.. lamps.Select(lamp => lamp.Place)])
            .Where(rods => rods.Count > 0);

    // To the next tenth of a metre; the tip also stands clear above the highest thing, and the tube reaches up to a lamp on it.
    private static double? NeededHeightM(
        double sphereM,
        IReadOnlyList<GroundPlace> rods,
        IReadOnlyList<GuardPoint> points
    )
    {
        var lowM = points.Max(point =>
            point.HeightM + (rods.Contains(point.Place) ? LightColumn.TipMm / 1000 : LeastOverM)
        );
        var low = (int)Math.Ceiling((lowM / StepM) - 1e-9);
        var high = (int)Math.Floor(sphereM / StepM + 1e-9);
        bool Serves(int steps) => points.All(point => IsInside(sphereM, steps * StepM, rods, point));
        if (low > high || !Serves(high))
        {
            return null;
        }

        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Serves(middle) ? (low, middle) : (middle + 1, high);
        }

        return low * StepM;
    }

    // One rod near enough is proof and quickly seen; else the rods together.
    private static bool IsInside(double sphereM, double rodM, IReadOnlyList<GroundPlace> rods, GuardPoint point)
    {
        if (point.HeightM > rodM)
        {
            return false;
        }

        var nearestM = rods.Min(rod => double.Hypot(rod.XM - point.Place.XM, rod.YM - point.Place.YM));
        return nearestM <= RollingSphere.ReachM(sphereM, rodM, point.HeightM)
            || (rods.Count > 1 && ProtectedVolume.Holds(sphereM, rodM, rods, point.Place, point.HeightM));
    }
}
