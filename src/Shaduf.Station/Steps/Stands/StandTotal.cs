namespace Shaduf.Station;

/// <summary>What an action comes to at the feet of a stand.</summary>
/// <param name="Name">The action.</param>
/// <param name="DownKN">Force down [kN].</param>
/// <param name="SideKN">Force sideways [kN].</param>
/// <param name="TurningKNm">Moment that turns the stand, about the middle of its feet [kN·m].</param>
public readonly record struct StandTotal(string Name, double DownKN, double SideKN, double TurningKNm)
{
    internal static StandTotal Of(StandStrength strength, string name, int at, double factor)
    {
        var factors = new double[StandActions.CaseCount];
        factors[at] = factor;
        var (down, x, y, aboutX, aboutY) = (0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var (i, foot) in strength.Stand.Skeleton.Feet.Index())
        {
            var ground = strength.Cases.Foot(i, factors);
            down += ground.Force.ZN / 1000;
            x += ground.Force.XN / 1000;
            y += ground.Force.YN / 1000;
            var middle = strength.Stand.Plan.MiddleMm;
            aboutX += (ground.Moment.XNMm + (ground.Force.ZN * (foot.Ground.YMm - middle))) * 1e-6;
            aboutY += (ground.Moment.YNMm - (ground.Force.ZN * (foot.Ground.XMm - middle))) * 1e-6;
        }

        return new(name, down, double.Hypot(x, y), double.Hypot(aboutX, aboutY));
    }
}
