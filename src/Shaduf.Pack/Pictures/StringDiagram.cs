using Shaduf.Station;
using static System.FormattableString;

namespace Shaduf.Pack;

/// <summary>Modules in strings, drive and motor, with voltages, currents and cables.</summary>
public static class StringDiagram
{
    private const double ModuleMm = 9;
    private const double PitchMm = 12;
    private const double LaneMm = 20;
    private const int MostDrawn = 7;

    /// <summary>Composes the picture.</summary>
    /// <param name="design">The design.</param>
    /// <param name="widthMm">Width of the picture [mm], at least 150.</param>
    /// <returns>The picture, not to scale.</returns>
    public static Scene Of(Design design, double widthMm)
    {
        var choice = design.Choice;
        var drawn = Math.Min(choice.StringCount, 4);
        var size = new PaperSize(widthMm, 38 + (drawn * LaneMm));
        var builder = new SceneBuilder(size);
        for (var lane = 0; lane < drawn; lane++)
        {
            String(builder, design, lane, 16 + (lane * LaneMm));
        }

        var busMm = 12 + (PitchMm * MostDrawn) + 6;
        var (topMm, bottomMm) = (16 + (ModuleMm / 2), 16 + ((drawn - 1) * LaneMm) + (ModuleMm / 2));
        builder.Line(Layer.Electric, new(busMm, topMm), new(busMm, bottomMm + 0.01));
        var driveMm = (topMm + bottomMm) / 2;
        Machines(builder, design, busMm, driveMm);
        Legend(builder, design);
        return builder.Build("string diagram");
    }

    private static void String(SceneBuilder builder, Design design, int lane, double topMm)
    {
        var count = design.Choice.SeriesCount;
        var middleMm = topMm + (ModuleMm / 2);
        builder.Text(
            new(2, topMm - 2),
            $"string {lane + 1}{(lane == 3 && design.Choice.StringCount > 4 ? $" to {design.Choice.StringCount}" : "")}",
            TextStyle.Small
        );
        builder.Line(Layer.Electric, new(2, middleMm), new(12 + (PitchMm * MostDrawn) + 6, middleMm));
        for (var i = 0; i < MostDrawn; i++)
        {
            var leftMm = 4 + (i * PitchMm);
            var isGap = count > MostDrawn && i == MostDrawn - 2;
            var number =
                count <= MostDrawn ? i + 1
                : i == MostDrawn - 1 ? count
                : i + 1;
            if (number > count)
            {
                continue;
            }

            if (isGap)
            {
                builder.Text(
                    new(leftMm + (ModuleMm / 2), middleMm - 2),
                    "...",
                    TextStyle.Body with
                    {
                        Horizontal = HorizontalAnchor.Centre,
                    }
                );
                continue;
            }

            builder.Rectangle(Layer.Module, new(leftMm, topMm, leftMm + ModuleMm, topMm + ModuleMm), Palette.White);
            builder.Text(new(leftMm + (ModuleMm / 2), middleMm), Invariant($"{number}"), TextStyle.Small.Centred);
        }
    }

    private static void Machines(SceneBuilder builder, Design design, double busMm, double middleMm)
    {
        var choice = design.Choice;
        var driveBox = new PaperBox(busMm + 12, middleMm - 8, busMm + 34, middleMm + 8);
        builder.Line(Layer.Electric, new(busMm, middleMm), new(driveBox.LeftMm, middleMm));
        builder.Rectangle(Layer.Outline, driveBox, Palette.White);
        builder.Text(driveBox.Centre, "drive", TextStyle.Small.Centred);
        builder.Line(Layer.Electric, new(driveBox.RightMm, middleMm), new(driveBox.RightMm + 12, middleMm));
        var motor = new PaperPoint(driveBox.RightMm + 18, middleMm);
        builder.Circle(Layer.Outline, motor, 6, Palette.White);
        builder.Text(motor, "M", TextStyle.Body.Centred with { Weight = FontWeight.Bold });
        builder.Text(
            new(driveBox.LeftMm, driveBox.TopMm - 2),
            choice.Drive.Name,
            TextStyle.Small with
            {
                IsOpaque = true,
            }
        );
        builder.Text(new(motor.XMm - 6, middleMm + 11), choice.Pump.Name, TextStyle.Small);
        builder.Text(
            new(motor.XMm - 6, middleMm + 15.5),
            Invariant($"{choice.Pump.Motor.RatedV:0} V, {choice.Pump.Motor.RatedA:0.0} A"),
            TextStyle.Small
        );
    }

    private static void Legend(SceneBuilder builder, Design design)
    {
        var size = builder.Size;
        var choice = design.Choice;
        var works = design.Works.Electrics;
        builder.Text(
            new(2, size.HeightMm - 14),
            Invariant(
                $"each string: {choice.SeriesCount} x {choice.Module.Name}; cold open circuit {works.ColdV:0} V, hottest day {works.HotV:0} V, short circuit {choice.Module.Sheet.ShortCircuitA:0.0} A"
            ),
            TextStyle.Small
        );
        builder.Text(new(2, size.HeightMm - 9), string.Join("; ", works.Cables.Select(Label)), TextStyle.Small);
        builder.Text(
            new(2, size.HeightMm - 4),
            "not to scale; both conductors of a string drawn as one line",
            TextStyle.Small
        );
    }

    private static string Label(CableRun cable) =>
        cable.Card is { } card
            ? Invariant($"{cable.Name}: {card.Name}, {cable.Duty.LengthM:0} m")
            : $"{cable.Name}: none fits";
}
