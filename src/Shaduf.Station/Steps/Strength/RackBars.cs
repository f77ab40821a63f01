using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>The bars that racks are chosen from, by name.</summary>
/// <param name="Tubes">Square tubes, the lightest first; one that is heavier and no stronger is left out.</param>
/// <param name="Angles">Equal angles, the lightest first.</param>
internal sealed record RackBars(IReadOnlyList<string> Tubes, IReadOnlyList<string> Angles)
{
    // Thinnest wall of a welded tube [mm]; thinner ones are looked at only where the cards have no other.
    private const double ThinnestMm = 2.5;

    // A step up is no larger than this many times the modulus, and may fall short of what is lacking by a tenth: the next
    // look tells.
    private const double LargestStepRatio = 8;
    private const double NearShare = 0.9;

    private readonly Dictionary<string, double> modulus = [];

    /// <summary>The bars on the cards.</summary>
    /// <param name="shelf">The cards.</param>
    /// <returns>The bars.</returns>
    public static RackBars Of(CardShelf shelf)
    {
        var cards = shelf.All<SectionCard>().OrderBy(card => RackSections.SectionOf(card).MassKgPerM).ToList();
        var tubes = new List<string>();
        var bars = new RackBars(
            tubes,
            [.. cards.Where(card => card.Shape == SectionShape.EqualAngle).Select(card => card.Name)]
        );
        var strongest = 0.0;
        var square = cards.FindAll(card => card.Shape == SectionShape.SquareHollow);
        foreach (var card in square.FindAll(card => card.WallMm >= ThinnestMm) is { Count: > 0 } thick ? thick : square)
        {
            var own = MemberSection.OfSquare(card.SizeMm, card.WallMm).ElasticModulusYMm3;
            bars.modulus[card.Name] = own;
            if (own > strongest)
            {
                strongest = own;
                tubes.Add(card.Name);
            }
        }

        return bars;
    }

    /// <summary>What modules may lie on: angles of channels, or tubes as rails.</summary>
    /// <param name="type">How the rack holds its modules.</param>
    public IReadOnlyList<string> Bearers(RackType type) => type == RackType.SlideIn ? Angles : Tubes;

    /// <summary>A heavier tube that is so many times as strong, or the strongest; null when there is none.</summary>
    /// <param name="name">The tube.</param>
    /// <param name="times">How many times over it is used.</param>
    public string? Above(string name, double times)
    {
        if (!modulus.TryGetValue(name, out var own))
        {
            return null;
        }

        var heavier = Tubes.SkipWhile(each => each != name).Skip(1).ToList();
        return heavier.Find(each => modulus[each] >= own * Math.Min(times, LargestStepRatio) * NearShare)
            ?? heavier.LastOrDefault();
    }

    /// <summary>The next lighter tube; null when there is none.</summary>
    /// <param name="name">The tube.</param>
    public string? Below(string name) => Tubes.TakeWhile(each => each != name).LastOrDefault();
}
