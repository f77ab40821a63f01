namespace Shaduf.Station.Tests;

/// <summary>Skyline and things near are read, and what cannot be is told in one line.</summary>
public sealed class SurroundsTests
{
    [Theory]
    [InlineData(
        "horizon: [{ azimuth: 0 deg, elevation: 3 deg }, { azimuth: 360 deg, elevation: 3 deg }]",
        "360 deg stands twice"
    )]
    [InlineData(
        "horizon: [{ azimuth: 90 deg, elevation: 85 deg }]",
        "85 deg is out of range; 0 deg to 80 deg is accepted"
    )]
    [InlineData(
        "near: [{ name: tree, bearing: 90 deg, distance: 9 m, height: 5 m }]",
        "missing; height and width of everything but the 'tank' are needed"
    )]
    [InlineData(
        "near: [{ name: tree, bearing: 90 deg, distance: 0.2 m, height: 5 m, width: 2 m }]",
        "0.2 m is out of range; 1 m to 500 m is accepted"
    )]
    [InlineData(
        "near: [{ name: roof, bearing: 90 deg, distance: 9 m, bottom: 6 m, height: 5 m, width: 2 m }]",
        "6 m is not below the top; less than 5 m is accepted"
    )]
    [InlineData(
        "places: [{ name: source, bearing: 9 deg, distance: 9 m }, { name: source, bearing: 9 deg, distance: 8 m }]",
        "stands twice; each name once is accepted"
    )]
    [InlineData("places: [{ name: pump, bearing: 9 deg, distance: 9 m }]", "'pump' is not one of the words")]
    [InlineData(
        "places: [{ name: tank, bearing: 9 deg, distance: 0 m }]",
        "0 m is out of range; 1 m to 5000 m is accepted"
    )]
    public void What_cannot_be_is_told(string field, string says)
    {
        using var scratch = new Scratch();
        var error = Assert.Single(scratch.Errors(With(field)));
        Assert.Contains(says, error, StringComparison.Ordinal);
        Assert.StartsWith("21:", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_takes_the_default_and_is_listed()
    {
        using var scratch = new Scratch();
        var brief = scratch.Read(With("horizon: unknown")).Brief;
        Assert.Equal(
            ["horizon", "near"],
            Survey.Of(brief).Assumptions.Select(each => each.Id).Intersect(["horizon", "near"])
        );
        var told = scratch.Read(With("horizon: [{ azimuth: 0 deg, elevation: 0 deg }]")).Brief;
        Assert.DoesNotContain(Survey.Of(told).Assumptions, each => each.Id == "horizon");
    }

    internal static string With(string field) =>
        Specimen.Brief.Replace(
            "  soilResistivity: unknown\n",
            $"  soilResistivity: unknown\n  {field}\n",
            StringComparison.Ordinal
        );
}
