using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>A stand of steel under a tank.</summary>
/// <param name="Plan">Its lines.</param>
/// <param name="Steel">The solid model.</param>
/// <param name="Skeleton">The lines along which it carries.</param>
/// <param name="Access">Guard rail and ladder.</param>
/// <param name="Plates">Plates of its feet, heads, gussets and deck.</param>
public sealed record TankStand(
    StandPlan Plan,
    Assembly Steel,
    Skeleton Skeleton,
    StandAccess Access,
    StandPlates Plates
)
{
    /// <summary>Gravity [N/kg].</summary>
    public const double GravityNPerKg = 9.80665;

    internal const string LegRole = "leg";
    internal const string DiagonalRole = "diagonal";
    internal const string HorizontalRole = "horizontal";
    internal const string PlanRole = "plan brace";
    internal const string BeamRole = "row beam";
    internal const string JoistRole = "joist";

    /// <summary>All steel with its plates and the ladder's rungs [kg].</summary>
    public double MassKg => Steel.MassKg + Plates.MassKg + Access.RungKg;

    /// <summary>What stands on the joists besides the tank: deck, toe plate, rail, ladder [kg].</summary>
    public double OnJoistsKg =>
        Plates.DeckKg
        + Access.RungKg
        + Steel
            .Parts.Where(part => part.Section == Plan.Sections.Rail && StandAccess.Roles.Contains(part.Role))
            .Sum(part => part.MassKg);

    /// <summary>Members of a role.</summary>
    /// <param name="role">The role.</param>
    /// <returns>Their indices in the skeleton.</returns>
    public IEnumerable<int> Members(string role) =>
        Skeleton.Members.Index().Where(pair => pair.Item.Role == role).Select(pair => pair.Index);

    /// <summary>The stand on other feet.</summary>
    /// <param name="foot">The foot of each leg.</param>
    /// <returns>The stand.</returns>
    public TankStand On(StandFoot foot)
    {
        var plates = Plates with { Foot = foot };
        return this with { Plates = plates, Steel = Steel with { Plates = plates.Pieces } };
    }

    /// <summary>The stand with other legs of its welds.</summary>
    /// <param name="legsMm">Legs by name of the joint [mm]; what is not named stays.</param>
    /// <returns>The stand.</returns>
    public TankStand WithLegs(IReadOnlyDictionary<string, double> legsMm) =>
        this with
        {
            Steel = WeldLegs.On(Steel, legsMm),
            Skeleton = WeldLegs.On(Skeleton, legsMm),
        };
}
