namespace Shaduf.Steel;

/// <summary>An order of the nodes in which joined nodes are near each other, so that the matrix is narrow.</summary>
internal static class NodeOrder
{
    /// <summary>Reverse Cuthill-McKee order.</summary>
    /// <param name="nodeCount">Number of nodes.</param>
    /// <param name="members">The members that join them.</param>
    /// <returns>The nodes in their new order.</returns>
    /// <source>Cuthill, McKee, Reducing the bandwidth of sparse symmetric matrices, 1969; reversed by George, 1971.</source>
    internal static int[] Of(int nodeCount, IReadOnlyList<FrameMember> members)
    {
        var joined = Enumerable.Range(0, nodeCount).Select(_ => new List<int>()).ToArray();
        foreach (var member in members)
        {
            joined[member.Start].Add(member.End);
            joined[member.End].Add(member.Start);
        }

        var order = new List<int>(nodeCount);
        var isPlaced = new bool[nodeCount];
        foreach (var node in Enumerable.Range(0, nodeCount).OrderBy(node => joined[node].Count))
        {
            if (!isPlaced[node])
            {
                order.AddRange(Wave(Farthest(node, joined), joined, isPlaced));
            }
        }

        order.Reverse();
        return [.. order];
    }

    // The end of a wave from the end of a wave lies at the rim of the frame.
    private static int Farthest(int node, List<int>[] joined)
    {
        var first = Wave(node, joined, new bool[joined.Length])[^1];
        return Wave(first, joined, new bool[joined.Length])[^1];
    }

    private static List<int> Wave(int from, List<int>[] joined, bool[] isPlaced)
    {
        var wave = new List<int> { from };
        isPlaced[from] = true;
        for (var at = 0; at < wave.Count; at++)
        {
            foreach (var next in joined[wave[at]].Where(next => !isPlaced[next]).OrderBy(next => joined[next].Count))
            {
                if (!isPlaced[next])
                {
                    isPlaced[next] = true;
                    wave.Add(next);
                }
            }
        }

        return wave;
    }
}
