using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>
/// Puts a rack together as one solid model of marked parts. Axes: x along the row, y away from the low edge, z up,
/// millimetres; the origin lies on the ground under the plane's low left corner.
/// </summary>
/// <param name="deck">What holds the modules.</param>
/// <param name="sections">Sections.</param>
/// <param name="lines">Lines of columns, 1 to 2.</param>
/// <param name="crew">The crew that carries and welds it.</param>
internal sealed class RackFrame(RackDeck deck, RackSections sections, int lines, CrewBrief crew)
{
    private readonly RackSupport support = new(sections, deck.DepthMm, lines);

    /// <summary>The rack with all its parts and welds, and the lines along which it carries.</summary>
    /// <param name="setting">Tilt and heights.</param>
    /// <exception cref="ArgumentException">A part would have no length or cannot be sawn so; the message names it.</exception>
    public (Assembly Assembly, Skeleton Skeleton) Built(RackSetting setting)
    {
        var steel = new RackSteel(setting);
        var bearers = deck.Bear(steel);
        foreach (var x in deck.TubePlacesMm)
        {
            var axisMm = -sections.Tube.SideMm / 2;
            var axis = (setting.OnSlope(x, 0, axisMm), setting.OnSlope(x, deck.DepthMm, axisMm));
            var tube = steel.Add(
                Part.Over("T1", RackDeck.TubeRole, sections.Tube, axis, support.HeldAtMm),
                new(1, 0, 0)
            );
            deck.Join(steel, tube, bearers);
            support.Under(steel, tube);
        }

        return (
            new("rack", steel.Parts, [.. Seams(steel)])
            {
                Series = 100,
                Plates = [.. Caps(steel)],
                Fixings = [.. deck.Bolts(steel)],
            },
            steel.Skeleton
        );
    }

    private double CapLengthMm(RackSetting setting) =>
        Math.Ceiling(sections.Column.SideMm / Math.Cos(setting.TiltDeg * Math.PI / 180));

    private IEnumerable<Plate> Caps(RackSteel steel)
    {
        var count = steel.Skeleton.Joints.Count(joint => joint.HasCap);
        if (count > 0)
        {
            yield return new(
                "PL101",
                Rack.CapRole,
                sections.Column.SideMm,
                CapLengthMm(steel.Setting),
                Rack.CapMm,
                count
            );
        }
    }

    // Laps and stubs are welded in the workshop; what is longer than the truck is put together on site.
    private IEnumerable<Seam> Seams(RackSteel steel)
    {
        foreach (var seam in deck.Seams.Where(seam => seam.Count > 0))
        {
            yield return seam;
        }

        foreach (var alike in steel.Parts.Where(part => part.SplicesMm.Count > 0).GroupBy(part => part.Mark))
        {
            var (part, section) = (alike.First(), alike.First().Section);
            var roundMm = section.SideMm * (section.Outline == Outline.EqualAngle ? 2 : 4);
            yield return new($"splice of {alike.Key}", section.WallMm, roundMm, alike.Sum(each => each.SplicesMm.Count))
            {
                IsOnSite = crew.IsTooLong(part),
            };
        }

        var feet = steel.Parts.Count(part => part.Mark == Rack.FootMark);
        yield return new("foot pieces to columns", RackSteel.WeldLegMm, sections.Column.SideMm, 2 * feet);

        var caps = steel.Skeleton.Joints.Count(joint => joint.HasCap);
        if (caps > 0)
        {
            var roundMm = 2 * (sections.Column.SideMm + CapLengthMm(steel.Setting));
            yield return new("cap plates to columns", RackSteel.WeldLegMm, roundMm, caps) { IsAllRound = true };
        }

        foreach (var seam in steel.JointSeams)
        {
            yield return seam with
            {
                IsOnSite = true,
            };
        }
    }
}
