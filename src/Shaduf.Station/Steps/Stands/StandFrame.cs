using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Puts a stand together as one solid model of marked parts.</summary>
/// <param name="plan">Its lines.</param>
/// <param name="crew">The crew whose truck carries it.</param>
internal sealed class StandFrame(StandPlan plan, CrewBrief crew)
{
    /// <summary>Length of a weld on each side of a diagonal on its gusset [mm].</summary>
    internal const double LapMm = 80;

    /// <summary>Name of the joint where two diagonals cross.</summary>
    internal const string CrossingName = "diagonals where they cross";

    /// <summary>Name of the joints of the caps on legs with the beams on them.</summary>
    internal const string HeadName = "row beam to cap";

    /// <summary>Name of the joints of horizontals with legs.</summary>
    internal const string RingName = "horizontal to leg";

    /// <summary>Name of the joints of diagonals with legs.</summary>
    internal const string EndName = "diagonal to leg";

    /// <summary>Name of the welds on each side of a diagonal's end.</summary>
    internal const string LapName = "diagonal on gusset";

    /// <summary>Name of the welds of gussets.</summary>
    internal const string GussetName = "gusset to leg";

    /// <summary>Name of the welds of base plates.</summary>
    internal const string BaseName = "leg to base plate";

    /// <summary>Name of the welds of the deck.</summary>
    internal const string DeckName = "deck to joists";

    /// <summary>Name of the welds of caps.</summary>
    internal const string CapName = "cap to leg";

    /// <summary>Name of the welds of the toe plate.</summary>
    internal const string ToeName = "toe plate to deck";

    private static readonly Point AlongX = new(1, 0, 0);
    private static readonly Point AlongY = new(0, 1, 0);
    private readonly RackSteel steel = new(null);
    private int gussets;

    /// <summary>The stand with all its parts and welds.</summary>
    /// <exception cref="ArgumentException">A part would have no length; the message names it.</exception>
    public TankStand Built()
    {
        var legs = Legs();
        for (var level = 0; level < plan.BayCount; level++)
        {
            Bay(legs, level);
        }

        var beams = Beams(legs);
        Joists(beams);
        var access = StandAccess.Add(steel, plan);
        var plates = new StandPlates(
            StandFoot.Of(plan.Sections.Leg.SideMm),
            plan.LegCount,
            plan.Sections.Leg.SideMm,
            gussets,
            plan.DeckM2,
            2 * (plan.WidthMm.RightMm - plan.WidthMm.LeftMm + plan.DepthMm.BackMm - plan.DepthMm.FrontMm)
        );
        Assembly assembly = new("stand", steel.Parts, [.. StandWelds.Of(steel, plan, access, (gussets, crew))])
        {
            Series = 200,
            Plates = plates.Pieces,
            Fixings = [StandWelds.Bolts(steel)],
        };
        return new(plan, assembly, steel.Skeleton, access, plates);
    }

    // By row, front then back, and along the row.
    private int[][] Legs() =>
        [
            .. new[] { 0, plan.SideMm }.Select(
                (y, row) =>
                    plan.RowsXMm[row]
                        .Select(x =>
                        {
                            var (from, to) = (new Point(x, y, StandPlan.FootMm), new Point(x, y, plan.TopMm));
                            var leg = steel.Add(Square('L', TankStand.LegRole, plan.Sections.Leg, from, to), AlongX);
                            steel.Set(leg, from);
                            return leg;
                        })
                        .ToArray()
            ),
        ];

    // Faces along both rows, then across them at each pair of legs: diagonals, and horizontals over them. Inner legs that
    // stand in the gaps of the other row are held by plan braces to its two nearest.
    private void Bay(int[][] legs, int bay)
    {
        foreach (var row in legs)
        {
            foreach (var (left, right) in row.Zip(row.Skip(1)))
            {
                Face(left, right, bay);
            }
        }

        var pairs = plan.IsPaired ? legs[0].Zip(legs[1]) : [(legs[0][0], legs[1][0]), (legs[0][^1], legs[1][^1])];
        foreach (var (front, back) in pairs)
        {
            Face(front, back, bay);
        }

        for (var i = 0; i < legs[0].Length && !plan.IsPaired; i++)
        {
            foreach (var back in legs[1][Math.Max(1, i)..Math.Min(legs[1].Length - 1, i + 2)])
            {
                PlanBrace(legs[0][i], back, bay);
            }
        }
    }

    // Lies on level plates welded to the legs, bolted at both ends.
    private void PlanBrace(int front, int back, int bay)
    {
        var (a, b) = (At(front, plan.LevelsMm[bay + 1]), At(back, plan.LevelsMm[bay + 1]));
        var unit = (b - a) * (1 / (b - a).LengthMm);
        var inset = (plan.Sections.Leg.SideMm / Math.Sqrt(2)) + 20;
        var part = Square('Z', TankStand.PlanRole, plan.Sections.Diagonal, a + (unit * inset), b - (unit * inset));
        var index = steel.Add(part, (a, b), new(0, 0, 1));
        steel.Bolt("plan brace to leg", (front, a), (index, a));
        steel.Bolt("plan brace to leg", (back, b), (index, b));
        gussets += 2;
    }

