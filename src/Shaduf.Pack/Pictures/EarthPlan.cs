using Shaduf.Power;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The earth from above: rods with their numbers, bare wire, and what is bonded to it.</summary>
internal static class EarthPlan
{
    private const double SymbolMm = 1.4;

    // The wire along the racks where no ring goes round them stands so far off their ends.
    private const double BesideM = 0.4;

    /// <summary>Draws wire, bonds and rods.</summary>
    /// <param name="view">The plan in the racks' field.</param>
    /// <param name="guard">The guard.</param>
    /// <param name="hasFence">Whether the fence is drawn.</param>
    public static void Draw(SiteView view, Guard guard, bool hasFence)
    {
        var wire = Wire(guard);
        if (wire.Count > 1)
        {
            view.Polyline(Layer.Earthing, [.. wire.Select(At)]);
        }

        foreach (var bond in Bonds(guard, wire, hasFence))
        {
            view.Polyline(Layer.Thin, [.. bond.Select(At)]);
        }

        foreach (var rod in guard.Lightning.Rods)
        {
            view.Polyline(Layer.Earthing, [At(rod), At(Nearest(wire, rod))]);
        }

        foreach (var rod in guard.Earth.Rods)
        {
            view.Builder.Circle(Layer.Outline, view.At(At(rod)), SymbolMm, Palette.White);
        }

        var drive = view.At(At(Drive(guard)));
        view.Builder.Rectangle(Layer.Outline, PaperBox.Round([drive.Moved(-1, -1), drive.Moved(1, 1)]), Palette.White);
    }

    /// <summary>Writes the numbers of rods and poles, when all lines are drawn.</summary>
    /// <param name="view">The plan in the racks' field.</param>
    /// <param name="guard">The guard.</param>
    public static void Number(SiteView view, Guard guard)
    {
        var texts = new FreeTexts(view.Builder);
        foreach (var place in guard.Earth.Rods.Concat(guard.Poles.Select(pole => pole.Place)))
        {
            texts.Avoid(view.At(At(place)), SymbolMm);
        }

        foreach (var (i, rod) in guard.Earth.Rods.Index())
        {
            texts.Beside(view.At(At(rod)), Invariant($"{i + 1}"));
        }

        foreach (var (i, pole) in guard.Poles.Index())
        {
            texts.Beside(view.At(At(pole.Place)), Invariant($"pole {i + 1}"));
        }

        texts.Beside(view.At(At(Drive(guard))), "drive");
        texts.Write();
    }

    private static GroundPlace Drive(Guard guard) => new(0, guard.Field.RackM / 2);

    // The ring, closed; or the line of the rods.
    private static List<GroundPlace> Wire(Guard guard)
    {
        if (guard.Earth.RingWireM <= 0)
        {
            return [.. guard.Earth.Rods];
        }

        var ((lengthM, depthM), off) = (GuardEarth.RingSides(guard.Field), -GuardEarth.RingOffM);
        return
        [
            new(off, off),
            new(off + lengthM, off),
            new(off + lengthM, off + depthM),
            new(off, off + depthM),
            new(off, off),
        ];
    }

    // Racks and drive at their left end, where no ring passes by a wire along them; the gate posts straight.
    private static IEnumerable<IReadOnlyList<GroundPlace>> Bonds(Guard guard, List<GroundPlace> wire, bool hasFence)
    {
        var field = guard.Field;
        var besideM = guard.Earth.RingWireM > 0 ? GuardEarth.RingOffM : BesideM;
        GroundPlace[] bonded =
        [
            Drive(guard),
            .. Enumerable
                .Range(0, field.RackCount)
                .Select(rack => new GroundPlace(0, (rack * field.PitchM) + (field.RackM / 4))),
        ];
        foreach (var place in bonded)
        {
            yield return [place, place with { XM = -besideM }];
        }

        if (guard.Earth.RingWireM <= 0 && wire.Count > 0)
        {
            var (low, high) = (bonded.Min(place => place.YM), wire[0].YM);
            yield return [new(-besideM, low), new(-besideM, high), Nearest(wire, new(-besideM, high))];
        }

        if (hasFence && wire.Count > 0 && guard.Fence is { Line.GatePosts: var (from, to) } fence)
        {
            foreach (var post in new[] { from, to })
            {
                var place = fence.Bearing.InField(new(post.EastM, post.NorthM));
                yield return [place, Nearest(wire, place)];
            }
        }
    }

    private static GroundPlace Nearest(List<GroundPlace> wire, GroundPlace place) =>
        wire.Zip(wire.Skip(1))
            .Select(side => OnSide(side.First, side.Second, place))
            .Append(wire[0])
            .MinBy(at => double.Hypot(at.XM - place.XM, at.YM - place.YM));

    private static GroundPlace OnSide(GroundPlace a, GroundPlace b, GroundPlace place)
    {
        var (x, y) = (b.XM - a.XM, b.YM - a.YM);
        var lengthM2 = (x * x) + (y * y);
        var share = lengthM2 > 0 ? Math.Clamp((((place.XM - a.XM) * x) + ((place.YM - a.YM) * y)) / lengthM2, 0, 1) : 0;
        return new(a.XM + (share * x), a.YM + (share * y));
    }

    private static SitePoint At(GroundPlace place) => SitePoint.Metres(place.XM, place.YM);
}
