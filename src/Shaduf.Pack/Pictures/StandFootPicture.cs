using Shaduf.Ground;
using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The foot of a stand's leg: from the side on its plinth, and its plate from above; beside it the head with its cap.</summary>
internal static class StandFootPicture
{
    private const double ShownMm = 160;

    /// <summary>The foot from the side and its plate from above.</summary>
    /// <param name="design">The stands.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Foot(StandDesign design, double oneToFactor)
    {
        var (stand, foot, block) = (design.Stand, design.Stand.Plates.Foot, design.Footings.Block);
        var (half, leg) = (foot.SideMm / 2, stand.Plan.Sections.Leg.SideMm / 2);
        var view = new SceneBuilder(new(900, 900)).View(new(oneToFactor, new(0, 0), new(300, 200)));
        var (top, plinth) = (foot.ThicknessMm, block.PlinthSideMm / 2);
        var ground = -foot.GroutMm;
        var low = ground - foot.InConcreteMm;
        view.Concrete(new(-plinth, ground), new(plinth, ground - block.PlinthHeightMm));
        var beyond = Math.Min(block.LengthMm / 2, plinth + 150);
        view.Concrete(
            new(-beyond, ground - block.PlinthHeightMm),
            new(beyond, Math.Max(low - 80, ground - block.PlinthHeightMm - block.DepthMm))
        );
        view.Rectangle(Layer.Steel, new(-half, 0), new(half, top), Palette.White);
        view.Rectangle(Layer.Steel, new(-leg, top), new(leg, top + ShownMm), Palette.White);
        foreach (var side in new[] { -1, 1 })
        {
            AnchorBolt.Draw(view, side * foot.SpacingMm / 2, foot.Bolt.DiameterMm, (low, foot.BoltMm), (0, top));
        }

        view.Leader(
            new(half, top / 2),
            12,
            -10,
            $"{stand.Steel.MarkOf(StandPlates.BaseRole)} plate {stand.Plates.Pieces[0].Sizes}"
        );
        view.Leader(
            new(foot.SpacingMm / 2, low + (foot.InConcreteMm * 0.5)),
            view.Placing.LengthMm(beyond - (foot.SpacingMm / 2)) + 8,
            0,
            Invariant(
                $"4 bolts {foot.BoltName}, {foot.BoltMm:0} long, each with\nthree nuts and washers: one at the\nend, one under, one on the plate"
            )
        );
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(-beyond, ground), new(-beyond, 0)) { Text = Invariant($"{foot.GroutMm:0} grout") },
                new(new(-beyond, low), new(-beyond, ground)),
                new(new(-beyond, ground - block.PlinthHeightMm), new(-beyond, ground))
                {
                    Text = Invariant($"{block.PlinthHeightMm:0} plinth"),
                },
                new(new(-beyond, top), new(-beyond, low + foot.BoltMm))
                {
                    Text = Invariant($"{foot.BoltMm - foot.InConcreteMm - foot.GroutMm - top:0} above"),
                },
            ]
        );
        view.Dimensions(
            DimensionSide.Below,
            [
                new(new(-foot.SpacingMm / 2, low - 80), new(foot.SpacingMm / 2, low - 80)),
                new(new(-half, low - 80), new(half, low - 80)),
                new(new(-plinth, low - 80), new(plinth, low - 80)),
            ]
        );
        return FrameDetails.Titled(view, oneToFactor, "foot of a leg, the same from all sides; four bolts on a square");
    }

    /// <summary>The head of a leg with its cap, the beam on it, and the gusset of a diagonal.</summary>
    /// <param name="design">The stands.</param>
    /// <param name="oneToFactor">n of the scale 1:n.</param>
    public static Scene Head(StandDesign design, double oneToFactor)
    {
        var (stand, sections) = (design.Stand, design.Stand.Plan.Sections);
        var (leg, beam, cap) = (sections.Leg.SideMm / 2, sections.Beam.SideMm, stand.Plates.CapSideMm / 2);
        var view = new SceneBuilder(new(900, 900)).View(new(oneToFactor, new(0, 0), new(300, 300)));
        var (gusset, down) = (StandPlates.Gusset.SideMm, stand.Plan.TopMm - stand.Plan.LevelsMm[^1]);
        view.Rectangle(Layer.Steel, new(-leg, -down - gusset), new(leg, 0), Palette.White);
        view.Rectangle(Layer.Steel, new(-cap, 0), new(cap, StandPlan.CapMm), Palette.White);
        view.Rectangle(
            Layer.Steel,
            new(-leg - 150, StandPlan.CapMm),
            new(leg + 250, StandPlan.CapMm + beam),
            Palette.White
        );
        view.Rectangle(
            Layer.Steel,
            new(leg, -down - (gusset / 2)),
            new(leg + gusset, -down + (gusset / 2)),
            Palette.White
        );
        view.Line(Layer.Centre, new(0, -down - gusset - 30), new(0, StandPlan.CapMm + beam + 30));
        view.Line(Layer.Centre, new(0, -down), new(leg + gusset + 60, -down));
        view.Leader(
            new(cap, StandPlan.CapMm / 2),
            34,
            4,
            $"{stand.Steel.MarkOf(StandPlates.CapRole)} cap {stand.Plates.Pieces[1].Sizes}"
        );
        view.Leader(
            new(leg + (gusset * 0.8), -down - (gusset * 0.3)),
            12,
            6,
            $"{stand.Steel.MarkOf(StandPlates.GussetRole)} gusset {stand.Plates.Pieces[2].Sizes}"
        );
        view.Dimensions(DimensionSide.Left, [new(new(-leg - 150, -down), new(-leg - 150, 0))]);
        return FrameDetails.Titled(
            view,
            oneToFactor,
            "head of a leg from the front; diagonals and horizontals taken off; the centre lines of leg, diagonal and horizontal meet"
        );
    }
}
