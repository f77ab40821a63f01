using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace Shaduf.Station;

/// <summary>One way of writing a unit, and how a number in it becomes the measure's own unit.</summary>
/// <param name="Spelling">As people write it; case matters.</param>
/// <param name="ToOwn">Number in this unit to number in the measure's own unit.</param>
internal sealed record UnitSpelling(string Spelling, Func<double, double> ToOwn);

/// <summary>
/// A kind of quantity that a field accepts: the units people may write and the one unit the program keeps. The table
/// also writes the error text and the schema's pattern. Conversions are UnitsNet's; its own parser is not used (it
/// takes '1,5 m' for 15 m).
/// </summary>
/// <param name="Name">What it is: 'length'.</param>
/// <param name="OwnUnit">The unit kept in memory, as shown to people.</param>
/// <param name="Units">The spellings accepted; the first is the usual one.</param>
internal sealed partial record Measure(string Name, string OwnUnit, IReadOnlyList<UnitSpelling> Units)
{
    // Beyond it conversions could overflow; no field accepts as much.
    private const double LargestNumber = 1e15;

    /// <summary>Length, kept in metres.</summary>
    public static Measure LengthM { get; } =
        new(
            "length",
            "m",
            [
                new("m", x => x),
                new("mm", x => Length.FromMillimeters(x).Meters),
                new("cm", x => Length.FromCentimeters(x).Meters),
                new("km", x => Length.FromKilometers(x).Meters),
                new("ft", x => Length.FromFeet(x).Meters),
                new("in", x => Length.FromInches(x).Meters),
            ]
        );

    /// <summary>Small length, kept in millimetres.</summary>
    public static Measure LengthMm { get; } =
        new(
            "length",
            "mm",
            [
                new("mm", x => x),
                new("cm", x => Length.FromCentimeters(x).Millimeters),
                new("m", x => Length.FromMeters(x).Millimeters),
                new("in", x => Length.FromInches(x).Millimeters),
                new("ft", x => Length.FromFeet(x).Millimeters),
            ]
        );

    /// <summary>Angle, kept in degrees.</summary>
    public static Measure AngleDeg { get; } = new("angle", "deg", [new("deg", x => x), new("°", x => x)]);

    /// <summary>Latitude or longitude, kept in degrees; the one measure that also takes a bare number.</summary>
    public static Measure PositionDeg { get; } =
        new("position", "deg", [new("deg", x => x), new("°", x => x), new("", x => x)]);

    /// <summary>Flow, kept in cubic metres an hour.</summary>
    public static Measure FlowM3PerH { get; } =
        new(
            "flow",
            "m3/h",
            [
                new("m3/h", x => x),
                new("m³/h", x => x),
                new("L/s", x => VolumeFlow.FromLitersPerSecond(x).CubicMetersPerHour),
                new("l/s", x => VolumeFlow.FromLitersPerSecond(x).CubicMetersPerHour),
                new("L/min", x => VolumeFlow.FromLitersPerMinute(x).CubicMetersPerHour),
                new("l/min", x => VolumeFlow.FromLitersPerMinute(x).CubicMetersPerHour),
                new("m3/d", x => VolumeFlow.FromCubicMetersPerDay(x).CubicMetersPerHour),
                new("m³/d", x => VolumeFlow.FromCubicMetersPerDay(x).CubicMetersPerHour),
                new("gpm", x => VolumeFlow.FromUsGallonsPerMinute(x).CubicMetersPerHour),
            ]
        );

    /// <summary>Water for one head a day, kept in litres a day.</summary>
    public static Measure LitresPerDay { get; } =
        new(
            "water a day",
            "L/d",
            [
                new("L/d", x => x),
                new("l/d", x => x),
                new("L/day", x => x),
                new("m3/d", x => Volume.FromCubicMeters(x).Liters),
                new("m³/d", x => Volume.FromCubicMeters(x).Liters),
                new("gal/d", x => Volume.FromUsGallons(x).Liters),
            ]
        );

