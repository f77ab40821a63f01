using Shaduf.Steel;

namespace Shaduf.Station.Tests;

/// <summary>A country's annex sets factors; what it leaves is recommended.</summary>
public sealed class NationalChoicesTests
{
    private const string Annex = """
          national:
            name: annex of Karenga, 2019
            permanent: 1.2
            variable: 1.4
            leastWeight: 1
            windBeside: 0.5
            snowBeside: 0.7
            air: 1.1 kg/m3
            section: 1.1
            buckling: 1.1
            joint: 1.3
            tubeJoint: 1.1
            concrete: 1.6
            lasting: 0.8

        """;

    [Fact]
    public void What_a_brief_leaves_out_is_recommended() =>
        Assert.Equal(NationalChoices.Recommended, SmallDesign.File().Brief.Site.National);

    [Fact]
    public void An_annex_is_read_as_it_is_written()
    {
        using var scratch = new Scratch();
        var brief = scratch
            .Read(Specimen.Brief.Replace("\nsite:\n", "\nsite:\n" + Annex, StringComparison.Ordinal))
            .Brief;
        var expected = new NationalChoices("annex of Karenga, 2019", 1.2, 1.4, 1, 0.5, 0.7, 1.1)
        {
            Steel = new(1.1, 1.1, 1.3, 1.1, 1.6, 0.8),
        };
        Assert.Equal(expected, brief.Site.National);
    }

    [Fact]
    public void Weaker_factors_use_the_rack_more_and_thinner_air_less()
    {
        var usual = Strength(NationalChoices.Recommended);
        var weak = Strength(new() { Steel = new(SectionFactor: 1.1, BucklingFactor: 1.1, JointFactor: 1.5) });
        var thin = Strength(new(AirKgPerM3: 1.0));
        var light = Strength(new(VariableFactor: 1.2));
        Assert.True(Most(weak) > Most(usual));
        Assert.True(weak.Joints.Max(use => use.RequiredLegMm) > usual.Joints.Max(use => use.RequiredLegMm));
        Assert.Equal(0.8, thin.Wind.PeakKNPerM2 / usual.Wind.PeakKNPerM2, 1e-9);
        Assert.True(Most(light) < Most(usual));
        Assert.True(light.SteelStopsMPerS() > usual.SteelStopsMPerS());
    }

    [Fact]
    public void Combinations_are_named_by_the_factors_that_they_have()
    {
        var names = Strength(new(PermanentFactor: 1.2, VariableFactor: 1.4, LeastWeightFactor: 1)).Combinations
            is { } all
            ? all.Strength.Concat(all.Ground).Select(each => each.Name).ToList()
            : [];
        Assert.Contains(names, name => name.StartsWith("1.2 G + 1.4 W", StringComparison.Ordinal));
        Assert.Contains(names, name => name.StartsWith("1 G + 1.4 W", StringComparison.Ordinal));
        Assert.DoesNotContain(names, name => name.Contains("1.5 W", StringComparison.Ordinal));
    }

    private static double Most(RackStrength strength) => strength.Members.Max(use => use.Result.UtilisationShare);

    private static RackStrength Strength(NationalChoices choices)
    {
        var file = SmallDesign.File();
        var brief = file.Brief with
        {
            Site = file.Brief.Site with { National = choices },
            Rack = file.Brief.Rack with { RowClearanceMm = 0, Angle = null },
        };
        var module = file.Shelf.Find<ModuleCard>("module-410")!;
        var rack = Rack.Of(brief.Rack, module, new(2, 4, 1), 15, file.Shelf)!;
        return RackStrength.Of(rack, brief, Survey.Of(brief), file.Shelf)!;
    }
}
