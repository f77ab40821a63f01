namespace Shaduf.Power;

/// <summary>Whole counts out of quotients; a quotient within 1e-9 of a whole number is that number.</summary>
internal static class Whole
{
    internal static int Down(double quotient) => (int)Math.Floor(quotient + 1e-9);

    internal static int Up(double quotient) => (int)Math.Ceiling(quotient - 1e-9);
}
