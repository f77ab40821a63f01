using CsCheck;
using Shaduf.Power;
using Shaduf.Working;

namespace Shaduf.Station.Tests;

public sealed class GuardTests
{
    private static readonly Lazy<Design> s_design = new(() => SmallDesign.Of());

    private static readonly Gen<GuardField> s_field = Gen.Select(
        Gen.Double[1, 14],
        Gen.Double[0.9, 6],
        Gen.Double[2, 8],
        Gen.Int[1, 4],
        Gen.Double[0.4, 2],
        Gen.Double[0, 2.5],
        (lengthM, rackM, wayM, racks, lowM, riseM) =>
            new GuardField(lengthM, rackM, rackM + wayM, racks, lowM, lowM + riseM)
    );

    private static LightningBrief Asked(LightningWish wish) => new(wish, null, null, null, null);

    private static Guard Of(params (string Field, string Value)[] fields) =>
        SmallDesign
            .Of(brief =>
            {
                foreach (var (field, value) in fields)
                {
                    brief["guard"]![field] = value;
                }
            })
            .Works.Guard;

    /// <summary>Every corner of any rack, for every class, unless the design says that it could not: then it stops.</summary>
    [Fact]
    public void Corners_are_inside_for_any_rack_and_class() =>
        Gen.Select(
                s_field,
                Gen.OneOf(
                    Gen.Const(LightningWish.I),
                    Gen.Const(LightningWish.II),
                    Gen.Const(LightningWish.III),
                    Gen.Const(LightningWish.IV)
                )
            )
            .Sample(
                (field, wish) =>
                {
                    var lightning = GuardLightning.Of(Asked(wish), 10, field, [], []);
                    return lightning.Bare.Count == 0
                        && lightning.NeededM <= lightning.RodM
                        && field.Edges.All(edge => IsProtected(lightning, edge));
                },
                iter: 150
            );

    // By one rod's closed form or by all together: not the design's own bookkeeping.
    private static bool IsProtected(GuardLightning lightning, GuardPoint point) =>
        ProtectedVolume.Holds(
            lightning.SphereM,
            lightning.RodM,
            lightning.Rods,
            point.Place,
            Math.Max(0, point.HeightM - 0.03)
        );