    /// <summary>Volume, kept in cubic metres.</summary>
    public static Measure VolumeM3 { get; } =
        new(
            "volume",
            "m3",
            [
                new("m3", x => x),
                new("m³", x => x),
                new("L", x => Volume.FromLiters(x).CubicMeters),
                new("l", x => Volume.FromLiters(x).CubicMeters),
                new("gal", x => Volume.FromUsGallons(x).CubicMeters),
            ]
        );

    /// <summary>Area, kept in square metres.</summary>
    public static Measure AreaM2 { get; } =
        new(
            "area",
            "m2",
            [
                new("m2", x => x),
                new("m²", x => x),
                new("ha", x => Area.FromHectares(x).SquareMeters),
                new("acre", x => Area.FromAcres(x).SquareMeters),
            ]
        );

    /// <summary>Sun on the level, kept in kilowatt hours a square metre a day.</summary>
    public static Measure SunKWhPerM2Day { get; } =
        new(
            "daily sun",
            "kWh/m2/d",
            [
                new("kWh/m2/d", x => x),
                new("kWh/m²/d", x => x),
                new("kWh/m2/day", x => x),
                new("MJ/m2/d", x => Energy.FromMegajoules(x).KilowattHours),
                new("MJ/m²/d", x => Energy.FromMegajoules(x).KilowattHours),
            ]
        );

    /// <summary>Depth of water a day, kept in millimetres a day.</summary>
    public static Measure MmPerDay { get; } = new("depth a day", "mm/d", [new("mm/d", x => x), new("mm/day", x => x)]);

    /// <summary>Temperature, kept in degrees Celsius.</summary>
    public static Measure TemperatureDegC { get; } =
        new(
            "temperature",
            "degC",
            [
                new("degC", x => x),
                new("°C", x => x),
                new("C", x => x),
                new("degF", x => Temperature.FromDegreesFahrenheit(x).DegreesCelsius),
                new("°F", x => Temperature.FromDegreesFahrenheit(x).DegreesCelsius),
            ]
        );

    /// <summary>Speed, kept in metres a second.</summary>
    public static Measure SpeedMPerS { get; } =
        new(
            "speed",
            "m/s",
            [
                new("m/s", x => x),
                new("km/h", x => Speed.FromKilometersPerHour(x).MetersPerSecond),
                new("mph", x => Speed.FromMilesPerHour(x).MetersPerSecond),
                new("kn", x => Speed.FromKnots(x).MetersPerSecond),
            ]
        );

    /// <summary>Short time, kept in seconds.</summary>
    public static Measure TimeS { get; } =
        new("time", "s", [new("s", x => x), new("min", x => x * 60), new("h", x => x * 3600)]);

    /// <summary>Time of day or offset, kept in hours.</summary>
    public static Measure TimeH { get; } = new("time", "h", [new("h", x => x), new("min", x => x / 60)]);

    /// <summary>Long time, kept in years.</summary>
    public static Measure TimeYears { get; } =
        new("time", "years", [new("years", x => x), new("year", x => x), new("yr", x => x)]);

    /// <summary>Time, kept in days.</summary>
    public static Measure TimeDays { get; } =
        new("time", "days", [new("days", x => x), new("day", x => x), new("d", x => x)]);

    /// <summary>Share of a whole, kept as a ratio.</summary>
    public static Measure Share { get; } = new("share", "%", [new("%", x => x / 100)]);

    /// <summary>Share a year, kept as a ratio a year.</summary>
    public static Measure SharePerYear { get; } =
        new("share a year", "%/year", [new("%/year", x => x / 100), new("%/yr", x => x / 100), new("%", x => x / 100)]);

    /// <summary>Temperature coefficient, kept as a ratio per kelvin.</summary>
    public static Measure SharePerK { get; } =
        new("temperature coefficient", "%/K", [new("%/K", x => x / 100), new("%/°C", x => x / 100)]);

    /// <summary>Power, kept in watts.</summary>
    public static Measure PowerW { get; } =
        new(
            "power",
            "W",
            [
                new("W", x => x),
                new("kW", x => (double)UnitsNet.Power.FromKilowatts(x).Watts),
                new("hp", x => (double)UnitsNet.Power.FromMechanicalHorsepower(x).Watts),
            ]
        );

