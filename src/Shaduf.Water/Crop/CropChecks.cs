using Shaduf.Working;

namespace Shaduf.Water;

/// <summary>How the published rows of crops are computed.</summary>
internal static class CropChecks
{
    public static PublishedCheck[] All =>
        [
            .. Air,
            .. Moisture,
            .. Sun,
            .. Radiation,
            .. SoilHeat,
            .. Reference,
            .. Measured,
            .. ByTemperature,
            .. Crops,
            .. Fields,
        ];

    private static PublishedCheck[] Air =>
        [
            new("water/air-moisture", "pressure", row => AirMoisture.PressureKPa(row["elevationM"])),
            new(
                "water/air-moisture",
                "psychrometric",
                row => AirMoisture.PsychrometricKPaPerK(AirMoisture.PressureKPa(row["elevationM"]))
            ),
            new("water/air-moisture", "slope", row => AirMoisture.SlopeKPaPerK(row["airDegC"])),
            new(
                "water/air-moisture",
                "mean-saturation",
                row => AirMoisture.MeanSaturationKPa(row["highDegC"], row["lowDegC"])
            ),
        ];

    private static PublishedCheck[] Moisture =>
        [
            new(
                "water/air-moisture",
                "from-wet-bulb",
                row =>
                    AirMoisture.FromWetBulbKPa(
                        row["wetDegC"],
                        row["dryDegC"],
                        row["pressureKPa"],
                        row["instrumentPerK"]
                    )
            ),
            new("water/air-moisture", "from-humidity-range", VapourKPa),
        ];

    private static PublishedCheck[] Sun =>
        [
            new("water/field-radiation", "above-the-air", Above),
            new("water/field-radiation", "distance", row => FieldRadiation.DistanceFactor(Day(row))),
            new("water/field-radiation", "declination", row => FieldRadiation.DeclinationRad(Day(row))),
            new("water/field-radiation", "sunset", row => FieldRadiation.SunsetRad(row["latitudeDeg"], Day(row))),
            new("water/field-radiation", "daylight", Daylight),
            new("water/field-radiation", "from-sunshine", BySunshine),
            new("water/field-radiation", "from-swing", BySwing),
        ];

    private static PublishedCheck[] Radiation =>
        [
            new("water/field-radiation", "clear-sky", ClearSky),
            new("water/field-radiation", "short-wave", row => FieldRadiation.ShortWaveMJPerM2Day(row["sunMJPerM2Day"])),
            new(
                "water/field-radiation",
                "long-wave",
                row =>
                    FieldRadiation.LongWaveMJPerM2Day(
                        row["highDegC"],
                        row["lowDegC"],
                        row["vapourKPa"],
                        row["sunMJPerM2Day"] / row["clearMJPerM2Day"]
                    )
            ),
        ];

    private static PublishedCheck[] SoilHeat =>
        [
            new(
                "water/field-radiation",
                "soil-heat",
                row => FieldRadiation.SoilHeatMJPerM2Day(row["beforeDegC"], row["afterDegC"])
            ),
            // Eq. 44, the month after unknown: twice the coefficient on half the span.
            new(
                "water/field-radiation",
                "soil-heat-from-before",
                row => FieldRadiation.SoilHeatMJPerM2Day(row["beforeDegC"], (2 * row["monthDegC"]) - row["beforeDegC"])
            ),
        ];

    private static PublishedCheck[] Reference =>
        [
            new(
                "water/evapotranspiration",
                "penman-monteith-sunshine",
                row => PenmanMonteith(row, BySunshine(row), row["vapourKPa"], row["windMPerS"])
            ),
            new(
                "water/evapotranspiration",
                "penman-monteith-swing",
                row =>
                    PenmanMonteith(
                        row,
                        FieldRadiation.FromSwingMJPerM2Day(
                            Above(row),
                            row["highDegC"] - row["lowDegC"],
                            row["placeCoefficient"]
                        ),
                        AirMoisture.SaturationKPa(row["lowDegC"]),
                        row["windMPerS"]
                    )
            ),
        ];

    private static PublishedCheck[] Measured =>
        [
            new(
                "water/evapotranspiration",
                "penman-monteith-day",
                row =>
                    PenmanMonteith(
                        row,
                        row["sunMJPerM2Day"],
                        VapourKPa(row),
                        Evapotranspiration.WindAtTwoMetresMPerS(row["windAtTenMPerS"], 10)
                    )
            ),
        ];

