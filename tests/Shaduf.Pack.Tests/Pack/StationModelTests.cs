using System.Numerics;
using Shaduf.Parts;
using Shaduf.Station;
using SharpGLTF.Schema2;

namespace Shaduf.Pack.Tests;

/// <summary>The solid model as bodies, and its file as an independent reader sees it.</summary>
public sealed class StationModelTests(ExamplePacks packs) : IClassFixture<ExamplePacks>
{
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void The_file_reads_back_with_every_mark_and_the_model_s_box(string example)
    {
        var (design, bodies) = (packs[example].Design, StationModel.Of(packs[example].Design));
        using var stream = new MemoryStream(packs[example].Files["station.glb"]);
        var model = ModelRoot.ReadGLB(stream);
        Assert.Equal(bodies.Count, model.LogicalMeshes.Count);
        var marks = design.Works.Rack.Steel.Parts.Select(part => part.Mark).ToHashSet();
        var rack = model.DefaultScene.VisualChildren.Single(node => node.Name == "rack 1");
        Assert.Equal(marks, rack.VisualChildren.Select(node => node.Name).ToHashSet());
        Assert.Equal(design.Works.Rack.Steel.Parts.Count, rack.VisualChildren.Count());
        Assert.Equal(
            design.Choice.ModuleCount,
            model.LogicalNodes.Count(node => node.Name.StartsWith("module ", StringComparison.Ordinal))
        );
        var stands = StandRelease.IsWithheld(design) ? null : design.Works.Stand;
        Assert.Equal(
            (stands?.Count ?? 0) * (stands?.Stand.Plan.LegCount ?? 0),
            model.LogicalNodes.Count(node => node.Name.StartsWith("plinth of leg ", StringComparison.Ordinal))
        );
        Assert.Superset(
            new HashSet<string>(["steel", "concrete", "modules", "tank"]),
            model.LogicalMaterials.Select(material => material.Name).ToHashSet()
        );
        var points = bodies.SelectMany(body => body.Faces).SelectMany(face => face).ToList();
        var read = model.LogicalMeshes.SelectMany(mesh => mesh.Primitives).SelectMany(Positions).ToList();
        Assert.Equal(points.Min(point => point.XMm) / 1000, read.Min(at => at.X), 1e-3);
        Assert.Equal(points.Max(point => point.XMm) / 1000, read.Max(at => at.X), 1e-3);
        Assert.Equal(points.Min(point => point.ZMm) / 1000, read.Min(at => at.Y), 1e-3);
        Assert.Equal(points.Max(point => point.ZMm) / 1000, read.Max(at => at.Y), 1e-3);
        Assert.Equal(-points.Max(point => point.YMm) / 1000, read.Min(at => at.Z), 1e-3);
        Assert.Equal(-points.Min(point => point.YMm) / 1000, read.Max(at => at.Z), 1e-3);
    }

    /// <summary>Heights and depths of each group of the file, against the figures of the design: to 1 mm, nothing from the bodies.</summary>
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Each_group_reaches_as_high_and_as_deep_as_the_design_says(string example)
    {
        var (design, works) = (packs[example].Design, packs[example].Design.Works);
        using var stream = new MemoryStream(packs[example].Files["station.glb"]);
        var groups = ModelRoot
            .ReadGLB(stream)
            .DefaultScene.VisualChildren.ToDictionary(
                group => group.Name,
                group => group.VisualChildren.SelectMany(node => node.Mesh.Primitives).SelectMany(Positions).ToList()
            );
        (double Low, double High) Reach(string group) => (groups[group].Min(at => at.Y), groups[group].Max(at => at.Y));
        var rack = Reach("rack 1");
        Assert.Equal(
            works.Pits.Pits.Where(pit => pit.Rack == 0).SelectMany(pit => pit.Columns).Min(column => column.FootM),
            rack.Low,
            1e-3
        );
        Assert.Equal(
            Math.Min(
                works.Pits.Pits.Min(pit => pit.BottomM),
                works.PoleBlocks.Select(block => -block.Block.DepthMm / 1000).DefaultIfEmpty(0).Min()
            ),
            Reach("footings").Low,
            1e-3
        );
        Near((0, works.Guard.Poles.Max(pole => pole.HeightM)), Reach("poles"));
        if (works.Stand is { } stands && !StandRelease.IsWithheld(design))
        {
            var (plan, block) = (stands.Stand.Plan, stands.Footings.Block);
            // The middle of the top rail lies at its height.
            Near((0, (plan.FloorMm + StandAccess.RailMm + (plan.Sections.Rail.SideMm / 2)) / 1000), Reach("stand 1"));
            Near((-block.DepthMm / 1000, block.PlinthHeightMm / 1000), Reach("footings of stand 1"));
            Assert.Equal(
                Math.Max(plan.DepthMm.BackMm - plan.DepthMm.FrontMm, plan.WidthMm.RightMm - plan.WidthMm.LeftMm) / 1000,
                Math.Max(Span(groups["stand 1"], at => at.X), Span(groups["stand 1"], at => at.Z)),
                0.05
            );
        }

        if (works.Guard.Fence is { } fence)
        {
            var form = fence.Line.Form;
            var low = fence.Line.Posts.Min(post => post.Foot.LevelM - form.HoleOf(post.Kind).DepthM);
            var high = fence.Line.Posts.Max(post => post.Foot.LevelM - form.HoleOf(post.Kind).DepthM + post.LengthM);
            Near((low, high), Reach("fence"));
        }
    }

