namespace Shaduf.Station;

/// <summary>
/// The choice as it stands, held while a person tries other figures: a brief whose open choices are filled in from a
/// design. What a pin leaves open is settled by rule or costs little: pipes, footings, cables, light, earth.
/// </summary>
/// <param name="Choice">What lifts the water.</param>
/// <param name="Rack">The steel under the modules.</param>
/// <param name="StandM">Height of the tank's floor above ground [m], 0 to 12.</param>
public sealed record Pin(Choice Choice, Rack Rack, double StandM)
{
    /// <summary>Holds what a design chose.</summary>
    /// <param name="design">The design.</param>
    /// <returns>The pin.</returns>
    public static Pin Of(Design design) => new(design.Choice, design.Works.Rack, design.Brief.Tank.StandM);

    /// <summary>A brief with its open choices filled in; what it says itself stays.</summary>
    /// <param name="brief">The brief.</param>
    /// <returns>The pinned brief.</returns>
    public Brief On(Brief brief) =>
        brief with
        {
            Lift = brief.Lift with
            {
                Pump = brief.Lift.Pump ?? Choice.Pump.Name,
                Drive = brief.Lift.Drive ?? (IsPumpKept(brief) ? Choice.Drive.Name : null),
            },
            Array = brief.Array with
            {
                Module = brief.Array.Module ?? Choice.Module.Name,
                SeriesCount = brief.Array.SeriesCount ?? Choice.SeriesCount,
                StringCount = brief.Array.StringCount ?? Choice.StringCount,
                TiltDeg = brief.Array.TiltDeg ?? Choice.Facing.TiltDeg,
                AzimuthDeg = brief.Array.AzimuthDeg ?? Choice.Facing.AzimuthDeg,
            },
            Tank = brief.Tank with
            {
                Card = brief.Tank.Card ?? Choice.Tank.Name,
                Count = brief.Tank.Count ?? Choice.TankCount,
                GivenStandM = brief.Tank.GivenStandM ?? StandM,
            },
            Rack = On(brief.Rack),
        };

    // A drive turns one kind of motor: with another pump it is chosen anew.
    private bool IsPumpKept(Brief brief) => (brief.Lift.Pump ?? Choice.Pump.Name) == Choice.Pump.Name;

    private RackBrief On(RackBrief rack)
    {
        if (rack.Type != Rack.Form.Type)
        {
            return rack;
        }

        var bearer = Rack.Sections.Angle.Name;
        return rack with
        {
            Rows = rack.Rows ?? Choice.Grid.Rows,
            Columns = rack.Columns ?? Choice.Grid.Columns,
            Lines = rack.Lines ?? Rack.Form.Lines,
            Tubes = rack.Tubes ?? Rack.Form.TubeCount,
            Tube = rack.Tube ?? Rack.Sections.Tube.Name,
            Column = rack.Column ?? Rack.Sections.Column.Name,
            Angle = rack.Type == RackType.SlideIn ? rack.Angle ?? bearer : rack.Angle,
            Rail = rack.Type == RackType.ClampedRails ? rack.Rail ?? bearer : rack.Rail,
        };
    }
}