    private static PublishedCheck[] ByTemperature =>
        [
            new(
                "water/evapotranspiration",
                "hargreaves",
                row =>
                    Evapotranspiration.HargreavesMmPerDay(
                        (row["highDegC"] + row["lowDegC"]) / 2,
                        row["highDegC"] - row["lowDegC"],
                        Above(row)
                    )
            ),
            new(
                "water/evapotranspiration",
                "hargreaves-given",
                row => Evapotranspiration.HargreavesMmPerDay(row["meanDegC"], row["swingK"], row["aboveMJPerM2Day"])
            ),
            new(
                "water/evapotranspiration",
                "wind-at-two-metres",
                row => Evapotranspiration.WindAtTwoMetresMPerS(row["speedMPerS"], row["heightM"])
            ),
        ];

    private static PublishedCheck[] Crops =>
        [
            new("water/effective-rain", "fao", row => EffectiveRain.FaoMmPerMonth(row["rainMmPerMonth"])),
            new("water/effective-rain", "scs", row => EffectiveRain.ScsMmPerMonth(row["rainMmPerMonth"])),
            new(
                "water/crop-curve",
                "full-leaf",
                row =>
                    new CropCurve("", 0, row["fullCoefficient"], 0, row["heightM"], [])
                        .ForClimate(row["windMPerS"], row["lowestPercent"])
                        .FullCoefficient
            ),
            new(
                "water/crop-curve",
                "on-day",
                row =>
                    new CropCurve(
                        "",
                        row["startCoefficient"],
                        row["fullCoefficient"],
                        row["endCoefficient"],
                        1,
                        [.. new[] { "start", "growth", "full", "late" }.Select(stage => (int)row[$"{stage}Days"])]
                    ).DayCoefficient(Day(row))
            ),
        ];

    private static PublishedCheck[] Fields =>
        [
            new(
                "water/crop-water",
                "gross",
                row => CropWater.GrossMmPerDay(row["netMmPerDay"], row["reachingShare"], row["leachingShare"])
            ),
            new("water/crop-water", "volume", row => CropWater.VolumeM3PerDay(row["grossMmPerDay"], row["areaM2"])),
            new("water/crop-water", "leaching", row => CropWater.LeachingShare(row["waterDSPerM"], row["soilDSPerM"])),
            new("water/crop-month", "crop", row => April(row).CropMmPerDay),
            new("water/crop-month", "net", row => April(row).NetMmPerDay),
        ];

    private static int Day(PublishedCase row) => (int)row["dayIndex"];

    private static double Above(PublishedCase row) =>
        FieldRadiation.AboveTheAirMJPerM2Day(row["latitudeDeg"], Day(row));

    private static double Daylight(PublishedCase row) => FieldRadiation.DaylightH(row["latitudeDeg"], Day(row));

    private static double BySunshine(PublishedCase row) =>
        FieldRadiation.FromSunshineMJPerM2Day(Above(row), row["sunshineH"], Daylight(row));

    private static double BySwing(PublishedCase row) =>
        FieldRadiation.FromSwingMJPerM2Day(Above(row), row["swingK"], row["placeCoefficient"]);

    private static double ClearSky(PublishedCase row) =>
        FieldRadiation.ClearSkyMJPerM2Day(Above(row), row["elevationM"]);

    private static double VapourKPa(PublishedCase row) =>
        AirMoisture.FromHumidityRangeKPa(row["highDegC"], row["lowDegC"], row["highestPercent"], row["lowestPercent"]);

    private static double PenmanMonteith(PublishedCase row, double sun, double vapourKPa, double windMPerS)
    {
        var (high, low) = (row["highDegC"], row["lowDegC"]);
        var clearness = Math.Clamp(sun / ClearSky(row), 0.25, 1);
        var net =
            FieldRadiation.ShortWaveMJPerM2Day(sun)
            - FieldRadiation.LongWaveMJPerM2Day(high, low, vapourKPa, clearness);
        var soil = row.Inputs.GetValueOrDefault("soilHeatMJPerM2Day");
        return Evapotranspiration.PenmanMonteithMmPerDay(
            high,
            low,
            vapourKPa,
            windMPerS,
            net - soil,
            row["elevationM"]
        );
    }

    // A crop in full leaf from the first of April to the end of the month.
    private static CropMonth April(PublishedCase row) =>
        CropMonth.Year(
            new("", 0, row["coefficient"], row["coefficient"], 1, [0, 0, 30, 0]),
            90,
            [.. Enumerable.Repeat(row["referenceMmPerDay"], 12)],
            [.. Enumerable.Repeat(row["rainMmPerMonth"], 12)]
        )[3];
}
