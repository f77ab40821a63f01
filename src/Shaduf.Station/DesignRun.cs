using Shaduf.Money;
using Shaduf.Power;
using Shaduf.Sun;
using Shaduf.Water;
using Shaduf.Working;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>The design run: from a brief to everything computed for it, one step after another.</summary>
public static class DesignRun
{
    /// <summary>Designs a station.</summary>
    /// <param name="file">The brief with its cards and prices.</param>
    /// <param name="progress">Told the name of each step as it begins; null for silence.</param>
    /// <returns>The design.</returns>
    /// <exception cref="BadInputException">No rack can be made, or nothing can be arranged, from the cards at hand.</exception>
    public static Design Run(StationFile file, Action<string>? progress = null) => Run(file, null, progress);

    /// <summary>Designs a station with its open choices held as they stand: nothing is searched for.</summary>
    /// <param name="file">The brief with its cards and prices.</param>
    /// <param name="quick">The choice that is held, and what is remembered; null to choose everything anew.</param>
    /// <param name="progress">Told the name of each step as it begins; null for silence.</param>
    /// <returns>The design.</returns>
    /// <exception cref="BadInputException">No rack can be made, or nothing can be arranged, from the cards at hand.</exception>
    public static Design Run(StationFile file, Quick? quick, Action<string>? progress)
    {
        file = quick is null ? file : file with { Brief = quick.Pin.On(file.Brief) };
        var stand = StandChoice.Of(file);
        var design = Settled(stand.File, quick?.Memory, progress);
        return design with
        {
            Notes = [.. design.Notes, .. stand.Notes],
            Workings = [.. design.Workings, .. stand.Workings],
        };
    }

    // All the steps for a brief whose levels are settled.
    private static Design Settled(StationFile file, StepMemory? memory, Action<string>? progress)
    {
        var (brief, shelf) = (file.Brief, file.Shelf);
        progress?.Invoke("demand");
        var survey = Survey.Of(brief);
        var demand = DemandYear.Of(brief, survey);
        progress?.Invoke("sky");
        var sunniest = Remembered.SkyOf(brief, survey, demand, memory);
        var source = Source.Of(brief, survey, demand);
        progress?.Invoke("sizing: pump, array, tank");
        var ground = new SizingGround(brief, survey, sunniest, demand, source, shelf, new(brief, shelf, file.Prices))
        {
            Memory = memory,
        };
        var shaded = ShadedSizing.Of(ground);
        var (sizing, sky) = (shaded.Sizing, shaded.Sky);
        var choice = sizing.Choice;
        progress?.Invoke("year run");
        var trace = YearTrace.Empty();
        var year = YearRun.Run(sizing.Inputs(demand), trace);
        progress?.Invoke("electrics, rack, ground");
        var works = WorksOf(ground, shaded, file.Prices);
        progress?.Invoke("takeoff and money");
        var office = Office.Of(file, survey, works, Remembered.TakeoffOf(file, survey, choice, works, memory));
        var design = new Design(
            file,
            survey,
            demand,
            sky,
            shaded.Layout with
            {
                Rack = works.Rack,
            },
            source,
            sizing,
            year,
            trace,
            [.. Enumerable.Range(0, 12).Select(month => Month(month, year, sky))],
            works,
            [],
            [],
            [
                .. sky.Notes,
                .. source.Notes,
                .. ChoiceNotes.Of(brief, sizing),
                .. NotesOf(works).Concat(shaded.Layout.Notes).Concat(works.PipeNotes),
            ]
        )
        {
            Office = office,
        };
        progress?.Invoke("harder years and the years to come");
        design = InTime(design);
        progress?.Invoke("energy ledger, other tilts");
        design = design with { Ledger = EnergyLedger.Of(sky, sizing, trace), Facing = FacingTable.Of(design) };
        progress?.Invoke("findings");
        return design with
        {
            Findings = FindingsBook.Settle(Found(design, memory), survey.Assumptions),
            Workings = [.. Shown(design)],
            Notes = [.. design.Notes, design.Facing.Note],
        };
    }

    // Harder years, the years to come, and the days on which it was measured.
    private static Design InTime(Design design) =>
        design with
        {
            Sensitivity = Sensitivity.Of(design),
            LifeCycle = LifeCycle.Of(design),
            Proof = Proof.Of(design),
        };

    private static IEnumerable<ChoiceNote> NotesOf(Works works) =>
        [
            .. works.Rack.Notes,
            .. works.RackChoice.Notes,
            .. works.Footings.Notes,
            .. works.Stand?.Notes ?? [],
            .. works.Guard.Notes,
        ];

