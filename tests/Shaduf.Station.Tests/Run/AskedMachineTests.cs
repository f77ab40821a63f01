namespace Shaduf.Station.Tests;

/// <summary>A pump, a drive and an array that the brief asks for are taken, or refused in plain words.</summary>
public sealed class AskedMachineTests
{
    [Fact]
    public void The_machines_that_are_asked_for_are_taken()
    {
        var free = Design(("lift", "pump", "lift-4x60"));
        Assert.Equal("lift-4x60", free.Choice.Pump.Name);
        Assert.Contains(free.Notes, note => note is { What: "pump", Why: "asked for in the brief" });
        var choice = free.Choice;
        var asked = Design(
            ("lift", "pump", choice.Pump.Name),
            ("lift", "drive", choice.Drive.Name),
            ("array", "module", choice.Module.Name),
            ("array", "inSeries", $"{choice.SeriesCount + 1}"),
            ("array", "strings", "1")
        );
        Assert.Equal((choice.SeriesCount + 1, 1), (asked.Choice.SeriesCount, asked.Choice.StringCount));
        Assert.Equal(choice.Drive, asked.Choice.Drive);
    }

    [Theory]
    [InlineData("lift", "pump", "lift-4x66", "lift.pump", "did you mean 'lift-4x60'")]
    [InlineData("lift", "drive", "drive-401-10", "lift.drive", "did you mean 'drive-400-10'")]
    [InlineData("array", "inSeries", "0", "array.inSeries", "1 to 100")]
    [InlineData("array", "strings", "201", "array.strings", "1 to 200")]
    public void What_is_on_no_card_or_out_of_range_is_told(
        string part,
        string field,
        string value,
        string at,
        string accepted
    )
    {
        var bad = Assert.Throws<BadInputException>(() => Design((part, field, value)));
        Assert.Contains(
            bad.Errors,
            error => error.Field == at && error.Accepted.Contains(accepted, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_drive_that_does_not_turn_the_asked_pump_is_refused()
    {
        var bad = Assert.Throws<BadInputException>(() =>
            Design(("lift", "pump", "lift-4x60"), ("lift", "drive", "drive-dc-12"))
        );
        Assert.Contains(
            bad.Errors,
            error =>
                error.Field == "lift.drive"
                && error.Problem.Contains("drive for the motor of lift-4x60", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("100", "1", "the brief asks for 100 in a string")]
    [InlineData("1", "1", "the brief asks for 1 in a string")]
    [InlineData("choose", "200", "the brief asks for 200")]
    public void An_array_that_no_drive_takes_is_shown_as_near_as_can_be_with_its_limit(
        string series,
        string strings,
        string says
    )
    {
        var design = Design(("array", "inSeries", series), ("array", "strings", strings));
        Assert.NotNull(design.Sizing.Limit);
        Assert.Contains(says, design.Sizing.Limit.Says, StringComparison.Ordinal);
        Sound.Assert(design);
    }

    private static Design Design(params (string Part, string Field, string Value)[] asked)
    {
        using var scratch = new Scratch();
        var brief = SmallStation.OfFreeChoice();
        foreach (var (part, field, value) in asked)
        {
            brief[part]![field] = int.TryParse(value, System.Globalization.CultureInfo.InvariantCulture, out var number)
                ? number
                : value;
        }

        return DesignRun.Run(scratch.Read(brief.ToJsonString()));
    }
}
