using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>Writes <c>design.json</c> and its published schema.</summary>
public static class DesignJson
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectNullableAnnotations = true,
        NumberHandling = System.Text.Json.Serialization.JsonNumberHandling.Strict,
    };

    /// <summary>The published schema.</summary>
    /// <returns>JSON Schema, indented, with a line end.</returns>
    public static string Schema()
    {
        var schema = Options
            .GetJsonSchemaAsNode(typeof(DesignFile), new() { TreatNullObliviousAsNonNullable = true })
            .AsObject();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(1, "title", "design.json");
        return schema.ToJsonString(Options) + "\n";
    }

    /// <summary>The file of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">Status, revision, hash.</param>
    /// <returns>JSON, indented, with a line end.</returns>
    public static string Of(Design design, Stamp stamp) =>
        JsonSerializer.Serialize(FileOf(design, stamp), Options) + "\n";

    private static DesignFile FileOf(Design design, Stamp stamp)
    {
        var (brief, choice, works) = (design.Brief, design.Choice, design.Works);
        var flow = design.ShownFlowM3PerH;
        return new(
            new(
                stamp.Status,
                stamp.Revision,
                stamp.BriefHash,
                stamp.ProgramVersion,
                stamp.Dated.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)
            ),
            new(
                brief.Head.Name,
                brief.Head.Place,
                brief.Site.LatitudeDeg,
                brief.Site.LongitudeDeg,
                brief.Site.ElevationM
            ),
            new(
                choice.Pump.Name,
                choice.Drive.Name,
                choice.Module.Name,
                choice.ModuleCount,
                choice.SeriesCount,
                choice.StringCount,
                R(choice.ArrayW),
                design.Sky.Facing.TiltDeg,
                design.Sky.Facing.AzimuthDeg,
                choice.Tank.Name,
                choice.TankCount,
                R(choice.TankM3),
                choice.Lift.Main.Name,
                choice.Lift.Riser.Name,
                R(design.Well.PumpSettingM)
            ),
            new(
                YearCalendarNames.Months[design.Year.WorstMonth],
                R(design.Year.WorstShare),
                design.Survey["target"],
                design.Trace.LongestShortageH(design.Demand.HourM3),
                [
                    .. design.Months.Select(
                        (month, i) =>
                            new MonthEntry(
                                YearCalendarNames.Months[i],
                                R(month.DemandM3PerDay),
                                R(month.SupplyM3PerDay),
                                R(month.PumpableM3PerDay),
                                R(month.MetShare),
                                R(month.SunKWhPerM2Day)
                            )
                    ),
                ]
            ),
            new(
                R(design.Survey.DepthM),
                R(design.Well.RestDryM),
                R(design.Well.YieldM3PerH),
                R(design.Well.LevelM(design.Survey, flow))
            ),
            new(
                R(flow),
                R(choice.Lift.System.HeadM(flow / 3600)),
                R(choice.Lift.System.StaticHeadM),
                R(choice.Lift.RiserM),
                R(choice.Lift.MainM)
            ),
            new(
                R(works.Electrics.ColdV),
                R(works.Electrics.HotV),
                R(works.Electrics.AgedV),
                works.Electrics.HotCellDegC,
                works.Electrics.Fuse.Needed,
                [
                    .. works.Electrics.Cables.Select(cable => new CableEntry(
                        cable.Name,
                        cable.Card?.Name,
                        R(cable.Duty.LengthM),
                        R(cable.Duty.CurrentA),
                        cable.Choice.Fit is { } fit ? R(fit.DropShare) : null,
                        R(cable.BoughtM)
                    )),
                ]
            ),
            Rack(design),
            new(
                works.Footings.Count,
                works.Footings.Block.LengthMm,
                works.Footings.Block.DepthMm,
                works.Footings.Mix.Name,
                R(works.Footings.ConcreteM3),
                R(works.Footings.ExcavationM3)
            ),
            Money(design),
            [
                .. design.Bill.Lines.Select(line => new QuantityEntry(
                    line.Code,
                    line.Quantity.Item,
                    line.Quantity.Description,
                    line.Quantity.Unit,
                    line.Quantity.Quantity,
                    line.UnitRate,
                    line.Amount,
                    line.Quantity.Origin
                )),
            ],
            [
                .. design.Sizing.Verdicts.Select(verdict => new PumpEntry(
                    verdict.Pump.Name,
                    verdict.Outcome,
                    R(verdict.Cost),
                    R(verdict.WorstShare)
                )),
            ],
            [
                .. design.Findings.Select(finding => new FindingEntry(
                    finding.Id,
                    finding.Status.ToString().ToLowerInvariant(),
                    finding.Says,
                    R(finding.Value),
                    R(finding.Limit),
                    finding.Unit,
                    finding.Source,
                    finding.LeansOn
                )),
            ],
            [
                .. design.Survey.Assumptions.Select(each => new AssumptionEntry(
                    each.Id,
                    each.Field,
                    each.Taken,
                    each.HowToFind,
                    each.Source,
                    each.Best.ToString().ToLowerInvariant()
                )),
            ],
            [.. design.Notes.Select(note => new ReasonEntry(note.What, note.Chosen, note.Why))]
        );
    }

    private static RackEntry Rack(Design design)
    {
        var rack = design.Works.Rack;
        var racks = rack.Grid.RackCount;
        return new(
            racks,
            rack.Grid.Rows,
            rack.Grid.Columns,
            R(rack.Size.LengthMm),
            R(rack.Size.DepthMm),
            R(rack.Setting.LowEdgeMm),
            R(rack.Size.TopEdgeMm),
            R(rack.MassKg),
            [
                .. rack.Steel.Groups.Select(part => new PartEntry(
                    part.Mark,
                    part.Role,
                    part.Section.Name,
                    R(part.Shape.LongPointMm),
                    R(part.Shape.ShortPointMm),
                    R(part.Shape.StartDeg),
                    R(part.Shape.EndDeg),
                    [.. part.PiecesMm.Select(R)],
                    part.Count * racks,
                    R(part.MassKg * racks)
                )),
            ],
            [
                .. design.Takeoff.BarPlans.Select(plan => new BarsEntry(
                    plan.Section.Name,
                    plan.Section.BarMm,
                    plan.Plan.BarCount,
                    plan.Plan.LowerBoundCount
                )),
            ]
        );
    }

    private static MoneyEntry Money(Design design)
    {
        var offer = design.Offer;
        return new(
            offer.Currency,
            offer.Direct,
            offer.Contingency,
            offer.Overhead,
            offer.Profit,
            offer.Tax,
            offer.Total,
            offer.Complete,
            offer.Unpriced
        );
    }

    // Four decimals: below any meaning, above the last bits in which machines may differ.
    private static double R(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero);

    private static double? R(double? value) => value is { } given ? R(given) : null;
}
