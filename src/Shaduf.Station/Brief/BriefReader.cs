using Shaduf.Money;
using Shaduf.Water;
using static System.FormattableString;

namespace Shaduf.Station;

/// <summary>Reads the fields of a brief; run over no file it describes them for the published schema.</summary>
internal static class BriefReader
{
    /// <summary>Month names as written in the brief, January first.</summary>
    public static IReadOnlyList<string> Months { get; } =
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

    // What the kernels take: head of a lift, length of a pipe.
    private const double HighestLiftM = 1000;
    private const double LongestMainM = 60_000;

    internal static IReadOnlyList<(string Word, bool Value)> YesNo { get; } = [("yes", true), ("no", false)];

    /// <summary>Reads the whole brief.</summary>
    /// <param name="top">The top mapping.</param>
    /// <returns>The brief; to be used only when the log has no errors.</returns>
    public static Brief Read(FieldMap top)
    {
        top.OptionalText(
            "cards",
            "Folder of cards, seen from this file; left out: the cards that come with the program.",
            200
        );
        OwnCards(top);
        top.OptionalText(
            "prices",
            "Price book, seen from this file; left out: the planning price book that comes with the program.",
            200
        );
        var crew = CrewReader.Read(top.OptionalMap("crew", "What the crew comes with, and finds."));
        var workshop = WorkshopReader.Read(top.OptionalMap("workshop", "The saw, and what lies in the yard."));
        var brief = new Brief(
            Head(top.Map("station", "Who and where.")),
            SiteReader.Read(top.Map("site", "Place, climate, ground.")),
            UsesReader.Read(top.Map("uses", "Who drinks, and how much.")),
            SourceReader.Read(
                top.Map("source", "The borehole or well, depths below ground at the wellhead; or open water.")
            ),
            LiftReader.Read(top.Map("lift", "The way of the pipe from the wellhead up to the tank.")),
            TankReader.Read(top.OptionalMap("tank", "The tank.")),
            top.OptionalMap("taps", "Taps by gravity: one main with a branch to each tap, or a tree of pipes.")
                is { } taps
                ? TapsReader.Read(taps)
                : null,
            Array(top.OptionalMap("array", "Modules and their cables.")),
            RackReader.Read(top.OptionalMap("rack", "The steel under the modules."), crew) with
            {
                Workshop = workshop,
            },
            GuardReader.Read(top.OptionalMap("guard", "Light, lightning, fence.")),
            Money(top.OptionalMap("money", "Terms of the offer."))
        )
        {
            Measured = MeasuredReader.Read(top.OptionalMap("measured", "What was measured on the finished station.")),
            Progress = ProgressBrief.Read(top.OptionalMap("progress", "What of the programme has happened.")),
        };
        top.OptionalText(
            "measuredFrom",
            "File exported from the site book, seen from this file, in place of measured.",
            200
        );
        top.Done();
        if (top.AreSound("lift.route", "lift.tankInlet", "source") && brief.Lift.Route.Count > 1)
        {
            CheckLift(top, brief);
            if (top.AreSound("site"))
            {
                RoutePlaces.Check(top, brief);
            }
        }

        return brief;
    }

    /// <summary>Files of cards beside the brief.</summary>
    internal static IReadOnlyList<string> OwnCards(FieldMap top) =>
        top.Items(
            "ownCards",
            0,
            60,
            "Cards of this station's own, beside those of the folder.",
            item =>
            {
                var file = item.Text("file", "File of the card, seen from this file.", 200);
                item.Done();
                return file;
            }
        );

    private static void CheckLift(FieldMap top, Brief brief)
    {
        CheckLevels(top, brief);
        var highestM = Math.Max(brief.Lift.InletM, brief.Lift.Route.Max(point => point.ElevationM));
        var groundM = brief.Lift.Route[0].ElevationM;
        var liftM = highestM - groundM + brief.Source.LowestWaterM(groundM);
        if (brief.Source is SurfaceBrief surface)
        {
            SurfaceReader.CheckPlace(top, surface, brief.Lift);
        }

        if (liftM > HighestLiftM)
        {
            top.Complain(
                "lift.tankInlet",
                Invariant($"the water must be lifted {liftM:0} m from its level at the source"),
                Invariant($"a lift of at most {HighestLiftM:0} m is accepted")
            );
        }

        if (Station.Lift.LengthM(brief.Lift) > LongestMainM)
        {
            top.Complain(
                "lift.route",
                Invariant($"the route is {Station.Lift.LengthM(brief.Lift) / 1000:0.#} km long, slopes counted"),
                Invariant($"a route of at most {LongestMainM / 1000:0} km is accepted")
            );
        }
    }

