using Shaduf.Shape;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Pressure over a strip of the plane, straight between its ends.</summary>
/// <param name="FromMm">Start of the strip, up the slope [mm].</param>
/// <param name="ToMm">End of the strip, up the slope [mm].</param>
/// <param name="AtFromNPerMm2">Pressure at its start [N/mm2].</param>
/// <param name="AtToNPerMm2">Pressure at its end [N/mm2].</param>
internal readonly record struct PressureStrip(double FromMm, double ToMm, double AtFromNPerMm2, double AtToNPerMm2);

/// <summary>Brings what acts on the modules to the members that carry them: each row is a beam on its two bearers.</summary>
/// <param name="rack">The rack.</param>
/// <param name="frame">Its frame.</param>
internal sealed class PlaneLoad(Rack rack, SkeletonFrame frame)
{
    private readonly IReadOnlyList<(double FromMm, double ToMm)> bands = BandsOf(rack);

    /// <summary>Loads of an even pressure.</summary>
    /// <param name="nPerMm2">Pressure on the plane [N/mm2].</param>
    /// <param name="direction">Direction, length 1.</param>
    /// <returns>The loads on the bearers.</returns>
    public IEnumerable<SpreadLoad> Even(double nPerMm2, Point direction) =>
        Of(_ => [new(0, rack.Size.DepthMm, nPerMm2, nPerMm2)], direction);

    /// <summary>Loads of a pressure that may change up the slope and along the row.</summary>
    /// <param name="strips">The strips at a place along the row, given as a share of its length.</param>
    /// <param name="direction">Direction of a pressure above 0, length 1.</param>
    /// <returns>The loads on the bearers; each span takes the pressure at its middle.</returns>
    public IEnumerable<SpreadLoad> Of(Func<double, IEnumerable<PressureStrip>> strips, Point direction)
    {
        for (var i = 0; i < rack.Rows.Count; i++)
        {
            var (row, band) = (rack.Rows[i], bands[i]);
            foreach (
                var (bearer, atMm, otherMm) in new[]
                {
                    (row.Low, row.LowAtMm, row.HighAtMm),
                    (row.High, row.HighAtMm, row.LowAtMm),
                }
            )
            {
                foreach (var span in frame.SpansOf(bearer))
                {
                    var perMm = strips(MiddleShare(span))
                        .Sum(strip => Share(Within(strip, band.FromMm, band.ToMm), atMm, otherMm));
                    yield return new(span, new(direction.XMm * perMm, direction.YMm * perMm, direction.ZMm * perMm));
                }
            }
        }
    }

    private double MiddleShare(int span)
    {
        var member = frame.Model.Members[span];
        var (from, to) = (frame.Model.Nodes[member.Start], frame.Model.Nodes[member.End]);
        return (from.XMm + to.XMm) / 2 / rack.Size.LengthMm;
    }

    // A row answers for the frame beside it, half of what lies between it and the next.
    private static List<(double, double)> BandsOf(Rack rack)
    {
        var rows = rack.Rows;
        return
        [
            .. Enumerable
                .Range(0, rows.Count)
                .Select(i =>
                    (
                        i == 0 ? 0 : (rows[i - 1].ToMm + rows[i].FromMm) / 2,
                        i == rows.Count - 1 ? rack.Size.DepthMm : (rows[i].ToMm + rows[i + 1].FromMm) / 2
                    )
                ),
        ];
    }

    private static PressureStrip Within(PressureStrip strip, double fromMm, double toMm)
    {
        var (from, to) = (Math.Max(strip.FromMm, fromMm), Math.Min(strip.ToMm, toMm));
        return to > from ? new(from, to, At(strip, from), At(strip, to)) : new(fromMm, fromMm, 0, 0);
    }

    private static double At(PressureStrip strip, double sMm) =>
        strip.AtFromNPerMm2
        + ((strip.AtToNPerMm2 - strip.AtFromNPerMm2) * (sMm - strip.FromMm) / (strip.ToMm - strip.FromMm));

    // Reaction of a beam at one of its two bearers: the integral of p (other - s)/(other - at), by Simpson, exact here.
    private static double Share(PressureStrip strip, double atMm, double otherMm)
    {
        double Lever(double s) => (otherMm - s) / (otherMm - atMm);
        var middle = (strip.FromMm + strip.ToMm) / 2;
        return (strip.ToMm - strip.FromMm)
            / 6
            * (
                (strip.AtFromNPerMm2 * Lever(strip.FromMm))
                + (2 * (strip.AtFromNPerMm2 + strip.AtToNPerMm2) * Lever(middle))
                + (strip.AtToNPerMm2 * Lever(strip.ToMm))
            );
    }
}
