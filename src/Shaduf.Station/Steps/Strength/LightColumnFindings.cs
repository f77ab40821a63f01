using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Findings and working of light columns and lightning masts.</summary>
internal static class LightColumnFindings
{
    /// <summary>The findings.</summary>
    /// <param name="strength">The tallest of its kind.</param>
    /// <returns>The findings.</returns>
    public static IEnumerable<Finding> Of(LightColumnStrength strength)
    {
        Finding[] found = [Holding(strength), Stops(strength)];
        return strength.Wind.IsKnown
            ? found
            : found.Select(each =>
                each with
                {
                    Status = FindingStatus.Unchecked,
                    Says = $"the wind speed is unknown, so this is only a plan: {each.Says}",
                }
            );
    }

    /// <summary>The working: the forces at the foot, then the check that is used most of tube, weld, plate and bolts.</summary>
    /// <param name="strength">The column.</param>
    /// <returns>The sheets.</returns>
    public static IEnumerable<WorkingSheet> Show(LightColumnStrength strength)
    {
        var (gust, pole) = (strength.Wind.PeakKNPerM2, strength.Column.Pole);
        var foot = strength.ForcesAt(gust, 0);
        yield return new(
            $"{Titled(strength)} {pole.Section.Name}: forces at its plate",
            [
                new(
                    "V",
                    "γ_Q q_p (1.2 d h + 1.8 A)",
                    Invariant(
                        $"{strength.National.VariableFactor:0.##} · {gust:0.000} · (1.2 · {pole.Section.SideMm / 1000:0.000} · {strength.Column.HeightMm / 1000:0.00} + 1.8 · {strength.Sail.AreaM2:0.00})"
                    ),
                    foot.ShearZN / 1000,
                    "kN",
                    "steel/wind-pressure",
                    "EN 1991-1-4:2005, 7.9 and 7.4.3"
                ),
                new(
                    "M",
                    "γ_Q q_p (1.2 d h²/2 + 1.8 A h_A) + γ_G g m · 0.3 m",
                    Invariant(
                        $"q_p {gust:0.000} kN/m2 at {strength.Wind.HeightM:0.00} m; m {strength.Sail.MassKg:0} kg on a bracket, h_A {strength.SailAtMm / 1000:0.00} m"
                    ),
                    foot.BendingYNMm / 1e6,
                    "kN m",
                    "steel/wind-pressure",
                    "EN 1991-1-4:2005, 7.9 and 7.4.3"
                ),
            ]
        );
        foreach (var check in strength.Checks(gust))
        {
            yield return new($"{Titled(strength)}: {check.What}", check.Lines);
        }
    }

    private static string Titled(LightColumnStrength strength) =>
        $"{char.ToUpperInvariant(strength.Name[0])}{strength.Name[1..]} {strength.Column.Pole.Mark}";

    private static Finding Holding(LightColumnStrength strength)
    {
        var (pole, size, sail) = (strength.Column.Pole, strength.Column.Size, strength.Sail);
        var worst = strength.Worst(strength.Wind.PeakKNPerM2);
        var given = sail.IsGiven
            ? "by the lamp's card"
            : "reckoned from the ratings of lamp, battery and module: the card does not say";
        var hung =
            sail.AreaM2 > 0
                ? Invariant(
                    $", with {sail.AreaM2:0.00} m2 and {sail.MassKg:0} kg {strength.SailAtMm / 1000:0.0} m up ({given})"
                )
                : "";
        var block = strength.IsMast ? "guard/mast-block" : "guard/pole-block";
        var finding = Finding.AtMost(
            strength.IsMast ? "guard/poles" : "guard/light-column",
            Math.Min(worst.Result.UtilisationShare, LightColumnStrength.HopelessShare),
            1,
            "",
            Invariant(
                $"{strength.Name} {pole.Mark} {size.Name}, {strength.Column.HeightMm / 1000:0.0} m{hung}: {worst.What} is used most, {Use(worst.Result.UtilisationShare)} at {strength.Wind.BasicMPerS:0.#} m/s; plate {size.Foot.SideMm:0} x {size.Foot.SideMm:0} x {size.Foot.ThicknessMm:0} mm, bolts M{size.Foot.BoltMm:0} {size.Foot.BoltInConcreteMm:0} mm deep in a block {size.BlockMm:0} x {size.BlockMm:0} mm of 1:2:4 or larger: {block} says how deep"
            )
                + (
                    worst.Result.Holds
                        ? ""
                        : $". No customary {strength.Name} holds: {(strength.IsMast ? "lower rods and more of them, no lamp on them, or have a mast designed" : "hang the lamp lower, set its charging module on the rack, or have a column designed")}"
                ),
            worst.Result.Clause
        );
        return finding.Status == FindingStatus.Holds && !sail.IsGiven
            ? finding with
            {
                Status = FindingStatus.Look,
            }
            : finding;
    }

    private static string Use(double share) =>
        double.IsFinite(share)
            ? Invariant($"{share:0.00}")
            : Invariant($"more than {LightColumnStrength.HopelessShare:0} times what it carries,");

    private static Finding Stops(LightColumnStrength strength)
    {
        var stops = strength.StopsMPerS();
        return Finding.Told(
            strength.IsMast ? "guard/mast-wind" : "guard/light-column-wind",
            stops,
            strength.Wind.BasicMPerS,
            "m/s",
            stops >= RackWind.MostMPerS
                ? Invariant($"the {strength.Name} holds up to {RackWind.MostMPerS:0} m/s and more")
                : Invariant(
                    $"the {strength.Name} holds up to {stops:0.0} m/s; wind speed as mean of ten minutes 10 m above open country"
                ),
            "the checks of the column, with the wind raised until one fails"
        );
    }
}
