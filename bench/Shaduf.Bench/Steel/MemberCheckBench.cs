using BenchmarkDotNet.Attributes;
using Shaduf.Steel;

namespace Shaduf.Bench.Steel;

/// <summary>The checks that a choice of sections repeats: cross-section, buckling, weld round a tube's end.</summary>
[MemoryDiagnoser]
public class MemberCheckBench
{
    private static readonly MemberForces Forces = new(0, -15e3, 1e3, 2e3, 1e5, 3e6, 1e6);
    private readonly SteelGrade grade = SteelGrade.Of("S235");
    private readonly MemberSection tube = MemberSection.OfSquare(80, 4);
    private readonly MemberSection channel = MemberSection.OfChannel(SlideInChannel.Of(40, 4, 35, 2), 6);
    private readonly WeldGroup weld = TubeWeld.Group(MemberSection.OfSquare(80, 4));

    [Benchmark]
    public double TubeSection() => CrossSectionCheck.Utilisation(tube, grade, Forces).UtilisationShare;

    [Benchmark]
    public double ChannelSection() => CrossSectionCheck.Utilisation(channel, grade, Forces).UtilisationShare;

    [Benchmark]
    public double TubeBuckling() =>
        MemberBuckling.Utilisation(tube, grade, Forces, new(3000, 3000, 3000), EquivalentMoments.Sway).UtilisationShare;

    [Benchmark]
    public double ChannelBuckling() =>
        MemberBuckling
            .Utilisation(channel, grade, Forces, new(2700, 1300, 1300), EquivalentMoments.Uniform)
            .UtilisationShare;

    [Benchmark]
    public double Weld() => weld.Utilisation(Forces, grade, 4).UtilisationShare;

    [Benchmark]
    public MemberSection MakeChannel() => MemberSection.OfChannel(SlideInChannel.Of(40, 4, 35, 2), 6);
}
