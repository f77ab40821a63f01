namespace Shaduf.Station.Tests;

/// <summary>One wrong figure in a brief gives one line, at its place, that says what is accepted there.</summary>
public sealed class FieldErrorTests
{
    [Theory]
    [InlineData(
        "latitude: -2.10 deg",
        "latitude: 95 deg",
        "15:13: site.latitude: 95 deg is out of range; -65 deg to 65 deg is accepted"
    )]
    [InlineData("  latitude: -2.10 deg\n", "", "15:3: site.latitude: missing; 'latitude: ...' is needed")]
    [InlineData("latitude: -2.10 deg", "latitude:", "15:3: site.latitude: empty; 'latitude: ...' is needed")]
    [InlineData(
        "depth: 110 m",
        "depth: -110 m",
        "56:10: source.depth: -110 m is out of range; 1 m to 700 m, or 'unknown' is accepted"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: 110",
        "56:10: source.depth: '110' has no unit; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: 110 L",
        "56:10: source.depth: 'L' is not a unit of length here; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: 110,5 m",
        "56:10: source.depth: '110,5 m' has a comma: write the decimal mark as a point, and no thousands mark; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: about 110 m",
        "56:10: source.depth: 'about 110 m' is not a number with a unit; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: [110 m]",
        "56:10: source.depth: a group or a list; a single value of at most 250 characters is accepted"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: 1e999 m",
        "56:10: source.depth: '1e999' is not a number that can be meant; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: 1e308 km",
        "56:10: source.depth: '1e308' is not a number that can be meant; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData(
        "waterTemperature: 24 degC",
        "waterTemperature: 1e308 degF",
        "67:21: source.waterTemperature: '1e308' is not a number that can be meant; 5 degC to 40 degC, or 'unknown' is accepted, in degC, °C, C, degF, °F"
    )]
    [InlineData(
        "depth: 110 m",
        "depth: .nan",
        "56:10: source.depth: '.' is not a number that can be meant; 1 m to 700 m, or 'unknown' is accepted, in m, mm, cm, km, ft, in"
    )]
    [InlineData("depth: 110 m", "dept: 110 m", "56:3: source.dept: no such field; did you mean 'depth'?")]
    [InlineData(
        "depth: 110 m",
        "xyzzy: 110 m",
        "56:3: source.xyzzy: no such field; bucketTest, casing, constantTest, depth, drillersFigure, dryDays, licence, pumpSetting, restLevel, screens, seal, seasonalFall, stepTime, steps, surface, testedYield, waterTemperature, yieldShare are accepted"
    )]
    [InlineData(
        "growth: 1.5 %/year",
        "growth: 90 %/year",
        "45:11: uses.growth: 90 %/year is out of range; -5 %/year to 15 %/year, or 'unknown' is accepted"
    )]
    [InlineData(
        "people: { count: 980, each: 20 L/d }",
        "people: { count: 9.5, each: 20 L/d }",
        "48:20: uses.people.count: '9.5' is not a whole number in range; 1 to 200000 is accepted"
    )]
    [InlineData(
        "people: { count: 980, each: 20 L/d }",
        "people: { count: unknown, each: 20 L/d }",
        "48:20: uses.people.count: 'unknown' is not a whole number in range; 1 to 200000 is accepted"
    )]
    [InlineData(
        "people: { count: 980, each: 20 L/d }",
        "people: 980",
        "48:11: uses.people: not a group of fields; indented 'name: value' lines are accepted"
    )]
    [InlineData(
        "people: { count: 980, each: 20 L/d }",
        "people: { count: 980, pattern: scholl }",
        "48:34: uses.people.pattern: 'scholl' is not a draw pattern; did you mean 'school'?"
    )]
    [InlineData(
        "soil: clay",
        "soil: mud",
        "19:9: site.soil: 'mud' is not one of the words; rock, gravel, sand, clay, expansive-clay, fill, peat, loess, unknown is accepted"
    )]
    [InlineData(
        "issued: 2026-03-02",
        "issued: 2.3.2026",
        "12:11: station.issued: '2.3.2026' is not a date; a date as 2026-03-01 is accepted"
    )]
    [InlineData(
        "animal: cattle, count: 70, each: 20 L/d",
        "animal: yak, count: 70",
        "52:17: uses.livestock[1].animal: no default use is known for 'yak'; cattle, camel, donkey, goat, sheep, calf, growing cattle, finishing cattle, heifer in calf, dry cow, cow in milk, bull, horse, pig, poultry, or a field 'each', is accepted"
    )]
    [InlineData(
        "kind: elbow 90, count: 6",
        "kind: elbow 91, count: 6",
        "83:15: lift.fittings[4].kind: 'elbow 91' is not in the table; did you mean 'elbow 90'?"
    )]
    [InlineData(
        "kind: elbow 90, count: 6",
        "kind: elbow 45, count: 6",
        "84:15: lift.fittings[5].kind: 'elbow 45' stands twice; one line for each kind, with its count, is accepted"
    )]
    [InlineData(
        "    dec: { sun: 5.5 kWh/m2/d, air: 22.1 degC }\n",
        "",
        "30:5: site.months.dec: missing; 'dec: ...' is needed"
    )]
    [InlineData(
        "dec: { sun: 5.5 kWh/m2/d, air: 22.1 degC }",
        "dec:",
        "41:5: site.months.dec: empty; 'dec: ...' is needed"
    )]
    [InlineData(
        "dec: { sun: 5.5 kWh/m2/d, air: 22.1 degC }",
        "dec: { sun: 9.9 kWh/m2/d }",
        "41:17: site.months.dec.sun: 9.9 kWh/m2/d cannot be (the sun above the air gives 10.12); 0.56 to 8 kWh/m2/d is accepted there"
    )]
    [InlineData(
        "utcOffset: 3 h",
        "utcOffset: -9 h",
        "18:14: site.utcOffset: -9 h does not belong to longitude 34.8 deg; an offset within 4 h of 2.3 h is accepted"
    )]
    [InlineData(
        "recordLow: 9 degC",
        "recordLow: 38 degC",
        "26:14: site.recordLow: above the record high; a figure below recordHigh is accepted"
    )]
    [InlineData(
        "tankInlet: 1300.4 m",
        "tankInlet: 1290 m",
        "77:14: lift.tankInlet: 1290 m is below the ground at the tank (1297 m); 1297 to 1327 m is accepted"
    )]
    [InlineData(
        "tankInlet: 1300.4 m",
        "tankInlet: 1340 m",
        "77:14: lift.tankInlet: 1340 m is far above the ground at the tank (1297 m); 1297 to 1327 m is accepted"
    )]
    [InlineData(
        "chainage: 330 m",
        "chainage: 130 m",
        "73:19: lift.route[3].chainage: 130 m is not beyond the point before it; more than 150 m is accepted"
    )]
    [InlineData(
        "pumpSetting: choose",
        "pumpSetting: 120 m",
        "66:16: source.pumpSetting: 120 m is below the bottom (110 m); less than 110 m is accepted"
    )]
    [InlineData(
        "pumpSetting: choose",
        "pumpSetting: 40 m",
        "66:16: source.pumpSetting: 40 m is above the water at rest (41.5 m); a depth below the rest level is accepted"
    )]
    [InlineData(
        "restLevel: 41.5 m",
        "restLevel: 111 m",
        "58:14: source.restLevel: 111 m is not above the bottom (110 m); less than 110 m is accepted"
    )]
    [InlineData(
        "flow: 9.0 m3/h, drawdown: 9.9 m",
        "flow: 9.0 m3/h, drawdown: 5.0 m",
        "64:35: source.steps[3].drawdown: the drawdown does not grow: 5.9 m, then 5 m; a drawdown that grows with the flow is accepted"
    )]
    [InlineData(
        "flow: 9.0 m3/h, drawdown: 9.9 m",
        "flow: 5.0 m3/h, drawdown: 9.9 m",
        "64:15: source.steps[3].flow: the flow does not grow; steps from the smallest flow to the largest are accepted"
    )]
    [InlineData(
        "flow: 10.5 m3/h, drawdown: 12.2 m",
        "flow: 10.5 m3/h, drawdown: 72.2 m",
        "65:36: source.steps[4].drawdown: the deepest drawdown lies below the bottom; drawdowns that end above the bottom are accepted"
    )]
    [InlineData(
        "module: module-410",
        "module: module-411",
        "103:11: array.module: there is no card of a module named 'module-411'; did you mean 'module-410'?"
    )]
    [InlineData(
        "mainPipe: pe-63-pn10",
        "mainPipe: gi-50",
        "93:13: taps.mainPipe: there is no card of a tap pipe named 'gi-50'; pe-32-pn16, pe-40-pn16, pe-63-pn10, pe-63-pn16, pe-75-pn16 are accepted"
    )]
    [InlineData(
        "branch: 310 m, pipe: pe-40-pn16",
        "branch: 310 m, pipe: pe-40-pn61",
        "100:70: taps.points[6].pipe: there is no card of a tap pipe named 'pe-40-pn61'; did you mean 'pe-40-pn16'?"
    )]
    [InlineData(
        "light: light-20",
        "light: lantern",
        "114:10: guard.light: there is no card of a light named 'lantern'; light-20 are accepted"
    )]
    [InlineData(
        "fence: yes",
        "lightning: V",
        "115:14: guard.lightning: 'V' is not one of the words; choose, none, I, II, III, IV, unknown is accepted"
    )]
    [InlineData(
        "fence: yes",
        "rodHeight: 100 m",
        "115:14: guard.rodHeight: 100 m is out of range; 2 m to 60 m, or 'choose' is accepted"
    )]
    [InlineData(
        "fence: yes",
        "lightning: none\n  rodHeight: 6 m",
        "116:14: guard.rodHeight: no lightning rods are wanted; a class in guard.lightning, or no rodHeight, is accepted"
    )]
    [InlineData(
        "fence: yes",
        "flashDensity: -3 /km2/year",
        "115:17: guard.flashDensity: -3 /km2/year is out of range; 0 /km2/year to 150 /km2/year, or 'unknown' is accepted"
    )]
    [InlineData(
        "  light: light-20\n",
        "  lightPole: 6 m\n",
        "114:14: guard.lightPole: there is no night light; a card in guard.light, or no such field, is accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: maybe",
        "115:10: guard.fence: 'maybe' is not one of the words; yes, no, unknown is accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: yes\n  fenceLine: [{ bearing: 45 deg, distance: 9 m }, { bearing: 180 deg, distance: 9 m }, { bearing: 315 deg, distance: 9 m }, { bearing: 135 deg, distance: 9 m }]",
        "116:88: guard.fenceLine[3]: the side from point 3 to 4 meets the side from point 1 to 2, 2.6 m east and 2.6 m south of the middle of the front rack's low edge; a line that crosses or touches itself nowhere is accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: yes\n  fenceLine: [{ bearing: 45 deg, distance: 9 m }, { bearing: 225 deg, distance: 9 m }]",
        "116:14: guard.fenceLine: 2 points; three points at least are accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: yes\n  fenceLine: [{ bearing: 0 deg, distance: 9 m }, { bearing: 4 deg, distance: 9 m }, { bearing: 180 deg, distance: 9 m }]",
        "116:15: guard.fenceLine[1]: the next point is 0.63 m away; 1 m at least is accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: yes\n  gate: { side: 4 }\n  fenceLine: [{ bearing: 0 deg, distance: 9 m }, { bearing: 90 deg, distance: 9 m }, { bearing: 180 deg, distance: 9 m }]",
        "116:17: guard.gate.side: the line has 3 sides; 1 to 3, or 'choose' is accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: yes\n  gate: { side: 1, width: 6 m }\n  fenceLine: [{ bearing: 0 deg, distance: 4 m }, { bearing: 90 deg, distance: 4 m }, { bearing: 180 deg, distance: 9 m }]",
        "116:17: guard.gate.side: side 1 is 5.7 m long; a side of 7.0 m at least is accepted: the gate and half a metre beside each post"
    )]
    [InlineData(
        "fence: yes",
        "fence: no\n  gate: { width: 4 m }",
        "116:9: guard.gate: there is no fence; 'fence: yes', or no gate, is accepted"
    )]
    [InlineData(
        "fence: yes",
        "fence: yes\n  fenceMargin: 2 m\n  fenceLine: [{ bearing: 0 deg, distance: 9 m }, { bearing: 90 deg, distance: 9 m }, { bearing: 180 deg, distance: 9 m }]",
        "116:16: guard.fenceMargin: guard.fenceLine says where the fence stands; fenceLine or fenceMargin is accepted, not both"
    )]
    [InlineData(
        "rows: choose",
        "rows: 9",
        "110:9: rack.rows: '9' is not a whole number in range; 1 to 4, or 'choose' is accepted"
    )]
    [InlineData(
        "columns: choose",
        "columns: choose\n  mix: 1:2:5",
        "112:8: rack.mix: '1:2:5' is not in the table; did you mean '1:2:4'?"
    )]
    [InlineData(
        "columns: choose",
        "columns: choose\n  angle: L50x5",
        "112:10: rack.angle: no angle makes a channel for module-410: too long to end above the other flat leg are L50x5 by 12 mm; an angle card with legs of 27 to 36 mm at 3 mm thickness or 28 to 37 mm at 4 mm thickness, or 'rack.type: clamped-rails' is accepted"
    )]
    [InlineData(
        "columns: choose",
        "columns: choose\n  rows: 4",
        "112:3: rack.rows: stands twice (first on line 110); each field once is accepted"
    )]
    [InlineData(
        "people: { count: 980, each: 20 L/d }",
        "people: { count: 200000, each: 500 L/d }",
        "44:3: uses: 114343 m3 a day are asked for in the design year; more than 0 and at most 20000 m3 a day is accepted"
    )]
    [InlineData(
        "cards: cards",
        "cards: nowhere",
        "3:8: cards: there is no folder 'nowhere' beside the brief; a folder of cards is accepted"
    )]
    [InlineData(
        "prices: prices.yaml",
        "prices: nowhere.yaml",
        "4:9: prices: there is no file 'nowhere.yaml' beside the brief; a price book is accepted"
    )]
    [InlineData(
        "prices: prices.yaml",
        "prices: .",
        "4:9: prices: there is no file '.' beside the brief; a price book is accepted"
    )]
    [InlineData(
        "cards: cards",
        "cards: [a, b]",
        "3:8: cards: a group or a list; a single value of at most 250 characters is accepted"
    )]
    [InlineData(
        "name: Hilltop village",
        "name: >-\n    one\n\n    two",
        "7:9: station.name: too long, or holds control characters; at most 50 characters are accepted"
    )]
    [InlineData(
        "revision: A",
        "revision: A very long name of a revision",
        "11:13: station.revision: too long, or holds control characters; at most 8 characters are accepted"
    )]
    public void One_wrong_figure_gives_one_line_at_its_place(string right, string wrong, string expected)
    {
        using var scratch = new Scratch();
        var text = Specimen.Brief;
        Assert.Contains(right, text, StringComparison.Ordinal);
        var actual = string.Join('\n', scratch.Errors(text.Replace(right, wrong, StringComparison.Ordinal)));
        Assert.True(actual == expected, actual);
    }

