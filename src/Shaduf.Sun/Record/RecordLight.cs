namespace Shaduf.Sun;

/// <summary>The light of an hour of a record that passed the checks; a null waits to be filled.</summary>
/// <param name="GlobalWPerM2">Global irradiance [W/m2].</param>
/// <param name="Parts">Direct and diffuse; null to be split from the global irradiance.</param>
internal readonly record struct RecordLight(double? GlobalWPerM2, SplitIrradiance? Parts)
{
    private static readonly RecordLight Dark = new(0, default(SplitIrradiance));

    // Share of 50 W/m2 that the sum of the parts may be off at low sun.
    private const double LowClosureWPerM2 = 7.5;

    // No hour's mean comes near it, whatever the clouds throw in beside the sun.
    private const double MostWPerM2 = 2000;

    /// <summary>Holds an hour against what the sun allows.</summary>
    /// <param name="hour">The hour.</param>
    /// <param name="sun">The sun in it.</param>
    /// <param name="tell">Told everything that is found.</param>
    internal static RecordLight Of(RecordHour hour, SunlitHour sun, Action<RecordMatter> tell)
    {
        if (sun.LitShare == 0)
        {
            return OfNight(hour, tell);
        }

        var normalWPerM2 = sun.NormalWPerM2 / sun.LitShare;
        var zenithDeg = sun.Sun.ZenithDeg;
        var global = Possible(
            hour.GlobalWPerM2,
            Math.Min(MostWPerM2, RecordLimits.HighestGlobalWPerM2(zenithDeg, normalWPerM2)),
            RecordMatter.GlobalImpossible,
            tell
        );
        var direct = Possible(hour.DirectNormalWPerM2, normalWPerM2, RecordMatter.PartImpossible, tell);
        var diffuse = Possible(
            hour.DiffuseWPerM2,
            RecordLimits.HighestDiffuseWPerM2(zenithDeg, normalWPerM2),
            RecordMatter.PartImpossible,
            tell
        );
        SplitIrradiance? parts = direct is { } beam && diffuse is { } sky ? new(beam, sky) : null;
        return Joined(global, parts, sun, tell);
    }

    private static RecordLight OfNight(RecordHour hour, Action<RecordMatter> tell)
    {
        var most = new[] { hour.GlobalWPerM2, hour.DirectNormalWPerM2, hour.DiffuseWPerM2 }.Max(value =>
            Math.Abs(value ?? 0)
        );
        if (most > 0)
        {
            tell(most > RecordLimits.NightWPerM2 ? RecordMatter.NightLight : RecordMatter.NightGlow);
        }

        return Dark;
    }

    private static RecordLight Joined(double? global, SplitIrradiance? parts, SunlitHour sun, Action<RecordMatter> tell)
    {
        if (parts is not { } both)
        {
            tell(global is null ? RecordMatter.NoLight : RecordMatter.NoParts);
            return new(global, null);
        }

        var sum = both.DiffuseWPerM2 + (both.DirectNormalWPerM2 * Math.Max(0, Angle.Cos(sun.Sun.ZenithDeg)));
        var fits = both.DirectNormalWPerM2 <= sun.NormalWPerM2;
        if (global is not { } whole)
        {
            tell(fits ? RecordMatter.GlobalFromParts : RecordMatter.NoLight);
            return fits ? new(sum, parts) : default;
        }

        if (fits && Math.Abs(whole - sum) <= Closure(whole, sum, sun.Sun.ZenithDeg))
        {
            return new(whole, parts);
        }

        tell(RecordMatter.NotClosed);
        return new(whole, null);
    }

    private static double Closure(double global, double sum, double zenithDeg) =>
        global > RecordLimits.ClosureFromWPerM2 ? RecordLimits.ClosureShare(zenithDeg) * sum : LowClosureWPerM2;

    private static double? Possible(double? value, double highest, RecordMatter impossible, Action<RecordMatter> tell)
    {
        if (value is < 0 and >= RecordLimits.DriftWPerM2)
        {
            tell(RecordMatter.Drift);
            return 0;
        }

        if (value is null || (value >= 0 && value <= highest))
        {
            return value;
        }

        tell(impossible);
        return null;
    }
}