    /// <summary>Voltage, kept in volts.</summary>
    public static Measure VoltageV { get; } = new("voltage", "V", [new("V", x => x)]);

    /// <summary>Impulse voltage, kept in kilovolts.</summary>
    public static Measure ImpulseKV { get; } = new("impulse voltage", "kV", [new("kV", x => x)]);

    /// <summary>Surge current, kept in kiloamperes.</summary>
    public static Measure CurrentKA { get; } = new("surge current", "kA", [new("kA", x => x)]);

    /// <summary>Rise time, kept in microseconds.</summary>
    public static Measure TimeUs { get; } = new("rise time", "us", [new("us", x => x), new("µs", x => x)]);

    /// <summary>Current, kept in amperes.</summary>
    public static Measure CurrentA { get; } = new("current", "A", [new("A", x => x)]);

    /// <summary>Frequency, kept in hertz.</summary>
    public static Measure FrequencyHz { get; } = new("frequency", "Hz", [new("Hz", x => x)]);

    /// <summary>Mass, kept in kilograms.</summary>
    public static Measure MassKg { get; } =
        new("mass", "kg", [new("kg", x => x), new("t", x => x * 1000), new("lb", x => Mass.FromPounds(x).Kilograms)]);

    /// <summary>Pressure, kept in bar.</summary>
    public static Measure PressureBar { get; } =
        new("pressure", "bar", [new("bar", x => x), new("kPa", x => x / 100), new("MPa", x => x * 10)]);

    /// <summary>Pressure of wind and snow, kept in pascals.</summary>
    public static Measure PressurePa { get; } =
        new("pressure", "Pa", [new("Pa", x => x), new("kPa", x => x * 1000), new("kN/m2", x => x * 1000)]);

    /// <summary>Weight of ground, kept in kilonewtons per cubic metre.</summary>
    public static Measure WeightKNPerM3 { get; } =
        new("weight", "kN/m3", [new("kN/m3", x => x), new("kN/m³", x => x), new("kg/m3", x => x * 9.80665e-3)]);

    /// <summary>Pressure on and strength of ground, kept in kilopascals.</summary>
    public static Measure GroundKPa { get; } =
        new("pressure", "kPa", [new("kPa", x => x), new("kN/m2", x => x), new("N/mm2", x => x * 1000)]);

    /// <summary>Cross-section of a conductor, kept in square millimetres.</summary>
    public static Measure SizeMm2 { get; } = new("cross-section", "mm2", [new("mm2", x => x), new("mm²", x => x)]);

    /// <summary>Soil resistivity, kept in ohm metres.</summary>
    public static Measure ResistivityOhmM { get; } =
        new("resistivity", "ohm m", [new("ohm m", x => x), new("Ω m", x => x)]);

    /// <summary>Light, kept in lumens.</summary>
    public static Measure LightLm { get; } = new("light", "lm", [new("lm", x => x)]);

    /// <summary>Light falling on a surface, kept in lux.</summary>
    public static Measure IlluminanceLux { get; } = new("illuminance", "lx", [new("lx", x => x), new("lux", x => x)]);

    /// <summary>Light in a direction, kept in candela.</summary>
    public static Measure IntensityCd { get; } = new("light in a direction", "cd", [new("cd", x => x)]);

    /// <summary>Light on a plane as power, kept in watts per square metre.</summary>
    public static Measure LightWPerM2 { get; } =
        new("light", "W/m2", [new("W/m2", x => x), new("W/m²", x => x), new("kW/m2", x => x * 1000)]);

    /// <summary>Resistance, kept in ohms.</summary>
    public static Measure ResistanceOhm { get; } =
        new("resistance", "ohm", [new("ohm", x => x), new("Ω", x => x), new("kohm", x => x * 1000)]);

    /// <summary>Resistance of insulation, kept in megohms.</summary>
    public static Measure ResistanceMohm { get; } =
        new(
            "resistance",
            "Mohm",
            [new("Mohm", x => x), new("MΩ", x => x), new("kohm", x => x / 1000), new("Gohm", x => x * 1000)]
        );

