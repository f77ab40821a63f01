using System.Runtime.Versioning;

namespace Shaduf.Station.Tests;

/// <summary>Cards and prices that contradict themselves, one another or the brief are refused before any design.</summary>
public sealed class CardErrorTests
{
    [Theory]
    [InlineData(
        "lift-6x130",
        "flow: 0.00 m3/h, head: 1",
        "flow: 0.00 m3/h, head: -1",
        "cards/lift-6x130.yaml:7:30: curve[1].head: -166.4 m is out of range; 0 m to 1000 m is accepted"
    )]
    [InlineData(
        "lift-6x130",
        "card: pump",
        "card: pmup",
        "cards/lift-6x130.yaml:2:7: card: 'pmup' is not one of the words; module, pump, drive, pipe, cable, section, tank, light, isolator, fuse, arrester, filter is accepted"
    )]
    [InlineData(
        "lift-6x130",
        "head: 164.1 m, efficiency: 23.8 % }\n  - { flow: 3.00 m3/h, head: 157.3 m, efficiency: 42.1 % }\n  - { flow: 4.50 m3/h, head: 145.9 m",
        "head: 170 m, efficiency: 23.8 % }\n  - { flow: 3.00 m3/h, head: 157.3 m, efficiency: 42.1 % }\n  - { flow: 4.50 m3/h, head: 160 m",
        "cards/lift-6x130.yaml:10:30: curve[4].head: the head rises for the second time, from 157.3 m to 160 m; heads that rise once at most, at the start, and fall from there are accepted"
    )]
    [InlineData(
        "lift-6x130",
        "head: 114.0 m",
        "head: 0 m",
        "cards/lift-6x130.yaml:12:30: curve[6].head: the curve crosses zero and goes on; no head at the last point only is accepted"
    )]
    [InlineData(
        "lift-6x130",
        "efficiency: 59.0 %",
        "efficiency: 59.0 %, power: 3.6 kW",
        "cards/lift-6x130.yaml:11:51: curve[5].efficiency: both efficiency and power are given; one of the two is accepted"
    )]
    [InlineData(
        "lift-6x130",
        "head: 95.1 m",
        "frequency: 20 Hz, head: 95.1 m",
        "cards/lift-6x130.yaml:13:35: curve[7].frequency: 20 Hz is 40 % of the rated frequency; 25 to 60 Hz, where the laws of speed hold, is accepted"
    )]
    [InlineData("lift-6x130", "card: pump\n", "", "cards/lift-6x130.yaml:2:1: card: missing; 'card: ...' is needed")]
    [InlineData(
        "lift-6x130",
        "planning: yes",
        "planning: true",
        "cards/lift-6x130.yaml:5:11: planning: 'true' is not one of the words; yes, no is accepted"
    )]
    [InlineData(
        "lift-6x130",
        "lowestFrequency: 30 Hz",
        "lowestFrequency: 4 Hz",
        "cards/lift-6x130.yaml:21:18: lowestFrequency: the card contradicts itself: the lowest frequency is not between a tenth of the rated one and the rated one; figures of one data sheet are accepted"
    )]
    [InlineData(
        "lift-6x130",
        "lowestFrequency: 30 Hz",
        "lowestFrequency: 60 Hz",
        "cards/lift-6x130.yaml:21:18: lowestFrequency: the card contradicts itself: the lowest frequency is not between a tenth of the rated one and the rated one; figures of one data sheet are accepted"
    )]
    [InlineData(
        "lift-6x130",
        "motorDiameter: 96 mm",
        "motorDiameter: 130 mm",
        "cards/lift-6x130.yaml:22:16: motorDiameter: the card contradicts itself: the motor is wider than the whole pump; figures of one data sheet are accepted"
    )]
    [InlineData(
        "lift-6x130",
        "motorPower: 4 kW",
        "motorPower: 2 kW",
        "cards/lift-6x130.yaml:15:13: motorPower: the card contradicts itself: the pump takes 4.52 kW at the shaft and the motor gives 2.00 kW; figures of one data sheet are accepted"
    )]
    [InlineData(
        "module-410",
        "cellsInSeries: 54",
        "cellsInSeries: 108",
        "cards/module-410.yaml:23:16: cellsInSeries: the card contradicts itself: 37.2 V of 108 cells in series is 0.34 V a cell, and crystalline silicon gives 0.55 V to 0.76 V; of a half-cut module the cells of one half count; figures of one data sheet are accepted"
    )]
    [InlineData(
        "module-410",
        "cells: silicon-p",
        "cells: thin film",
        "cards/module-410.yaml:22:8: cells: 'thin film' is not one of the words; silicon-p, silicon-n, unknown is accepted"
    )]
    [InlineData(
        "module-410",
        "voltageCoefficient: -0.26 %/K",
        "voltageCoefficient: 0 %/K",
        "cards/module-410.yaml:12:21: voltageCoefficient: the card contradicts itself: 54 cells in series whose voltage falls like this have an ideality of 0.54, and silicon has 0.7 to 2: look at the coefficient and at the count of cells; figures of one data sheet are accepted"
    )]
    [InlineData(
        "module-410",
        "workingVoltage: 31.2 V\nworkingCurrent: 13.14 A",
        "workingVoltage: 34.2 V\nworkingCurrent: 11.99 A",
        "cards/module-410.yaml:6:8: power: the card contradicts itself: no module has these figures: with this open-circuit voltage, short-circuit current and voltage coefficient 410.1 W come at 30.9 V and 13.29 A, not at 34.2 V and 11.99 A; figures of one data sheet are accepted"
    )]
    [InlineData(
        "module-410",
        "power: 410 W",
        "power: 500 W",
        "cards/module-410.yaml:6:8: power: the card contradicts itself: the maximum power 500 W is not its voltage times its current, 410 W, within 1 %; figures of one data sheet are accepted\ncards/module-410.yaml:6:8: power: the card contradicts itself: the fill factor is 0.967; crystalline silicon lies between 0.65 and 0.86; figures of one data sheet are accepted"
    )]
    [InlineData(
        "module-410",
        "shortCircuit: 13.9 A",
        "shortCircuit: 13 A",
        "cards/module-410.yaml:6:8: power: the card contradicts itself: the short-circuit current 13 A is not above the current at maximum power 13.14 A; figures of one data sheet are accepted"
    )]
    [InlineData(
        "module-410",
        "voltageCoefficient: -0.26 %/K",
        "voltageCoefficient: 0.26 %/K",
        "cards/module-410.yaml:12:21: voltageCoefficient: 0.26 %/K is out of range; -1 %/K to 0 %/K is accepted"
    )]
    [InlineData(
        "module-410",
        "length: 1722 mm",
        "length: 1.1 m",
        "cards/module-410.yaml:18:8: width: the card contradicts itself: the short side is longer than the long side; figures of one data sheet are accepted"
    )]
    [InlineData(
        "drive-400-10",
        "windowHigh: 900 V",
        "windowHigh: 1100 V",
        "cards/drive-400-10.yaml:8:13: windowHigh: the card contradicts itself: the window does not lie between its low end and the highest voltage at the input; figures of one data sheet are accepted"
    )]
    [InlineData(
        "drive-400-10",
        "windowLow: 350 V",
        "windowLow: 950 V",
        "cards/drive-400-10.yaml:8:13: windowHigh: the card contradicts itself: the window does not lie between its low end and the highest voltage at the input; figures of one data sheet are accepted"
    )]
    [InlineData(
        "drive-400-10",
        "largestShortCircuit: 36 A",
        "largestShortCircuit: 12 A",
        "cards/drive-400-10.yaml:9:22: largestShortCircuit: the card contradicts itself: an array that works at 18 A short-circuits at more than 12 A; figures of one data sheet are accepted"
    )]
    [InlineData(
        "drive-400-10",
        "largestVoltage: 1000 V\nwindowLow: 350 V\nwindowHigh: 900 V",
        "largestVoltage: 450 V\nwindowLow: 350 V\nwindowHigh: 440 V",
        "cards/drive-400-10.yaml:15:18: motorVoltageLow: the card contradicts itself: a motor of 380 V needs 537 V of bus for full speed, and the input takes 450 V at most; figures of one data sheet are accepted"
    )]
    [InlineData(
        "drive-400-10",
        "cableWithSlopeFilter: 150 m",
        "cableWithSlopeFilter: 20 m",
        "cards/drive-400-10.yaml:18:23: cableWithSlopeFilter: the card contradicts itself: a filter does not shorten the cable that it may feed; figures of one data sheet are accepted"
    )]
    [InlineData(
        "lift-6x130",
        "motorCurrent: 9.0 A",
        "motorCurrent: 3.1 A",
        "cards/lift-6x130.yaml:15:13: motorPower: the card contradicts itself: 400 V and 3.1 A with this efficiency and power factor give 1.37 kW at the shaft, and the card says 4.00 kW; figures of one data sheet are accepted"
    )]
    [InlineData(
        "drop-4",
        "ampacity: 27 A",
        "ampacity: 72 A",
        "cards/drop-4.yaml:9:11: ampacity: the card contradicts itself: 72 A, and copper of 4 mm2 carries 42 A at most, free in air; figures of one data sheet are accepted"
    )]
    [InlineData(
        "arrester-dc1-1200",
        "impulse: 12.5 kA",
        "impulse: 0 kA",
        "cards/arrester-dc1-1200.yaml:11:10: impulse: the card contradicts itself: type 1 is tested with an impulse current, and it has none; figures of one data sheet are accepted"
    )]
    [InlineData(
        "pe-63-pn16",
        "bore: 50.0 mm",
        "bore: 65 mm",
        "cards/pe-63-pn16.yaml:10:7: bore: the card contradicts itself: the wall is not 0.5 mm to 200 mm thick; figures of one data sheet are accepted"
    )]
    [InlineData(
        "pe-32-pn16",
        "roughness: 0.01 mm",
        "roughness: 3 mm",
        "cards/pe-32-pn16.yaml:11:12: roughness: the card contradicts itself: more than a tenth of the bore; figures of one data sheet are accepted"
    )]
    [InlineData(
        "pv-4",
        "size: 4 mm2",
        "size: 5 mm2",
        "cards/pv-4.yaml:7:7: size: the card contradicts itself: CopperClass5Tinned has no size 5 mm²; sizes: 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120; figures of one data sheet are accepted"
    )]
    [InlineData(
        "L35x4",
        "wall: 4 mm",
        "wall: 14 mm",
        "cards/L35x4.yaml:8:7: wall: the card contradicts itself: thicknessMm is 14 mm; accepted: 2 to 11.666666666666666 mm; figures of one data sheet are accepted"
    )]
    [InlineData(
        "SHS60x3",
        "wall: 3 mm",
        "wall: 20 mm",
        "cards/SHS60x3.yaml:8:7: wall: the card contradicts itself: wallMm is 20 mm; accepted: 0.5 to 16 mm; figures of one data sheet are accepted"
    )]
    [InlineData(
        "light-20",
        "light: 2400 lm",
        "light: -2400 lm",
        "cards/light-20.yaml:7:8: light: -2400 lm is out of range; 50 lm to 30000 lm is accepted"
    )]
    [InlineData(
        "light-20",
        "lamp: 20 W",
        "lamp: 2 W",
        "cards/light-20.yaml:7:8: light: the card contradicts itself: 1200 lm for each watt, where lamps give 20 to 250; figures of one data sheet are accepted"
    )]
    [InlineData(
        "light-20",
        "moduleVoltage: 18 V",
        "moduleVoltage: 12 V",
        "cards/light-20.yaml:14:16: moduleVoltage: the card contradicts itself: a module that is not above its battery's voltage does not charge it; figures of one data sheet are accepted"
    )]
    [InlineData(
        "light-20",
        "light: 2400 lm\n",
        "light: 2400 lm\nintensity: [{ angle: 0 deg, candela: 100 cd }, { angle: 90 deg, candela: 100 cd }]\n",
        "cards/light-20.yaml:8:12: intensity: the card contradicts itself: the intensities add up to 628 lm, the light is 2400 lm; figures of one data sheet are accepted"
    )]
    [InlineData(
        "light-20",
        "light: 2400 lm\n",
        "light: 2400 lm\nintensity: [{ angle: 10 deg, candela: 700 cd }, { angle: 5 deg, candela: 100 cd }]\n",
        "cards/light-20.yaml:8:12: intensity: the card contradicts itself: the angles do not begin at 0 deg and rise; figures of one data sheet are accepted"
    )]
    [InlineData(
        "tank-20",
        "useful: ",
        "useful: 9",
        "cards/tank-20.yaml:7:9: useful: 918.8 m3 is out of range; 0.1 m3 to 500 m3 is accepted"
    )]
    [InlineData(
        "tank-20",
        "name: tank-20",
        "name: light-20",
        "cards/tank-20.yaml:3:7: name: 'light-20' is already the name of another card or item; a name of its own is accepted"
    )]
    [InlineData(
        "tank-20",
        "name: tank-20",
        "name: sand",
        "cards/tank-20.yaml:3:7: name: 'sand' is already the name of another card or item; a name of its own is accepted"
    )]
    [InlineData(
        "tank-20",
        "height: ",
        "hight: ",
        "cards/tank-20.yaml:2:1: height: missing; 'height: ...' is needed\ncards/tank-20.yaml:9:1: hight: no such field; did you mean 'height'?"
    )]
    public void A_card_that_contradicts_itself_gives_one_line(string card, string right, string wrong, string expected)
    {
        using var scratch = new Scratch();
        var text = Specimen.Cards[card];
        Assert.Contains(right, text, StringComparison.Ordinal);
        scratch.WriteCards((card, text.Replace(right, wrong, StringComparison.Ordinal)));
        var actual = string.Join('\n', scratch.Errors(Specimen.Brief));
        Assert.True(actual == expected, actual);
    }

