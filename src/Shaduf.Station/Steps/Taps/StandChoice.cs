using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The height of the tank's floor, from what the taps need where the brief leaves it open.</summary>
/// <param name="File">The brief with its height settled, with its cards and prices.</param>
/// <param name="Notes">What was chosen and why; empty when the brief says it.</param>
/// <param name="Workings">How the height that the governing tap needs was worked out.</param>
internal sealed record StandChoice(
    StationFile File,
    IReadOnlyList<ChoiceNote> Notes,
    IReadOnlyList<WorkingSheet> Workings
)
{
    // Stands are built of bars cut to half metres; higher than a brief may ask is a tower. Judgement, no source.
    private const double StepM = 0.5;
    private const double HighestM = 12;

    /// <summary>Settles the height.</summary>
    /// <param name="file">The brief with its cards and prices.</param>
    /// <returns>The least height in half metres that leaves every tap its head, as far as the tank's inlet lets it.</returns>
    public static StandChoice Of(StationFile file)
    {
        var brief = file.Brief;
        if (brief.Tank is { GivenStandM: not null } or { IsExisting: true })
        {
            return new(file, [], []);
        }

        if (brief.Taps is null)
        {
            return new(With(file, 0), [Note(0, "nothing here asks for head: the tank stands on its base")], []);
        }

        var survey = Survey.Of(brief);
        var mostM = Math.Min(HighestM, brief.Lift.InletM - brief.Lift.Route[^1].ElevationM);
        var steps = Enumerable.Range(0, 1 + (int)Math.Floor((mostM / StepM) + 1e-9)).Select(step => step * StepM);
        var (standM, network) = (0.0, Taps(file, survey, 0));
        foreach (var height in steps.Skip(1))
        {
            if (Serves(network))
            {
                break;
            }

            (standM, network) = (height, Taps(file, survey, height));
        }

        if (network.OnTheTank.MinBy(tap => tap.ResidualM - tap.WantedM) is not { } governing)
        {
            return new(With(file, 0), [Note(0, "break-pressure tanks part every tap from it")], []);
        }

        return new(
            With(file, standM),
            [Note(standM, Why(network, governing, standM, mostM))],
            [Show(brief, governing, standM)]
        );
    }

    private static StationFile With(StationFile file, double standM) =>
        file with
        {
            Brief = file.Brief with { Tank = file.Brief.Tank with { GivenStandM = standM } },
        };

    // With the tallest tank that may be chosen: the pipes must bear it at rest.
    private static TapNetwork Taps(StationFile file, Survey survey, double standM)
    {
        var tanks = file.Shelf.All<TankCard>();
        var tallestM = file.Brief.Tank.Card is { } name
            ? file.Shelf.Find<TankCard>(name)!.HeightM
            : tanks.Max(tank => tank.HeightM);
        return TapNetwork.Of(
            With(file, standM).Brief,
            survey,
            file.Shelf,
            tallestM,
            item => file.Prices.Rates.GetValueOrDefault(item)?.Amount
        );
    }

    private static bool Serves(TapNetwork network) => network.OnTheTank.All(tap => tap.ResidualM >= tap.WantedM - 1e-9);

    private static ChoiceNote Note(double standM, string why) =>
        new("height of the tank's stand", Invariant($"{standM:0.0} m"), why);

    private static string Why(TapNetwork network, TapHead governing, double standM, double mostM) =>
        (Serves(network), standM > 0) switch
        {
            (true, false) => Invariant(
                $"the ground at the tank gives every tap its head; '{governing.Name}' has least to spare, {governing.ResidualM - governing.WantedM:0.0} m"
            ),
            (true, true) => Invariant(
                $"the least in steps of {StepM} m that leaves every tap its head with all of them open; '{governing.Name}' governs, which wants {governing.WantedM:0.#} m and keeps {governing.ResidualM:0.0} m"
            ),
            _ => Invariant(
                $"'{governing.Name}' wants {governing.WantedM:0.#} m and keeps {governing.ResidualM:0.0} m even so: the inlet of the brief allows a floor {mostM:0.#} m over the ground at most"
            ),
        };

    private static WorkingSheet Show(Brief brief, TapHead governing, double standM)
    {
        const string method = "station/stand";
        var groundM = brief.Lift.Route[^1].ElevationM;
        var lossM = groundM + standM - governing.GradeM;
        var neededM = governing.Point.LevelM + governing.WantedM + lossM - groundM;
        return new(
            $"Height of the tank's stand: what '{governing.Name}' needs",
            [
                new("z_tap", "", "level of its mouth", governing.Point.LevelM, "m", method, "brief"),
                new("h_want", "", "head wanted while all taps are open", governing.WantedM, "m", method, "brief"),
                new("h_f", "sum of losses from the tank", "", lossM, "m", "water/gravity-tree", "Darcy-Weisbach"),
                new(
                    "S_needed",
                    "z_tap + h_want + h_f - z_ground",
                    Invariant($"ground at the tank {groundM:0.##} m, tank nearly empty"),
                    neededM,
                    "m",
                    method,
                    ""
                ),
                new("S", "next half metre, 0 at least", "", standM, "m", method, "judgement, no source"),
            ]
        );
    }
}
