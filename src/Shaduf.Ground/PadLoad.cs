namespace Shaduf.Ground;

/// <summary>The part of a rectangular pad whose middle is under the load, and the load on it.</summary>
/// <param name="WidthM">Width of that part, B − 2 e_B [m].</param>
/// <param name="LengthM">Length of that part, L − 2 e_L [m].</param>
/// <param name="ForceKN">Force straight down [kN].</param>
/// <param name="AlongWidthKN">Side load along the width [kN].</param>
/// <param name="AlongLengthKN">Side load along the length [kN].</param>
public sealed record PadLoad(double WidthM, double LengthM, double ForceKN, double AlongWidthKN, double AlongLengthKN)
{
    /// <summary>Area of that part [m2].</summary>
    public double AreaM2 => WidthM * LengthM;

    /// <summary>Side load [kN].</summary>
    public double SideKN => Math.Sqrt((AlongWidthKN * AlongWidthKN) + (AlongLengthKN * AlongLengthKN));

    /// <summary>Short side to long side.</summary>
    public double SidesRatio => Math.Min(WidthM, LengthM) / Math.Max(WidthM, LengthM);

    /// <summary>The power m of the inclination factors, between its values for the two directions.</summary>
    /// <source>EN 1997-1:2004, annex D.4</source>
    internal double InclinationFactor
    {
        get
        {
            if (SideKN == 0)
            {
                return 1;
            }

            var (alongWidth, alongLength) = (Along(WidthM / LengthM), Along(LengthM / WidthM));
            var share = AlongLengthKN * AlongLengthKN / (SideKN * SideKN);
            return (alongLength * share) + (alongWidth * (1 - share));
        }
    }

    private static double Along(double ratio) => (2 + ratio) / (1 + ratio);
}
