namespace Shaduf.Station;

/// <summary>
/// At which levels of the tank the pump and the outlet stop and start again, as shares of the useful volume. Between
/// stop and start lies the hysteresis, without which a switch would chatter.
/// </summary>
/// <param name="RestartShare">The pump stops when the tank is full and starts again when the level has fallen to this share, 0 to 1; 1 is a float valve, which throttles and never stops.</param>
/// <param name="CloseShare">The outlet closes when the level has fallen to this share, 0 to 1; 0 is an outlet that stays open.</param>
/// <param name="ReopenShare">The closed outlet opens again at this share, from <paramref name="CloseShare"/> to 1.</param>
public readonly record struct TankStops(double RestartShare, double CloseShare, double ReopenShare)
{
    /// <summary>A float valve at the inlet and an open outlet.</summary>
    public static TankStops None { get; } = new(1, 0, 0);

    /// <summary>The stops of a brief.</summary>
    /// <param name="tank">The tank of the brief.</param>
    /// <param name="survey">Settled figures.</param>
    /// <returns>The stops.</returns>
    public static TankStops Of(TankBrief tank, Survey survey) =>
        new(survey["tank-restart"], tank.LowStop?.CloseShare ?? 0, tank.LowStop?.ReopenShare ?? 0);
}
