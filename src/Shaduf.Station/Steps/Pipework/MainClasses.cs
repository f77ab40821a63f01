using Shaduf.Water;

namespace Shaduf.Station;

/// <summary>Pressure classes along a main: the weakest pipe of one diameter that holds, place by place.</summary>
internal static class MainClasses
{
    // A change of pipe is set to the next ten metres, the stronger pipe longer; a weaker length shorter than a coil does not pay its joint.
    private const double StepM = 10;
    private const double ShortestM = 50;

    /// <summary>The main of one outside diameter with the class that each length needs; null when no class holds somewhere.</summary>
    /// <param name="duty">What it must bear.</param>
    /// <param name="classes">Pipes of one outside diameter and one kind.</param>
    /// <returns>The main.</returns>
    public static MainLay? Graded(MainDuty duty, IReadOnlyList<PipeCard> classes)
    {
        var ordered = classes.OrderBy(pipe => pipe.PressureBar).ToList();
        var need = Need(duty, ordered);
        var endM = duty.Lift.Route[^1].ChainageM;
        var cuts = Enumerable.Range(0, (int)Math.Ceiling(endM / StepM)).Select(i => i * StepM).ToList();
        var grades = cuts.Select(fromM =>
                Weakest(duty, ordered, Largest(duty, need, fromM, Math.Min(endM, fromM + StepM)))
            )
            .ToList();
        if (grades.Contains(-1))
        {
            return null;
        }

        Widen(grades);
        var pipes = new List<(PipeCard Pipe, double FromM)>();
        for (var i = 0; i < grades.Count; i++)
        {
            if (i == 0 || grades[i] != grades[i - 1])
            {
                pipes.Add((ordered[grades[i]], cuts[i]));
            }
        }

        return MainLay.Of(duty.Lift, pipes);
    }

    // The narrowest bore loses most and the stiffest wall rises most: what is needed is never less than in the main as it comes out.
    private static Func<double, double> Need(MainDuty duty, IReadOnlyList<PipeCard> classes)
    {
        var narrowest = MainLay.Of(duty.Lift, classes.MinBy(pipe => pipe.BoreMm)!);
        var run = narrowest.Runs(duty.Lift)[0];
        var lossM = DarcyWeisbach.Loss(run, duty.FlowM3PerH / 3600, duty.Water.KinematicViscosityM2PerS).TotalM;
        var riseM = classes.Max(duty.RiseM);
        var endM = duty.Lift.Route[^1].ChainageM;
        var ground = Lift.ProfileOf(duty.Lift);
        return chainageM =>
        {
            var levelM = RouteProfile.At(ground, chainageM).LevelM;
            var gradeM = Lift.TopM(duty.Lift) + Lift.InletHeadM + (lossM * (1 - (chainageM / endM)));
            var headM = gradeM + riseM - levelM;
            return headM > MainProfile.BeyondM
                ? double.PositiveInfinity
                : Math.Max(
                    PressureClass.PressureBar(Math.Max(0, headM), duty.Water.DensityKgPerM3),
                    duty.ClosedBar(levelM, riseM)
                );
        };
    }

    // Straight lines between the points of the route: the largest stands at an end or at a point between.
    private static double Largest(MainDuty duty, Func<double, double> need, double fromM, double toM) =>
        duty
            .Lift.Route.Select(point => point.ChainageM)
            .Where(chainageM => chainageM > fromM && chainageM < toM)
            .Append(fromM)
            .Append(toM)
            .Max(need);

    private static int Weakest(MainDuty duty, List<PipeCard> ordered, double neededBar) =>
        ordered.FindIndex(pipe => Lift.AllowedBar(pipe, duty.PipeDegC) >= neededBar);

    private static void Widen(List<int> grades)
    {
        var shortest = (int)Math.Ceiling(ShortestM / StepM);
        for (var from = 0; from < grades.Count; )
        {
            var to = from;
            while (to < grades.Count && grades[to] == grades[from])
            {
                to++;
            }

            var beside = new[] { from > 0 ? grades[from - 1] : -1, to < grades.Count ? grades[to] : -1 }
                .Where(grade => grade > grades[from])
                .DefaultIfEmpty(-1)
                .Min();
            if (beside > 0 && to - from < shortest)
            {
                grades.RemoveRange(from, to - from);
                grades.InsertRange(from, Enumerable.Repeat(beside, to - from));
                from = 0;
            }
            else
            {
                from = to;
            }
        }
    }
}
