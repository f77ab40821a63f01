using Shaduf.Working;

namespace Shaduf.Sun;

/// <summary>The sun seen from the centre of the earth, with the steps that lead there.</summary>
/// <param name="EarthLongitudeDeg">Heliocentric longitude of the earth [deg], 0 to 360.</param>
/// <param name="EarthLatitudeDeg">Heliocentric latitude of the earth [deg].</param>
/// <param name="DistanceRatio">Distance over the mean one.</param>
/// <param name="NutationLongitudeDeg">Nutation in longitude [deg].</param>
/// <param name="NutationObliquityDeg">Nutation in obliquity [deg].</param>
/// <param name="ObliquityDeg">True obliquity of the ecliptic [deg].</param>
/// <param name="ApparentLongitudeDeg">Apparent longitude of the sun [deg].</param>
/// <param name="AscensionDeg">Right ascension [deg], 0 to 360.</param>
/// <param name="DeclinationDeg">Declination [deg].</param>
/// <param name="SiderealDeg">Apparent sidereal time at Greenwich [deg].</param>
/// <param name="EquationOfTimeMin">Sundial less clock [min].</param>
internal sealed record NrelSun(
    double EarthLongitudeDeg,
    double EarthLatitudeDeg,
    double DistanceRatio,
    double NutationLongitudeDeg,
    double NutationObliquityDeg,
    double ObliquityDeg,
    double ApparentLongitudeDeg,
    double AscensionDeg,
    double DeclinationDeg,
    double SiderealDeg,
    double EquationOfTimeMin
)
{
    private static readonly ILookup<string, CsvRow> Terms = Csv.Embedded(typeof(NrelSun).Assembly, "NrelTerms.csv")
        .ToLookup(row => row["series"]);

    private static readonly IReadOnlyList<double[][]> Longitude = Series("L");
    private static readonly IReadOnlyList<double[][]> Latitude = Series("B");
    private static readonly IReadOnlyList<double[][]> Distance = Series("R");

    private static readonly double[][] Nutation =
    [
        .. Csv.Embedded(typeof(NrelSun).Assembly, "NrelNutation.csv")
            .Select(row => new[] { "y0", "y1", "y2", "y3", "y4", "a", "b", "c", "d" }.Select(row.Number).ToArray()),
    ];

    /// <summary>The sun at an instant.</summary>
    /// <param name="julianDays">Julian day, UT [d], 2305447.5 to 2524593.5 (1600 to 2200).</param>
    /// <param name="deltaTS">Terrestrial time less universal time [s], -20 to 500.</param>
    internal static NrelSun At(double julianDays, double deltaTS)
    {
        Within.Require(julianDays, 2305447.5, 2524593.5, "d");
        Within.Require(deltaTS, -20, 500, "s");
        var centuriesUt = (julianDays - 2451545) / 36525;
        var centuries = (julianDays + (deltaTS / 86400) - 2451545) / 36525;
        var millennia = centuries / 10;
        var earthLongitudeDeg = Angle.Turn(Angle.ToDeg(Sum(Longitude, millennia)));
        var earthLatitudeDeg = Angle.ToDeg(Sum(Latitude, millennia));
        var distanceRatio = Sum(Distance, millennia);
        var (nutationLongitudeDeg, nutationObliquityDeg) = NutationDeg(centuries);
        var obliquityDeg = (MeanObliquityArcSeconds(millennia / 10) / 3600) + nutationObliquityDeg;
        var aberrationDeg = -20.4898 / (3600 * distanceRatio);
        var apparentDeg = Angle.Turn(earthLongitudeDeg + 180 + nutationLongitudeDeg + aberrationDeg);
        var siderealDeg =
            280.46061837
            + (360.98564736629 * (julianDays - 2451545))
            + (0.000387933 * centuriesUt * centuriesUt)
            - (centuriesUt * centuriesUt * centuriesUt / 38710000)
            + (nutationLongitudeDeg * Angle.Cos(obliquityDeg));

        // Seen from the earth the sun is on the other side: its latitude is the earth's, turned over.
        var (ascensionDeg, declinationDeg) = Equatorial(apparentDeg, -earthLatitudeDeg, obliquityDeg);
        var meanLongitudeDeg = Polynomial(
            millennia,
            280.4664567,
            360007.6982779,
            0.03032028,
            1 / 49931.0,
            -1 / 15300.0,
            -1 / 2000000.0
        );
        var aheadDeg = meanLongitudeDeg - 0.0057183 - ascensionDeg + (nutationLongitudeDeg * Angle.Cos(obliquityDeg));
        return new(
            earthLongitudeDeg,
            earthLatitudeDeg,
            distanceRatio,
            nutationLongitudeDeg,
            nutationObliquityDeg,
            obliquityDeg,
            apparentDeg,
            ascensionDeg,
            declinationDeg,
            Angle.Turn(siderealDeg),
            4 * Angle.HalfTurn(aheadDeg)
        );
    }

    /// <summary>Hour angle over a meridian [deg], -180 to 180.</summary>
    internal double HourAngleDeg(double longitudeDeg) => Angle.HalfTurn(SiderealDeg + longitudeDeg - AscensionDeg);

    private static (double AscensionDeg, double DeclinationDeg) Equatorial(
        double longitudeDeg,
        double latitudeDeg,
        double obliquityDeg
    )
    {
        var (sinObliquity, cosObliquity) = (Angle.Sin(obliquityDeg), Angle.Cos(obliquityDeg));
        var ascensionRad = Math.Atan2(
            (Angle.Sin(longitudeDeg) * cosObliquity) - (Angle.Tan(latitudeDeg) * sinObliquity),
            Angle.Cos(longitudeDeg)
        );
        var declinationRad = Math.Asin(
            (Angle.Sin(latitudeDeg) * cosObliquity) + (Angle.Cos(latitudeDeg) * sinObliquity * Angle.Sin(longitudeDeg))
        );
        return (Angle.Turn(Angle.ToDeg(ascensionRad)), Angle.ToDeg(declinationRad));
    }

    private static (double LongitudeDeg, double ObliquityDeg) NutationDeg(double t)
    {
        // Elongation of the moon, anomalies of sun and moon, the moon's argument of latitude and its node.
        ReadOnlySpan<double> arguments =
        [
            Polynomial(t, 297.85036, 445267.111480, -0.0019142, 1 / 189474.0),
            Polynomial(t, 357.52772, 35999.050340, -0.0001603, -1 / 300000.0),
            Polynomial(t, 134.96298, 477198.867398, 0.0086972, 1 / 56250.0),
            Polynomial(t, 93.27191, 483202.017538, -0.0036825, 1 / 327270.0),
            Polynomial(t, 125.04452, -1934.136261, 0.0020708, 1 / 450000.0),
        ];
        var (longitude, obliquity) = (0.0, 0.0);
        foreach (var term in Nutation)
        {
            var argumentDeg = 0.0;
            for (var i = 0; i < arguments.Length; i++)
            {
                argumentDeg += term[i] * arguments[i];
            }

            longitude += (term[5] + (term[6] * t)) * Angle.Sin(argumentDeg);
            obliquity += (term[7] + (term[8] * t)) * Angle.Cos(argumentDeg);
        }

        return (longitude / 36_000_000, obliquity / 36_000_000);
    }

    private static double MeanObliquityArcSeconds(double u) =>
        Polynomial(u, 84381.448, -4680.93, -1.55, 1999.25, -51.38, -249.67, -39.05, 7.12, 27.87, 5.79, 2.45);

    private static double Polynomial(double x, params ReadOnlySpan<double> coefficients)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
        {
            sum = (sum * x) + coefficients[i];
        }

        return sum;
    }

    private static double Sum(IReadOnlyList<double[][]> series, double millennia)
    {
        var sum = 0.0;
        for (var power = series.Count - 1; power >= 0; power--)
        {
            var ofPower = 0.0;
            foreach (var term in series[power])
            {
                ofPower += term[0] * Math.Cos(term[1] + (term[2] * millennia));
            }

            sum = (sum * millennia) + ofPower;
        }

        return sum / 1e8;
    }

    private static double[][][] Series(string letter) =>
        [
            .. Enumerable
                .Range(0, 6)
                .Select(power => Terms[letter + (char)('0' + power)])
                .TakeWhile(rows => rows.Any())
                .Select(rows =>
                    rows.Select(row => new[] { row.Number("a"), row.Number("b"), row.Number("c") }).ToArray()
                ),
        ];
}
