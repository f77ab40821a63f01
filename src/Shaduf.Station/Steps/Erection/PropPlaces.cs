using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Where the props of a frame stand.</summary>
public static class PropPlaces
{
    /// <summary>Ground left between a pit and a board on it [mm].</summary>
    /// <source>29 CFR 1926.651(j)(2): 2 feet, stated for spoil and gear beside a pit</source>
    public const double ClearOfPitMm = 600;

    /// <summary>Mark of the cross tubes or rafters.</summary>
    public const string TubeMark = "T1";

    /// <summary>Widest board under a prop [mm].</summary>
    public const double WidestBoardMm = 600;

    /// <summary>Lean of a prop that need not lean further [deg].</summary>
    /// <source>judgement, no source</source>
    public const double UsualLeanDeg = 30;

    // Room for the column's weld and the crew's hands; the tube's end beyond a head. Judgement.
    private const double BesideColumnMm = 150;
    private const double TubeEndMm = 100;

    /// <summary>The props of each cross tube or rafter: out beyond the pits across the row, or along it where that leans less.</summary>
    /// <param name="rack">The rack.</param>
    /// <param name="footings">Its footings, the pits.</param>
    /// <param name="boardMm">Side of the boards [mm].</param>
    public static IReadOnlyList<PropPair> Of(Rack rack, Footings footings, double boardMm)
    {
        var across = rack.TubePlacesMm.Select(x => Across(rack, footings, x, boardMm)).ToList();
        if (across.TrueForAll(pair => pair.LeanDeg <= Propping.MostLeanDeg))
        {
            return across;
        }

        var along = rack.TubePlacesMm.Select((x, i) => Along(rack, footings, across[i], boardMm)).ToList();
        return along.Max(pair => pair.LeanDeg) < across.Max(pair => pair.LeanDeg) ? along : across;
    }

    private static double OutMm(double pitMm, double boardMm) => (pitMm / 2) + ClearOfPitMm + (boardMm / 2);

    private static PropPair Across(Rack rack, Footings footings, double x, double boardMm)
    {
        var skeleton = rack.Skeleton;
        var (tube, feet) = (
            skeleton.Members.First(member => member.Mark == TubeMark && Math.Abs(member.From.XMm - x) < 1),
            skeleton.Feet.Where(foot => Math.Abs(foot.Ground.XMm - x) < 1).ToList()
        );
        var heads = feet.Select(foot => skeleton.Members[foot.Member].To.YMm).Order().ToList();
        var columns = feet.Select(foot => foot.Ground.YMm).Order().ToList();
        var pits = footings.Form == FootingForm.Beam ? [(columns[0] + columns[^1]) / 2] : columns;
        var outMm = OutMm(footings.Block.WidthMm, boardMm);
        var under = new Underside(rack, tube);
        return new(
            under.Standing(heads[0] - BesideColumnMm, pits[0] - outMm, -1),
            under.Standing(heads[^1] + BesideColumnMm, pits[^1] + outMm, 1),
            heads,
            (under.Low.YMm, under.High.YMm)
        );
    }

    // Heads half way from the columns to the ends of the tube; feet on both sides along the row, clear of the pit.
    private static PropPair Along(Rack rack, Footings footings, PropPair across, double boardMm)
    {
        var x = across.Low.Head.XMm;
        var pitMm = footings.Form == FootingForm.Strip ? double.PositiveInfinity : footings.Block.LengthMm;
        if (double.IsInfinity(pitMm))
        {
            return across;
        }

        var under = new Underside(
            rack,
            rack.Skeleton.Members.First(member => member.Mark == TubeMark && Math.Abs(member.From.XMm - x) < 1)
        );
        Prop At(double y) =>
            new[] { -1, 1 }
                .Select(side => x + (side * OutMm(pitMm, boardMm)))
                .Select(foot => new Prop(new(x, y, under.LevelMm(y)), new(foot, y, rack.Setting.Ground.ZMm(foot, y))))
                .MaxBy(prop => prop.LengthMm)!;
        var (low, high) = across.EndsMm;
        return across with
        {
            Low = At((low + across.HeadsMm[0]) / 2),
            High = At((high + across.HeadsMm[^1]) / 2),
            IsAlong = true,
        };
    }

    // The underside of a cross tube, which props stand under.
    private sealed record Underside(Rack Rack, Point Low, Point High)
    {
        public Underside(Rack rack, Member tube)
            : this(
                rack,
                tube.From.YMm < tube.To.YMm ? tube.From : tube.To,
                tube.From.YMm < tube.To.YMm ? tube.To : tube.From
            ) { }

        private double RiseRatio => (High.ZMm - Low.ZMm) / (High.YMm - Low.YMm);

        public double LevelMm(double y) =>
            Low.ZMm
            + ((y - Low.YMm) * RiseRatio)
            - (Rack.Sections.Tube.SideMm / 2 / Math.Cos(Rack.Setting.TiltDeg * Math.PI / 180));

        // The head lies as near to the column as a lean of 30 deg lets it, but on the tube.
        public Prop Standing(double nearestMm, double footMm, int side)
        {
            var foot = new Point(Low.XMm, footMm, Rack.Setting.Ground.ZMm(Low.XMm, footMm));
            var lean = Math.Tan(UsualLeanDeg * Math.PI / 180);
            var reached = foot.YMm - (side * (LevelMm(foot.YMm) - foot.ZMm) * lean / (1 + (side * RiseRatio * lean)));
            var end = Math.Min(TubeEndMm, (High.YMm - Low.YMm) / 4);
            var y =
                side < 0
                    ? Math.Max(Low.YMm + end, Math.Min(nearestMm, reached))
                    : Math.Min(High.YMm - end, Math.Max(nearestMm, reached));
            return new(new(Low.XMm, y, LevelMm(y)), foot);
        }
    }
}
