using System.Globalization;
using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>One size of equal angle as it is sold.</summary>
/// <param name="Name">Name of the size, as the list calls it: <c>L 40x40x4</c>.</param>
/// <param name="LegMm">Leg a, outside [mm].</param>
/// <param name="ThicknessMm">Leg thickness t [mm].</param>
/// <param name="MassKgPerM">Mass of a metre [kg/m].</param>
public sealed record AngleSize(string Name, double LegMm, double ThicknessMm, double MassKgPerM);

/// <summary>A size that was not taken, with the reason.</summary>
/// <param name="Name">Name of the size.</param>
/// <param name="Why">One plain sentence with the figures.</param>
public sealed record AngleRefusal(string Name, string Why);

/// <summary>The angle chosen for a channel, and what speaks against every other.</summary>
/// <param name="Angle">The lightest size that fits; null when none does.</param>
/// <param name="Channel">The channel made of it; null when none fits.</param>
/// <param name="Others">Every other size, in the order given, with its reason.</param>
public sealed record SlideInChoice(AngleSize? Angle, SlideInChannel? Channel, IReadOnlyList<AngleRefusal> Others);

/// <summary>
/// A channel that a module's edge slides into: two equal angles, flat legs apart and pointing the same way, upright
/// legs one behind the other and welded along their lap.
/// </summary>
/// <param name="LegMm">Leg a of both angles [mm].</param>
/// <param name="ThicknessMm">Leg thickness t [mm].</param>
/// <param name="InsideDepthMm">Clear depth d between the flat legs: module thickness and clearance [mm].</param>
/// <param name="LapMm">Lap of the upright legs, 2 a - 2 t - d [mm]; negative when they do not meet.</param>
/// <param name="WebMm">Thickness of the web at the lap, 2 t [mm].</param>
/// <param name="OuterDepthMm">Depth over both flat legs, d + 2 t [mm].</param>
/// <param name="LipCoverMm">How far the shorter lip reaches over a module that touches the web, a - 2 t [mm].</param>
/// <param name="WhyNot">Why it cannot be made, one plain sentence with the figures; empty when it can.</param>
public sealed record SlideInChannel(
    double LegMm,
    double ThicknessMm,
    double InsideDepthMm,
    double LapMm,
    double WebMm,
    double OuterDepthMm,
    double LipCoverMm,
    string WhyNot
)
{
    /// <summary>Least lap of the upright legs that leaves room for the weld and for fitting up [mm].</summary>
    /// <source>common practice, no source</source>
    public const double LeastLapMm = 15;

    /// <summary>Longest leg that still ends above the other flat leg, d + t [mm].</summary>
    public double LongestLegMm => InsideDepthMm + ThicknessMm;

    /// <summary>How far the flat legs of a channel are cut back where it runs to the web of another: past the other's lips, and 2 mm free [mm].</summary>
    public double CutBackMm => LegMm - ThicknessMm + 2;

    /// <summary>Whether the channel can be made.</summary>
    public bool Fits => WhyNot.Length == 0;

    /// <summary>
    /// A channel of two equal angles. The lap must be at least <see cref="LeastLapMm"/>, and the leg at most d + t: the
    /// upright leg on the inside starts at the back of one flat leg and must end above the other. The root fillet is
    /// not counted: a square module edge stops at it, up to the root radius before the web, and the inner leg's toe is
    /// ground to pass it where the leg is longer than d + t less the root radius.
    /// </summary>
    /// <param name="legMm">Leg a [mm], 15 to 250.</param>
    /// <param name="thicknessMm">Leg thickness t [mm], 2 to 40, at most a third of the leg.</param>
    /// <param name="moduleThicknessMm">Thickness of the module's frame [mm], 10 to 100.</param>
    /// <param name="clearanceMm">Clearance over the frame for paint and sliding [mm], 0 to 20.</param>
    /// <returns>The channel; <see cref="Fits"/> says whether it can be made.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>common practice, no source; plane geometry</source>
    public static SlideInChannel Of(double legMm, double thicknessMm, double moduleThicknessMm, double clearanceMm)
    {
        Within.Require(legMm, 15, 250, "mm");
        Within.Require(thicknessMm, 2, Math.Min(40, legMm / 3), "mm");
        Within.Require(moduleThicknessMm, 10, 100, "mm");
        Within.Require(clearanceMm, 0, 20, "mm");
        var insideMm = moduleThicknessMm + clearanceMm;
        var lapMm = 2 * legMm - 2 * thicknessMm - insideMm;
        return new(
            legMm,
            thicknessMm,
            insideMm,
            lapMm,
            2 * thicknessMm,
            insideMm + 2 * thicknessMm,
            legMm - 2 * thicknessMm,
            Obstacle(legMm, thicknessMm, insideMm, lapMm)
        );
    }

    /// <summary>The lightest size of a list that makes a channel for a module, and why each other size is not taken.</summary>
    /// <param name="sizes">The sizes that can be had; at equal mass the earlier one is taken.</param>
    /// <param name="moduleThicknessMm">Thickness of the module's frame [mm], 10 to 100.</param>
    /// <param name="clearanceMm">Clearance over the frame [mm], 0 to 20.</param>
    /// <returns>The choice; its angle is null when no size fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure is outside the range that <see cref="Of"/> or a mass of 0.1 to 100 kg/m allows, or NaN.</exception>
    /// <source>common practice, no source</source>
    public static SlideInChoice Choose(IReadOnlyList<AngleSize> sizes, double moduleThicknessMm, double clearanceMm)
    {
        foreach (var size in sizes)
        {
            Within.Require(size.MassKgPerM, 0.1, 100, "kg/m");
        }

        var tried = sizes
            .Select(size => (Size: size, Channel: Of(size.LegMm, size.ThicknessMm, moduleThicknessMm, clearanceMm)))
            .ToList();

        // Both are null when none fits.
        var (chosen, channel) = tried
            .Where(one => one.Channel.Fits)
            .OrderBy(one => one.Size.MassKgPerM)
            .FirstOrDefault();
        var others = tried
            .Where(one => !ReferenceEquals(one.Size, chosen))
            .Select(one => new AngleRefusal(
                one.Size.Name,
                one.Channel.Fits ? NotLighter(one.Size, chosen!) : one.Channel.WhyNot
            ))
            .ToList();
        return new(chosen, channel, others);
    }

    /// <summary>Legs that make a channel of a thickness: long enough to lap, short enough to pass the other flat leg.</summary>
    /// <param name="thicknessMm">Leg thickness t [mm], 2 to 40.</param>
    /// <param name="moduleThicknessMm">Thickness of the module's frame [mm], 10 to 100.</param>
    /// <param name="clearanceMm">Clearance over the frame [mm], 0 to 20.</param>
    /// <returns>Shortest and longest leg [mm]; none fits where the shortest is the longer of the two.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>common practice, no source; plane geometry</source>
    public static (double ShortestMm, double LongestMm) Legs(
        double thicknessMm,
        double moduleThicknessMm,
        double clearanceMm
    )
    {
        Within.Require(thicknessMm, 2, 40, "mm");
        Within.Require(moduleThicknessMm, 10, 100, "mm");
        Within.Require(clearanceMm, 0, 20, "mm");
        var insideMm = moduleThicknessMm + clearanceMm;
        return (((insideMm + LeastLapMm) / 2) + thicknessMm, insideMm + thicknessMm);
    }

    // Why the channel cannot be made; empty when it can.
    private static string Obstacle(double legMm, double thicknessMm, double insideMm, double lapMm)
    {
        if (lapMm < LeastLapMm)
        {
            return Says(
                $"the upright legs lap {lapMm:0.#} mm (2 x {legMm:0.#} - 2 x {thicknessMm:0.#} - {insideMm:0.#}), and the weld needs {LeastLapMm:0.#} mm"
            );
        }

        var longestLegMm = insideMm + thicknessMm;
        return legMm > longestLegMm
            ? Says(
                $"the leg of {legMm:0.#} mm is longer than the {longestLegMm:0.#} mm between the back of one flat leg and the face of the other (inside depth {insideMm:0.#} + thickness {thicknessMm:0.#})"
            )
            : "";
    }

    private static string NotLighter(AngleSize size, AngleSize chosen) =>
        Says(
            $"fits, but at {size.MassKgPerM:0.##} kg/m is not lighter than {chosen.Name} at {chosen.MassKgPerM:0.##} kg/m"
        );

    private static string Says(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}
