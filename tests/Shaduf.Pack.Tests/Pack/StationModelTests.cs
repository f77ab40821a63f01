using System.Numerics;
using Shaduf.Parts;
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