    private static Works WorksOf(SizingGround ground, ShadedSizing shaded, PriceBook book)
    {
        var (brief, survey, sizing) = (ground.Brief, ground.Survey, shaded.Sizing);
        var choice = sizing.Choice;
        var racks = Remembered.RackOf(ground, choice);
        var guard = shaded.Round(ground, racks.Taken.Rack);
        var (rack, footings, electrics) = (racks.Taken.Rack, racks.Taken.Footings!, shaded.Electrics);
        var stand = Remembered.StandOf(ground, choice);
        return new(
            electrics,
            rack,
            footings,
            guard,
            MainWorks.Of(brief, survey, sizing, book),
            TapNetwork.Of(
                brief,
                survey,
                ground.Shelf,
                choice.Tank.HeightM,
                item => book.Rates.GetValueOrDefault(item)?.Amount
            ),
            TapStands.Of(brief, ground.Demand),
            ground.Source.Build(ground, sizing, electrics)
        )
        {
            RackChoice = racks,
            Stand = stand,
            StandErection = stand is null ? null : new(stand, survey.Climate.AirDegC),
            EconomicMain = EconomicMain.Of(ground, sizing),
            CoverM = survey["cover"],
            Soil = brief.Site.Soil,
            PoleBlock = PoleBlock.Of(guard.ColumnStrength, brief.Site),
            MastBlock = PoleBlock.Of(guard.MastStrength, brief.Site),
            Erection = ErectionAdvice.Of(ground, racks, choice.Module),
        };
    }

    private static MonthPromise Month(int month, YearRun year, Sky sky)
    {
        double days = YearCalendar.DaysInMonth[month];
        return new(
            year.DemandM3[month] / days,
            year.DeliveredM3[month] / days,
            year.PumpableM3[month] / days,
            sky.PlaneKWhPerM2Day[month],
            year.MetShare(month)
        );
    }

    private static IEnumerable<Finding> Found(Design design, StepMemory? memory)
    {
        var (survey, sizing, choice, works) = (design.Survey, design.Sizing, design.Choice, design.Works);
        var table = sizing.Table;
        return
        [
            .. WeatherFindings.Of(design.Sky.Weather, design.Brief.Site, survey),
            .. DemandFindings.Of(design),
            .. WaterFindings.Of(design),
            .. StorageFindings.Of(design),
            .. PumpFindings.Of(design),
            .. SkyFindings.Of(design.Sky),
            .. SkyFindings.OfFacing(design.Facing, design.Brief.Array),
            .. works.Source.Findings(design),
            .. LiftFindings.Of(
                choice.Lift,
                design.Brief.Lift,
                works.Main,
                survey["pipe-temperature"],
                design.ShownFlowM3PerH,
                sizing.Hydraulics.Curve.ShutOffHeadM
            ),
            ModuleAsDiode.Finding(choice.Module),
            .. ElectricFindings.Of(
                works.Electrics,
                choice,
                (survey["record-low"], design.Brief.Site.ElevationM),
                table.HighestRatio
            ),
            .. ElectricFindings.Wiring(works.Electrics, design.Brief.Array.Losses),
            .. works.Rack.Findings(choice.Module),
            .. Remembered.RackFindings(memory, design),
            .. FootingFindings.Of(
                works.Footings,
                works.RackChoice.Taken.Strength,
                design.Brief.Site,
                works.RackChoice.Taken.Holds ? "" : works.RackChoice.Advice
            ),
            .. works.Erection is { } erection ? ErectionFindings.Of(erection, design.Brief.Site.Soil) : [],
            .. SettingOutFindings.Of(design),
            .. works.Footings.Hold?.Findings(design.Brief.Site.Wind is not null) ?? [],
            .. Remembered.StandFindings(memory, design),
            .. works.StandErection is { } raised ? StandErectionSteps.Findings(raised) : [],
            .. GuardFindings.Of(works.Guard),
            .. works.Guard.PoleStrengths.SelectMany(LightColumnFindings.Of),
            .. works.PoleBlocks.Select(block => block.Finding()),
            .. works.Main.Findings(table.FullFlowM3PerH),
            .. TapFindings.Of(works.Taps, design.Brief, survey, design.Demand),
            .. works.TapStands is { } stands ? [stands.Drainage()] : Array.Empty<Finding>(),
            .. CutFindings.Of(design),
            .. LoadingList.Of(design).Findings(),
            .. MoneyFindings.Of(design),
            .. ProgrammeFindings.Of(design),
            .. design.Proof?.Findings() ?? [],
        ];
    }

    private static IEnumerable<WorkingSheet> Shown(Design design)
    {
        foreach (var sheet in design.Demand.Workings)
        {
            yield return sheet;
        }

        yield return design.Choice.Lift.Show(design.Source, design.ShownFlowM3PerH);
        yield return PumpWorking.Show(design);
        yield return ModuleAsDiode.Show(design.Choice.Module);
        foreach (var sheet in design.Works.Source.Show(design.Choice).Concat(PipeWorking.Show(design)))
        {
            yield return sheet;
        }

        foreach (
            var sheet in RackWorking.Show(design.Works.RackChoice).Concat(FootingWorking.Show(design.Works.Footings))
        )
        {
            yield return sheet;
        }

        if (design.Works.Footings.Hold is { } hold)
        {
            yield return hold.Show();
        }

        if (design.Works.Erection is { } erection)
        {
            yield return ErectionWorking.Show(erection);
        }

        foreach (var block in design.Works.PoleBlocks)
        {
            yield return block.Show();
        }

        foreach (var sheet in StandWorking.Show(design.Works.Stand))
        {
            yield return sheet;
        }

        if (design.Works.StandErection is { } raised)
        {
            yield return StandErectionSteps.Show(raised);
        }

        foreach (var sheet in GuardWorking.Show(design.Works.Guard))
        {
            yield return sheet;
        }

        var electric = ElectricWorking.Show(design.Works.Electrics, design.Choice, design.Survey["record-low"]);
        foreach (var sheet in electric)
        {
            yield return sheet;
        }
    }
}
