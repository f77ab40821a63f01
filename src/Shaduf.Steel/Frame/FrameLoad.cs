using Shaduf.Shape;

namespace Shaduf.Steel;

/// <summary>A force in the directions of the station.</summary>
/// <param name="XN">Along x [N].</param>
/// <param name="YN">Along y [N].</param>
/// <param name="ZN">Along z, up [N].</param>
public readonly record struct Force(double XN, double YN, double ZN)
{
    /// <summary>A force made longer or shorter.</summary>
    /// <param name="force">The force.</param>
    /// <param name="factor">By how much.</param>
    /// <returns>The new force.</returns>
    public static Force operator *(Force force, double factor) =>
        new(force.XN * factor, force.YN * factor, force.ZN * factor);
}

/// <summary>A moment about the axes of the station, right-handed.</summary>
/// <param name="XNMm">About x [N·mm].</param>
/// <param name="YNMm">About y [N·mm].</param>
/// <param name="ZNMm">About z [N·mm].</param>
public readonly record struct Moment(double XNMm, double YNMm, double ZNMm);

/// <summary>Force and moment at a node.</summary>
/// <param name="Node">Index of the node.</param>
/// <param name="Force">Force [N].</param>
/// <param name="Moment">Moment [N·mm].</param>
public sealed record NodeLoad(int Node, Force Force, Moment Moment = default);

/// <summary>Load spread evenly over the whole length of a member.</summary>
/// <param name="Member">Index of the member.</param>
/// <param name="PerMm">Force on each millimetre of its length [N/mm].</param>
public sealed record SpreadLoad(int Member, Force PerMm);

/// <summary>A force at one place of a member.</summary>
/// <param name="Member">Index of the member.</param>
/// <param name="AtMm">Distance from its start [mm], 0 to its length.</param>
/// <param name="Force">Force [N].</param>
public sealed record PointLoad(int Member, double AtMm, Force Force);

/// <summary>Loads that act together.</summary>
/// <param name="Name">Their name.</param>
/// <param name="Nodes">At nodes.</param>
/// <param name="Spread">Along members.</param>
/// <param name="Points">At places of members.</param>
public sealed record LoadCase(
    string Name,
    IReadOnlyList<NodeLoad> Nodes,
    IReadOnlyList<SpreadLoad> Spread,
    IReadOnlyList<PointLoad> Points
)
{
    /// <summary>The same loads on a frame whose members are divided by <see cref="FrameModel.Divided"/>.</summary>
    /// <param name="model">The frame before it was divided.</param>
    /// <param name="pieceCount">Pieces of each member, 1 to 100.</param>
    /// <returns>The loads.</returns>
    public LoadCase Divided(FrameModel model, int pieceCount) =>
        this with
        {
            Spread =
            [
                .. Spread.SelectMany(load =>
                    Enumerable.Range(load.Member * pieceCount, pieceCount).Select(piece => load with { Member = piece })
                ),
            ],
            Points =
            [
                .. Points.Select(load =>
                {
                    var pieceMm = model.LengthMm(load.Member) / pieceCount;
                    var piece = Math.Min((int)(load.AtMm / pieceMm), pieceCount - 1);
                    return load with
                    {
                        Member = (load.Member * pieceCount) + piece,
                        AtMm = Math.Min(load.AtMm - (piece * pieceMm), pieceMm),
                    };
                }),
            ],
        };

    /// <summary>Load cases added up, each with its factor: a combination of actions.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="cases">The cases with their partial and combination factors.</param>
    /// <returns>The loads.</returns>
    public static LoadCase Combined(string name, IEnumerable<(LoadCase Case, double Factor)> cases)
    {
        var all = cases.Where(each => each.Factor != 0).ToList();
        return new(
            name,
            [
                .. all.SelectMany(each =>
                    each.Case.Nodes.Select(load =>
                        load with
                        {
                            Force = load.Force * each.Factor,
                            Moment = new(
                                load.Moment.XNMm * each.Factor,
                                load.Moment.YNMm * each.Factor,
                                load.Moment.ZNMm * each.Factor
                            ),
                        }
                    )
                ),
            ],
            [
                .. all.SelectMany(each =>
                    each.Case.Spread.Select(load => load with { PerMm = load.PerMm * each.Factor })
                ),
            ],
            [.. all.SelectMany(each => each.Case.Points.Select(load => load with { Force = load.Force * each.Factor }))]
        );
    }
}
