using Shaduf.Working;

namespace Shaduf.Ground;

/// <summary>What a fence takes.</summary>
/// <param name="BayCount">Bays between posts.</param>
/// <param name="PostCount">Posts of every kind: corner, gate and intermediate.</param>
/// <param name="MeshM">Mesh to buy, with 3 % for tension and joints [m].</param>
/// <param name="GateCount">Gates.</param>
public sealed record FenceTakeoff(int BayCount, int PostCount, double MeshM, int GateCount);

/// <summary>A closed fence of posts and mesh with one gate, or none.</summary>
public static class Fence
{
    /// <summary>Mesh bought for one metre of run: tension and joints.</summary>
    /// <source>common practice, no source</source>
    public const double MeshFactor = 1.03;

    /// <summary>A fence whose straight runs are known: each run has bays of equal width, none wider than the spacing.</summary>
    /// <param name="runsM">Straight runs between corners and gate posts, the gate itself left out, in order around the site [m], each 0.5 to 5000.</param>
    /// <param name="spacingM">Widest bay [m], 1 to 5; 3 is usual.</param>
    /// <param name="gateWidthM">Width of the gate [m], 0 to 8; 0 for a ring without a gate.</param>
    /// <returns>Bays, posts, mesh and gates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <exception cref="ArgumentException">There is no run.</exception>
    /// <source>Bays and posts: counting; mesh allowance: common practice, no source</source>
    public static FenceTakeoff AlongRuns(IReadOnlyList<double> runsM, double spacingM, double gateWidthM)
    {
        if (runsM.Count == 0)
        {
            throw new ArgumentException("A fence needs at least one run.", nameof(runsM));
        }

        Within.Require(spacingM, 1, 5, "m");
        foreach (var runM in runsM)
        {
            Within.Require(runM, 0.5, 5000, "m");
        }

        return Takeoff(runsM.Sum(runM => Bays(runM, spacingM)), runsM.Sum(), gateWidthM);
    }

    /// <summary>
    /// A fence of four straight sides of which only the perimeter is known yet. Each corner may cost a further bay, so
    /// four are added: the count is never short, and at most four posts long. Use <see cref="AlongRuns"/> once the
    /// corners are pegged.
    /// </summary>
    /// <param name="perimeterM">Length around the site, the gate included [m], 10 to 20000.</param>
    /// <param name="spacingM">Widest bay [m], 1 to 5; 3 is usual.</param>
    /// <param name="gateWidthM">Width of the gate [m], 0 to 8; 0 for none.</param>
    /// <returns>Bays, posts, mesh and gates.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Bays and posts: counting; mesh allowance: common practice, no source</source>
    public static FenceTakeoff Along(double perimeterM, double spacingM, double gateWidthM)
    {
        Within.Require(perimeterM, 10, 20_000, "m");
        Within.Require(spacingM, 1, 5, "m");
        Within.Require(gateWidthM, 0, 8, "m");
        var runM = perimeterM - gateWidthM;
        const int cornerBays = 4;
        return Takeoff(Bays(runM, spacingM) + cornerBays, runM, gateWidthM);
    }

    private static FenceTakeoff Takeoff(int bays, double runM, double gateWidthM)
    {
        Within.Require(gateWidthM, 0, 8, "m");
        var gates = gateWidthM > 0 ? 1 : 0;

        // A ring has as many posts as bays; opened by a gate it has one more.
        return new(bays, bays + gates, runM * MeshFactor, gates);
    }

    // A run that is a whole number of bays but for rounding does not get a bay more.
    private static int Bays(double runM, double spacingM) => (int)Math.Ceiling(runM / spacingM - 1e-9);
}
