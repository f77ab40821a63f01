using Shaduf.Shape;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>One movement of the rack under a load without partial factors.</summary>
/// <param name="What">What moves.</param>
/// <param name="Value">How far, in the unit of the limit.</param>
/// <param name="Limit">How far it may.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="IsFirm">Whether going beyond stops the rack, or is only to be looked at.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record RackMove(string What, double Value, double Limit, string Unit, bool IsFirm, string Source)
{
    /// <summary>Whether it stays within its limit.</summary>
    public bool Holds => Value <= Limit;
}

/// <summary>How far the rack moves.</summary>
public static class RackMoves
{
    private const string Judged = "judgement, no source; no code limits the movement of a rack of modules";

    // Or what the module's maker says.
    private const double MostTwistMm = 10;

    /// <summary>The movements of a rack.</summary>
    /// <param name="strength">The rack.</param>
    /// <returns>The movements.</returns>
    public static IReadOnlyList<RackMove> Of(RackStrength strength) =>
        [
            new(
                "bow of a bearer between two tubes, over its span",
                Worst(strength, each => Bow(strength, each)),
                1.0 / 200,
                "",
                false,
                Judged
            ),
            new(
                "head of a column sideways, over its height",
                Worst(strength, each => Head(strength.Cases, each)),
                0.010,
                "",
                false,
                Judged
            ),
            new(
                "twist of a module, a corner off the plane of the other three",
                Worst(strength, each => TwistMm(strength, each)),
                MostTwistMm,
                "mm",
                false,
                Judged
            ),
            .. Firm(strength),
            .. strength.IsOneLine
                ?
                [
                    Swing(
                        strength,
                        "time of one swing to and fro of the plane on its columns; slower ones gusts can rock",
                        OneLineFigures.CalmHz,
                        false
                    ),
                ]
                : (RackMove[])[],
        ];

    /// <summary>Those movements that stop a rack when they go beyond their limit.</summary>
    /// <param name="strength">The rack.</param>
    /// <returns>The movements; none where the columns stand on two lines.</returns>
    public static IReadOnlyList<RackMove> Firm(RackStrength strength) =>
        strength.IsOneLine
            ?
            [
                new(
                    "turning of the plane on its one line of columns",
                    Worst(strength, each => Turn(strength, each)),
                    OneLineFigures.LargestTurnRad,
                    "rad",
                    true,
                    Judged
                ),
                Swing(strength, "time of one swing of the plane on its columns", OneLineFigures.LeastHz, true),
                .. LongSlope(strength),
            ]
            : [];

    // No movement, but what no column mends either: gusts on a long plane are beyond what is reckoned with one line.
    private static IEnumerable<RackMove> LongSlope(RackStrength strength)
    {
        if (strength.Rack.Size.DepthMm > OneLineFigures.ShortSlopeM * 1000)
        {
            yield return new(
                Invariant(
                    $"wind on a plane of more than {OneLineFigures.ShortSlopeM:0} m up its slope on one line of columns"
                ),
                strength.Wind.BasicMPerS,
                OneLineFigures.LongSlopeMPerS,
                "m/s",
                true,
                Judged
            );
        }
    }

    private static double Worst(RackStrength strength, Func<double[], double> move) =>
        strength.Combinations.Service.Max(each => move(each.EachFactor(strength.Wind.PeakKNPerM2)));

    private static RackMove Swing(RackStrength strength, string what, double leastHz, bool isFirm) =>
        new(what, 1 / FirstHz(strength), 1 / leastHz, "s", isFirm, Judged);

    // Modules and the steel above the columns, on the first column, its wall as it is taken.
    private static double FirstHz(RackStrength strength)
    {
        var rack = strength.Rack;
        var column = rack.Skeleton.Members[rack.Skeleton.Feet[0].Member];
        var columnsKg = rack.Skeleton.Feet.Count * column.LengthMm / 1000 * column.Profile.Bar.MassKgPerM;
        var aboveKg = rack.Steel.Parts.Where(part => part.Mark != Rack.FootMark).Sum(part => part.MassKg);
        var massKg = (rack.ModuleMassKg + aboveKg - columnsKg) / rack.Skeleton.Feet.Count;
        var aboveMm = column.To.ZMm - rack.Skeleton.Feet[0].Ground.ZMm + strength.HeldAtMm;
        return OneLine.FirstHz(
            massKg,
            rack.Size.DepthMm / 1000,
            aboveMm,
            strength.Rules.Section(column).Frame.InertiaYMm4
        );
    }

