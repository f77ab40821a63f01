using Shaduf.Shape;
using Shaduf.Steel;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>How far something of a stand moves under the full tank, against what is allowed.</summary>
/// <param name="What">What moves.</param>
/// <param name="ValueMm">How far [mm].</param>
/// <param name="LimitMm">How far it may [mm].</param>
public sealed record StandMove(string What, double ValueMm, double LimitMm)
{
    // Under a flat bottom: judgement, no source.
    private const double SagRatio = 360;
    private const double MostStepMm = 3;

    /// <summary>Whether it holds.</summary>
    public bool Holds => ValueMm <= LimitMm;

    /// <summary>Sag of the joists between the beams, of the beams between the legs, and the step from joist to joist.</summary>
    /// <param name="stand">The stand.</param>
    /// <param name="cases">The solved frame.</param>
    /// <param name="full">The full tank without partial factors.</param>
    /// <returns>The movements.</returns>
    public static IEnumerable<StandMove> Of(TankStand stand, FrameCases cases, Combination full)
    {
        var (plan, factors) = (stand.Plan, full.EachFactor(0));
        double DownMm(int member, Point at)
        {
            var axis = stand.Skeleton.Members[member];
            var (span, from) = cases.Frame.Place(member, (at - axis.From).LengthMm);
            return -cases.MovementMm(span, from / cases.Frame.Model.LengthMm(span), factors).ZMm;
        }

        var middles = new List<double>();
        var sag = 0.0;
        foreach (var joist in stand.Members(TankStand.JoistRole).Where(IsUnder))
        {
            var axis = stand.Skeleton.Members[joist];
            Point At(double y) => axis.From with { YMm = y };
            var middle = DownMm(joist, At(plan.MiddleMm));
            sag = Math.Max(sag, middle - ((DownMm(joist, At(0)) + DownMm(joist, At(plan.SideMm))) / 2));
            if (!IsEdge(joist))
            {
                middles.Add(middle);
            }
        }

        yield return new("sag of a joist between the row beams, tank full", sag, plan.SideMm / SagRatio);
        var step = middles.Zip(middles.Skip(1), (a, b) => Math.Abs(a - b)).DefaultIfEmpty(0).Max();
        yield return new("step from joist to joist in the middle, tank full", step, MostStepMm);
        var bayMm = plan.SideMm / (plan.RowCount - 1);
        var beam = stand.Members(TankStand.BeamRole).First();
        // The front beam has the longest spans.
        var sags = plan.LegXMm.Zip(
            plan.LegXMm.Skip(1),
            (left, right) =>
            {
                Point At(double x) => stand.Skeleton.Members[beam].From with { XMm = x };
                return DownMm(beam, At((left + right) / 2)) - ((DownMm(beam, At(left)) + DownMm(beam, At(right))) / 2);
            }
        );
        yield return new(
            Invariant($"sag of a row beam between legs {bayMm:0} mm apart, tank full"),
            sags.Max(),
            bayMm / SagRatio
        );

        // Under the wall of a tank of panels, which stiffens it.
        bool IsEdge(int joist) =>
            Math.Abs(stand.Skeleton.Members[joist].From.XMm - plan.MiddleMm) > (plan.BedMm / 2) - 1;
        bool IsUnder(int joist) => plan.ChordMm(stand.Skeleton.Members[joist].From.XMm) > plan.BedMm / 4;
    }
}
