namespace Shaduf.Pack;

/// <summary>
/// The axes of a row of dimensions: along (the way its texts are read, from the bottom or from the right of the
/// sheet) and out from the thing measured.
/// </summary>
/// <param name="AlongX">x of the axis along, as part of 1.</param>
/// <param name="AlongY">y of the axis along, paper downwards.</param>
/// <param name="IsOutAboveText">Whether out from the thing is also up for the text.</param>
internal sealed record DimensionFrame(double AlongX, double AlongY, bool IsOutAboveText)
{
    internal readonly record struct Local(double AlongMm, double OutMm);

    private double OutX => IsOutAboveText ? AlongY : -AlongY;

    private double OutY => IsOutAboveText ? -AlongX : AlongX;

    internal double TextDeg => Math.Atan2(-AlongY, AlongX) * 180 / Math.PI;

    internal static DimensionFrame Of(DimensionSide side) =>
        side switch
        {
            DimensionSide.Above => new(1, 0, true),
            DimensionSide.Below => new(1, 0, false),
            DimensionSide.Left => new(0, -1, true),
            _ => new(0, -1, false),
        };

    internal static DimensionFrame Along(PaperPoint from, PaperPoint to, bool isLeftOfWay)
    {
        var lengthMm = from.DistanceMm(to);
        if (!(lengthMm > 0))
        {
            throw new ArgumentException("An aligned dimension needs two different points.", nameof(to));
        }

        var (x, y) = ((to.XMm - from.XMm) / lengthMm, (to.YMm - from.YMm) / lengthMm);
        var isTurned = x < -1e-9 || (Math.Abs(x) <= 1e-9 && y > 0);
        return isTurned ? new(-x, -y, !isLeftOfWay) : new(x, y, isLeftOfWay);
    }

    internal Local ToLocal(PaperPoint point) =>
        new((point.XMm * AlongX) + (point.YMm * AlongY), (point.XMm * OutX) + (point.YMm * OutY));

    internal PaperPoint ToPaper(Local local) =>
        new((local.AlongMm * AlongX) + (local.OutMm * OutX), (local.AlongMm * AlongY) + (local.OutMm * OutY));

    // A point moved as the text is read: forwards and up from its line.
    internal PaperPoint OnText(PaperPoint point, double forwardMm, double upMm) =>
        point.Moved((forwardMm * AlongX) + (upMm * AlongY), (forwardMm * AlongY) - (upMm * AlongX));
}
