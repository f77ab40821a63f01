namespace Shaduf.Station;

/// <summary>How far a thumb goes into clay.</summary>
public enum ThumbTest
{
    /// <summary>In easily.</summary>
    Soft,

    /// <summary>In with a firm push.</summary>
    Firm,

    /// <summary>Hardly a mark.</summary>
    Stiff,
}

/// <summary>What was tested in the pit at the depth of the footings; a null was not.</summary>
public sealed record SoilTestBrief
{
    /// <summary>Angle of friction [°].</summary>
    public double? FrictionDeg { get; init; }

    /// <summary>Cohesion that goes with the friction [kPa].</summary>
    public double? CohesionKPa { get; init; }

    /// <summary>Undrained strength of clay [kPa].</summary>
    public double? UndrainedKPa { get; init; }

    /// <summary>Weight of the moist ground [kN/m3].</summary>
    public double? WeightKNPerM3 { get; init; }

    /// <summary>Allowable pressure that a soil report gives [kPa].</summary>
    public double? BearingKPa { get; init; }

    /// <summary>Thumb on clay.</summary>
    public ThumbTest? Thumb { get; init; }

    /// <summary>How deep a man pushes a pointed picket of 50 mm into sand or gravel [mm].</summary>
    public double? PicketMm { get; init; }
}
