using Shaduf.Station;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>On a long section: the fittings along the main by letter, and its pressure classes reach by reach below.</summary>
internal static class MainMarks
{
    private const double LetterMm = 2.1;
    private const double StripTopMm = 12;
    private const double StripMm = 6;

    /// <summary>Draws fittings and classes.</summary>
    /// <param name="view">The section.</param>
    /// <param name="design">The design.</param>
    /// <param name="baseMm">Height of the section's foot on the paper [mm].</param>
    public static void Draw(SiteView view, Design design, double baseMm)
    {
        Fittings(view, design.Works.Main.Marks);
        Classes(view, design, baseMm + StripTopMm);
        view.Builder.Text(
            new(view.At(SitePoint.Metres(0, 0)).XMm, baseMm + StripTopMm + StripMm + 5.5),
            Legend(design.Works.Main.Marks),
            TextStyle.Small
        );
    }

    private static string Letter(RouteFitting fitting) =>
        fitting switch
        {
            RouteFitting.AirValve => "A",
            RouteFitting.Washout => "W",
            _ => "V",
        };

    private static string Legend(IReadOnlyList<RouteMark> marks)
    {
        var named = new[] { RouteFitting.AirValve, RouteFitting.Washout, RouteFitting.LineValve };
        return string.Join(
            "; ",
            named
                .Select(kind => (Kind: kind, Here: marks.Where(mark => mark.Fitting == kind).ToList()))
                .Where(each => each.Here.Count > 0)
                .Select(each =>
                    Invariant(
                        $"{Letter(each.Kind)} {MainTable.Says(each.Kind)} at {string.Join(", ", each.Here.Select(mark => Invariant($"{mark.At.ChainageM:0}")))} m"
                    )
                )
        );
    }

    // Above the ground: below it stand the borehole's labels. Those too close to their neighbour step up.
    private static void Fittings(SiteView view, IReadOnlyList<RouteMark> marks)
    {
        var (lastMm, stepMm) = (double.MinValue, 0.0);
        foreach (var mark in marks)
        {
            var at = view.At(SitePoint.Metres(mark.At.ChainageM, mark.At.LevelM)).Moved(0, 1.1);
            stepMm = at.XMm - lastMm < (2 * LetterMm) + 0.8 ? stepMm + (2 * LetterMm) + 0.8 : 0;
            lastMm = at.XMm;
            var centre = at.Moved(0, -7 - stepMm);
            view.Builder.Line(Layer.Dimension, at, centre)
                .Circle(Layer.Dimension, centre, LetterMm, Palette.White)
                .Text(centre, Letter(mark.Fitting), TextStyle.Small.Centred);
        }
    }

    private static void Classes(SiteView view, Design design, double topMm)
    {
        foreach (var reach in design.Choice.Lift.Lay.Reaches)
        {
            var (fromMm, toMm) = (At(view, reach.FromM), At(view, reach.ToM));
            var worst = design.Works.Main.Profile.WorstOf(reach);
            var bars = Invariant($"needs {worst.NeededBar:0.0} of {worst.AllowedBar:0.0} bar");
            view.Builder.Rectangle(Layer.Thin, new(fromMm, topMm, toMm, topMm + StripMm), Palette.White);
            string[] texts =
            [
                Invariant($"{reach.FromM:0} to {reach.ToM:0} m {reach.Pipe.Name}: {bars}"),
                $"{reach.Pipe.Name}: {bars}",
                reach.Pipe.Name,
                "",
            ];
            var text = texts.First(each =>
                each.Length == 0 || Lettering.WidthMm(each, Lettering.SmallMm) < toMm - fromMm - 1
            );
            if (text.Length > 0)
            {
                view.Builder.Text(new((fromMm + toMm) / 2, topMm + (StripMm / 2)), text, TextStyle.Small.Centred);
            }
        }
    }

    private static double At(SiteView view, double chainageM) => view.At(SitePoint.Metres(chainageM, 0)).XMm;
}
