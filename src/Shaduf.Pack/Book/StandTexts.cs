using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>The stand in words.</summary>
internal static class StandTexts
{
    /// <summary>How it was checked.</summary>
    public static string Method(StandStrength strength) =>
        Invariant(
            $"Wind: {strength.Wind.From}; taken as {strength.Wind.BasicMPerS:0.0} m/s, mean of ten minutes 10 m above open country once in 50 years; ground of category {strength.Wind.Terrain.Name}; gust {strength.Wind.PeakKNPerM2:0.000} kN/m2 at the tank's top, {strength.Wind.HeightM:0.00} m. Earthquake: {strength.Quake.From}; ground {strength.Quake.Quake.Ground.Name}, a_g S {strength.Quake.ShakenRatio * 100:0.#} % of gravity. States: tank empty, half full and full to the overflow. "
        )
        + Invariant(
            $"Frame in space of {strength.Cases.Frame.Model.Nodes.Count} nodes and {strength.Cases.Frame.Model.Members.Count} members, feet held on their plinths, diagonals free to turn at their ends; {strength.Combinations.Strength.Count} combinations. It sways out of place at {strength.Buckling.SwayFactor:0} times the full load, leaning 1 in {1 / Steel.SwayImperfection.LeanRad(Math.Max(0.5, strength.Stand.Plan.FloorMm / 1000), strength.Stand.Plan.RowCount):0}. Steel {strength.Rules.Grade.Name}, yield {strength.Rules.Grade.YieldNPerMm2:0} N/mm2. Loads and reactions agree to {Math.Max(1e-9, strength.Cases.ImbalanceShare):0.0e+0} of the load."
        );

    /// <summary>How it is built and used.</summary>
    public static IEnumerable<string> Building(StandDesign stands) =>
        [
            .. Pieces(stands),
            "No climbing alone; no welding on a full tank; nobody under the stand while it is filled for the first time, a quarter at a time with a look at every joint and at the plumb of the legs after each. An engineer signs where the law asks for it, and wherever people gather, live or learn within one and a half times the height of the tank's top. National codes for wind, earthquake and work at height decide over these figures.",
        ];

    /// <summary>Feet, plates, deck, rail and ladder.</summary>
    public static IEnumerable<string> Pieces(StandDesign stands)
    {
        var (stand, foot) = (stands.Stand, stands.Stand.Plates.Foot);
        var gusset = StandPlates.Gusset;
        yield return Invariant(
            $"Feet: base plate {foot.SideMm:0} x {foot.SideMm:0} x {foot.ThicknessMm:0} mm on four bolts {foot.BoltName}, {foot.BoltMm:0} mm long, {foot.SpacingMm:0} mm apart, {foot.InConcreteMm:0} mm in the concrete with a plate or nut at their lower end; {foot.GroutMm:0} mm of grout under each plate, set with the stand plumb to 1 in 500. Gussets {gusset.SideMm:0} x {gusset.SideMm:0} x {gusset.ThicknessMm:0} mm welded to the legs in the middle of their faces; each diagonal lies on them with 80 mm of weld along both edges, one of each pair on the front and the other on the back; a packer of {gusset.ThicknessMm:0} mm and a bolt M10 join them where they cross."
        );
        yield return Invariant(
            $"Deck: plate of {StandPlan.DeckMm:0} mm on joists {stand.Plan.PitchMm:0} mm apart, stitched to each joist 50 mm in every 300 mm, free of bolt heads, lips and gaps under the tank. Straps over the tank are fitted before it is left empty overnight. The overflow pipe ends clear of legs and blocks."
        );
        var rails = stand
            .Steel.Parts.Where(part => part.Role == StandAccess.RailRole)
            .Select(part => part.Mark)
            .ToList();
        var post = stand.Steel.Parts.First(part => part.Role == StandAccess.PostRole).Mark;
        yield return Invariant(
            $"Caps {stand.Plates.CapSideMm:0} x {stand.Plates.CapSideMm:0} x {StandPlan.CapMm:0} mm between legs and row beams. Rails {rails[0]} in front, {rails[2]} on the right, {rails[4]} behind, {rails[6]} on the left, {StandAccess.KneeMm:0} and {StandAccess.RailMm:0} mm over the deck on posts {post} at most {stand.Access.PostSpacingMm:0} mm apart, toe plate {StandPlates.ToeHighMm:0} x {StandPlates.ToeThickMm:0} mm all round, opening of {StandAccess.GateMm:0} mm with a gate that closes itself. Ladder {StandAccess.LadderWidthMm:0} mm clear between its stiles: {stand.Access.RungCount} rungs of round bar {StandAccess.RungMm:0} mm, {stand.Access.RungSpacingMm:0} mm apart, the last level with the deck; the stiles go on {stand.Access.HoldMm:0} mm above it as hand holds, and one steps through between them: no rung there."
        );
    }
}