    /// <summary>Lightning flashes to ground, kept per square kilometre and year.</summary>
    public static Measure FlashesPerKm2Year { get; } =
        new(
            "flash density",
            "/km2/year",
            [new("/km2/year", x => x), new("/km²/year", x => x), new("flashes/km2/year", x => x)]
        );

    /// <summary>Energy, kept in watt hours.</summary>
    public static Measure EnergyWh { get; } = new("energy", "Wh", [new("Wh", x => x), new("kWh", x => x * 1000)]);

    /// <summary>Elastic modulus, kept in gigapascals.</summary>
    public static Measure ModulusGPa { get; } = new("modulus", "GPa", [new("GPa", x => x)]);

    /// <summary>Density, kept in kilograms per cubic metre.</summary>
    public static Measure DensityKgPerM3 { get; } =
        new("density", "kg/m3", [new("kg/m3", x => x), new("kg/m³", x => x)]);

    /// <summary>A number without a unit: money in the price book's currency.</summary>
    public static Measure Plain { get; } = new("number", "", [new("", x => x)]);

    /// <summary>Whether a number without a unit is taken.</summary>
    public bool TakesBareNumbers => Units.Any(unit => unit.Spelling.Length == 0);

    /// <summary>The spellings accepted, for an error.</summary>
    public string Accepted =>
        string.Join(", ", Units.Where(unit => unit.Spelling.Length > 0).Select(unit => unit.Spelling));

    /// <summary>A regular expression of the form that is accepted, for the schema.</summary>
    public string Pattern
    {
        get
        {
            // Regex.Escape would also escape the space, which the schema's dialect does not know.
            var spellings = Units.Select(unit => unit.Spelling.Replace("/", @"\/", StringComparison.Ordinal));
            return $@"^[-+]?\d+(\.\d+)?([eE][-+]?\d+)?\s*({string.Join('|', spellings)})$";
        }
    }

    /// <summary>Reads a number with its unit.</summary>
    /// <param name="text">As written: <c>38 m</c>.</param>
    /// <param name="value">The number in the measure's own unit; NaN when it could not be read.</param>
    /// <param name="problem">What is wrong; empty when nothing is.</param>
    /// <returns>Whether it could be read.</returns>
    public bool TryRead(string text, out double value, out string problem)
    {
        value = double.NaN;
        var parts = NumberAndUnit().Match(text);
        if (!parts.Success)
        {
            problem = $"'{text}' is not a number with a unit";
            return false;
        }

        var digits = parts.Groups["number"].Value;
        var unit = parts.Groups["unit"].Value;
        if (digits.Contains(',', StringComparison.Ordinal))
        {
            problem = $"'{text}' has a comma: write the decimal mark as a point, and no thousands mark";
            return false;
        }

        if (
            !double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            || !(Math.Abs(number) <= LargestNumber)
        )
        {
            problem = $"'{digits}' is not a number that can be meant";
            return false;
        }

        var spelling = Units.FirstOrDefault(candidate => candidate.Spelling == unit);
        if (spelling is null)
        {
            problem = unit.Length == 0 ? $"'{text}' has no unit" : $"'{unit}' is not a unit of {Name} here";
            return false;
        }

        value = spelling.ToOwn(number);
        problem = "";
        return true;
    }

    /// <summary>A value in the measure's own unit, as people read it.</summary>
    /// <param name="own">Number in the unit kept in memory (shares and coefficients as ratios).</param>
    /// <returns>Number and unit.</returns>
    public string Format(double own)
    {
        var shown = OwnUnit.StartsWith('%') ? own * 100 : own;
        return string.Create(CultureInfo.InvariantCulture, $"{shown:0.####} {OwnUnit}").TrimEnd();
    }

    [GeneratedRegex(@"^(?<number>[-+]?[\d.,]+(?:[eE][-+]?\d+)?)\s*(?<unit>.*)$", RegexOptions.ExplicitCapture, 500)]
    private static partial Regex NumberAndUnit();
}
