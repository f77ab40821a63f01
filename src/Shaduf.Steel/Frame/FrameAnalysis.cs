namespace Shaduf.Steel;

/// <summary>
/// A frame made ready: its stiffness is put together and factored once; each load case is then a matter of
/// microseconds.
/// </summary>
/// <source>
/// Direct stiffness method, 12 x 12 Bernoulli-Euler beams: Logan, A First Course in the Finite Element Method, 4th ed.,
/// chapter 5.
/// </source>
public sealed class FrameAnalysis
{
    private readonly int[] at;
    private readonly int[] top;
    private readonly Skyline stiffness;
    private readonly Skyline factors;

    private FrameAnalysis(FrameModel model, PreparedMember[] members, int[] at)
    {
        (Model, Members, this.at) = (model, members, at);
        top = Tops();
        stiffness = Assembled((i, k) => members[i].PutStiffness(k));
        factors = stiffness.Factored();
        RequireStable();
    }

    /// <summary>The frame.</summary>
    public FrameModel Model { get; }

    internal PreparedMember[] Members { get; }

    /// <summary>Makes a frame ready.</summary>
    /// <param name="model">The frame: at least one member and one support.</param>
    /// <returns>The frame, ready for loads.</returns>
    /// <exception cref="ArgumentException">An index is out of range, a member has no length, a figure is not above 0.</exception>
    /// <exception cref="MechanismException">The frame can move without resistance; the message names the place.</exception>
    public static FrameAnalysis Of(FrameModel model)
    {
        FrameChecks.Require(model);
        return new(model, [.. model.Members.Select((_, i) => PreparedMember.Of(model, i))], Numbered(model));
    }

    /// <summary>Movements, reactions and end forces under loads.</summary>
    /// <param name="loads">The loads.</param>
    /// <returns>The result, in equilibrium to 1e-6 of the load.</returns>
    /// <exception cref="ArgumentException">A load's place is not in the frame, or a figure is not a number.</exception>
    public FrameResult Solve(LoadCase loads) => Solved(loads, factors, null);

    /// <summary>
    /// The same with the second-order effect of the axial forces of a first result; give the result back in to go round
    /// again. Members should be divided (<see cref="FrameModel.Divided"/>).
    /// </summary>
    /// <param name="loads">The loads.</param>
    /// <param name="first">A result under the same loads, whose axial forces are used.</param>
    /// <returns>The result.</returns>
    /// <exception cref="MechanismException">The axial forces reach the critical load: no equilibrium.</exception>
    /// <source>Tangent stiffness K + K_G(N): Przemieniecki 1968, chapter 15.</source>
    public FrameResult SolveSecondOrder(LoadCase loads, FrameResult first)
    {
        var tensionN = TensionsN(first);
        var sum = stiffness.Plus(Geometric(tensionN), 1).Factored();
        return sum.NegativeCount == 0
            ? Solved(loads, sum, tensionN)
            : throw new MechanismException($"load case {loads.Name} is above the critical load of the frame");
    }

    /// <summary>Factor on all loads of a result at which the frame buckles elastically.</summary>
    /// <param name="first">The result.</param>
    /// <returns>The smallest factor above 0; null when no member is in compression or nothing buckles.</returns>
    /// <source>det(K + α·K_G) = 0; EN 1993-1-1:2005, 5.2.1 judges a frame by α_cr.</source>
    public double? CriticalFactor(FrameResult first) => CriticalFactor(TensionsN(first));

    /// <summary>The same for the axial forces of the members themselves, tension above 0 [N].</summary>
    internal double? CriticalFactor(double[] tensionN) => CriticalLoad.Factor(stiffness, factors, Geometric(tensionN));

    private double[] TensionsN(FrameResult first) => [.. Members.Select((_, i) => first.MeanTensionN(i))];

    private Skyline Geometric(double[] tensionN) => Assembled((i, k) => Members[i].PutGeometric(tensionN[i], k));

    private FrameResult Solved(LoadCase loads, Skyline matrix, double[]? tensionN)
    {
        FrameChecks.Require(loads, Model);
        var loaded = MemberLoads.Of(loads, Members);
        var free = new double[matrix.Count];
        Span<double> ends = stackalloc double[12];
        for (var m = 0; m < Members.Length; m++)
        {
            if (!loaded[m].IsNone)
            {
                Members[m].Axes.ToStation(loaded[m].Condensed, ends);
                Scatter(Members[m].Member, ends, free, -1);
            }
        }

        foreach (var load in loads.Nodes)
        {
            AddNode(load, free);
        }

        Refine(matrix == factors ? stiffness : null, matrix, free);
        var movements = new double[at.Length];
        for (var i = 0; i < at.Length; i++)
        {
            movements[i] = at[i] < 0 ? 0 : free[at[i]];
        }

        return new(this, loads, movements, loaded, tensionN);
    }

