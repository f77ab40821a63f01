using static System.FormattableString;

namespace Shaduf.Steel;

/// <summary>Tubes as sections of members.</summary>
internal static class TubeShape
{
    /// <summary>A square or rectangular tube.</summary>
    internal static MemberSection Hollow(
        SectionKind kind,
        double heightMm,
        double widthMm,
        double wallMm,
        bool isHotFinished
    )
    {
        var section = isHotFinished
            ? RectangularHollow.HotFinished(heightMm, widthMm, wallMm)
            : RectangularHollow.ColdFormed(heightMm, widthMm, wallMm);
        var name = Invariant($"tube {heightMm:0.#} x {widthMm:0.#} x {wallMm:0.##}");
        var alongZ = section.AreaMm2 * heightMm / (heightMm + widthMm);
        var (y, z) = (widthMm / 2, heightMm / 2);
        return Of(name, kind, (heightMm, widthMm, wallMm), section, (section.AreaMm2 - alongZ, alongZ)) with
        {
            Curve = CurveOf(isHotFinished),
            IsHotFinished = isHotFinished,
            Fibres = [new(-y, -z), new(y, -z), new(y, z), new(-y, z)],
        };
    }

    /// <summary>A round tube.</summary>
    internal static MemberSection Round(double diameterMm, double wallMm, bool isHotFinished)
    {
        var section = CircularHollow.Of(diameterMm, wallMm);
        var name = Invariant($"round tube {diameterMm:0.#} x {wallMm:0.##}");
        var shearMm2 = 2 * section.AreaMm2 / Math.PI;
        var r = diameterMm / 2;
        return Of(name, SectionKind.RoundTube, (diameterMm, diameterMm, wallMm), section, (shearMm2, shearMm2)) with
        {
            Curve = CurveOf(isHotFinished),
            IsHotFinished = isHotFinished,
            Fibres = [new(-r, 0), new(0, -r), new(r, 0), new(0, r)],
        };
    }

    private static MemberSection Of(
        string name,
        SectionKind kind,
        (double HeightMm, double WidthMm, double WallMm) size,
        SectionProperties section,
        (double YMm2, double ZMm2) shear
    ) =>
        new(
            name,
            kind,
            size.HeightMm,
            size.WidthMm,
            size.WallMm,
            new(section.AreaMm2, section.InertiaYMm4, section.InertiaZMm4, section.TorsionConstantMm4),
            section.ElasticModulusYMm3,
            section.ElasticModulusZMm3,
            section.PlasticModulusYMm3,
            section.PlasticModulusZMm3,
            shear.YMm2,
            shear.ZMm2,
            section.TorsionModulusMm3,
            section.MassKgPerM,
            BucklingCurve.C,
            0,
            []
        );

    private static BucklingCurve CurveOf(bool isHotFinished) => isHotFinished ? BucklingCurve.A : BucklingCurve.C;
}
