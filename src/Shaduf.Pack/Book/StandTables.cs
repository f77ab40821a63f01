using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Tables of the stand: what acts, how far members are used, what else was checked.</summary>
internal static class StandTables
{
    /// <summary>What acts, without partial factors.</summary>
    public static Table Actions(StandStrength strength)
    {
        var shake = strength.Shakes[0].Push;
        var half = strength.Shakes[2].Push;
        return new(
            [
                new("action", 3),
                new("down, kN", 1, HorizontalAnchor.Right),
                new("sideways, kN", 1, HorizontalAnchor.Right),
                new("turning at the feet, kN m", 1.2, HorizontalAnchor.Right),
            ],
            [
                .. strength.Totals().Select(total => Row(total.Name, total.DownKN, total.SideKN, total.TurningKNm)),
                .. strength.Quake.IsCalm
                    ? []
                    : new[]
                    {
                        TableRow.Of(
                            "earthquake, tank full",
                            "-",
                            Invariant($"{shake.ShearKN:0.00}"),
                            Invariant($"{shake.MomentKNm:0.0}")
                        ),
                        TableRow.Of(
                            "earthquake, tank half full",
                            "-",
                            Invariant($"{half.ShearKN:0.00}"),
                            Invariant($"{half.MomentKNm:0.0}")
                        ),
                    },
            ]
        )
        {
            Caption =
                "What acts on one stand, without partial factors; wind and earthquake along x, y and both diagonals",
        };
    }

    private static TableRow Row(string name, double down, double side, double turning) =>
        TableRow.Of(name, Figure(down, "0.00"), Figure(side, "0.00"), Figure(turning, "0.0"));

    private static string Figure(double value, string format) =>
        Math.Abs(value) < 0.005 ? "-" : value.ToString(format, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>How far members are used.</summary>
    public static Table Members(StandStrength strength) =>
        new(
            [
                new("member", 1.6),
                new("section", 1.1),
                new("used", 0.6, HorizontalAnchor.Right),
                new("governed by", 2),
                new("in", 2.8),
            ],
            [
                .. strength
                    .Members.GroupBy(use =>
                        (
                            strength.Stand.Skeleton.Members[use.Member].Mark,
                            strength.Stand.Skeleton.Members[use.Member].Role
                        )
                    )
                    .Select(alike => alike.MaxBy(use => use.Result.UtilisationShare)!)
                    .Select(use =>
                        TableRow.Of(
                            ForceTable.Named(strength.Stand.Skeleton, use.Member),
                            strength.Stand.Skeleton.Members[use.Member].Profile.Bar.Name,
                            use.Result.ShareText,
                            use.Result.Clause,
                            strength.Combinations.Strength[use.Combination].Name
                        )
                    ),
            ]
        )
        {
            Caption =
                "How far members are used, of each kind the one that is used most, by its number in the model; up to 1.00 holds",
        };

    /// <summary>Platform, feet, blocks and the wind at which each stops.</summary>
    public static Table Checks(StandDesign stands)
    {
        var (strength, feet, blocks) = (stands.Strength, stands.Strength.Feet, stands.Footings.Strength!);
        return new(
            [new("check", 4), new("comes to", 1.2, HorizontalAnchor.Right), new("limit", 1.2, HorizontalAnchor.Right)],
            [
                .. strength.Moves.Select(move =>
                    TableRow.Of(move.What, Invariant($"{move.ValueMm:0.0} mm"), Invariant($"{move.LimitMm:0.0} mm"))
                ),
                TableRow.Of("concrete under the base plates", Invariant($"{feet.PressShare:0.00}"), "1.00"),
                TableRow.Of("bolts of the feet", feet.Bolts.ShareText, "1.00"),
                TableRow.Of(
                    Invariant($"pull at a block, {blocks.Pulling.Combination}"),
                    Invariant($"{blocks.PullKN:0.0} kN"),
                    Invariant($"{blocks.HeldKN:0.0} kN")
                ),
                TableRow.Of("concrete of a block without bars", Invariant($"{stands.Concrete.UseShare:0.00}"), "1.00"),
                TableRow.Of("a block against turning over", Invariant($"{blocks.TurningShare:0.00}"), "1.00"),
                TableRow.Of(
                    $"pressure under a block on {blocks.Soil.Name}",
                    Invariant($"{blocks.Bearing.PressureKPa:0} kPa"),
                    Invariant($"{blocks.Bearing.BearsKPa:0} kPa")
                ),
                TableRow.Of(
                    "wind at which steel and feet stop holding",
                    Speed(Math.Min(strength.SteelStopsMPerS(), strength.FeetStopMPerS())),
                    Speed(strength.Wind.BasicMPerS)
                ),
                TableRow.Of(
                    "wind at which the blocks stop holding",
                    Speed(stands.BlocksStopMPerS()),
                    Speed(strength.Wind.BasicMPerS)
                ),
            ]
        )
        {
            Caption = "Platform, feet and blocks",
        };
    }

    private static string Speed(double mPerS) =>
        mPerS >= RackWind.MostMPerS ? Invariant($"over {RackWind.MostMPerS:0} m/s") : Invariant($"{mPerS:0.0} m/s");
}
