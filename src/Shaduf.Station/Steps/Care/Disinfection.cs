using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Chlorine for one part of the station.</summary>
/// <param name="What">The part.</param>
/// <param name="VolumeL">Water to dose [L].</param>
/// <param name="DoseMgPerL">Free chlorine [mg/L].</param>
/// <param name="ProductG">High-test hypochlorite of 65 % [g].</param>
/// <param name="Hours">How long it stays [h].</param>
public sealed record Disinfection(string What, double VolumeL, double DoseMgPerL, double ProductG, double Hours)
{
    private const double WellH = 12;
    private const double TankH = 6;

    // Nobody digs narrower by hand, nobody drills wider: a lined shaft has no gravel round it. Judgement, no source.
    private const double DugFromMm = 800;
    private const double PipeH = 24;

    /// <summary>What must be said wherever chlorine is handled.</summary>
    public const string Caution =
        "These doses are customary ones: where the product's label or the health authority asks for others, theirs are taken. Add the product to water, never water to it; gloves and goggles, in the open air, never with acid or another cleaner. Run dosed water to waste away from streams and crops, until less than 0.5 mg/L are left. Nobody enters a tank. A pump stays out of strong chlorine unless its maker allows it.";

    /// <summary>The dose in words.</summary>
    public string Says =>
        Invariant(
            $"{What}: {VolumeL:0} L with {DoseMgPerL:0} mg/L for {Hours:0} h: {ProductG:0} g of hypochlorite of 65 %, dissolved in a bucket first."
        );

    /// <summary>The doses of a station: the well with its gravel, the main, the tanks.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The doses.</returns>
    public static IReadOnlyList<Disinfection> Of(Design design) => Of(design.Choice, design.Works, design.Survey);

    /// <summary>The doses of a station: the well with its gravel, the main, the tanks.</summary>
    /// <param name="choice">What was chosen.</param>
    /// <param name="works">The works.</param>
    /// <param name="survey">Settled figures.</param>
    /// <returns>The doses.</returns>
    internal static IReadOnlyList<Disinfection> Of(Choice choice, Works works, Survey survey) =>
        [
            .. OfWell(works, survey),
            Dose("main", works.Main.Test.VolumeL, ChlorineDose.WellMgPerL, PipeH),
            Dose(
                choice.TankCount == 1 ? "tank, full" : Invariant($"{choice.TankCount} tanks, full"),
                1000 * choice.TankM3,
                ChlorineDose.TankMgPerL,
                TankH
            ),
        ];

    private static IEnumerable<Disinfection> OfWell(Works works, Survey survey)
    {
        if (works.Source is WellBuild { Well: var well })
        {
            var columnM = Math.Max(0, well.BottomM - well.RestDryM);
            var boreMm = survey["casing"];
            var litres = ChlorineDose.ColumnL(boreMm, columnM);
            yield return Dose(
                boreMm >= DugFromMm
                    ? Invariant(
                        $"hand-dug well, {columnM:0.0} m of water in {boreMm / 1000:0.00} m, walls sprayed from above with the same water, nobody goes down"
                    )
                    : Invariant($"borehole, {columnM:0.0} m of water in {boreMm:0} mm, twice for the gravel"),
                boreMm >= DugFromMm ? litres : litres * ChlorineDose.GravelFactor,
                ChlorineDose.WellMgPerL,
                WellH
            );
        }
    }

    private static Disinfection Dose(string what, double litres, double doseMgPerL, double hours) =>
        new(what, litres, doseMgPerL, ChlorineDose.ProductG(litres, doseMgPerL, ChlorineDose.HypochloriteShare), hours);
}
