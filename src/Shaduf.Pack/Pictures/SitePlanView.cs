using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>The station from above in a room that is given.</summary>
public static class SitePlanView
{
    // Words do not shrink with the scale: in a small room the plan may never fit.
    private const int MostScales = 10;

    /// <summary>The plan at the largest scale at which it fits.</summary>
    /// <param name="design">The design.</param>
    /// <param name="size">Room for it.</param>
    /// <returns>The picture, trimmed.</returns>
    public static Scene Of(Design design, PaperSize size)
    {
        var plan = SitePlan.Of(design);
        var scale = BookScale.FittingOneToFactor(plan.Field.LengthM * 1000, size.WidthMm);
        var scene = SitePlanPicture.Of(design, plan, scale);
        for (var tried = 1; tried < MostScales && !Fits(scene, size); tried++)
        {
            scale = BookScale.FittingOneToFactor(scale * 1.01, 1);
            scene = SitePlanPicture.Of(design, plan, scale);
        }

        return scene;
    }

    private static bool Fits(Scene scene, PaperSize size) =>
        scene.Size.WidthMm <= size.WidthMm && scene.Size.HeightMm <= size.HeightMm;
}