    private static double Head(FrameCases cases, double[] factors) =>
        cases.Frame.Skeleton.Feet.Max(foot =>
        {
            var top = cases.Frame.SpansOf(foot.Member)[^1];
            var move = cases.MovementMm(top, 1, factors);
            var heightMm = cases.Frame.Skeleton.Members[foot.Member].To.ZMm;
            return Math.Sqrt((move.XMm * move.XMm) + (move.YMm * move.YMm)) / heightMm;
        });

    private static double Turn(RackStrength strength, double[] factors)
    {
        var (cases, tilt) = (strength.Cases, strength.Rack.Setting.TiltDeg * Math.PI / 180);
        var normal = new Point(0, -Math.Sin(tilt), Math.Cos(tilt));
        var rows = strength.Rack.Rows;
        var (low, high) = (rows[0].Low, rows[^1].High);
        return Enumerable
            .Range(0, 5)
            .Max(i =>
            {
                var (a, b) = (Move(cases, low, i / 4.0, factors), Move(cases, high, i / 4.0, factors));
                return Math.Abs(normal.DotMm2(b - a)) / strength.Rack.Size.DepthMm;
            });
    }

    private static double TwistMm(RackStrength strength, double[] factors)
    {
        var (cases, rack, tilt) = (strength.Cases, strength.Rack, strength.Rack.Setting.TiltDeg * Math.PI / 180);
        var normal = new Point(0, -Math.Sin(tilt), Math.Cos(tilt));
        double Off(int bearer, double xMm)
        {
            var member = cases.Frame.Skeleton.Members[bearer];
            var share = Math.Clamp((xMm - member.From.XMm) / member.LengthMm, 0, 1);
            return normal.DotMm2(Move(cases, bearer, share, factors));
        }

        return (
            from row in rack.Rows
            from column in Enumerable.Range(0, rack.Grid.Columns)
            let leftMm = rack.Along.FirstMm + (column * rack.Along.PitchMm)
            let rightMm = leftMm + rack.Lay.AlongMm
            select Math.Abs(
                Off(row.Low, leftMm) - Off(row.Low, rightMm) - Off(row.High, leftMm) + Off(row.High, rightMm)
            )
        ).Max();
    }

    private static double Bow(RackStrength strength, double[] factors)
    {
        var cases = strength.Cases;
        var most = 0.0;
        foreach (var bearer in strength.Rack.Rows.SelectMany(row => new[] { row.Low, row.High }).Distinct())
        {
            var member = cases.Frame.Skeleton.Members[bearer];
            double[] held =
            [
                .. cases
                    .Frame.Skeleton.Joints.Where(joint => joint.Second == bearer)
                    .Select(joint => (joint.AtSecond - member.From).LengthMm / member.LengthMm)
                    .Order(),
            ];
            foreach (var (from, to) in held.Zip(held.Skip(1)).Where(pair => pair.Second - pair.First > 0.01))
            {
                var (a, b, middle) = (
                    Move(cases, bearer, from, factors),
                    Move(cases, bearer, to, factors),
                    Move(cases, bearer, (from + to) / 2, factors)
                );
                most = Math.Max(most, (middle - ((a + b) * 0.5)).LengthMm / ((to - from) * member.LengthMm));
            }
        }

        return most;
    }

    private static Point Move(FrameCases cases, int member, double share, double[] factors)
    {
        var (span, atMm) = cases.Frame.Place(member, share * cases.Frame.Skeleton.Members[member].LengthMm);
        return cases.MovementMm(span, atMm / cases.Frame.Model.LengthMm(span), factors);
    }
}
