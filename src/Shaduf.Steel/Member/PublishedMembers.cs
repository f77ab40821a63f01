using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>Which shipped kernel computes each quantity of the published rows of members.</summary>
internal static class PublishedMembers
{
    private static readonly EquivalentMoments s_sway = EquivalentMoments.Sway;

    internal static IReadOnlyList<PublishedCheck> All { get; } = [.. Sections, .. Strengths, .. Bucklings];

    private static IEnumerable<PublishedCheck> Sections =>
        [
            new("steel/member-section", "channel-area", row => Channel(row).Frame.AreaMm2),
            new("steel/member-section", "channel-inertia-y", row => Channel(row).Frame.InertiaYMm4),
            new("steel/member-section", "channel-inertia-z", row => Channel(row).Frame.InertiaZMm4),
            new("steel/member-section", "channel-product", row => Channel(row).ProductOfInertiaMm4),
            new("steel/member-section", "channel-least", row => Channel(row).LeastInertiaMm4),
            new("steel/member-section", "channel-elastic-y", row => Channel(row).ElasticModulusYMm3),
            new("steel/member-section", "channel-elastic-z", row => Channel(row).ElasticModulusZMm3),
            new("steel/member-section", "double-inertia-y", row => Double(row).Frame.InertiaYMm4),
            new("steel/member-section", "double-inertia-z", row => Double(row).Frame.InertiaZMm4),
            new("steel/member-section", "double-elastic-z", row => Double(row).ElasticModulusZMm3),
            new("steel/section-class", "round", row => SectionClass.InCompression(Round(row), Grade(row))),
            new(
                "steel/section-class",
                "rectangle-hot",
                row => SectionClass.InCompression(HotRectangle(row), Grade(row))
            ),
            new("steel/section-class", "square", row => SectionClass.InCompression(Square(row), Grade(row))),
            new("steel/section-class", "angle", row => SectionClass.InCompression(Angle(row), Grade(row))),
        ];

    private static IEnumerable<PublishedCheck> Strengths =>
        [
            new("steel/skew-bending", "angle-peak", row => SkewBending.PeakNPerMm2(Angle(row), 0, row["momentNMm"], 0)),
            new("steel/skew-bending", "angle-inertia", row => SkewBending.EffectiveInertiaMm4(Angle(row)) / 1e4),
            new("steel/cross-section-check", "round-yield", row => YieldKN(Round(row), row)),
            new("steel/cross-section-check", "rectangle-hot-yield", row => YieldKN(HotRectangle(row), row)),
            new(
                "steel/cross-section-check",
                "bending",
                row =>
                    CrossSectionCheck
                        .Of(
                            MemberSection.OfSquare(200, 10) with
                            {
                                PlasticModulusYMm3 = row["plasticModulusMm3"],
                            },
                            Grade(row),
                            Axial(0)
                        )
                        .MomentYNMm / 1e6
            ),
            new("steel/cross-section-check", "square-bending", row => SquareParts(row).MomentYNMm / 1e6),
            new(
                "steel/cross-section-check",
                "square-shear",
                row => 1 / CrossSectionCheck.Of(Square(row), Grade(row), Axial(0) with { ShearZN = 1000 }).ShearZShare
            ),
            new("steel/cross-section-check", "square-power", row => SquareParts(row).PowerNumber),
        ];