    /// <summary>A tank that is drawn beside the racks stands outside their fence.</summary>
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void A_tank_far_away_is_drawn_outside_the_fence(string example)
    {
        var design = packs[example].Design;
        var plan = SitePlan.Of(design);
        var tank = StationModel.Of(design).Where(body => body.Group == "tank, drawn beside the racks").ToList();
        var ends = plan.Fence.Select(corner => plan.Bearing.InField(corner).XM).ToList();
        Assert.All(
            tank.SelectMany(body => body.Faces).SelectMany(face => face),
            point =>
                Assert.All(
                    ends,
                    end => Assert.True(plan.Bearing.InField(new(point.XMm / 1000, point.YMm / 1000)).XM > end + 1)
                )
        );
    }

    private static void Near((double Low, double High) expected, (double Low, double High) read)
    {
        Assert.Equal(expected.Low, read.Low, 1.001e-3);
        Assert.Equal(expected.High, read.High, 1.001e-3);
    }

    private static double Span(IReadOnlyList<Vector3> points, Func<Vector3, float> along) =>
        points.Max(along) - points.Min(along);

    /// <summary>By trigonometry: from its first to its last point a tube is as long as its bar must give.</summary>
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Tubes_are_as_long_as_the_saw_cuts_them(string example)
    {
        foreach (var (part, faces) in PartSolid.Of(packs[example].Design.Works.Rack))
        {
            if (part.Section.Outline != Outline.SquareTube)
            {
                continue;
            }

            var along = part.Shape.End - part.Shape.Start;
            var axis = along * (1 / along.LengthMm);
            var places = faces.SelectMany(face => face).Select(point => axis.DotMm2(point)).ToList();
            Assert.Equal(part.Shape.AlongBarMm(part.Section.SideMm), places.Max() - places.Min(), 0.1);
        }
    }

    /// <summary>Outside is outside: the faces of every body enclose a volume above nought, and that of a tube's bar.</summary>
    [Theory]
    [MemberData(nameof(ExamplePacks.Names), MemberType = typeof(ExamplePacks))]
    public void Faces_look_outwards(string example)
    {
        Assert.All(
            StationModel.Of(packs[example].Design),
            body =>
            {
                var volume = body.Faces.Sum(face =>
                    Enumerable.Range(1, face.Count - 2).Sum(i => face[0].DotMm2(Solid.Cross(face[i], face[i + 1])) / 6)
                );
                Assert.True(volume > 0, $"{body.Group} {body.Name}: {volume}");
            }
        );
    }

    [Fact]
    public void A_model_without_bodies_or_of_an_unknown_trade_is_refused()
    {
        Assert.Throws<ArgumentException>(() => GlbRenderer.Write([]));
        var body = new ModelBody("a", "b", "gold", Solid.Post(new(0, 0, 0), 100, 1000));
        Assert.Throws<ArgumentException>(() => GlbRenderer.Write([body]));
    }

    private static IEnumerable<Vector3> Positions(MeshPrimitive primitive) =>
        primitive.GetVertexAccessor("POSITION").AsVector3Array();
}
