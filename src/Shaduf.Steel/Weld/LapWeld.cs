using Shaduf.Working;

namespace Shaduf.Steel;

/// <summary>The weld along the lap that makes one channel of two angles, and the weld that makes one holder of two channels.</summary>
public static class LapWeld
{
    /// <summary>Shear flow between the two angles of a channel; a holder's two channels take half each.</summary>
    /// <param name="section">The channel or holder.</param>
    /// <param name="shearYN">Shear along y [N], -1,000,000 to 1,000,000.</param>
    /// <param name="shearZN">Shear along z [N], -1,000,000 to 1,000,000.</param>
    /// <returns>Flow along the lap [N/mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <exception cref="ArgumentException">The section is no channel.</exception>
    /// <source>Theory of elastic beams: V S/I, S = A_angle × distance of its centroid</source>
    public static double FlowNPerMm(MemberSection section, double shearYN, double shearZN)
    {
        Within.Require(shearYN, -1e6, 1e6, "N");
        Within.Require(shearZN, -1e6, 1e6, "N");
        var channel = ChannelOf(section);
        var one = MemberSection.OfChannel(channel, section.RootRadiusMm);
        var angle = MemberSection.OfAngle(channel.LegMm, channel.ThicknessMm, section.RootRadiusMm);
        var share = section.Kind == SectionKind.DoubleChannel ? 0.5 : 1;
        var byZ = shearZN * ArmMm(one.Frame.InertiaYMm4, angle) / one.Frame.InertiaYMm4;
        var byY = shearYN * ArmMm(one.Frame.InertiaZMm4, angle) / one.Frame.InertiaZMm4;
        return share * angle.Frame.AreaMm2 * (Math.Abs(byZ) + Math.Abs(byY));
    }

    /// <summary>Shear flow between the two channels of a holder.</summary>
    /// <param name="section">The holder.</param>
    /// <param name="shearYN">Shear along y [N], -1,000,000 to 1,000,000.</param>
    /// <returns>Flow along the backs [N/mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or NaN.</exception>
    /// <exception cref="ArgumentException">The section is no channel.</exception>
    /// <source>Theory of elastic beams: V S/I</source>
    public static double BackFlowNPerMm(MemberSection section, double shearYN)
    {
        Within.Require(shearYN, -1e6, 1e6, "N");
        var one = MemberSection.OfChannel(ChannelOf(section), section.RootRadiusMm);
        if (section.Kind != SectionKind.DoubleChannel)
        {
            throw new ArgumentException($"{section.Name} is no holder of two channels", nameof(section));
        }

        var apart = (section.Frame.InertiaZMm4 / 2) - one.Frame.InertiaZMm4;
        var armMm = Math.Sqrt(apart / one.Frame.AreaMm2);
        return Math.Abs(shearYN) * one.Frame.AreaMm2 * armMm / section.Frame.InertiaZMm4;
    }

    /// <summary>Force on a millimetre of interrupted weld.</summary>
    /// <param name="flowNPerMm">Shear flow [N/mm], 0 to 10,000.</param>
    /// <param name="runMm">Effective length of a run [mm], 30 to 1,000.</param>
    /// <param name="pitchMm">From the start of a run to that of the next [mm], 30 to 2,000; at least the run.</param>
    /// <returns>Force [N/mm].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN, or runs that overlap.</exception>
    /// <source>EN 1993-1-8:2005, 4.9(3)</source>
    public static double InterruptedNPerMm(double flowNPerMm, double runMm, double pitchMm)
    {
        Within.Require(flowNPerMm, 0, 10_000, "N/mm");
        Within.Require(runMm, 30, 1_000, "mm");
        Within.Require(pitchMm, 30, 2_000, "mm");
        Within.Require(pitchMm - runMm, 0, 2_000, "mm");
        return flowNPerMm * pitchMm / runMm;
    }

    // Distance of each angle's centroid from that of the channel, out of I = 2 (I_angle + A s²).
    private static double ArmMm(double inertiaMm4, MemberSection angle) =>
        Math.Sqrt(((inertiaMm4 / 2) - angle.Frame.InertiaYMm4) / angle.Frame.AreaMm2);

    private static SlideInChannel ChannelOf(MemberSection section) =>
        section.Channel ?? throw new ArgumentException($"{section.Name} is no channel", nameof(section));
}