    [Theory]
    [InlineData("rows: choose", "rows: choose\n  tubes: 1", "rack.tubes: '1' is not a whole number in range; 2 to 12")]
    [InlineData("rows: choose", "rows: choose\n  lines: 3", "rack.lines: '3' is not a whole number in range; 1 to 2")]
    [InlineData(
        "rows: choose",
        "rows: choose\n  groundFall: { along: 30 % }",
        "rack.groundFall.along: 30 % is out of range; -20 % to 20 %"
    )]
    [InlineData("rows: choose", "rows: choose\n  type: slide", "rack.type: 'slide' is not one of")]
    [InlineData(
        "rows: choose",
        "rows: choose\n  rail: L99x9",
        "rack.rail: there is no card of a square tube or equal angle"
    )]
    [InlineData("tilt: choose", "tilt: 61 deg", "array.tilt: 61 deg is out of range; 0 deg to 60 deg")]
    public void A_rack_out_of_bounds_names_the_field(string right, string wrong, string expected)
    {
        using var scratch = new Scratch();
        var errors = scratch.Errors(Specimen.Brief.Replace(right, wrong, StringComparison.Ordinal));
        Assert.Contains(expected, string.Join('\n', errors), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rack_that_cannot_be_braced_is_refused_before_the_design()
    {
        using var scratch = new Scratch();
        var text = Specimen
            .Brief.Replace("tilt: choose", "tilt: 0 deg", StringComparison.Ordinal)
            .Replace("rows: choose", "rows: 4\n  lowEdge: 0.3 m", StringComparison.Ordinal);
        Assert.Equal(
            [
                "111:12: rack.lowEdge: so near to the ground, with so many rows, so little tilt or such thick tubes, the columns cannot be braced: lower strut (B): it would not rise from the column to the tube; a higher low edge, fewer rows, a steeper tilt or thinner tubes are accepted",
            ],
            scratch.Errors(text)
        );
    }

    [Fact]
    public void Every_error_of_a_file_is_listed_in_one_go_in_file_order()
    {
        using var scratch = new Scratch();
        var text = Specimen
            .Brief.Replace("latitude: -2.10 deg", "latitude: 95 deg", StringComparison.Ordinal)
            .Replace("utcOffset: 3 h", "utcOffset: 3", StringComparison.Ordinal)
            .Replace("soil: clay", "soil: clay\n  soil: sand", StringComparison.Ordinal)
            .Replace("casing: 152 mm", "casng: 152 mm", StringComparison.Ordinal)
            .Replace("flow: 9.0 m3/h, drawdown: 9.9 m", "flow: 9.0 m3/h, drawdown: 5.0 m", StringComparison.Ordinal)
            .Replace("tankInlet: 1300.4 m", "tankInlet: 1.3 m", StringComparison.Ordinal)
            .Replace("module: module-410", "module: module-420", StringComparison.Ordinal)
            .Replace("tax: 16 %", "tax: 16 %\n  discount: 3 %", StringComparison.Ordinal);
        Assert.Equal(
            [
                "15:13: site.latitude",
                "18:14: site.utcOffset",
                "20:3: site.soil",
                "58:3: source.casng",
                "65:35: source.steps[3].drawdown",
                "78:14: lift.tankInlet",
                "104:11: array.module",
                "123:3: money.discount",
            ],
            scratch.Errors(text).Select(error => string.Join(':', error.Split(':')[..3]))
        );
    }

    [Fact]
    public void A_missing_group_is_one_error_and_no_shower_of_its_fields()
    {
        using var scratch = new Scratch();
        Assert.Equal(
            [
                "1:1: station: missing; 'station: ...' is needed",
                "1:1: site: missing; 'site: ...' is needed",
                "1:1: uses: missing; 'uses: ...' is needed",
                "1:1: source: missing; 'source: ...' is needed",
                "1:1: lift: missing; 'lift: ...' is needed",
            ],
            scratch.Errors("cards: cards\nprices: prices.yaml\n")
        );
    }
}
