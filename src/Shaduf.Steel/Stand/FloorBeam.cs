using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>A beam on two supports under an even load: a joist under a tank, or a strip of its deck.</summary>
public static class FloorBeam
{
    /// <summary>Largest moment.</summary>
    /// <param name="loadKNPerM">Load [kN/m], 0 to 1,000.</param>
    /// <param name="spanM">Span [m], 0.05 to 20.</param>
    /// <returns>w L²/8 [kN·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Theory of elastic beams</source>
    public static double MomentKNm(double loadKNPerM, double spanM)
    {
        Within.Require(loadKNPerM, 0, 1_000, "kN/m");
        Within.Require(spanM, 0.05, 20, "m");
        return loadKNPerM * spanM * spanM / 8;
    }

    /// <summary>Sag in the middle.</summary>
    /// <param name="loadKNPerM">Load [kN/m], 0 to 1,000.</param>
    /// <param name="spanM">Span [m], 0.05 to 20.</param>
    /// <param name="inertiaMm4">Second moment of area [mm4], 100 to 1e10.</param>
    /// <returns>5 w L⁴/(384 E I) [mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Theory of elastic beams</source>
    public static double SagMm(double loadKNPerM, double spanM, double inertiaMm4)
    {
        Within.Require(loadKNPerM, 0, 1_000, "kN/m");
        Within.Require(spanM, 0.05, 20, "m");
        Within.Require(inertiaMm4, 100, 1e10, "mm4");
        return 5 * loadKNPerM * Math.Pow(spanM * 1000, 4) / (384 * FrameModel.SteelElasticModulusNPerMm2 * inertiaMm4);
    }
}
