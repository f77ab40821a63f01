namespace Shaduf.Station;

/// <summary>A tank as its stand sees it.</summary>
/// <param name="Name">Its card.</param>
/// <param name="IsRound">Round, or square and put together from panels.</param>
/// <param name="WidthMm">Diameter or side [mm].</param>
/// <param name="HeightMm">Height of the shell [mm].</param>
/// <param name="WaterM3">Water up to the overflow [m³].</param>
/// <param name="MassKg">Mass of the empty tank [kg]; null where its card does not say.</param>
/// <param name="PanelMm">Side of a panel of a square tank [mm].</param>
public sealed record StandTank(
    string Name,
    bool IsRound,
    double WidthMm,
    double HeightMm,
    double WaterM3,
    double? MassKg,
    double PanelMm
)
{
    private const double WaterKgPerM3 = 998.2;

    // Taken so that sections can be chosen where the card is silent; judgement, no source.
    private const double PlanningKgPerM3 = 30;

    /// <summary>Water of the full tank [kg].</summary>
    public double WaterKg => WaterM3 * WaterKgPerM3;

    /// <summary>The empty tank: its card's mass, or 30 kg for each cubic metre so that sections can be chosen [kg].</summary>
    public double EmptyKg => MassKg ?? (PlanningKgPerM3 * WaterM3);

    /// <summary>Area of its bottom [mm²].</summary>
    public double BottomMm2 => WidthMm * WidthMm * (IsRound ? Math.PI / 4 : 1);

    /// <summary>Depth of the water of the full tank [mm].</summary>
    public double DepthMm => Math.Min(HeightMm, WaterM3 * 1e9 / BottomMm2);

    /// <summary>Pressure of the full tank on its deck [kN/m²].</summary>
    public double PressureKPa => (WaterKg + EmptyKg) * TankStand.GravityNPerKg / BottomMm2 * 1000;

    /// <summary>The tank of a card.</summary>
    /// <param name="card">The card.</param>
    /// <returns>The tank.</returns>
    public static StandTank Of(TankCard card) =>
        new(
            card.Name,
            card.Shape == TankShape.Round,
            card.DiameterM * 1000,
            card.HeightM * 1000,
            card.VolumeM3,
            card.MassKg,
            card.PanelM * 1000
        );
}
