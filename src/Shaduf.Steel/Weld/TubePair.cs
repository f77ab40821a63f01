namespace Shaduf.Steel;

/// <summary>Resistances of a branch on a chord, before the chord's own compression is counted.</summary>
/// <param name="AxialN">To axial force [N].</param>
/// <param name="InPlaneNMm">To the moment in the plane of both [N·mm].</param>
/// <param name="OutOfPlaneNMm">To the moment across it [N·mm].</param>
internal readonly record struct PairStrength(double AxialN, double InPlaneNMm, double OutOfPlaneNMm);

/// <summary>A branch on a chord, both square or rectangular tubes.</summary>
/// <param name="Chord">The tube that goes through.</param>
/// <param name="Branch">The tube that ends on its face.</param>
/// <param name="SineRatio">Sine of the angle between them.</param>
/// <param name="YieldNPerMm2">Design yield [N/mm2].</param>
/// <source>EN 1993-1-8:2005, tables 7.11 and 7.14 (from memory)</source>
internal sealed record TubePair(MemberSection Chord, MemberSection Branch, double SineRatio, double YieldNPerMm2)
{
    /// <summary>Largest width of the branch, over the chord's, at which the chord's face decides alone.</summary>
    internal const double NarrowRatio = 0.85;

    private double B0 => Chord.WidthMm;

    private double T0 => Chord.WallMm;

    private double B1 => Branch.WidthMm;

    private double H1 => Branch.HeightMm;

    // Breadth of the branch's cross walls that works on the soft face of the chord, as a share of its breadth.
    private double EffectiveShare => Math.Min(1, 10 * T0 / B0);

    /// <summary>The chord's face yields.</summary>
    internal PairStrength Face(double beta)
    {
        var (face, open, eta) = (YieldNPerMm2 * T0 * T0, 1 - beta, H1 / B0);
        return new(
            face / (open * SineRatio) * ((2 * eta / SineRatio) + (4 * Math.Sqrt(open))),
            face * H1 * ((1 / (2 * eta)) + (2 / Math.Sqrt(open)) + (eta / open)),
            face * ((H1 * (1 + beta) / (2 * open)) + Math.Sqrt(2 * B0 * B1 * (1 + beta) / open))
        );
    }

    /// <summary>A wide branch: side walls of the chord, the branch's effective width, punching.</summary>
    internal PairStrength Wall(double beta, SteelGrade grade)
    {
        // Between the face at 0.85 and the side walls at 1 on a straight line.
        var (walls, share) = (SideWalls(grade), (beta - NarrowRatio) / (1 - NarrowRatio));
        var straight = (Face(NarrowRatio).AxialN * (1 - share)) + (walls.AxialN * share);
        return new(
            Math.Min(straight, Math.Min(BranchN, PunchedN(beta))),
            Math.Min(walls.InPlaneNMm, BranchInPlaneNMm),
            Math.Min(walls.OutOfPlaneNMm, BranchOutOfPlaneNMm)
        );
    }

    /// <summary>The chord's side walls alone, under what presses over its whole width.</summary>
    internal PairStrength SideWalls(SteelGrade grade)
    {
        var reach = H1 + (5 * T0);
        var crushed = YieldNPerMm2 * T0 * (B0 - T0) * reach;
        var distorted =
            2 * YieldNPerMm2 * T0 * ((H1 * T0) + Math.Sqrt(B0 * Chord.HeightMm * T0 * (B0 + Chord.HeightMm)));
        return new(SideWallN(grade), 0.5 * YieldNPerMm2 * T0 * reach * reach, Math.Min(crushed, distorted));
    }

    // Pressed side walls buckle; pulled ones would carry more.
    private double SideWallN(SteelGrade grade)
    {
        var slenderness =
            3.46
            * ((Chord.HeightMm / T0) - 2)
            * Math.Sqrt(1 / SineRatio)
            / (Math.PI * Math.Sqrt(FrameModel.SteelElasticModulusNPerMm2 / grade.YieldNPerMm2));
        var left = FlexuralBuckling.ReductionFactor(slenderness, Chord.Curve);
        return left * YieldNPerMm2 * T0 / SineRatio * ((2 * H1 / SineRatio) + (10 * T0));
    }

    private double BranchN => YieldNPerMm2 * Branch.WallMm * ((2 * H1) - (4 * Branch.WallMm) + (2 * BranchShare * B1));

    private double BranchShare => Math.Min(1, EffectiveShare * T0 / Branch.WallMm);

    private double BranchInPlaneNMm =>
        YieldNPerMm2
        * (Branch.PlasticModulusYMm3!.Value - ((1 - BranchShare) * B1 * (H1 - Branch.WallMm) * Branch.WallMm));

    private double BranchOutOfPlaneNMm =>
        YieldNPerMm2 * (Branch.PlasticModulusZMm3!.Value - (0.5 * Math.Pow((1 - BranchShare) * B1, 2) * Branch.WallMm));

    // Up to the branch that stands on the walls, the face can be punched through.
    private double PunchedN(double beta) =>
        beta > 1 - (2 * T0 / B0)
            ? double.PositiveInfinity
            : YieldNPerMm2 * T0 / (Math.Sqrt(3) * SineRatio) * ((2 * H1 / SineRatio) + (2 * EffectiveShare * B1));
}
