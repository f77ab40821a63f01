using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The choice of pump, array and tank under the shade that the chosen array stands in.</summary>
/// <param name="Sizing">The choice.</param>
/// <param name="Sky">The sky with the modules in the chosen plane, skyline and shade counted.</param>
/// <param name="Layout">Where everything stands.</param>
/// <param name="Guard">Light, earth and fence.</param>
public sealed record ShadedSizing(Sizing Sizing, Sky Sky, ArrayLayout Layout, Guard Guard)
{
    // Each round knows the shade of the array that the round before chose; a third one is rare.
    private const int MostRounds = 3;

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
        for (var round = 1; round < MostRounds && Misses(ground, shaded.Sizing); round++)
        {
            shaded = Shaded(ground, Sizing.Of(ground with { Sky = Behind(ground, ground.Sky, shaded.Layout) }));
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
        sizing.Limit is null && MetShare(ground, sizing) < ground.Survey["target"];

    private static double MetShare(SizingGround ground, Sizing sizing) =>
        Reliability.Share(ground.Span, YearRun.Run(sizing.Inputs(ground.Demand)));

    // The round after round chooses another array, and that one stands in another shade.
    private static BindingLimit ByShade(SizingGround ground, Sizing sizing)
    {
        var (target, met) = (ground.Survey["target"], MetShare(ground, sizing));
        return new(
            "shade",
            Invariant(
                $"{MostRounds} choices, each behind the shade of the one before, end in an array whose own fence, pole and racks take too much light: it meets {met * 100:0.0} % of the demand, {target * 100:0} % are asked for. Set the fence further off or ask for one rack"
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
        return new(
            sizing with
            {
                ModuleW = Sizing.ModuleYearW(choice.Module, sky.Year, sky.Light),
            },
            sky,
            layout,
            guard
        );
    }

    private static Sky Behind(SizingGround ground, Sky sky, ArrayLayout layout) =>
        sky.Behind(ground.Brief.Site.Place, facing => (layout with { Facing = facing }).Shade());
}