    private void Face(int first, int second, int bay)
    {
        var (low, high) = (plan.LevelsMm[bay], plan.LevelsMm[bay + 1]);
        var out1 = Direction(first, second);
        var side = plan.Sections.Leg.SideMm / 2;
        var (a, b) = (At(first, high), At(second, high));
        var horizontal = steel.Add(
            Square('H', TankStand.HorizontalRole, plan.Sections.Horizontal, a + (out1 * side), b - (out1 * side)),
            (a, b),
            new(-out1.YMm, out1.XMm, 0)
        );
        var round = AllRound(plan.Sections.Horizontal.SideMm, new(0, 0, 1));
        steel.Weld(RingName, (first, a), (horizontal, a), round);
        steel.Weld(RingName, (second, b), (horizontal, b), round);

        var rising = Diagonal((first, At(first, low)), (second, b));
        var falling = Diagonal((second, At(second, low)), (first, a));
        var middle = steel[rising].From + ((steel[rising].To - steel[rising].From) * 0.5);
        steel.Bolt(CrossingName, (rising, middle), (falling, middle));
    }

    // The bar is as long as the line from leg to leg, less what the legs and their gussets take.
    private int Diagonal((int Leg, Point At) low, (int Leg, Point At) high)
    {
        var along = high.At - low.At;
        var unit = along * (1 / along.LengthMm);
        var level = Math.Sqrt((unit.XMm * unit.XMm) + (unit.YMm * unit.YMm));
        var inset = (plan.Sections.Leg.SideMm / 2 / level) + 20;
        var part = Square(
            'X',
            TankStand.DiagonalRole,
            plan.Sections.Diagonal,
            low.At + (unit * inset),
            high.At - (unit * inset)
        );
        var index = steel.Add(part, (low.At, high.At), new(-unit.YMm / level, unit.XMm / level, 0));
        steel.Bolt(EndName, (low.Leg, low.At), (index, low.At));
        steel.Bolt(EndName, (high.Leg, high.At), (index, high.At));
        gussets += 2;
        return index;
    }

    private int[] Beams(int[][] legs) =>
        [
            .. legs.Select(
                (row, i) =>
                {
                    var y = steel[row[0]].From.YMm;
                    var (left, right) = plan.WidthMm;
                    var (from, to) = (new Point(left, y, plan.BeamZMm), new Point(right, y, plan.BeamZMm));
                    var supports = plan.RowsXMm[i].Select(x => x - left).ToList();
                    var beam = steel.Add(
                        Part.Over(
                            plan.IsPaired || i == 0 ? "G1" : "G2",
                            TankStand.BeamRole,
                            plan.Sections.Beam,
                            (from, to),
                            supports
                        ),
                        AlongY
                    );
                    foreach (var leg in row)
                    {
                        var top = steel[leg].To;
                        Head((beam, top with { ZMm = plan.BeamZMm }), (leg, top));
                    }

                    return beam;
                }
            ),
        ];

    // A plate closes each leg; the beam is welded all round where both touch: along its sides on the plate, and across its
    // underside on the plate's edges.
    private void Head((int Member, Point At) beam, (int Member, Point At) leg)
    {
        var (legMm, beamMm) = (plan.Sections.Leg.SideMm, plan.Sections.Beam.SideMm);
        if (legMm >= beamMm)
        {
            var capMm = legMm + StandPlates.CapBeyondMm;
            steel.Cap(HeadName, beam, leg, new(WeldPattern.AllRound, RackSteel.WeldLegMm, capMm, beamMm, AlongX));
        }
        else
        {
            steel.Weld(HeadName, beam, leg, AllRound(legMm, AlongX));
        }
    }

    private void Joists(int[] beams)
    {
        var (front, back) = plan.DepthMm;
        var weld = new JointWeld(
            WeldPattern.TwoRuns,
            RackSteel.WeldLegMm,
            plan.Sections.Beam.SideMm,
            plan.Sections.Joist.SideMm,
            AlongY
        );
        foreach (var x in plan.JoistXMm)
        {
            var (from, to) = (new Point(x, front, plan.JoistZMm), new Point(x, back, plan.JoistZMm));
            var joist = steel.Add(
                Part.Over("J1", TankStand.JoistRole, plan.Sections.Joist, (from, to), [-front, plan.SideMm - front]),
                AlongX
            );
            foreach (var beam in beams)
            {
                var y = steel[beam].From.YMm;
                steel.Seat(
                    "joist to row beam",
                    (beam, new(x, y, plan.BeamZMm)),
                    (joist, new(x, y, plan.JoistZMm)),
                    weld
                );
            }
        }
    }

    private Part Square(char letter, string role, Section section, Point from, Point to) =>
        steel.Cut(
            letter,
            role,
            section,
            () => Cut.Of(from, to, section.SideMm, new(from, to - from), new(to, to - from))
        );

    private Point At(int leg, double zMm) => steel[leg].From with { ZMm = zMm };

    private Point Direction(int first, int second)
    {
        var along = steel[second].From - steel[first].From;
        return along * (1 / along.LengthMm);
    }

    private static JointWeld AllRound(double sideMm, Point along) =>
        new(WeldPattern.AllRound, RackSteel.WeldLegMm, sideMm, sideMm, along);
}
