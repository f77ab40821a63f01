namespace Shaduf.Station;

/// <summary>A form of the rack that was tried, with its sections.</summary>
/// <param name="Rack">The rack; its welds as large as they have to be once its footings are chosen.</param>
/// <param name="Strength">Its check; null where the method ends.</param>
/// <param name="Cost">Steel, concrete and labour of all racks, in the price book's currency.</param>
public sealed record RackTried(Rack Rack, RackStrength? Strength, double Cost)
{
    // What does not carry at all counts as used so many times over, so that racks beside it can still be compared.
    private const double HopelessShare = 100;

    /// <summary>How its modules are held; null where that was not looked at.</summary>
    public RackHolding? Holding { get; init; }

    /// <summary>Its footings; null while they are not chosen.</summary>
    public Footings? Footings { get; init; }

    /// <summary>What the brief gives way in for it, as its fields are to be written; empty where it follows the brief.</summary>
    public string Instead { get; init; } = "";

    /// <summary>Whether steel, welds, stability and firm movements hold.</summary>
    public bool SteelHolds => Strength?.Holds == true;

    /// <summary>Whether the modules bear the wind in their holding, as far as their card says.</summary>
    public bool ModulesHold => ModulesShare <= 1 && Rack.Clamping is not { IsAllowed: false };

    /// <summary>Whether the module's card does not say what it bears when it is held so.</summary>
    public bool LacksWord => Holding is { IsKnown: false };

    /// <summary>Whether steel and modules hold, whatever stands under them.</summary>
    public bool RackHolds => SteelHolds && ModulesHold;

    /// <summary>Whether its footings hold, as far as they are chosen; ground that is handed over is another matter.</summary>
    public bool GroundHolds =>
        Footings is not { Strength: { } blocks } footings
        || (
            blocks.Holds
            && footings.Hold is not { UseShare: > 1 }
            && FootingConcrete.Of(footings, blocks, Strength!).PullShare <= 1
        );

    /// <summary>Whether every check of it holds.</summary>
    public bool Holds => RackHolds && GroundHolds;

    /// <summary>How far it is from holding: the sum of the logarithms of what is used beyond its limit; 0 when it holds.</summary>
    public double Lack =>
        Shares().Sum(share => Math.Log(Math.Clamp(double.IsNaN(share) ? HopelessShare : share, 1, HopelessShare)));

    private double ModulesShare =>
        Strength is { } strength && Holding is { } holding ? holding.UseShare(strength.Wind.PeakKNPerM2) : 0;

    private double FootingsShare => Footings?.UseShare ?? 0;

    // What does not even hold at the usual depth needs no second look.
    private IEnumerable<double> Shares() =>
        Strength is null ? []
        : Strength.HoldsItself ? [.. Strength.BothDepths.SelectMany(each => each.Shares), ModulesShare, FootingsShare]
        : [.. Strength.Shares, ModulesShare, FootingsShare];
}
