using Shaduf.Working;

namespace Shaduf.Workshop;

/// <summary>Where the hands are when a load is lifted close to the body.</summary>
public enum LiftHeight
{
    /// <summary>Below the knee, or above the head.</summary>
    LowOrHigh,

    /// <summary>At the knuckles, or at the shoulder.</summary>
    KnuckleOrShoulder,

    /// <summary>At the elbow.</summary>
    Elbow,
}

/// <summary>What people lift by hand now and then, with both hands and close to the body: a filter, not a legal limit.</summary>
public static class HandLift
{
    /// <summary>Mass above which a piece is marked for two people [kg].</summary>
    public const double OneManKg = 25;

    /// <summary>Mass above which a piece is marked for a hoist [kg].</summary>
    public const double TwoMenKg = 50;

    /// <summary>Mass for one man.</summary>
    /// <param name="height">Where his hands are.</param>
    /// <returns>Mass [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such height.</exception>
    /// <source>UK Health and Safety Executive, filter for lifting by hand</source>
    public static double ManKg(LiftHeight height) =>
        height switch
        {
            LiftHeight.Elbow => 25,
            LiftHeight.KnuckleOrShoulder => 20,
            LiftHeight.LowOrHigh => 10,
            _ => throw new ArgumentOutOfRangeException(nameof(height), height, "There is no such height."),
        };

    /// <summary>Mass for one woman.</summary>
    /// <param name="height">Where her hands are.</param>
    /// <returns>Mass [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such height.</exception>
    /// <source>UK Health and Safety Executive, filter for lifting by hand</source>
    public static double WomanKg(LiftHeight height) =>
        height switch
        {
            LiftHeight.Elbow => 16,
            LiftHeight.KnuckleOrShoulder => 13,
            LiftHeight.LowOrHigh => 7,
            _ => throw new ArgumentOutOfRangeException(nameof(height), height, "There is no such height."),
        };

    /// <summary>Mass for several people who lift together.</summary>
    /// <param name="singleKg">What each of them may lift alone [kg], 0 to 50.</param>
    /// <param name="peopleCount">How many, 1 to 20; more than three are taken as well as three.</param>
    /// <returns>Mass [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside a range, or NaN.</exception>
    /// <source>Two thirds of the sum for two, half of it for three; from memory. Beyond three: judgement</source>
    public static double TeamKg(double singleKg, int peopleCount)
    {
        Within.Require(singleKg, 0, 50, "kg");
        Within.RequireCount(peopleCount, 1, 20);
        return singleKg
            * peopleCount
            * (
                peopleCount switch
                {
                    1 => 1,
                    2 => 2.0 / 3,
                    _ => 0.5,
                }
            );
    }
}
