using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Paint of one coat.</summary>
public static class PaintCoat
{
    /// <summary>Area that a litre covers when nothing is lost.</summary>
    /// <param name="solidsShare">Volume solids of the paint, 0.10 to 1.</param>
    /// <param name="filmUm">Thickness of the dry film [um], 10 to 1000.</param>
    /// <returns>Area of a litre [m2/L].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Volume balance: a litre of solids covers 1000 m2 at 1 um</source>
    public static double SpreadM2PerLitre(double solidsShare, double filmUm)
    {
        Within.Require(solidsShare, 0.10, 1, "");
        Within.Require(filmUm, 10, 1000, "um");
        return 1000 * solidsShare / filmUm;
    }

    /// <summary>Thickness of the wet film, which a comb measures while the paint is wet.</summary>
    /// <param name="solidsShare">Volume solids of the paint as it comes, 0.10 to 1.</param>
    /// <param name="filmUm">Thickness of the dry film [um], 10 to 1000.</param>
    /// <param name="thinnerShare">Thinner added as a share of the paint, 0 to 0.5.</param>
    /// <returns>Thickness [um].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Volume balance</source>
    public static double WetFilmUm(double solidsShare, double filmUm, double thinnerShare)
    {
        Within.Require(solidsShare, 0.10, 1, "");
        Within.Require(filmUm, 10, 1000, "um");
        Within.Require(thinnerShare, 0, 0.5, "");
        return filmUm * (1 + thinnerShare) / solidsShare;
    }

    /// <summary>Paint that one coat takes, before rounding up to tins.</summary>
    /// <param name="areaM2">Area painted [m2], 0 to 100000.</param>
    /// <param name="solidsShare">Volume solids of the paint, 0.10 to 1.</param>
    /// <param name="filmUm">Thickness of the dry film [um], 10 to 1000.</param>
    /// <param name="lossShare">Paint that does not end on the steel, 0 to 0.8: brush or roller on small sections 0.20 to 0.30, spray on angle and tube frames 0.50.</param>
    /// <returns>Paint [L].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Volume balance; losses partly common practice, no source</source>
    public static double Litres(double areaM2, double solidsShare, double filmUm, double lossShare)
    {
        Within.Require(areaM2, 0, 100_000, "m2");
        Within.Require(lossShare, 0, 0.8, "");
        return areaM2 / (SpreadM2PerLitre(solidsShare, filmUm) * (1 - lossShare));
    }
}