    [Theory]
    [InlineData(
        "  - { item: sand, unit: m3, rate: 310, remark: at the site }",
        "  - { item: sand, unit: m3, rate: -310 }",
        "prices.yaml:85:35: rates[79].rate: -310 is out of range; 0 to 1000000000, or 'unknown' is accepted"
    )]
    [InlineData(
        "  - { item: stone, unit: m3,",
        "  - { item: sand, unit: m3,",
        "prices.yaml:86:13: rates[80].item: 'sand' has a rate already; one rate an item is accepted"
    )]
    [InlineData(
        "item: sand, unit: m3",
        "item: sand, unit: kg",
        "prices.yaml:85:25: rates[79].unit: 'sand' is measured in m3, not in kg; m3 is accepted"
    )]
    [InlineData(
        "item: lift-4x60, unit: nr",
        "item: lift-4x60, unit: m",
        "prices.yaml:10:30: rates[4].unit: 'lift-4x60' is measured in nr, not in m; nr is accepted"
    )]
    [InlineData(
        "rate: 8600",
        "rate: 8.600,00",
        "prices.yaml:10:46: rates[4].00: no such field; inside braces a comma ends a value: write the decimal mark as a point"
    )]
    [InlineData(
        "rate: 8600",
        "rate: 8600 USD",
        "prices.yaml:10:40: rates[4].rate: 'USD' is not a unit of number here; 0 to 1000000000, or 'unknown' is accepted"
    )]
    [InlineData(
        "minorDigits: 2",
        "minorDigits: 7",
        "prices.yaml:4:14: minorDigits: '7' is not a whole number in range; 0 to 4 is accepted"
    )]
    [InlineData(
        "date: 2026-02-01",
        "date: February",
        "prices.yaml:5:7: date: 'February' is not a date; a date as 2026-03-01 is accepted"
    )]
    public void A_price_book_that_is_wrong_gives_one_line(string right, string wrong, string expected)
    {
        using var scratch = new Scratch();
        var text = Specimen.Prices;
        Assert.Contains(right, text, StringComparison.Ordinal);
        scratch.Write("prices.yaml", text.Replace(right, wrong, StringComparison.Ordinal));
        var actual = string.Join('\n', scratch.Errors(Specimen.Brief));
        Assert.True(actual == expected, actual);
    }

