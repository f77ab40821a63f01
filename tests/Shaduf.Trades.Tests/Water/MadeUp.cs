using CsCheck;
using Shaduf.Water;

namespace Shaduf.Trades.Tests.Water;

internal static class MadeUp
{
    // A made-up pump and system of every size a station may have.
    public static readonly Gen<PumpCurve> AnyPump = Gen.Select(
        Gen.Double[10, 300],
        Gen.Double[0, 0.4],
        Gen.Double[0.0003, 0.03],
        Gen.Double[0.3, 0.8],
        Pump
    );

    public static readonly Gen<LiftSystem> AnyLift = Gen.Select(
        Gen.Double[0, 200],
        Gen.Double[0, 20_000],
        Gen.Double[0.03, 0.15],
        Gen.Double[0, 3000],
        (statics, aquifer, bore, length) =>
            new LiftSystem(
                statics,
                StepDrawdown.FromSingle(0.001, aquifer * 0.001),
                [new(bore, 1e-5, length, 10)],
                1,
                0.9e-6
            )
    );

    public static PumpCurve Pump(double headM, double linearShare, double noHeadFlow, double best) =>
        PumpCurve.Fit([
            .. new double[] { 0, 0.2, 0.4, 0.6, 0.8, 0.95 }.Select(x => new PumpPoint(
                x * noHeadFlow,
                headM * (1 - (linearShare * x) - ((1 - linearShare) * x * x)),
                best * (1 - Math.Pow(Math.Abs((x / 0.6) - 1), 1.8))
            )),
        ]);
}
