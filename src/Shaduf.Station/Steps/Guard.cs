using Shaduf.Power;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>A pole beside the racks.</summary>
/// <param name="Place">Where it stands: x along the row from its left end, y from the low edge of the first rack [m].</param>
/// <param name="HeightM">Its top above ground [m].</param>
/// <param name="DiameterM">Its diameter [m].</param>
/// <param name="HasRod">Whether it is a lightning mast.</param>
/// <param name="HasLamp">Whether a lamp hangs on it.</param>
public sealed record GuardPole(GroundPlace Place, double HeightM, double DiameterM, bool HasRod, bool HasLamp);

/// <summary>Light, lightning, earth and fence.</summary>
/// <param name="Field">The racks on the ground.</param>
/// <param name="Light">Night light; null for none.</param>
/// <param name="Lightning">Lightning and its rods.</param>
/// <param name="Earth">Earth electrodes.</param>
/// <param name="Poles">Masts and light columns.</param>
/// <param name="NoonShadeM">How far a pole's shadow reaches onto the rack before it at noon, on the worst day [m]; 0 when it does not.</param>
/// <param name="WellheadM">Way from the drive to the wellhead, which is bonded too [m].</param>
/// <param name="Fence">The fence; null for none.</param>
/// <param name="Notes">What was chosen and why.</param>
public sealed record Guard(
    GuardField Field,
    GuardLight? Light,
    GuardLightning Lightning,
    GuardEarth Earth,
    IReadOnlyList<GuardPole> Poles,
    double NoonShadeM,
    double WellheadM,
    StationFence? Fence,
    IReadOnlyList<ChoiceNote> Notes
)
{
    /// <summary>The tallest light column, checked; null when no lamp needs a column of its own.</summary>
    public LightColumnStrength? ColumnStrength { get; init; }

    /// <summary>The lightning masts, all of one height, checked; null when there are none.</summary>
    public LightColumnStrength? MastStrength { get; init; }

    /// <summary>Light column and mast, as far as they stand.</summary>
    public IEnumerable<LightColumnStrength> PoleStrengths =>
        new[] { ColumnStrength, MastStrength }.OfType<LightColumnStrength>();

    /// <summary>How many poles of a kind stand.</summary>
    /// <param name="pole">Light column or mast.</param>
    public int CountOf(LightColumnStrength pole) => Poles.Count(each => each.HasRod == pole.IsMast);

    /// <summary>The tallest light column; null when no lamp needs a column of its own.</summary>
    public LightColumn? Column => ColumnStrength?.Column;

    private const double TropicDeg = 23.45;

    /// <summary>Sizes light, lightning rods, earth and fence.</summary>
    /// <param name="brief">The brief.</param>
    /// <param name="survey">Its settled figures.</param>
    /// <param name="sky">The sun of the year.</param>
    /// <param name="tank">The tank.</param>
    /// <param name="rack">The racks.</param>
    /// <param name="shelf">The cards.</param>
    /// <returns>The guard.</returns>
    public static Guard Of(Brief brief, Survey survey, Sky sky, TankCard tank, Rack rack, CardShelf shelf)
    {
        var field = GuardField.Of(rack);
        var light = brief.Guard.Light.Card is { } card
            ? GuardLight.Of(brief, survey, sky, field, shelf.Find<LightCard>(card)!)
            : null;
        var lightning = GuardLightning.Of(
            brief.Guard.Lightning,
            survey["flash-density"],
            field,
            light?.Lamps ?? [],
            [.. TankTop(brief, tank, field)]
        );
        var earth = GuardEarth.Of(brief.Guard.EarthRodCount, survey["soil-resistivity"], field, lightning);
        var column = ColumnOf(brief, survey, lightning, light);
        var mast = MastOf(brief, survey, lightning, light);
        var poles = PolesOf(lightning, light, column, mast);
        var fence = brief.Guard.Fence is { } asked
            ? StationFence.Of(
                asked,
                new(field, new(sky.Facing.AzimuthDeg, field.LengthM), rack.Setting.Ground),
                poles,
                brief.Rack.Workshop
            )
            : null;
        return new(
            field,
            light,
            lightning,
            earth,
            poles,
            NoonShadeOf(poles, field, brief.Site.LatitudeDeg, sky.Facing.AzimuthDeg),
            survey["motor-cable"],
            fence,
            [
                .. GuardNotes.Of(brief, light, lightning, earth),
                .. fence?.Notes ?? [],
                .. ColumnNotes(column),
                .. ColumnNotes(mast),
            ]
        )
        {
            ColumnStrength = column,
            MastStrength = mast,
        };
    }

    // The lightest column that holds the wind; lamps all hang at one height.
    private static LightColumnStrength? ColumnOf(
        Brief brief,
        Survey survey,
        GuardLightning lightning,
        GuardLight? light
    ) =>
        light?.Lamps.FirstOrDefault(lamp => !lightning.Rods.Contains(lamp.Place)) is { } lamp
            ? LightColumnStrength.Choose(
                new(
                    lamp.HeightM * 1000,
                    false,
                    LightSail.Of(light),
                    lamp.HeightM * 1000,
                    RackWind.Of(brief.Site, survey, lamp.HeightM * 1000)
                ),
                brief.Rack,
                brief.Site.National
            )
            : null;

    // Masts are all alike, so that each could carry a lamp where one does.
    private static LightColumnStrength? MastOf(
        Brief brief,
        Survey survey,
        GuardLightning lightning,
        GuardLight? light
    ) =>
        lightning.Rods.Count > 0
            ? LightColumnStrength.Choose(
                light?.Lamps.FirstOrDefault(lamp => lightning.Rods.Contains(lamp.Place)) is { } lamp
                    ? new(
                        lightning.RodM * 1000,
                        true,
                        LightSail.Of(light),
                        Math.Min(lamp.HeightM, lightning.RodM) * 1000,
                        RackWind.Of(brief.Site, survey, lightning.RodM * 1000)
                    )
                    : new(lightning.RodM * 1000, true, null, 0, RackWind.Of(brief.Site, survey, lightning.RodM * 1000)),
                brief.Rack,
                brief.Site.National
            )
            : null;

    private static IEnumerable<ChoiceNote> ColumnNotes(LightColumnStrength? column)
    {
        if (column is not null)
        {
            yield return new(
                column.Name,
                column.Column.Size.Name,
                column.Holds
                    ? Invariant(
                        $"the lightest of {LightColumnSize.All.Count} customary columns that holds {(column.Sail.AreaM2 > 0 ? "lamp, battery and charging module" : "its rod")} at {column.Wind.BasicMPerS:0.#} m/s"
                    )
                    : "the heaviest customary column, which does not hold"
            );
        }
    }

    // At noon the sun stands behind modules that face the equator only between the tropics, and high; behind others all
    // year, lowest in winter.
    private static double NoonShadeOf(
        IReadOnlyList<GuardPole> poles,
        GuardField field,
        double latitudeDeg,
        double azimuthDeg
    )
    {
        var fromEquatorDeg = Math.Abs(Math.IEEERemainder(azimuthDeg - (latitudeDeg >= 0 ? 180 : 0), 360));
        var facesIt = fromEquatorDeg < 90;
        var noonDeg = 90 - TropicDeg + (facesIt ? Math.Abs(latitudeDeg) : -Math.Abs(latitudeDeg));
        if (poles.Count == 0 || (facesIt && noonDeg >= 90))
        {
            return 0;
        }

        var overM = poles.Max(pole => pole.HeightM) - field.TopM;
        return Math.Max(0, (overM / Math.Tan(noonDeg * Math.PI / 180)) - GuardField.BehindM);
    }

    // A lamp hangs on the mast where it would stand beside it anyway.
    private static IReadOnlyList<GuardPole> PolesOf(
        GuardLightning lightning,
        GuardLight? light,
        LightColumnStrength? column,
        LightColumnStrength? mast
    )
    {
        IReadOnlyList<GuardPoint> lamps = light?.Lamps ?? [];
        return
        [
            .. lightning.Rods.Select(rod => new GuardPole(
                rod,
                lightning.RodM,
                mast!.Column.Size.DiameterMm / 1000,
                true,
                lamps.Any(lamp => lamp.Place == rod)
            )),
            .. lamps
                .Where(lamp => !lightning.Rods.Contains(lamp.Place))
                .Select(lamp => new GuardPole(
                    lamp.Place,
                    lamp.HeightM,
                    column!.Column.Size.DiameterMm / 1000,
                    false,
                    true
                )),
        ];
    }

    // The two edges of its roof that are farthest from the racks.
    private static IEnumerable<GuardPoint> TankTop(Brief brief, TankCard tank, GuardField field)
    {
        if (brief.Guard.Lightning.TankAwayM is not { } awayM)
        {
            yield break;
        }

        var topM = brief.Tank.StandM + tank.HeightM;
        var farM = field.LengthM + awayM + (tank.DiameterM / 2);
        yield return new("tank, top, side of the low edge", new(farM, (field.DepthM - tank.DiameterM) / 2), topM);
        yield return new("tank, top, side of the top edge", new(farM, (field.DepthM + tank.DiameterM) / 2), topM);
    }
}
