using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>What keeps the empty tank on its platform.</summary>
/// <param name="StrapKN">Pull of the straps on one side [kN].</param>
/// <param name="StayKg">Water that keeps it from sliding without stops [kg].</param>
/// <param name="FreeMPerS">Basic wind speed up to which it stays without straps, factors counted [m/s].</param>
public readonly record struct StandHold(double StrapKN, double StayKg, double FreeMPerS)
{
    /// <summary>The hold of a stand's tank.</summary>
    /// <param name="strength">The stand.</param>
    public static StandHold Of(StandStrength strength)
    {
        var tank = strength.Stand.Plan.Tank;
        var (widthM, heightM) = (tank.WidthMm / 1000, tank.HeightMm / 1000);
        var weightN = tank.EmptyKg * TankStand.GravityNPerKg;
        double PushN(double gust) => TankHold.PushN(gust * 1000, strength.Drag.TankCoefficient, widthM, heightM);
        var national = strength.Combinations.Choices;
        var pushN = PushN(strength.Wind.PeakKNPerM2);
        return new(
            TankHold.StrapN(pushN, weightN, heightM, widthM, national) / 1000,
            TankHold.StayKg(pushN, weightN, national),
            strength.StopsAtMPerS(gust => TankHold.StrapN(PushN(gust), weightN, heightM, widthM, national) <= 0)
        );
    }
}
