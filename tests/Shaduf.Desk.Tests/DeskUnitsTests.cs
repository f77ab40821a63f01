namespace Shaduf.Desk.Tests;

public sealed class DeskUnitsTests
{
    [Theory]
    [InlineData("38 m", "124.7 ft")]
    [InlineData("25 degC", "77 degF")]
    [InlineData("-40 degC", "-40 degF")]
    [InlineData("6.5 m3/h", "28.62 gpm")]
    [InlineData("20 L/d", "5.283 gal/d")]
    [InlineData("0 m", "0 ft")]
    [InlineData("choose", "choose")]
    [InlineData("450 W", "450 W")]
    [InlineData("38m", "38m")]
    [InlineData("a field of 3 m", "a field of 3 m")]
    [InlineData(null, null)]
    public void In_us_units_a_value_of_the_brief_is_shown_converted(string? value, string? shown)
    {
        var units = new DeskUnits();
        Assert.Equal(value, units.Shown(value));
        units.Turn(us: true);
        Assert.Equal(shown, units.Shown(value));
    }

    [Fact]
    public void What_was_typed_in_feet_is_shown_in_metres_to_who_reads_metres() =>
        Assert.Equal("30.48 m", new DeskUnits().Shown("100 ft"));

    [Fact]
    public void Figures_of_the_design_follow()
    {
        var units = new DeskUnits();
        Assert.Equal("31.9 m³/d", units.Figure(31.94, "m3/d", 1));
        units.Turn(us: true);
        Assert.Equal("8438 gal/d", units.Figure(31.94, "m3/d", 1));
        Assert.Equal("5.10 kWh/m²/d", units.Figure(5.1, "kWh/m2/d", 2));
    }
}
