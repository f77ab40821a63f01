namespace Shaduf.Money;

/// <summary>The sections of the bill; the value of each is its letter, and there is no letter I.</summary>
public enum BillSection
{
    /// <summary>A: mobilise, supervision, insurance, tests.</summary>
    General = 'A',

    /// <summary>B: source and pump.</summary>
    SourceAndPump = 'B',

    /// <summary>C: pipes, valves, tank.</summary>
    PipesAndTank = 'C',

    /// <summary>D: array modules and electrics.</summary>
    ArrayAndElectrics = 'D',

    /// <summary>E: steelwork: buy, cut, weld, paint, erect.</summary>
    Steelwork = 'E',

    /// <summary>F: ground: excavate, concrete, fill, plinths.</summary>
    Ground = 'F',

    /// <summary>G: light, earthing, lightning.</summary>
    LightAndEarthing = 'G',

    /// <summary>H: fence and gate.</summary>
    FenceAndGate = 'H',

    /// <summary>J: taps and drainage.</summary>
    TapsAndDrainage = 'J',

    /// <summary>K: commissioning, training, spares.</summary>
    Commissioning = 'K',

    /// <summary>L: provisional sums.</summary>
    ProvisionalSums = 'L',
}

/// <summary>One measured quantity with its origin.</summary>
/// <param name="Item">Key of the item in the price book.</param>
/// <param name="Section">Section of the bill.</param>
/// <param name="Description">What it is, in plain words.</param>
/// <param name="Unit">Unit of the bill: m, m2, m3, kg, t, L, nr, set, h, d, wk, sum.</param>
/// <param name="Quantity">Quantity in that unit, 0 to 1000000000.</param>
/// <param name="Origin">Where the quantity comes from: mark list, drawing or formula.</param>
public sealed record QuantityLine(
    string Item,
    BillSection Section,
    string Description,
    string Unit,
    double Quantity,
    string Origin
)
{
    /// <summary>A sum that is agreed and not measured, in the currency of the bill; null where a rate prices the quantity.</summary>
    public decimal? AgreedSum { get; init; }

    /// <summary>What is needed as built, before waste and whole pieces; the quantity itself where nothing is lost.</summary>
    public double NetQuantity { get; init; } = Quantity;

    /// <summary>Share that is bought and not built in: offcuts, spill, and what whole pieces leave over.</summary>
    public double WasteShare => NetQuantity > 0 ? (Quantity / NetQuantity) - 1 : 0;
}
