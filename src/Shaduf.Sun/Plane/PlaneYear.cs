using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>The plane of the modules and what is around and on it.</summary>
/// <param name="Facing">How it lies.</param>
/// <param name="AlbedoShare">Share that the ground throws back, 0 to 1.</param>
/// <param name="Glass">The pane over the cells.</param>
/// <param name="Shade">What the skyline and what stands near leave.</param>
public sealed record PlaneSetting(PlaneFacing Facing, double AlbedoShare, Glass Glass, PlaneShade Shade);

/// <summary>
/// A year of light on the modules by the hour, 8,760 values each: what would fall on them with nothing in the way, what
/// the skyline, what stands near and the glass take of it, and what reaches the cells. Open less the three losses is
/// what reaches the cells, and that is beam, sky and ground together.
/// </summary>
/// <param name="OpenWPerM2">On the plane with a free horizon [W/m2].</param>
/// <param name="HorizonLostWPerM2">Kept off by the skyline [W/m2].</param>
/// <param name="NearLostWPerM2">Kept off by what stands near [W/m2].</param>
/// <param name="PlaneWPerM2">In front of the glass, what is kept off taken away [W/m2].</param>
/// <param name="ReflectedWPerM2">Thrown back by the glass beyond what it throws back of straight light [W/m2].</param>
/// <param name="BeamWPerM2">At the cells, from the sun and close around it [W/m2].</param>
/// <param name="SkyWPerM2">At the cells, from the rest of the sky [W/m2].</param>
/// <param name="GroundWPerM2">At the cells, from the ground [W/m2].</param>
/// <param name="EffectiveWPerM2">At the cells, all together [W/m2].</param>
public sealed record PlaneYear(
    ImmutableArray<double> OpenWPerM2,
    ImmutableArray<double> HorizonLostWPerM2,
    ImmutableArray<double> NearLostWPerM2,
    ImmutableArray<double> PlaneWPerM2,
    ImmutableArray<double> ReflectedWPerM2,
    ImmutableArray<double> BeamWPerM2,
    ImmutableArray<double> SkyWPerM2,
    ImmutableArray<double> GroundWPerM2,
    ImmutableArray<double> EffectiveWPerM2
)
{
    /// <summary>Lays a prepared year onto a plane.</summary>
    /// <param name="sky">The year, prepared.</param>
    /// <param name="setting">The plane and what is around it.</param>
    /// <returns>The light by hour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The setting is outside its ranges.</exception>
    /// <source>
    /// Perez and others 1990, incidence modifiers and shade as their own pages say. The light around the sun is lost with
    /// the beam; the ground's light is not shaded.
    /// </source>
    public static PlaneYear Of(SkyYear sky, PlaneSetting setting)
    {
        var pass = new GlassPass(setting);
        var years = new Years();
        foreach (ref readonly var hour in sky.Hours.Span)
        {
            years.Set(in hour, pass);
        }

        return years.Done();
    }

    /// <summary>The setting, checked and ready for many hours.</summary>
    private readonly struct GlassPass
    {
        private readonly PlaneShade shade;
        private readonly Glass glass;
        private readonly double straightShare;
        private readonly double albedoShare;

        internal GlassPass(PlaneSetting setting)
        {
            Within.Require(setting.AlbedoShare, 0, 1, "");
            setting.Glass.Require();
            (shade, glass) = (setting.Shade, setting.Glass);
            (Plane, albedoShare) = (setting.Facing.Laid(), setting.AlbedoShare);
            straightShare = 1 / glass.PassedShare(1);
            var tiltDeg = setting.Facing.TiltDeg;
            SkyShare = IncidenceModifier.PhysicalShare(IncidenceModifier.SkyDeg(tiltDeg), glass);
            GroundShare = IncidenceModifier.PhysicalShare(IncidenceModifier.GroundDeg(tiltDeg), glass);
        }

        internal LaidPlane Plane { get; }

        internal double SkyShare { get; }

        internal double GroundShare { get; }

        internal double SkyOverHorizon => shade.SkyPastHorizonShare;

        internal double SkyPastNear => shade.SkyPastNearShare;

        internal double ReflectedGround => albedoShare * (1 - Plane.SkyShare);

        internal double BeamShare(double cosine) => glass.PassedShare(cosine) * straightShare;

        internal double BeamOverHorizon(int hour) =>
            shade.BeamPastHorizonShare.IsEmpty ? 1 : shade.BeamPastHorizonShare[hour];

        internal double BeamPastNear(int hour) => shade.BeamPastNearShare.IsEmpty ? 1 : shade.BeamPastNearShare[hour];
    }

    private sealed class Years
    {
        private readonly double[] open = new double[YearCalendar.HourCount];
        private readonly double[] horizonLost = new double[YearCalendar.HourCount];
        private readonly double[] nearLost = new double[YearCalendar.HourCount];
        private readonly double[] plane = new double[YearCalendar.HourCount];
        private readonly double[] reflected = new double[YearCalendar.HourCount];
        private readonly double[] beam = new double[YearCalendar.HourCount];
        private readonly double[] sky = new double[YearCalendar.HourCount];
        private readonly double[] ground = new double[YearCalendar.HourCount];
        private readonly double[] effective = new double[YearCalendar.HourCount];

        internal void Set(in SkyHour hour, in GlassPass pass)
        {
            var cosine = pass.Plane.Cosine(hour.Sun);
            var beamOpen = cosine > 0 ? hour.SunWPerM2 * cosine : 0;

            // Where the horizon is darker than the sky the sum could fall below nothing; the model stops there.
            var skyOpen = Math.Max(0, (hour.EvenWPerM2 * pass.Plane.SkyShare) + (hour.RimWPerM2 * pass.Plane.TiltSine));
            var groundOpen = hour.GlobalWPerM2 * pass.ReflectedGround;
            var beamOver = beamOpen * pass.BeamOverHorizon(hour.Hour);
            var skyOver = skyOpen * pass.SkyOverHorizon;
            var beamPast = beamOver * pass.BeamPastNear(hour.Hour);
            var skyPast = skyOver * pass.SkyPastNear;
            var at = hour.Hour;
            open[at] = beamOpen + skyOpen + groundOpen;
            horizonLost[at] = beamOpen - beamOver + (skyOpen - skyOver);
            nearLost[at] = beamOver - beamPast + (skyOver - skyPast);
            beam[at] = beamPast > 0 ? beamPast * pass.BeamShare(cosine) : 0;
            sky[at] = skyPast * pass.SkyShare;
            ground[at] = groundOpen * pass.GroundShare;
            effective[at] = beam[at] + sky[at] + ground[at];
            plane[at] = beamPast + skyPast + groundOpen;
            reflected[at] = plane[at] - effective[at];
        }

        internal PlaneYear Done() =>
            new(
                Whole(open),
                Whole(horizonLost),
                Whole(nearLost),
                Whole(plane),
                Whole(reflected),
                Whole(beam),
                Whole(sky),
                Whole(ground),
                Whole(effective)
            );

        private static ImmutableArray<double> Whole(double[] hours) =>
            ImmutableCollectionsMarshal.AsImmutableArray(hours);
    }
}
