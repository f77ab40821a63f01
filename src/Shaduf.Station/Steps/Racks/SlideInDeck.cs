using Shaduf.Parts;
using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>A frame of channels into which the modules slide from its removable short side.</summary>
/// <param name="grid">Rows and columns of modules.</param>
/// <param name="lay">Sides of a module as it lies.</param>
/// <param name="sections">Sections.</param>
/// <param name="rowClearanceMm">Free length along each row [mm].</param>
/// <param name="tubes">Cross tubes, 0 for the customary spacing, and the longest free end over the span beside it.</param>
internal sealed class SlideInDeck(
    RackGrid grid,
    ModuleLay lay,
    RackSections sections,
    double rowClearanceMm,
    (int Count, double EndShare) tubes
) : RackDeck(grid, lay, tubes)
{
    /// <summary>Free length up the slope in each row [mm]; common practice, no source.</summary>
    public const double SlopeClearanceMm = 5;

    /// <summary>Length of a stub on each side of a crossing [mm]; common practice, no source.</summary>
    public const double StubMm = 250;

    private readonly SlideInChannel channel = sections.Channel!;

    /// <inheritdoc/>
    public override double InsideLengthMm => (Grid.Columns * Lay.AlongMm) + rowClearanceMm;

    /// <inheritdoc/>
    public override double LengthMm => InsideLengthMm + (2 * channel.WebMm);

    /// <inheritdoc/>
    public override double InsideDepthMm => Grid.Rows * RowMm;

    /// <inheritdoc/>
    public override double DepthMm => InsideDepthMm + (Grid.Rows * 2 * channel.WebMm);

    /// <inheritdoc/>
    public override double ThicknessMm => channel.OuterDepthMm;

    /// <inheritdoc/>
    public override (double FirstMm, double PitchMm) Along
    {
        get
        {
            var gapMm = rowClearanceMm / (Grid.Columns + 1);
            return (channel.WebMm + gapMm, Lay.AlongMm + gapMm);
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<ModuleRow> Rows
    {
        get
        {
            double[] bearers = [0, .. HolderSlopesMm, DepthMm];
            return
            [
                .. Enumerable
                    .Range(0, Grid.Rows)
                    .Select(i => (i, from: channel.WebMm + (i * ((2 * channel.WebMm) + RowMm))))
                    .Select(row => new ModuleRow(
                        row.from,
                        row.from + RowMm,
                        row.i,
                        bearers[row.i],
                        row.i + 1,
                        bearers[row.i + 1]
                    )),
            ];
        }
    }

    /// <inheritdoc/>
    public override IReadOnlyList<int> Bear(RackSteel steel)
    {
        var ends = (From: channel.WebMm, To: LengthMm - channel.WebMm);
        List<int> bearers =
        [
            Bar(steel, 0, (0, LengthMm), 1),
            .. HolderSlopesMm.Select(slope => Bar(steel, slope, ends, 0)),
            Bar(steel, DepthMm, (0, LengthMm), -1),
        ];
        Side(steel, "F2", "closed short side", 1, bearers);
        Side(steel, "F3", "removable short side", -1, bearers);
        Stubs(steel.Setting).ToList().ForEach(steel.Add);
        RemovableSide.Lugs(steel, (sections.Angle, channel), (LengthMm, DepthMm)).ToList().ForEach(steel.Add);
        return bearers;
    }

    /// <inheritdoc/>
    public override void Join(RackSteel steel, int tube, IReadOnlyList<int> bearers)
    {
        var (setting, x) = (steel.Setting, steel[tube].From.XMm);
        foreach (var bearer in bearers)
        {
            var slope = setting.SlopeMm(steel[bearer].From);
            var isHolder = steel[bearer].Profile.MakeUp == MakeUp.DoubleChannel;
            steel.Weld(
                isHolder ? "holder to cross tube and stubs" : "cross tube to channel",
                (tube, setting.OnSlope(x, slope, -sections.Tube.SideMm / 2)),
                (bearer, setting.OnSlope(x, slope, AxisMm)),
                new(
                    WeldPattern.TwoRuns,
                    RackSteel.WeldLegMm,
                    isHolder ? sections.Tube.SideMm + (2 * StubMm) : sections.Tube.SideMm,
                    sections.Angle.SideMm * (isHolder ? 2 : 1),
                    new(1, 0, 0)
                )
            );
        }
    }

    // The lap in runs of 40 mm every 150 mm on both sides: common practice, no source.
    /// <inheritdoc/>
    public override IEnumerable<Seam> Seams
    {
        get
        {
            var channelMm = (2 * LengthMm) + (2 * InsideDepthMm) + (2 * (Grid.Rows - 1) * InsideLengthMm);
            yield return new("lap of the channels", RackSteel.WeldLegMm, 40, 2 * (int)Math.Ceiling(channelMm / 150));
            var stubs = TubePlacesMm.Count * 2 * (Grid.Rows - 1);
            yield return new("stub to cross tube", RackSteel.WeldLegMm, 4 * sections.Tube.SideMm, stubs)
            {
                IsAllRound = true,
            };
            var stitches = 2 * (Grid.Rows - 1) * (int)Math.Ceiling(InsideLengthMm / 300);
            yield return new(HolderName, RackSteel.WeldLegMm, 40, stitches);
            yield return RemovableSide.LugWelds(Grid.Rows + 1);
        }
    }

    /// <inheritdoc/>
    public override IEnumerable<Fixing> Bolts(RackSteel steel) => [RemovableSide.Bolts(steel)];

    /// <summary>Name of the stitches of a holder's channels, above and below: 40 mm in every 300; common practice, no source.</summary>
    public const string HolderName = "channels of the holder to each other";

    private double RowMm => Lay.UpMm + SlopeClearanceMm;

    private double AxisMm => channel.OuterDepthMm / 2;

    private IEnumerable<double> HolderSlopesMm =>
        Enumerable.Range(1, Grid.Rows - 1).Select(i => i * ((2 * channel.WebMm) + RowMm));

    // A channel along the row, or two of them back to back where the lips point to both sides.
    private int Bar(RackSteel steel, double slopeMm, (double From, double To) ends, int lipsUp)
    {
        var setting = steel.Setting;
        var (mark, role) = lipsUp == 0 ? ("F4", "middle holder") : ("F1", "long side of the frame");
        for (var i = 0; i < (lipsUp == 0 ? 2 : 1); i++)
        {
            Angles(
                steel,
                (mark, role),
                setting.OnSlope(ends.From, slopeMm, 0),
                setting.OnSlope(ends.To, slopeMm, 0),
                [.. TubePlacesMm.Select(x => x - ends.From)]
            );
        }

        return steel.Add(
            new Member(
                mark,
                role,
                new(lipsUp == 0 ? MakeUp.DoubleChannel : MakeUp.Channel, sections.Angle, channel.InsideDepthMm),
                setting.OnSlope(ends.From, slopeMm, AxisMm),
                setting.OnSlope(ends.To, slopeMm, AxisMm),
                setting.UpSlope * (lipsUp == 0 ? 1 : lipsUp)
            )
        );
    }

    // One angle carries the lower lip, the other the upper; their splices are staggered.
    private void Angles(RackSteel steel, (string Mark, string Role) name, Point from, Point to, double[] heldMm)
    {
        var lower = steel.Setting.OffPlane * (channel.OuterDepthMm * 0.25);
        var upper = lower * 3;
        var section = sections.Angle;

        // What ends at another channel goes in between its lips.
        var work =
            name.Mark == "F1"
                ? ""
                : FormattableString.Invariant($"flat leg cut back {channel.CutBackMm:0.#} at both ends");
        steel.Add(Part.Over(name.Mark, name.Role, section, (from + lower, to + lower), heldMm) with { Work = work });
        steel.Add(
            Part.Over(name.Mark, name.Role, section, (from + upper, to + upper), heldMm, isTurned: true) with
            {
                Work = work,
            }
        );
    }

    // The short sides: one welded, the other bolted so that the modules slide in.
    private void Side(RackSteel steel, string mark, string role, int lips, List<int> bearers)
    {
        var (setting, web) = (steel.Setting, channel.WebMm);
        var x = lips > 0 ? 0 : LengthMm;
        double[] heldMm = [0, .. HolderSlopesMm.Select(slope => slope - web), DepthMm - (2 * web)];
        Angles(steel, (mark, role), setting.OnSlope(x, web, 0), setting.OnSlope(x, DepthMm - web, 0), heldMm);
        var side = new Member(
            mark,
            role,
            new(MakeUp.Channel, sections.Angle, channel.InsideDepthMm),
            setting.OnSlope(x, web, AxisMm),
            setting.OnSlope(x, DepthMm - web, AxisMm),
            new(lips, 0, 0)
        );
        var index = steel.Add(side);
        var isBolted = lips < 0;
        End(steel, (bearers[0], setting.OnSlope(x, 0, AxisMm)), (index, side.From), isBolted);
        End(steel, (bearers[^1], setting.OnSlope(x, DepthMm, AxisMm)), (index, side.To), isBolted);
        foreach (var holder in bearers.Skip(1).SkipLast(1))
        {
            var end = lips > 0 ? steel[holder].From : steel[holder].To;
            End(steel, (index, setting.OnSlope(x, setting.SlopeMm(end), AxisMm)), (holder, end), isBolted);
        }
    }

    private void End(RackSteel steel, (int Member, Point At) goesOn, (int Member, Point At) ends, bool isBolted)
    {
        if (isBolted)
        {
            steel.Bolt(RemovableSide.JointName, goesOn, ends);
            return;
        }

        var weld = new JointWeld(
            WeldPattern.TwoRuns,
            RackSteel.WeldLegMm,
            channel.OuterDepthMm,
            channel.WebMm,
            steel.Setting.OffPlane
        );
        steel.Weld("corner of the frame", goesOn, ends, weld);
    }

    private IEnumerable<Part> Stubs(RackSetting setting) =>
        from x in TubePlacesMm
        from slope in HolderSlopesMm
        from side in new[] { -1, 1 }
        let face = x + (side * sections.Tube.SideMm / 2)
        let axisMm = -sections.Tube.SideMm / 2
        select Part.Straight(
            "S1",
            "stub under the holder",
            sections.Tube,
            setting.OnSlope(face, slope, axisMm),
            setting.OnSlope(face + (side * StubMm), slope, axisMm)
        );
}