    [Fact]
    public void An_empty_folder_of_cards_names_every_kind_that_is_missing()
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch.PathOf("cards"));
        var errors = scratch.Errors(Specimen.Brief);
        Assert.Contains(
            "3:8: cards: there is no card of a submersible pump; at least one card of each kind is needed",
            errors
        );
        Assert.Contains(
            "3:8: cards: there is no card of a drive for any of the pumps; at least one card of each kind is needed",
            errors
        );
        Assert.Contains(
            "103:11: array.module: there is no card of a module named 'module-410'; the folder of cards has none",
            errors
        );
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void A_folder_that_may_not_be_read_is_refused()
    {
        Assert.SkipWhen(
            OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess,
            "this user may read everything"
        );
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch.PathOf("cards"), UnixFileMode.None);
        Assert.Equal(
            ["cards:1:1: file: the folder cannot be read; a folder that this user may read is accepted"],
            scratch.Errors(Specimen.Brief)
        );
    }

    [Fact]
    public void Errors_of_brief_cards_and_prices_are_listed_together()
    {
        using var scratch = new Scratch();
        scratch.WriteCards(("a-tank", "card: tank\nname: a-tank\n"));
        scratch.Write("prices.yaml", "name: none\ncurrency: X\nminorDigits: 0\nrates: []\n");
        var errors = scratch.Errors(
            Specimen.Brief.Replace("latitude: -2.10 deg", "latitude: 95 deg", StringComparison.Ordinal)
        );
        Assert.Equal(
            [
                "15:13: site.latitude: 95 deg is out of range; -65 deg to 65 deg is accepted",
                "cards/a-tank.yaml:1:1: about: missing; 'about: ...' is needed",
                "cards/a-tank.yaml:1:1: planning: missing; 'planning: ...' is needed",
                "cards/a-tank.yaml:1:1: volume: missing; 'volume: ...' is needed",
                "cards/a-tank.yaml:1:1: useful: missing; 'useful: ...' is needed",
                "cards/a-tank.yaml:1:1: diameter: missing; 'diameter: ...' is needed",
                "cards/a-tank.yaml:1:1: height: missing; 'height: ...' is needed",
                "prices.yaml:4:1: rates: 0 entries; a list of 1 to 2000 entries is accepted",
            ],
            errors
        );
    }
}