    // Solves, and once more for what rounding left over, where the matrix before it was factored is at hand.
    private static void Refine(Skyline? whole, Skyline factored, double[] free)
    {
        var asked = (double[])free.Clone();
        factored.Solve(free);
        if (whole is null)
        {
            return;
        }

        var left = new double[free.Length];
        whole.Times(free, left);
        for (var i = 0; i < left.Length; i++)
        {
            left[i] = asked[i] - left[i];
        }

        factored.Solve(left);
        for (var i = 0; i < left.Length; i++)
        {
            free[i] += left[i];
        }
    }

    private void AddNode(NodeLoad load, double[] free)
    {
        Span<double> six =
        [
            load.Force.XN,
            load.Force.YN,
            load.Force.ZN,
            load.Moment.XNMm,
            load.Moment.YNMm,
            load.Moment.ZNMm,
        ];
        for (var i = 0; i < 6; i++)
        {
            if (at[(load.Node * 6) + i] is >= 0 and var free6)
            {
                free[free6] += six[i];
            }
        }
    }

    private void Scatter(FrameMember member, ReadOnlySpan<double> ends, double[] free, double sign)
    {
        for (var i = 0; i < 12; i++)
        {
            if (At(member, i) is >= 0 and var row)
            {
                free[row] += sign * ends[i];
            }
        }
    }

    private int At(FrameMember member, int end) => at[((end < 6 ? member.Start : member.End) * 6) + (end % 6)];

    private void Rows(FrameMember member, Span<int> rows)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            rows[i] = At(member, i);
        }
    }

    // Row of the first figure of each column: the least of those that share a member with it.
    private int[] Tops()
    {
        var tops = Enumerable.Range(0, at.Count(row => row >= 0)).ToArray();
        Span<int> rows = stackalloc int[12];
        foreach (var member in Model.Members)
        {
            Rows(member, rows);
            var least = int.MaxValue;
            foreach (var row in rows)
            {
                least = row < 0 ? least : Math.Min(least, row);
            }

            foreach (var row in rows)
            {
                if (row >= 0)
                {
                    tops[row] = Math.Min(tops[row], least);
                }
            }
        }

        return tops;
    }

    private Skyline Assembled(Action<int, double[]> put)
    {
        var (sum, k) = (new Skyline(top), new double[144]);
        Span<int> rows = stackalloc int[12];
        for (var m = 0; m < Members.Length; m++)
        {
            Rows(Members[m].Member, rows);
            put(m, k);
            sum.Add(rows, k);
        }

        return sum;
    }

    // Row of each of the six directions of each node in the matrix; -1 where it is held.
    private static int[] Numbered(FrameModel model)
    {
        var rows = new int[model.Nodes.Count * 6];
        foreach (var support in model.Supports)
        {
            for (var i = 0; i < 6; i++)
            {
                if (support.Fix.HasFlag((FrameFix)(1 << i)))
                {
                    rows[(support.Node * 6) + i] = -1;
                }
            }
        }

        var next = 0;
        foreach (var node in NodeOrder.Of(model.Nodes.Count, model.Members))
        {
            for (var i = node * 6; i < (node * 6) + 6; i++)
            {
                rows[i] = rows[i] < 0 ? -1 : next++;
            }
        }

        return rows;
    }

    private void RequireStable()
    {
        for (var i = 0; i < at.Length; i++)
        {
            var row = at[i];
            if (row >= 0 && !(factors.Diagonal(row) > 1e-10 * stiffness.Diagonal(row)))
            {
                throw new MechanismException($"the frame can move {Direction(i % 6)} at {Place(i / 6)}");
            }
        }
    }

    private static string Direction(int direction) =>
        $"{(direction < 3 ? "along" : "about")} {"xyz"[direction % 3]} without resistance";

    private string Place(int node)
    {
        var marks = Model
            .Members.Where(member => member.Start == node || member.End == node)
            .Select(member => member.Mark)
            .Distinct();
        return FormattableString.Invariant(
            $"node {node} ({Model.Nodes[node].XMm:0}, {Model.Nodes[node].YMm:0}, {Model.Nodes[node].ZMm:0} mm), where {string.Join(", ", marks.DefaultIfEmpty("no member"))} ends"
        );
    }
}
