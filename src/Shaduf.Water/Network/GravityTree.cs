namespace Shaduf.Water;

/// <summary>A pipe of a branched network with the point it leads to.</summary>
/// <param name="UpstreamIndex">The pipe that feeds it, earlier in the list; -1 for the tank.</param>
/// <param name="LevelM">Level of the point it leads to [m].</param>
/// <param name="NeedM">Head wanted there while all draw [m]; null when the point may have any.</param>
/// <param name="DrawM3PerS">Flow taken there [m3/s].</param>
/// <param name="BreaksPressure">Whether a break-pressure tank stands there: what lies below starts from its level.</param>
public sealed record TreePipe(
    int UpstreamIndex,
    double LevelM,
    double? NeedM,
    double DrawM3PerS,
    bool BreaksPressure = false
);

/// <summary>A network that branches and never joins again, fed from one tank.</summary>
/// <param name="Pipes">The pipes, each after the one that feeds it.</param>
public sealed record GravityTree(IReadOnlyList<TreePipe> Pipes)
{
    /// <summary>Flow in each pipe: what all points below it draw together.</summary>
    /// <returns>Flows [m3/s].</returns>
    /// <exception cref="ArgumentException">A pipe stands before the one that feeds it.</exception>
    /// <source>continuity</source>
    public IReadOnlyList<double> FlowsM3PerS()
    {
        Require();
        var flows = Pipes.Select(pipe => pipe.DrawM3PerS).ToArray();
        for (var i = flows.Length - 1; i >= 0; i--)
        {
            if (Pipes[i].UpstreamIndex >= 0)
            {
                flows[Pipes[i].UpstreamIndex] += flows[i];
            }
        }

        return flows;
    }

    /// <summary>Level of the hydraulic grade line where each pipe ends.</summary>
    /// <param name="sourceM">Level of the water in the tank [m].</param>
    /// <param name="lossM">Head lost in each pipe [m].</param>
    /// <returns>Levels [m].</returns>
    /// <exception cref="ArgumentException">A pipe stands before the one that feeds it, or the losses are not one a pipe.</exception>
    /// <source>energy along the way from the tank; a break-pressure tank starts again from its own level</source>
    public IReadOnlyList<double> GradeLevelsM(double sourceM, IReadOnlyList<double> lossM)
    {
        Require();
        if (lossM.Count != Pipes.Count)
        {
            throw new ArgumentException("one loss a pipe is needed", nameof(lossM));
        }

        var levels = new double[Pipes.Count];
        for (var i = 0; i < levels.Length; i++)
        {
            levels[i] = StartM(i, sourceM, levels) - lossM[i];
        }

        return levels;
    }

    /// <summary>Level to which water at rest presses at the end of each pipe.</summary>
    /// <param name="sourceM">Level of the water in the tank when full [m].</param>
    /// <returns>Levels [m].</returns>
    /// <exception cref="ArgumentException">A pipe stands before the one that feeds it.</exception>
    /// <source>water at rest; a break-pressure tank starts again from its own level</source>
    public IReadOnlyList<double> RestLevelsM(double sourceM) => GradeLevelsM(sourceM, new double[Pipes.Count]);

    /// <summary>Which pipes each pipe feeds.</summary>
    internal List<int>[] Fed()
    {
        Require();
        var fed = Pipes.Select(_ => new List<int>()).ToArray();
        for (var i = 0; i < Pipes.Count; i++)
        {
            if (Pipes[i].UpstreamIndex >= 0)
            {
                fed[Pipes[i].UpstreamIndex].Add(i);
            }
        }

        return fed;
    }

    private double StartM(int index, double sourceM, double[] levels) =>
        Pipes[index].UpstreamIndex is var up && up < 0 ? sourceM
        : Pipes[up].BreaksPressure ? Pipes[up].LevelM
        : levels[up];

    private void Require()
    {
        for (var i = 0; i < Pipes.Count; i++)
        {
            if (Pipes[i].UpstreamIndex < -1 || Pipes[i].UpstreamIndex >= i)
            {
                throw new ArgumentException($"pipe {i} stands before the one that feeds it", nameof(Pipes));
            }
        }
    }
}
