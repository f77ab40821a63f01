using System.Text.Json.Nodes;

namespace Shaduf.Station.Tests;

/// <summary>A station with every field of a brief filled in, on a shelf of few cards, so that a run is short.</summary>
internal static class SmallStation
{
    private const string Text = """
        cards: cards
        prices: prices.yaml
        station: { name: Small station, place: P, client: C, builder: B, revision: A, issued: 2026-03-02 }
        site:
          latitude: 8 deg
          longitude: 20 deg
          elevation: 400 m
          utcOffset: 1 h
          soil: clay
          soilResistivity: 200 ohm m
          wind: { speed: 26 m/s, averaging: 10 min, returnPeriod: 50 years, from: map }
          recordLow: 9 degC
          recordHigh: 38 degC
          sunFrom: station
          horizon:
            - { azimuth: 0 deg, elevation: 4 deg }
            - { azimuth: 180 deg, elevation: 6 deg }
          near:
            - { name: wall, bearing: 200 deg, distance: 20 m, bottom: 0.2 m, height: 3 m, width: 6 m }
          months:
            jan: { sun: 5.2 kWh/m2/d, air: 22 degC }
            feb: { sun: 5.2 kWh/m2/d, air: 22 degC }
            mar: { sun: 5.2 kWh/m2/d, air: 22 degC }
            apr: { sun: 5.2 kWh/m2/d, air: 22 degC }
            may: { sun: 5.2 kWh/m2/d, air: 22 degC }
            jun: { sun: 5.2 kWh/m2/d, air: 22 degC }
            jul: { sun: 5.2 kWh/m2/d, air: 22 degC }
            aug: { sun: 5.2 kWh/m2/d, air: 22 degC }
            sep: { sun: 5.2 kWh/m2/d, air: 22 degC }
            oct: { sun: 5.2 kWh/m2/d, air: 22 degC }
            nov: { sun: 5.2 kWh/m2/d, air: 22 degC }
            dec: { sun: 5.2 kWh/m2/d, air: 22 degC }
        uses:
          designYears: 10 years
          growth: 1 %/year
          losses: 10 %
          target: 90 %
          people: { count: 200, each: 20 L/d, pattern: two-peak village }
          school: { count: 60, each: 5 L/d, pattern: school }
          clinic: { outpatients: 5, eachOutpatient: 5 L/d, beds: 2, eachBed: 50 L/d }
          livestock:
            - { animal: goat, count: 40, each: 5 L/d }
          plots:
            - crop: onion
              area: 200 m2
              efficiency: 90 %
              pattern: morning-evening irrigation
              need:
                { jan: 4 mm/d, feb: 4 mm/d, mar: 4 mm/d, apr: 3 mm/d, may: 0 mm/d, jun: 0 mm/d,
                  jul: 0 mm/d, aug: 0 mm/d, sep: 0 mm/d, oct: 2 mm/d, nov: 3 mm/d, dec: 4 mm/d }
          fixed:
            - { name: washing, water: 200 L/d, pattern: daytime-even }
        source:
          depth: 90 m
          casing: 150 mm
          restLevel: 30 m
          seasonalFall: 2 m
          testedYield: 6 m3/h
          drillersFigure: 8 m3/h
          yieldShare: 65 %
          steps:
            - { flow: 2 m3/h, drawdown: 2 m }
            - { flow: 4 m3/h, drawdown: 4.5 m }
            - { flow: 6 m3/h, drawdown: 7.5 m }
          pumpSetting: 60 m
          waterTemperature: 22 degC
        lift:
          route:
            - { chainage: 0 m, elevation: 400 m }
            - { chainage: 200 m, elevation: 406 m, bend: 30 deg }
          tankInlet: 409 m
          tankFull: pressure stop
          cover: 0.8 m
          hazenWilliams: yes
          main: pe-63-pn16
          riser: gi-50
          fittings:
            - { kind: elbow 90, count: 6 }
        tank: { card: tank-33, count: 1, existing: no, stand: 0.5 m }
        taps:
          mainLength: 100 m
          mainPipe: pe-63-pn16
          junction: 402 m
          points:
            - { name: school, elevation: 398 m, branch: 30 m, pipe: pe-32-pn16, flow: 0.2 L/s, needs: 5 m, manifold: no }
        array:
          module: module-410
          tilt: 15 deg
          azimuth: 180 deg
          albedo: 20 %
          stringCable: 12 m
          motorCable: 10 m
          losses: { soiling: 4 %, mismatch: 1 %, firstLight: 1 %, wiring: 2 %, tracking: 2 %, ageing: 0.4 %/year }
        rack:
          rows: 2
          columns: 12
          lowEdge: 1 m
          depthClearance: 3 mm
          rowClearance: 20 mm
          angle: L35x4
          tube: SHS60x3
          column: SHS100x4
          footingSide: 600 mm
          footingDepth: 1200 mm
          mix: "1:2:4"
        guard: { light: light-20, fence: yes, fenceMargin: 3 m, gate: { side: 2, at: 30 %, width: 3 m }, earthRods: 2 }
        money: { contingency: 5 %, overhead: 10 %, markup: 15 %, tax: 10 %, budget: 500000, transport: 50 km }
        """;

    /// <summary>The brief as a tree, to change and to write out again: JSON is YAML.</summary>
    public static JsonNode Brief() => YamlJson.Of(Text);

    /// <summary>The same with every choice of a card left to the design.</summary>
    public static JsonNode OfFreeChoice()
    {
        var brief = Brief();
        brief["lift"]!.AsObject().Remove("main");
        brief["lift"]!.AsObject().Remove("riser");
        brief["array"]!.AsObject().Remove("module");
        brief.AsObject().Remove("rack");
        brief.AsObject().Remove("tank");
        return brief;
    }
}
