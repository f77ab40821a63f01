namespace Shaduf.Station;

/// <summary>What the cost over the years is reckoned with.</summary>
/// <param name="Years">Years looked at.</param>
/// <param name="DiscountPerYear">Real rate: interest with inflation taken out [1/year].</param>
/// <param name="FuelRisePerYear">Rise of the price of diesel beyond inflation [1/year].</param>
/// <param name="PumpYears">How long a pump lasts [years].</param>
/// <param name="DriveYears">How long a drive lasts [years].</param>
/// <param name="CareShare">Care of the solar part each year, as a share of its price.</param>
public sealed record LifeBrief(
    double? Years,
    double? DiscountPerYear,
    double? FuelRisePerYear,
    double? PumpYears,
    double? DriveYears,
    double? CareShare
)
{
    /// <summary>Reads the mapping <c>money.life</c>.</summary>
    /// <param name="fields">The mapping; null when there is none.</param>
    /// <returns>What it says.</returns>
    internal static LifeBrief Read(FieldMap? fields)
    {
        var life = new LifeBrief(
            fields?.Known("years", Measure.TimeYears, 5, 40, "Years over which solar and diesel are compared."),
            fields?.Known("discount", Measure.SharePerYear, 0, 0.3, "Real rate: interest with inflation taken out."),
            fields?.Known(
                "fuelRise",
                Measure.SharePerYear,
                -0.05,
                0.2,
                "Rise of the price of diesel beyond inflation."
            ),
            fields?.Known("pump", Measure.TimeYears, 1, 30, "How long a pump lasts in this water."),
            fields?.Known("drive", Measure.TimeYears, 1, 30, "How long a drive lasts."),
            fields?.Known("care", Measure.Share, 0, 0.2, "Care of the solar part in a year, as a share of its price.")
        );
        fields?.Done();
        return life;
    }
}
