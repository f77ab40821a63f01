using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Chooses the pipes to the taps at least cost.</summary>
/// <param name="survey">Settled figures.</param>
/// <param name="shelf">The cards.</param>
/// <param name="tank">Levels of the tank's floor and of the water in the full tank [m].</param>
/// <param name="rate">Price of a metre of pipe; null when there is none.</param>
internal sealed class TapSizing(
    Survey survey,
    CardShelf shelf,
    (double SourceM, double FullM) tank,
    Func<string, decimal?> rate
)
{
    /// <summary>Fastest water accepted in a pipe to the taps [m/s]: Jordan 1984.</summary>
    public const double FastestMPerS = 3;

    // Valves and bends as 10 % of the pipe's friction: common practice, no source.
    private const double FittingsFactor = 1.1;

    private readonly WaterState water = WaterState.At(survey["water-temperature"]);
    private readonly double pipeDegC = survey["pipe-temperature"];
    private readonly IReadOnlyList<PipeCard> cards =
    [
        .. shelf.All<PipeCard>().Where(pipe => pipe.Uses.Contains(PipeUse.Tap)).OrderBy(pipe => pipe.BoreMm),
    ];

    /// <summary>Head that the pipe to a point may bear: its own card's, or the strongest of those that could be chosen [m].</summary>
    public double AllowedM(TapPoint point) => point.Given is { } given ? AllowedM(given) : cards.Max(AllowedM);

    /// <summary>The points with their pipes and heads, and what was chosen.</summary>
    public (IReadOnlyList<TapHead> Heads, IReadOnlyList<ChoiceNote> Notes) Choose(IReadOnlyList<TapPoint> points)
    {
        var tree = new GravityTree([.. points.Select(TreePipeOf)]);
        var (flows, restM) = (tree.FlowsM3PerS(), tree.RestLevelsM(tank.FullM));
        var mostRestM = points.Select((point, i) => restM[i] - Math.Min(point.LevelM, StartM(points, point))).ToList();
        var offers = points.Select((point, i) => Offers(point, flows[i], mostRestM[i])).ToList();
        var options = offers
            .Select((each, i) => each.Select(card => Option(card, points[i], flows[i])).ToList())
            .ToList();
        var least = LeastCostTree.Choose(tree, tank.SourceM, options);
        var pipes = offers.Select((each, i) => least.Serves ? each[least.OptionIndices[i]] : each[^1]).ToList();
        var losses = points.Select((point, i) => LossM(pipes[i], point.LengthM, flows[i])).ToList();
        var grade = tree.GradeLevelsM(tank.SourceM, losses);
        var heads = points.Select(
            (point, i) => new TapHead(point, pipes[i], flows[i], losses[i], grade[i], restM[i], mostRestM[i])
        );
        return ([.. heads], points.All(point => point.Given is not null) ? [] : [Note(points, offers, least)]);
    }

    private static TreePipe TreePipeOf(TapPoint point) =>
        new(
            point.UpstreamIndex,
            point.LevelM,
            point.NeedM,
            point.DrawM3PerS,
            point.Kind == TapPointKind.BreakPressureTank
        );

    private bool HasRates => cards.Any(card => rate(card.Name) is not null);

    private double StartM(IReadOnlyList<TapPoint> points, TapPoint point) =>
        point.UpstreamIndex < 0 ? tank.SourceM : points[point.UpstreamIndex].LevelM;

    private double AllowedM(PipeCard card) =>
        PressureClass.HeadM(Lift.AllowedBar(card, pipeDegC), water.DensityKgPerM3);

    // Narrowest first: what holds the head at rest, is not too fast and has a price; the widest of the strongest when nothing does.
    private IReadOnlyList<PipeCard> Offers(TapPoint point, double flowM3PerS, double mostRestM)
    {
        if (point.Given is { } given)
        {
            return [given];
        }

        var fit = cards
            .Where(card =>
                AllowedM(card) >= mostRestM
                && Lift.SpeedMPerS(card, flowM3PerS * 3600) <= FastestMPerS
                && (!HasRates || rate(card.Name) is not null)
            )
            .ToList();
        return fit.Count > 0 ? fit : [cards.OrderBy(AllowedM).ThenBy(card => card.BoreMm).Last()];
    }

    // Without any rates the outside diameter stands for the price.
    private PipeOption Option(PipeCard card, TapPoint point, double flowM3PerS) =>
        new(
            LossM(card, point.LengthM, flowM3PerS),
            (decimal)point.LengthM * (HasRates ? rate(card.Name) ?? 0 : (decimal)card.OuterMm)
        );

    private double LossM(PipeCard pipe, double lengthM, double flowM3PerS) =>
        lengthM > 0
            ? FittingsFactor
                * DarcyWeisbach
                    .Loss(
                        new(pipe.BoreMm / 1000, pipe.RoughnessMm / 1000, lengthM, 0),
                        flowM3PerS,
                        water.KinematicViscosityM2PerS
                    )
                    .TotalM
            : 0;

    private ChoiceNote Note(
        IReadOnlyList<TapPoint> points,
        IReadOnlyList<IReadOnlyList<PipeCard>> offers,
        LeastCostTree least
    )
    {
        var sets = offers.Aggregate(1.0, (product, each) => product * each.Count);
        return new(
            "pipes to the taps",
            Invariant($"{points.Count(point => point.Given is null)} of {points.Count} chosen"),
            !least.Serves
                ? "no set of pipes leaves every tap its head: the widest are shown"
                : Invariant(
                    $"the {(HasRates ? "cheapest" : "slimmest, for want of rates,")} of {sets:0.#e0} sets that leave every tap its head, hold the head at rest and keep below {FastestMPerS} m/s; found exactly, not by trial"
                )
        );
    }
}
