using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The joists under a tank as its load lies on them: even, or harder on one half where it is pushed over.</summary>
internal sealed class StandBed
{
    // A joist under the tank: its share of an even load, its place, and the spans before and behind the tank's middle.
    private sealed record Strip(double Weight, double OffMm, double ChordMm, List<int> Front, List<int> Back);

    private readonly List<Strip> strips = [];
    private readonly List<int> free = [];

    /// <summary>The bed of a stand.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="frame">Its frame, joists cut at <see cref="Cuts"/>.</param>
    public StandBed(TankStand stand, SkeletonFrame frame)
    {
        var plan = stand.Plan;
        foreach (var joist in stand.Members(TankStand.JoistRole))
        {
            var member = stand.Skeleton.Members[joist];
            var chord = plan.ChordMm(member.From.XMm);
            var off = member.From.XMm - plan.MiddleMm;
            var atEdge = Math.Abs(Math.Abs(off) - (plan.BedMm / 2)) < 1;
            var strip = new Strip(atEdge ? 0.5 : 1, off, chord, [], []);
            foreach (var span in frame.SpansOf(joist))
            {
                var (from, to) = (frame.Spans[span].FromMm, frame.Spans[span].ToMm);
                var y = member.From.YMm + ((from + to) / 2) - plan.MiddleMm;
                var place =
                    Math.Abs(y) >= chord / 2 ? free
                    : y < 0 ? strip.Front
                    : strip.Back;
                place.Add(span);
            }

            if (strip.Front.Count > 0)
            {
                strips.Add(strip);
            }
        }
    }

    /// <summary>Spans of joists outside the tank's bottom.</summary>
    public IReadOnlyList<int> Free => free;

    /// <summary>Where joists are cut: at the tank's edge and its middle.</summary>
    /// <param name="stand">The stand.</param>
    public static IEnumerable<(int Member, double AtMm)> Cuts(TankStand stand)
    {
        var plan = stand.Plan;
        foreach (var joist in stand.Members(TankStand.JoistRole))
        {
            var from = stand.Skeleton.Members[joist].From;
            var half = plan.ChordMm(from.XMm) / 2;
            if (half > 1)
            {
                yield return (joist, plan.MiddleMm - half - from.YMm);
                yield return (joist, plan.MiddleMm - from.YMm);
                yield return (joist, plan.MiddleMm + half - from.YMm);
            }
        }
    }

    /// <summary>A force spread evenly over the tank's bottom.</summary>
    /// <param name="force">The force [N].</param>
    public IEnumerable<SpreadLoad> Even(Force force)
    {
        var all = strips.Sum(strip => strip.Weight * strip.ChordMm);
        return strips.SelectMany(strip =>
            strip.Front.Concat(strip.Back).Select(span => new SpreadLoad(span, force * (strip.Weight / all)))
        );
    }

    /// <summary>A side force at a height over the joists: even along the joists, and pressed and lifted as it turns the tank over.</summary>
    /// <param name="forceN">The force [N].</param>
    /// <param name="way">Heading, length 1.</param>
    /// <param name="armMm">Height over the middle of the joists [mm].</param>
    public IEnumerable<SpreadLoad> Pushed(double forceN, Shape.Point way, double armMm)
    {
        var couple = forceN * armMm;
        var across = couple * way.YMm / strips.Sum(strip => strip.Weight * strip.ChordMm * strip.ChordMm / 4);
        var along = couple * way.XMm / strips.Sum(strip => strip.Weight * strip.OffMm * strip.OffMm * strip.ChordMm);
        foreach (var strip in strips)
        {
            var tilt = along * strip.OffMm;
            foreach (var (spans, sense) in new[] { (strip.Front, -1), (strip.Back, 1) })
            {
                var down = strip.Weight * (tilt + (across * sense));
                foreach (var span in spans)
                {
                    yield return new(span, new(0, 0, -down));
                }
            }
        }

        foreach (var load in Even(new Force(way.XMm, way.YMm, 0) * forceN))
        {
            yield return load;
        }
    }
}
