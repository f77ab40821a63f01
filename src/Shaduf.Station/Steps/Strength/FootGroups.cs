using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Shape of the footings.</summary>
public enum FootingForm
{
    /// <summary>A square block under each column.</summary>
    Block,

    /// <summary>A beam in the ground across the row under each cross tube's columns: under one column, or tying two.</summary>
    Beam,

    /// <summary>A strip along the row under a whole line of columns.</summary>
    Strip,
}

/// <summary>A column on a footing.</summary>
/// <param name="Foot">Its number in the skeleton.</param>
/// <param name="AlongM">How far it stands from the middle of the footing along the row [m].</param>
/// <param name="AcrossM">How far it stands from the middle across the row [m].</param>
public sealed record FootPlace(int Foot, double AlongM, double AcrossM);

/// <summary>Which columns stand on one footing.</summary>
internal static class FootGroups
{
    /// <summary>The columns of each footing.</summary>
    /// <param name="skeleton">The rack's skeleton.</param>
    /// <param name="form">Shape of the footings.</param>
    /// <returns>The columns of each, with their places on it.</returns>
    public static IReadOnlyList<IReadOnlyList<FootPlace>> Of(Skeleton skeleton, FootingForm form) =>
        [
            .. skeleton
                .Feet.Select((foot, i) => (Foot: i, At: foot.Ground))
                .GroupBy(each =>
                    form switch
                    {
                        FootingForm.Beam => Math.Round(each.At.XMm),
                        FootingForm.Strip => Math.Round(each.At.YMm),
                        _ => each.Foot,
                    }
                )
                .Select(group =>
                {
                    var (alongMm, acrossMm) = (
                        (group.Min(each => each.At.XMm) + group.Max(each => each.At.XMm)) / 2,
                        (group.Min(each => each.At.YMm) + group.Max(each => each.At.YMm)) / 2
                    );
                    return (IReadOnlyList<FootPlace>)
                        [
                            .. group.Select(each => new FootPlace(
                                each.Foot,
                                (each.At.XMm - alongMm) / 1000,
                                (each.At.YMm - acrossMm) / 1000
                            )),
                        ];
                }),
        ];

    /// <summary>Length from the first to the last column on one footing, along and across the row [mm].</summary>
    /// <param name="group">Its columns.</param>
    public static (double AlongMm, double AcrossMm) Spread(IReadOnlyList<FootPlace> group) =>
        (2000 * group.Max(each => each.AlongM), 2000 * group.Max(each => each.AcrossM));
}
