namespace Shaduf.Working;

/// <summary>One line of a calculation, written so that a person with a pocket calculator can follow it.</summary>
/// <param name="Symbol">What is computed, in the source's own symbol: <c>h_f</c>.</param>
/// <param name="Formula">The formula in symbols: <c>f (L/D) V²/(2g)</c>.</param>
/// <param name="Numbers">The formula with the numbers put in.</param>
/// <param name="Value">The result, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the result; empty for a ratio.</param>
/// <param name="Method">Name of the method, as in docs/methods: <c>water/darcy-weisbach</c>.</param>
/// <param name="Source">Document, year, equation or table.</param>
public sealed record Line(
    string Symbol,
    string Formula,
    string Numbers,
    double Value,
    string Unit,
    string Method,
    string Source
);

/// <summary>The lines of one calculation, in the order a person would do them.</summary>
/// <param name="Title">What is worked out.</param>
/// <param name="Lines">Its lines, in order.</param>
public sealed record WorkingSheet(string Title, IReadOnlyList<Line> Lines);
