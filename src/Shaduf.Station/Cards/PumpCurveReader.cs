using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the points of a pump's data sheet and fits the curve to them.</summary>
internal static class PumpCurveReader
{
    // The affinity laws and a rotor's straight lines are trusted between these speeds.
    private const double SlowestRatio = 0.5;
    private const double FastestRatio = 1.2;

    private sealed record SheetPoint(
        double FlowM3PerS,
        double HeadM,
        double? EfficiencyShare,
        double? ShaftW,
        double? Hz,
        double? NpshM
    );

    /// <summary>Reads <c>curve</c>, and the suction head required where its points tell it; null when it is wrong, and then an error says so.</summary>
    /// <param name="fields">The card.</param>
    /// <param name="ratedHz">Rated frequency of the motor [Hz].</param>
    /// <param name="reliefHeadM">Opening head of the relief valve of a helical rotor [m]; null for a centrifugal pump.</param>
    public static (IPumpCurve? Curve, NpshCurve? Npsh) Read(FieldMap fields, double ratedHz, double? reliefHeadM)
    {
        var points = fields.Items(
            "curve",
            reliefHeadM is null ? 4 : 2,
            60,
            "Points of the data sheet at rated speed, or at the frequency that each names.",
            Point
        );
        if (!fields.AreSound("curve", "ratedFrequency"))
        {
            return (null, null);
        }

        for (var i = 0; i < points.Count; i++)
        {
            CheckPoint(fields, $"curve[{i + 1}]", points[i], ratedHz, reliefHeadM is not null);
        }

        CheckHeads(fields, points, ratedHz);
        IPumpCurve? curve = null;
        fields.RefusedBy(
            "curve",
            () =>
                curve = reliefHeadM is { } relief
                    ? HelicalRotor.Fit([.. points.Select(point => Rotor(point, ratedHz))], relief)
                    : PumpCurve.Fit([.. points.Select(point => AtRatedSpeed(point, ratedHz))])
        );
        NpshCurve? npsh = null;
        var told = points.Where(point => point.NpshM is not null && Ratio(point, ratedHz) == 1).ToList();
        if (told.Count > 0)
        {
            fields.RefusedBy(
                "curve",
                () =>
                    npsh = NpshCurve.Of([.. told.Select(point => new NpshPoint(point.FlowM3PerS, point.NpshM!.Value))])
            );
        }

        return (curve, npsh);
    }

    private static SheetPoint Point(FieldMap fields)
    {
        var point = new SheetPoint(
            fields.Quantity("flow", Measure.FlowM3PerH, 0, 500, "Flow.") / 3600,
            fields.Quantity("head", Measure.LengthM, 0, 1000, "Head."),
            fields.Chosen("efficiency", Measure.Share, 0, 0.9, "Pump efficiency without the motor; or give the power."),
            fields.Chosen("power", Measure.PowerW, 1, 500_000, "Power at the pump's shaft; or give the efficiency."),
            fields.Chosen(
                "frequency",
                Measure.FrequencyHz,
                5,
                500,
                "Frequency of this point; left out: the rated one."
            ),
            fields.Known(
                "npsh",
                Measure.LengthM,
                0.1,
                20,
                "Suction head (NPSH) that a surface pump requires at this flow."
            )
        );
        fields.Done();
        return point;
    }

    private static double Ratio(SheetPoint point, double ratedHz) => (point.Hz ?? ratedHz) / ratedHz;

    private static void CheckPoint(FieldMap fields, string at, SheetPoint point, double ratedHz, bool isRotor)
    {
        if (Ratio(point, ratedHz) is < SlowestRatio or > FastestRatio)
        {
            fields.Complain(
                $"{at}.frequency",
                Invariant($"{point.Hz:0.#} Hz is {Ratio(point, ratedHz) * 100:0} % of the rated frequency"),
                Invariant(
                    $"{SlowestRatio * ratedHz:0.#} to {FastestRatio * ratedHz:0.#} Hz, where the laws of speed hold, is accepted"
                )
            );
        }

        if (isRotor && point.ShaftW is null)
        {
            fields.Complain($"{at}.power", "missing for a helical rotor", "the power at the shaft is needed");
        }
        else if (!isRotor && point.EfficiencyShare is null == point.ShaftW is null)
        {
            fields.Complain(
                $"{at}.efficiency",
                point.ShaftW is null ? "neither efficiency nor power is given" : "both efficiency and power are given",
                "one of the two is accepted"
            );
        }
    }

    // At each frequency by itself: a pump's head may rise a little at first, falls from there, and ends at no head.
    private static void CheckHeads(FieldMap fields, IReadOnlyList<SheetPoint> points, double ratedHz)
    {
        foreach (
            var curve in points
                .Select((point, i) => (Point: point, At: i + 1))
                .GroupBy(each => Ratio(each.Point, ratedHz))
        )
        {
            var sorted = curve.OrderBy(each => each.Point.FlowM3PerS).ToList();
            var (rises, wasRising) = (0, false);
            for (var i = 1; i < sorted.Count; i++)
            {
                var isRising = sorted[i].Point.HeadM > sorted[i - 1].Point.HeadM;
                rises += isRising && !wasRising ? 1 : 0;
                wasRising = isRising;
                if (rises == 2)
                {
                    fields.Complain(
                        $"curve[{sorted[i].At}].head",
                        Invariant(
                            $"the head rises for the second time, from {sorted[i - 1].Point.HeadM:0.##} m to {sorted[i].Point.HeadM:0.##} m"
                        ),
                        "heads that rise once at most, at the start, and fall from there are accepted"
                    );
                    break;
                }

                if (sorted[i - 1].Point.HeadM <= 0)
                {
                    fields.Complain(
                        $"curve[{sorted[i - 1].At}].head",
                        "the curve crosses zero and goes on",
                        "no head at the last point only is accepted"
                    );
                    break;
                }
            }
        }
    }

    // Affinity laws; the efficiency of a slower point is a little below that of its like at rated speed.
    private static PumpPoint AtRatedSpeed(SheetPoint point, double ratedHz)
    {
        var ratio = Ratio(point, ratedHz);
        var share =
            point.EfficiencyShare
            ?? (point.FlowM3PerS > 0 ? HydraulicPower.W(point.FlowM3PerS, point.HeadM, 1000) / point.ShaftW!.Value : 0);
        return new(
            point.FlowM3PerS / ratio,
            point.HeadM / (ratio * ratio),
            share > 0 ? Affinity.RatedEfficiencyShare(share, ratio) : 0
        );
    }

    private static RotorPoint Rotor(SheetPoint point, double ratedHz) =>
        new(point.FlowM3PerS, point.HeadM, point.ShaftW!.Value, Ratio(point, ratedHz));
}
