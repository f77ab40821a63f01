using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The choice of pump, array and tank under the shade that the chosen array stands in.</summary>
/// <param name="Sizing">The choice.</param>
/// <param name="Sky">The sky with the modules in the chosen plane, skyline and shade counted.</param>
/// <param name="Layout">Where everything stands.</param>
/// <param name="Guard">Light, earth and fence.</param>
/// <param name="Electrics">Strings, cables and what protects them.</param>
public sealed record ShadedSizing(Sizing Sizing, Sky Sky, ArrayLayout Layout, Guard Guard, Electrics Electrics)
{
    /// <summary>The sky of the chosen plane with nothing before it, by which lamps are charged.</summary>
    public required Sky Open { get; init; }

    /// <summary>Light, earth and fence round the racks that are built: the choice stood on customary bars, a few millimetres off.</summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <param name="rack">The rack that is built.</param>
    public Guard Round(SizingGround ground, Rack rack) =>
        GuardField.Of(rack) == Guard.Field
            ? Guard
            : Guard.Of(ground.Brief, ground.Survey, Open, Sizing.Choice.Tank, rack, ground.Shelf);

    // Each round knows the shade of the array that the round before chose; from the third on it also asks for as much more
    // as an array's own shade has taken beyond that.
    private const int MostRounds = 5;

    // With less more asked for, a round could choose the same array again.
    private const double LeastReserveShare = 1e-4;

    /// <summary>
    /// Chooses behind the skyline and what the brief says stands near, sets the station out, and runs the year behind all
    /// that stands in the light then, fence, pole and racks too. Where the target is missed by it, the choice is made again
    /// behind the shade of what was chosen.
    /// </summary>
    /// <param name="ground">All that is settled before the choice.</param>
    /// <returns>The choice and where it stands.</returns>
    public static ShadedSizing Of(SizingGround ground)
    {
        var shaded = Shaded(ground, Sizing.Of(ground));
        var reserve = 0.0;
        for (var round = 2; round <= MostRounds && Misses(ground, shaded.Sizing); round++)
        {
            var behind = ground with { Sky = Behind(ground, ground.Sky, shaded.Layout) };
            var next = Sizing.Of(behind with { AskedShare = Math.Min(1, ground.AskedShare + reserve) });
            if (next.Limit is not null && reserve > 0)
            {
                break;
            }

            shaded = Shaded(ground, next);
            var taken = MetShare(ground, next) - MetShare(ground, shaded.Sizing);
            reserve = Math.Max(reserve, taken) + LeastReserveShare;
        }

        return Misses(ground, shaded.Sizing)
            ? shaded with
            {
                Sizing = shaded.Sizing with { Limit = ByShade(ground, shaded.Sizing) },
            }
            : shaded;
    }

    // Missed by the shade alone: without it the search would have said what limits.
    private static bool Misses(SizingGround ground, Sizing sizing) =>
        sizing.Limit is null && MetShare(ground, sizing) < ground.AskedShare;

    private static double MetShare(SizingGround ground, Sizing sizing) =>
        Reliability.Share(ground.Span, YearRun.Run(sizing.Inputs(ground.Demand)));

    // The round after round chooses another array, and that one stands in another shade.
    private static BindingLimit ByShade(SizingGround ground, Sizing sizing)
    {
        var (target, met) = (ground.Survey["target"], MetShare(ground, sizing));
        return new(
            "shade",
            Invariant(
                $"choices made again behind the shade of the one before end in an array whose own fence, pole and racks take too much light: it meets {met * 100:0.0} % of the demand, {target * 100:0} % are asked for. Set the fence further off or ask for one rack"
            ),
            target,
            met,
            ""
        );
    }

    private static ShadedSizing Shaded(SizingGround ground, Sizing sizing)
    {
        var choice = sizing.Choice;
        var rack = Rack.Of(ground.Brief.Rack, choice.Module, choice.Grid, choice.Facing.TiltDeg, ground.Shelf)!;
        var open = ground.Sky.On(choice.Facing).Alone;
        var guard = Guard.Of(ground.Brief, ground.Survey, open, choice.Tank, rack, ground.Shelf);
        var layout = ArrayLayout.Of(ground.Brief, choice, rack, guard);
        var sky = Behind(ground, open, layout);
        var electrics = Electrics.Of(sizing, ground, rack, LightningAsk.Of(guard.Lightning));
        return new(
            Wired(ground, sizing, electrics) with
            {
                ModuleW = Sizing.ModuleYearW(choice.Module, sky.Year, sky.Light),
            },
            sky,
            layout,
            guard,
            electrics
        )
        {
            Open = open,
        };
    }

    // The search takes the drop that cables may have at most, and the motor's own lowest speed; what was chosen has its
    // cables, and its drive is set.
    private static Sizing Wired(SizingGround ground, Sizing sizing, Electrics electrics)
    {
        var losses = ground.Brief.Array.Losses.WiringShare is null
            ? sizing.Losses with
            {
                WiringShare = 1 - electrics.DirectDropShare,
            }
            : sizing.Losses;
        var lowest = electrics.Lowest;
        if (!(lowest.SetHz < lowest.HighestHz))
        {
            return sizing with { Losses = losses };
        }

        var hydraulics = sizing.Hydraulics with { LowestHz = lowest.SetHz };
        return sizing with
        {
            Losses = losses,
            Hydraulics = hydraulics,
            Table = hydraulics.Table(sizing.VoltageSpeedRatio, ground.Source.YieldM3PerH),
        };
    }

    private static Sky Behind(SizingGround ground, Sky sky, ArrayLayout layout) =>
        sky.Behind(ground.Brief.Site.Place, facing => (layout with { Facing = facing }).Shade());
}
