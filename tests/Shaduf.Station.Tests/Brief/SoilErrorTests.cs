namespace Shaduf.Station.Tests;

/// <summary>Bad figures of the ground, and tests that cannot all be of the same ground, give one clear line.</summary>
public sealed class SoilErrorTests
{
    [Theory]
    [InlineData(
        "clay",
        "bearing: 0 kPa",
        "bearing: 0 kPa is out of range; 20 kPa to 1000 kPa, or 'unknown' is accepted"
    )]
    [InlineData(
        "clay",
        "undrained: 0 kPa",
        "undrained: 0 kPa is out of range; 10 kPa to 500 kPa, or 'unknown' is accepted"
    )]
    [InlineData(
        "sand",
        "frictionAngle: 60 deg",
        "frictionAngle: 60 deg is out of range; 20 deg to 45 deg, or 'unknown' is accepted"
    )]
    [InlineData(
        "sand",
        "thumb: firm",
        "thumb: a test of clay, and the soil is not clay; site.soil clay, or no such test, is accepted"
    )]
    [InlineData(
        "gravel",
        "undrained: 60 kPa",
        "undrained: a test of clay, and the soil is not clay; site.soil clay, or no such test, is accepted"
    )]
    [InlineData(
        "clay",
        "picket: 150 mm",
        "picket: a test of sand and gravel, and the soil is neither; site.soil sand or gravel, or no such test, is accepted"
    )]
    [InlineData(
        "clay",
        "cohesion: 5 kPa",
        "cohesion: no friction goes with it; cohesion with frictionAngle, or undrained, is accepted"
    )]
    [InlineData(
        "sand",
        "picket: 300 mm, frictionAngle: 40 deg",
        "picket: loose ground has no friction of 40 deg; at most 200 mm, or at most 34 deg, is accepted"
    )]
    [InlineData(
        "clay",
        "thumb: soft, undrained: 120 kPa",
        "thumb: clay of 120 kPa is not so under a thumb; 10 kPa to 60 kPa goes with that"
    )]
    [InlineData(
        "clay",
        "bearing: 400 kPa, undrained: 30 kPa",
        "bearing: clay of 30 kPa fails before it bears 400 kPa; at most 210 kPa goes with that"
    )]
    [InlineData("clay", "thumb: hard", "thumb: 'hard' is not one of the words; soft, firm, stiff, unknown is accepted")]
    public void A_bad_test_of_the_ground_is_told_at_its_place(string soil, string test, string expected)
    {
        using var scratch = new Scratch();
        var errors = scratch.Errors(
            Specimen.Brief.Replace("soil: clay", $"soil: {soil}\n  soilTest: {{ {test} }}", StringComparison.Ordinal)
        );
        var error = Assert.Single(errors);
        Assert.Contains($"site.soilTest.{expected}", error, StringComparison.Ordinal);
        Assert.StartsWith("20:", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_may_stand_at_the_surface_but_not_above_it()
    {
        using var scratch = new Scratch();
        Assert.Equal(0, scratch.Read(SurroundsTests.With("groundwater: 0 m")).Brief.Site.GroundwaterM);
        Assert.Contains(
            "site.groundwater: -1 m is out of range",
            Assert.Single(scratch.Errors(SurroundsTests.With("groundwater: -1 m"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Tests_that_agree_are_taken()
    {
        using var scratch = new Scratch();
        var site = scratch
            .Read(SurroundsTests.With("soilTest: { thumb: firm, undrained: 60 kPa, bearing: 110 kPa }"))
            .Brief.Site;
        Assert.Equal(
            (60.0, 110.0, ThumbTest.Firm),
            (site.SoilTest!.UndrainedKPa, site.SoilTest.BearingKPa, site.SoilTest.Thumb)
        );
    }
}