    private static IEnumerable<PublishedCheck> Bucklings =>
        [
            new("steel/sway-imperfection", "lean", LeanRad),
            new("steel/sway-imperfection", "lean-force", row => LeanRad(row) * row["loadKN"]),
            new(
                "steel/sway-imperfection",
                "amplifying",
                row => SwayImperfection.AmplifyingFactor(row["criticalFactor"])
            ),
            new(
                "steel/moment-shape",
                "held",
                row => MomentShape.HeldFactor(row["startNMm"], row["middleNMm"], row["endNMm"])
            ),
            new(
                "steel/twist-buckling",
                "angle-critical",
                row => TwistBuckling.CriticalNMm(Angle(row), row["heldMm"]) / 1e6
            ),
            new(
                "steel/twist-buckling",
                "angle-reduction",
                row => TwistBuckling.ReductionFactor(Angle(row), Grade(row), row["heldMm"])
            ),
            new(
                "steel/angle-strut",
                "slenderness",
                row => AngleStrut.SlendernessRatio(Angle(row), Grade(row), row["lengthMm"])
            ),
            new(
                "steel/angle-strut",
                "resistance",
                row => AngleStrut.ResistanceN(Angle(row), Grade(row), row["lengthMm"]) / 1000
            ),
            Buckling("round-hot-resistance", HotRound, parts => parts.ReductionYFactor, isForce: true),
            Buckling("rectangle-hot-resistance-y", HotRectangle, parts => parts.ReductionYFactor, isForce: true),
            Buckling("rectangle-hot-resistance-z", HotRectangle, parts => parts.ReductionZFactor, isForce: true),
            Buckling("square-chi-resistance", Square, parts => parts.ReductionYFactor, isForce: true),
            Buckling("square-resistance", Square, parts => parts.ReductionYFactor, isForce: true),
            Buckling("square-kyy", Square, parts => parts.MomentYYFactor),
            Buckling("square-661", Square, parts => parts.AboutYShare),
            Buckling("square-662", Square, parts => parts.AboutZShare),
        ];

    // A figure of the check, or a reduction as a force [kN].
    private static PublishedCheck Buckling(
        string quantity,
        Func<PublishedCase, MemberSection> section,
        Func<MemberBucklingParts, double> figure,
        bool isForce = false
    ) =>
        new(
            "steel/member-buckling",
            quantity,
            row =>
                figure(MemberBuckling.Of(section(row), Grade(row), Forces(row), Lengths(row), s_sway))
                * (isForce ? section(row).Frame.AreaMm2 * row["yieldNPerMm2"] / 1000 : 1)
        );

    private static MemberForces Forces(PublishedCase row) =>
        Axial(row.Inputs.GetValueOrDefault("axialN", -1)) with
        {
            BendingYNMm = row.Inputs.GetValueOrDefault("momentYNMm"),
            BendingZNMm = row.Inputs.GetValueOrDefault("momentZNMm"),
        };

    private static BucklingLengths Lengths(PublishedCase row) =>
        row.Inputs.TryGetValue("lengthMm", out var lengthMm)
            ? new(lengthMm, lengthMm, lengthMm)
            : new(row["lengthYMm"], row["lengthZMm"], row["lengthZMm"]);

    private static CrossSectionParts SquareParts(PublishedCase row) =>
        CrossSectionCheck.Of(Square(row), Grade(row), Axial(row["axialN"]));

    private static double YieldKN(MemberSection section, PublishedCase row) =>
        1 / CrossSectionCheck.Of(section, Grade(row), Axial(1000)).AxialShare;

    private static double LeanRad(PublishedCase row) =>
        SwayImperfection.LeanRad(row["heightM"], (int)row["columnCount"]);

    private static MemberForces Axial(double tensionN) => new(0, tensionN, 0, 0, 0, 0, 0);

    private static SteelGrade Grade(PublishedCase row) =>
        SteelGrade.Of("S235") with
        {
            YieldNPerMm2 = row["yieldNPerMm2"],
        };

    private static MemberSection Square(PublishedCase row) => MemberSection.OfSquare(row["sideMm"], row["wallMm"]);

    private static MemberSection HotRectangle(PublishedCase row) =>
        MemberSection.OfRectangle(row["heightMm"], row["widthMm"], row["wallMm"], isHotFinished: true);

    private static MemberSection Round(PublishedCase row) => MemberSection.OfRound(row["diameterMm"], row["wallMm"]);

    private static MemberSection HotRound(PublishedCase row) =>
        MemberSection.OfRound(row["diameterMm"], row["wallMm"], isHotFinished: true);

    private static MemberSection Angle(PublishedCase row) =>
        MemberSection.OfAngle(row["legMm"], row["thicknessMm"], row["rootRadiusMm"]);

    private static MemberSection Channel(PublishedCase row) => MemberSection.OfChannel(Shape(row), row["rootRadiusMm"]);

    private static MemberSection Double(PublishedCase row) =>
        MemberSection.OfDoubleChannel(Shape(row), row["rootRadiusMm"]);

    private static SlideInChannel Shape(PublishedCase row) =>
        SlideInChannel.Of(row["legMm"], row["thicknessMm"], row["moduleThicknessMm"], row["clearanceMm"]);
}