    [Fact]
    public void A_rod_too_low_stops_and_names_what_is_bare()
    {
        var field = new GuardField(12, 3.5, 6, 1, 1, 2.6);
        var lightning = GuardLightning.Of(Asked(LightningWish.II) with { RodM = 3 }, 10, field, [], []);
        Assert.NotEmpty(lightning.Bare);
        Assert.True(lightning.NeededM > 3);
        var design = SmallDesign.Of(brief => brief["guard"]!["rodHeight"] = "2 m");
        var finding = design.Findings.Single(each => each.Id == "guard/rods");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Contains("rack 1", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rod_higher_than_the_sphere_counts_only_that_much()
    {
        var field = new GuardField(8, 3, 6, 1, 1, 2);
        var at20 = GuardLightning.Of(Asked(LightningWish.I) with { RodM = 20 }, 10, field, [], []);
        var at50 = GuardLightning.Of(Asked(LightningWish.I) with { RodM = 50 }, 10, field, [], []);
        Assert.Equal(20, at50.CountedRodM);
        Assert.Equal(at20.Bare, at50.Bare);
    }

    [Theory]
    [InlineData(1.9, LightningWish.Choose, false)]
    [InlineData(2.1, LightningWish.Choose, true)]
    [InlineData(50, LightningWish.None, false)]
    [InlineData(0, LightningWish.IV, true)]
    public void Rods_follow_the_density_unless_the_brief_says_otherwise(
        double flashes,
        LightningWish wish,
        bool hasRods
    )
    {
        var field = new GuardField(8, 3, 6, 1, 1, 2);
        var lightning = GuardLightning.Of(Asked(wish), flashes, field, [], []);
        Assert.Equal(hasRods, lightning.Protection is not null);
        Assert.Equal(hasRods, lightning.Rods.Count > 0);
    }

    [Fact]
    public void Unknown_density_is_assumed_and_leaned_on()
    {
        var design = s_design.Value;
        Assert.Contains(design.Survey.Assumptions, each => each.Id == "flash-density");
        var finding = design.Findings.Single(each => each.Id == "guard/lightning");
        Assert.Equal(FindingStatus.Look, finding.Status);
        Assert.Equal(["flash-density"], finding.LeansOn);
        Assert.All(
            design.Findings.Where(each => each.Id.StartsWith("guard/", StringComparison.Ordinal)),
            each => Assert.Equal(each.LeansOn.Contains("wind"), each.Status == FindingStatus.Unchecked)
        );
    }

    [Fact]
    public void Thunder_days_are_turned_into_flashes()
    {
        Assert.Equal(FlashDensity.LargestPerKm2Year(40), Of(("thunderDays", "40 days")).Lightning.FlashesPerKm2Year);
        Assert.Equal(3, Of(("thunderDays", "40 days"), ("flashDensity", "3 /km2/year")).Lightning.FlashesPerKm2Year);
    }

    [Fact]
    public void A_tank_beside_the_racks_is_protected_too()
    {
        var guard = Of(("tankDistance", "5 m"), ("lightning", "III"));
        Assert.Contains(guard.Lightning.Points, point => point.Name.StartsWith("tank", StringComparison.Ordinal));
        Assert.Empty(guard.Lightning.Bare);
        Assert.True(guard.Lightning.RodM > Of(("lightning", "III")).Lightning.RodM);
    }

    [Fact]
    public void A_lamp_lower_than_the_racks_stops()
    {
        var design = SmallDesign.Of(brief => brief["guard"]!["lightPole"] = "2 m");
        Assert.Equal(FindingStatus.Stop, design.Findings.Single(each => each.Id == "guard/light-pole").Status);
    }

    [Theory]
    [InlineData("III", "type 1")]
    [InlineData("none", "type 2")]
    public void A_lamp_on_a_lightning_mast_asks_for_more_against_surges(string lightning, string type)
    {
        var finding = Assert.Single(
            GuardFindings.Of(Of(("lightning", lightning))),
            finding => finding.Id == "guard/light-surge"
        );
        Assert.Equal(FindingStatus.Look, finding.Status);
        Assert.Contains(type, finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Twice_the_light_is_twice_the_light_everywhere()
    {
        var brief = SmallDesign.File().Brief;
        brief = brief with { Guard = brief.Guard with { Light = brief.Guard.Light with { Count = 1, HeightM = 5 } } };
        var design = s_design.Value;
        var card = design.Works.Guard.Light!.Card;
        GuardLight Lit(LightCard lamp) =>
            GuardLight.Of(brief, design.Survey, design.Sky, design.Works.Guard.Field, lamp);
        var (one, two) = (
            Lit(card),
            Lit(card with { Luminaire = card.Luminaire with { FluxLm = 2 * card.Luminaire.FluxLm } })
        );
        Assert.All(one.Grid.Zip(two.Grid), pair => Assert.Equal(2 * pair.First.Lux, pair.Second.Lux, 5e-10));
        Assert.Equal(one.EvenRatio, two.EvenRatio, 5e-10);
    }

    /// <summary>Ground close under the far side of a rack lies in its shade; the plane itself and the open ground do not.</summary>
    [Fact]
    public void Racks_throw_shade()
    {
        var field = new GuardField(10, 3, 6, 1, 1, 2);
        var lamp = new GuardPoint("lamp", new(5, 4.5), 5);
        Assert.True(field.Hides(lamp, new(5, 1.5), 0));
        Assert.True(field.Hides(lamp, new(5, -0.5), 0));
        Assert.False(field.Hides(lamp, new(5, -4), 0));
        Assert.False(field.Hides(lamp, new(5, 5), 0));
        Assert.False(field.Hides(lamp, new(5, 1.5), field.PlaneM(new(5, 1.5))!.Value));
        Assert.True(field.Hides(lamp with { HeightM = 1 }, new(5, 1.5), field.PlaneM(new(5, 1.5))!.Value));
    }

    [Fact]
    public void Lithium_in_frost_stops_unless_it_minds_itself()
    {
        var design = SmallDesign.Of(brief => brief["site"]!["recordLow"] = "-3 degC");
        var finding = design.Findings.Single(each => each.Id == "guard/light-battery");
        Assert.Equal(FindingStatus.Stop, finding.Status);
        Assert.Contains("0 degC", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Worse_soil_never_takes_less_wire_and_misses_the_aim_aloud()
    {
        var field = new GuardField(12, 3.5, 6, 2, 1, 2.6);
        var lightning = GuardLightning.Of(Asked(LightningWish.III), 10, field, [], []);
        GuardEarth At(double ohmM) => GuardEarth.Of(null, ohmM, field, lightning);
        var all = new[] { 20.0, 60, 150, 400, 1000, 20_000 }.Select(At).ToList();
        Assert.All(
            all.Zip(all.Skip(1)),
            pair =>
            {
                Assert.True(pair.First.RodOhm < pair.Second.RodOhm);
                Assert.True(pair.First.RingWireM <= pair.Second.RingWireM);
            }
        );
        Assert.All(all, earth => Assert.Equal(earth.EarthOhm <= earth.AimOhm, earth.MoreWireM == 0));
        Assert.Equal(0, all[0].RingWireM);
        Assert.Equal(0, all[0].MoreWireM);
        Assert.Null(all[^1].MoreWireM);
    }

    [Fact]
    public void Earth_rods_on_a_ring_stand_on_it_and_apart() =>
        s_field.Sample(
            field =>
            {
                var lightning = GuardLightning.Of(Asked(LightningWish.III), 10, field, [], []);
                var earth = GuardEarth.Of(null, 3000, field, lightning);
                var (lengthM, depthM) = GuardEarth.RingSides(field);
                return earth.RingWireM > 0
                    && earth.Rods.All(rod =>
                        OnRim(rod.XM + GuardEarth.RingOffM, lengthM) || OnRim(rod.YM + GuardEarth.RingOffM, depthM)
                    );

                static bool OnRim(double at, double sideM) => Math.Abs(at) < 1e-9 || Math.Abs(at - sideM) < 1e-9;
            },
            iter: 200
        );

    [Theory]
    [InlineData("-2.10 deg", "0 deg", true)]
    [InlineData("-2.10 deg", "180 deg", true)]
    public void Between_the_tropics_a_high_pole_shades_at_noon(string latitude, string azimuth, bool isShaded)
    {
        var guard = SmallDesign
            .Of(brief =>
            {
                brief["site"]!["latitude"] = latitude;
                brief["array"]!["azimuth"] = azimuth;
                brief["guard"]!["lightning"] = "IV";
                brief["guard"]!["rodHeight"] = "9 m";
            })
            .Works.Guard;
        Assert.Equal(isShaded, guard.NoonShadeM > 0);
    }

    [Fact]
    public void What_is_designed_is_bought()
    {
        var design = s_design.Value;
        var guard = design.Works.Guard;
        double Bought(string item) => design.Takeoff.Lines.Where(line => line.Item == item).Sum(line => line.Quantity);
        Assert.Equal(guard.Earth.Rods.Count, Bought("earth-rod"));
        Assert.Equal(guard.Lightning.Rods.Count, Bought("air-rod"));
        Assert.Equal(guard.Light!.Lamps.Count * guard.Light.BlocksEach, Bought("light-battery"));
        Assert.Equal(guard.Light.Lamps.Count * guard.Light.ModulesEach, Bought("light-module"));
        var blocks = design.Works.PoleBlocks.ToList();
        Assert.Equal(guard.Poles.Count, blocks.Sum(design.Works.CountOf));
        Assert.Equal(
            blocks.Sum(block =>
                design.Works.CountOf(block) * block.Block.ConcreteM3 * design.Works.Footings.PerM3.BagCount
            ),
            design
                .Takeoff.Lines.Where(line =>
                    line is { Item: "cement-50kg", Section: Money.BillSection.LightAndEarthing }
                )
                .Sum(line => line.NetQuantity),
            1e-9
        );
        Assert.Equal(design.Choice.ModuleCount, Bought("frame-bond"));
    }
}
