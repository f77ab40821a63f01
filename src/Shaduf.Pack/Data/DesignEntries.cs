using System.Globalization;
using Shaduf.Station;

namespace Shaduf.Pack;

/// <summary>Builds the entries of <c>design.json</c> from a design.</summary>
internal static class DesignEntries
{
    /// <summary>The whole file.</summary>
    /// <param name="design">The design.</param>
    /// <param name="stamp">Status, revision, hash.</param>
    /// <returns>Its entries.</returns>
    public static DesignFile Of(Design design, Stamp stamp) =>
        new(
            StampOf(stamp),
            StationOf(design.Brief),
            ChoiceOf(design),
            WaterOf(design),
            SkyEntry.Of(design),
            SourceEntry.Of(design),
            LiftOf(design),
            PipeworkEntries.Of(design),
            ElectricEntries.Of(design.Works.Electrics),
            RackOf(design),
            GroundOf(design.Works.Footings),
            GuardEntry.Of(design.Works),
            OfficeEntries.MoneyOf(design),
            [.. design.Bill.Lines.Select(line => QuantityOf(design, line))],
            [.. design.Sizing.Verdicts.Select(PumpOf)],
            [.. design.Findings.Select(FindingOf)],
            [.. design.Survey.Assumptions.Select(AssumptionOf)],
            [.. design.Notes.Select(note => new ReasonEntry(note.What, note.Chosen, note.Why))],
            WeatherEntry.Of(design.Sky.Weather),
            ChoiceEntries.FrontOf(design),
            ChoiceEntries.LifeCycleOf(design.LifeCycle),
            ChoiceEntries.SensitivityOf(design.Sensitivity),
            EnergyEntries.LedgerOf(design.Ledger),
            EnergyEntries.FacingsOf(design.Facing),
            WellEntry.Of(design),
            IntakeEntry.Of(design),
            StandEntry.Of(design),
            ErectionEntry.Of(design)
        )
        {
            Programme = OfficeEntries.ProgrammeOf(design.Programme),
            Forecast = design.Office.Forecast is { } forecast ? OfficeEntries.ProgrammeOf(forecast) : null,
            Proof = ProofEntry.Of(design.Proof),
            Purchases = OfficeEntries.PurchasesOf(design),
            SettingOut = SettingOutEntry.Of(design),
            Loading = LoadingEntry.Of(design),
        };

    private static StampEntry StampOf(Stamp stamp) =>
        new(
            stamp.Status,
            stamp.Revision,
            stamp.BriefHash,
            stamp.ProgramVersion,
            stamp.Dated.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
        );

    private static StationEntry StationOf(Brief brief) =>
        new(brief.Head.Name, brief.Head.Place, brief.Site.LatitudeDeg, brief.Site.LongitudeDeg, brief.Site.ElevationM);

    private static ChoiceEntry ChoiceOf(Design design)
    {
        var choice = design.Choice;
        return new(
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
            (choice.Lift.Foot as Riser)?.Card.Name,
            R((design.Source as Well)?.PumpSettingM),
            choice.Lift.Foot.Card.Name
        );
    }

    private static WaterEntry WaterOf(Design design) =>
        new(
            YearCalendarNames.Months[design.Year.WorstMonth],
            R(design.Year.WorstShare),
            design.Survey["target"],
            design.Trace.LongestShortageH(design.Demand.HourM3),
            [.. design.Months.Select(MonthOf)]
        );

    private static MonthEntry MonthOf(MonthPromise month, int index) =>
        new(
            YearCalendarNames.Months[index],
            R(month.DemandM3PerDay),
            R(month.SupplyM3PerDay),
            R(month.PumpableM3PerDay),
            R(month.MetShare),
            R(month.SunKWhPerM2Day)
        );

    private static LiftEntry LiftOf(Design design)
    {
        var (lift, flow) = (design.Choice.Lift, design.ShownFlowM3PerH);
        return new(
            R(flow),
            R(lift.System.HeadM(flow / 3600)),
            R(lift.System.StaticHeadM),
            R((lift.Foot as Riser)?.LengthM),
            R(lift.MainM),
            R(lift.Foot.LengthM)
        );
    }

    private static GroundEntry GroundOf(Footings footings) =>
        new(
            footings.Count,
            footings.Block.LengthMm,
            footings.Block.DepthMm,
            footings.Mix.Name,
            R(footings.ConcreteM3),
            R(footings.ExcavationM3)
        )
        {
            Form = footings.Form.ToString().ToLowerInvariant(),
            AcrossMm = footings.Block.WidthMm,
        };

    private static QuantityEntry QuantityOf(Design design, Money.BillLine line) =>
        new(
            line.Code,
            line.Quantity.Item,
            line.Quantity.Description,
            line.Quantity.Unit,
            line.Quantity.Quantity,
            line.UnitRate,
            line.Amount,
            line.Quantity.Origin
        )
        {
            NetQuantity = R(line.Quantity.NetQuantity),
            Origins = LineOrigins.Of(design, line.Quantity),
        };

    private static PumpEntry PumpOf(PumpVerdict verdict) =>
        new(verdict.Pump.Name, verdict.Outcome, R(verdict.Cost), R(verdict.WorstShare));

    private static FindingEntry FindingOf(Working.Finding finding) =>
        new(
            finding.Id,
            finding.Status.ToString().ToLowerInvariant(),
            finding.Says,
            R(finding.Value),
            R(finding.Limit),
            finding.Unit,
            finding.Source,
            finding.LeansOn
        );

    private static AssumptionEntry AssumptionOf(Assumption each) =>
        new(each.Id, each.Field, each.Taken, each.HowToFind, each.Source, each.Best.ToString().ToLowerInvariant());

    private static RackEntry RackOf(Design design)
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
            PartsOf(rack.Steel, racks),
            [.. design.Takeoff.BarPlans.Select(CutEntries.Of)]
        )
        {
            Type = rack.Form.Type == RackType.SlideIn ? "slide-in" : "clamped-rails",
            Lines = rack.Form.Lines,
            Orientation = rack.Lay.UpMm >= rack.Lay.AlongMm ? "portrait" : "landscape",
        };
    }

    /// <summary>Parts that are alike.</summary>
    internal static IReadOnlyList<PartEntry> PartsOf(Parts.Assembly steel, int count) =>
        [
            .. steel.Groups.Select(part => new PartEntry(
                part.Mark,
                part.Role,
                part.Section.Name,
                R(part.Shape.LongPointMm),
                R(part.Shape.ShortPointMm),
                R(part.Shape.StartDeg),
                R(part.Shape.EndDeg),
                [.. part.PiecesMm.Select(R)],
                part.Count * count,
                R(part.MassKg * count)
            )),
        ];

    // Four decimals: below any meaning, above the last bits in which machines may differ.
    internal static double R(double value) => Math.Round(value, 4, MidpointRounding.AwayFromZero);

    internal static double? R(double? value) => value is { } given ? R(given) : null;
}
