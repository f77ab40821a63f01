using Shaduf.Parts;
using Shaduf.Steel;

namespace Shaduf.Station;

/// <summary>Puts the legs that welds need on a model made with the least ones.</summary>
internal static class WeldLegs
{
    /// <summary>An assembly with other legs.</summary>
    /// <param name="steel">The assembly.</param>
    /// <param name="legsMm">Legs by name of the joint [mm]; what is not named stays.</param>
    public static Assembly On(Assembly steel, IReadOnlyDictionary<string, double> legsMm) =>
        steel with
        {
            Seams =
            [
                .. steel.Seams.Select(seam => seam with { LegMm = legsMm.GetValueOrDefault(seam.Name, seam.LegMm) }),
            ],
        };

    /// <summary>A skeleton with other legs.</summary>
    /// <param name="skeleton">The skeleton.</param>
    /// <param name="legsMm">Legs by name of the joint [mm]; what is not named stays.</param>
    public static Skeleton On(Skeleton skeleton, IReadOnlyDictionary<string, double> legsMm) =>
        skeleton with
        {
            Joints =
            [
                .. skeleton.Joints.Select(joint =>
                    joint.Weld is { } weld
                        ? joint with
                        {
                            Weld = weld with { LegMm = legsMm.GetValueOrDefault(joint.Name, weld.LegMm) },
                        }
                        : joint
                ),
            ],
        };
}