    // The site, the wellhead and the tank are one place in one system of levels.
    private static void CheckLevels(FieldMap top, Brief brief)
    {
        var (start, end) = (brief.Lift.Route[0], brief.Lift.Route[^1]);
        if (start.ChainageM != 0)
        {
            top.Complain("lift.route[1].chainage", "the wellhead is not at 0 m", "0 m is accepted for the first point");
        }

        if (Math.Abs(start.ElevationM - brief.Site.ElevationM) > 20)
        {
            top.Complain(
                "site.elevation",
                Invariant($"{brief.Site.ElevationM:0.#} m, and the route starts at {start.ElevationM:0.#} m"),
                "the wellhead's own level, within 20 m, is accepted"
            );
        }

        if (brief.Tank.StandM > brief.Lift.InletM - end.ElevationM)
        {
            top.Complain(
                "tank.stand",
                Invariant($"the floor at {brief.Tank.StandM:0.##} m above ground is higher than the tank's inlet"),
                Invariant($"at most {brief.Lift.InletM - end.ElevationM:0.##} m, below lift.tankInlet, is accepted")
            );
        }
    }

    private static BriefHead Head(FieldMap fields)
    {
        var head = new BriefHead(
            fields.Text("name", "The station's name.", 50),
            fields.OptionalText("place", "Where it is.") ?? "",
            fields.OptionalText("client", "Who asks for it.") ?? "",
            fields.OptionalText("builder", "Who builds it.") ?? "",
            fields.OptionalText("revision", "Revision of this brief, printed on every page.", 8) ?? "-",
            fields.OptionalDate("issued", "Date printed on the documents, as 2026-03-01.")
        );
        fields.Done();
        return head;
    }

    private static ArrayBrief Array(FieldMap? fields)
    {
        var array = new ArrayBrief(
            Name(fields, "module", "Card of the module."),
            fields?.Chosen("tilt", Measure.AngleDeg, 0, 60, "Tilt from the level."),
            fields?.Chosen(
                "azimuth",
                Measure.AngleDeg,
                0,
                360,
                "Direction the modules face, clockwise from true north."
            ),
            fields?.Known("albedo", Measure.Share, 0.02, 0.9, "Share of light that the ground throws back."),
            fields?.Known("stringCable", Measure.LengthM, 1, 500, "Way from the array to the drive, one way."),
            fields?.Known("motorCable", Measure.LengthM, 1, 2000, "Way from the drive to the wellhead."),
            LossesReader.Read(fields?.OptionalMap("losses", "What the array loses; what is left out is assumed."))
        )
        {
            SeriesCount = fields?.OptionalCount("inSeries", 1, 100, "Modules in a string.", FieldMap.ChooseWord),
            StringCount = fields?.OptionalCount("strings", 1, 200, "Strings side by side.", FieldMap.ChooseWord),
        };
        fields?.Done();
        return array;
    }

    private static MoneyBrief Money(FieldMap? fields)
    {
        var money = new MoneyBrief(
            fields?.Known("contingency", Measure.Share, 0, 0.5, "For named risks, on the direct cost."),
            fields?.Known("overhead", Measure.Share, 0, 0.6, "Office and yard, on cost."),
            Profit(fields),
            fields?.Known("tax", Measure.Share, 0, 0.4, "Tax on the offer."),
            fields?.OptionalNumber("budget", 0, 1e12, "What the client can pay, in the price book's currency."),
            fields?.Known("transport", Measure.LengthM, 0, 3_000_000, "Road from the yard to the site, one way.") / 1000
        )
        {
            Provisional = ProvisionalSum.Read(fields),
            Life = LifeBrief.Read(fields?.OptionalMap("life", "What the cost over the years is reckoned with.")),
            Payment = PaymentBrief.Read(
                fields?.OptionalMap("payment", "How the price is paid, and how long it stands.")
            ),
        };
        fields?.Done();
        return money;
    }

    // Mark-up on cost, or margin on price: the two are one profit told in two ways.
    private static double? Profit(FieldMap? fields)
    {
        var markup = fields?.Known("markup", Measure.Share, 0, 1, "Profit as a mark-up on cost.");
        var margin = fields?.Known(
            "margin",
            Measure.Share,
            0,
            0.5,
            "Profit as a margin on the price, in place of markup."
        );
        if (markup is not null && margin is not null)
        {
            fields!.Complain("margin", "stands beside markup", "profit told once, as one of the two, is accepted");
        }

        return markup ?? (margin is { } share ? MarkUp.Share(share) : null);
    }

    internal static string? Name(FieldMap? fields, string name, string about) =>
        fields?.OptionalText(name, $"{about} Left out or 'choose': the design chooses.", 40) is { } text
        && text != FieldMap.ChooseWord
            ? text
            : null;
}
