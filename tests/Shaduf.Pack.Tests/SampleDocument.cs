using Shaduf.Working;

namespace Shaduf.Pack.Tests;

/// <summary>A document that uses every block, chart and dimension. All figures are invented.</summary>
internal static class SampleDocument
{
    private static readonly string[] Months =
    [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];

    internal static DocumentInfo Info { get; } =
        new(
            "Station book: Tamarind Well",
            "The builder",
            "brief 3f9a61c2",
            "Shaduf 0.1.0",
            new(2026, 3, 14, 9, 30, 0, TimeSpan.FromHours(1))
        );

    internal static PageStyle Style { get; } =
        new(
            PaperSize.A4Upright,
            PageMargins.House,
            "Tamarind Well, water for 640 people and 210 head of cattle",
            "Station book",
            new("for construction", "B", "3f9a61c2")
        );

    internal static IReadOnlyList<Scene> Pages() => Flow.Lay(Blocks(), Style);

    internal static IReadOnlyList<Block> Blocks() =>
        [
            new Heading(1, "The station in one page"),
            new Paragraph(
                RichText.Marked(
                    "The borehole gives **6.4 m³ an hour** at a setting of 38 m. The array of 18 modules lifts "
                        + "**31 m³ on the dullest day** of the year, which is 1.12 times what the uses take. The tank "
                        + "holds 20 m³ on a stand of 6 m; the farthest tap runs at 0.2 L/s with 4.1 m of head left."
                )
            ),
            new Notice(
                FindingStatus.Stop,
                "The footing lifts at 41 m/s. Do not pour before the wind speed is settled."
            ),
            new Notice(
                FindingStatus.Unchecked,
                "No step test is known. Run one before ordering the pump: see sheet W3."
            ),
            new Notice(FindingStatus.Look, "The steel grade is taken as S235 because the supplier gave none."),
            new Notice(
                FindingStatus.Holds,
                "Voltage at the lowest temperature is 781 V of the 850 V that the drive bears."
            ),
            new Heading(2, "Water by month"),
            new Figure(Bars(2, 173, 62), "Figure 1. Water lifted and water used, mean day of each month, m³."),
            new Heading(2, "One clear day in the dullest month"),
            new Figure(
                Lines(173, 66),
                "Figure 2. Flow and stored water through 24 hours; the mark is the promised reading."
            ),
            new Heading(1, "Steel and setting out"),
            new Columns([
                new(
                    1,
                    [
                        new Heading(3, "Before the first cut"),
                        new Bullets(
                            [
                                "Measure one module with a tape.",
                                "Paint the mark on every part.",
                                "Clean the weld places.",
                            ],
                            BulletMark.CheckBox
                        ),
                    ]
                ),
                new(
                    1,
                    [
                        new Heading(3, "Order of work"),
                        new Bullets(
                            [
                                "Set out the four corners and check both diagonals.",
                                RichText.Marked("Dig, then **stop** until the depth is signed."),
                                "Pour all footings of one frame on one day.",
                            ],
                            BulletMark.Number
                        ),
                    ]
                ),
            ]),
            new Figure(Frame(), "Figure 3. Frame F1, view from the south, 1:50. Lengths in mm."),
            new Heading(2, "Cut list"),
            CutList(46),
            new Heading(2, "Words in other scripts"),
            new Paragraph(
                "The site's own name is محطة المياه رقم 12 and the nearest town is Ọ̀yọ́; Ƙofar Ɗan, Łódź, Ağrı."
            ),
            new Paragraph(
                "بئر الماء على عمق 38 متر. تدفق المضخة 6.4 متر مكعب في الساعة، والخزان على ارتفاع ستة أمتار فوق الأرض."
            ),
            new PageBreak(),
            new Heading(1, "Section and details"),
            new Figure(Section(), "Figure 4. Long section, 1:500 across and 1:600 upwards."),
            new Figure(Details(), "Figure 5. Hatches, an aligned dimension, an arc and narrow gaps."),
            new Figure(Bars(1, 90, 45), "Figure 6. A narrow chart: figures stand upright."),
        ];

    internal static Scene Bars(int series, double widthMm, double heightMm)
    {
        double[] lifted = [38.2, 41, 44.7, 43.1, 39.9, 35.2, 31, 31.8, 36.4, 40.8, 39.6, 37.1];
        double[] used = [27.5, 28, 28.4, 29, 28.1, 27.2, 26.4, 26.4, 27, 27.6, 27.8, 27.5];
        BarSeries[] all = [new("lifted", lifted), new("used", used)];
        return new BarChart(new("water, m³ a day"), [.. Months.Select(m => m[..3])], all[..series]).ToScene(
            new(widthMm, heightMm),
            "Water by month"
        );
    }

    internal static Scene Lines(double widthMm, double heightMm)
    {
        var flow = Enumerable
            .Range(0, 25)
            .Select(h => new ChartPoint(h, 6.1 * Math.Max(0, Math.Sin((h - 6) * Math.PI / 12))));
        var stored = Enumerable
            .Range(0, 97)
            .Select(q => new ChartPoint(q / 4.0, 11 + (5 * Math.Sin((q - 44) * Math.PI / 48))));
        return new LineChart(
            new("hour of the day") { Step = 3 },
            new("flow, m³/h; stored, m³"),
            [new("flow", [.. flow]), new("stored in the tank", [.. stored]), new("promise at noon", [new(12, 6)])]
        ).ToScene(new(widthMm, heightMm), "One day");
    }

    internal static Scene Frame()
    {
        var sheet = new SceneBuilder(new(173, 95));
        var view = sheet.View(new(50, new(0, 0), new(40, 64)));
        SitePoint[] posts = [new(0, 0), new(1250, 0), new(2500, 0), new(3750, 0), new(5000, 0)];
        foreach (var post in posts)
        {
            sheet.About("C" + (Array.IndexOf(posts, post) + 1));
            view.Rectangle(Layer.Steel, post, new(post.XMm + 60, 1800), Palette.Steel.Tint(0.2));
            view.Rectangle(Layer.Concrete, new(post.XMm - 170, -450), new(post.XMm + 230, 0));
            view.Hatch(
                HatchPattern.Concrete,
                [new(post.XMm - 170, -450), new(post.XMm + 230, -450), new(post.XMm + 230, 0), new(post.XMm - 170, 0)],
                spacingMm: 1.5
            );
        }

        sheet.About("");
        view.Line(Layer.Ground, new(-500, 0), new(5600, 0));
        view.Rectangle(Layer.Steel, new(-200, 1800), new(5260, 1850));
        view.Line(Layer.Centre, new(2530, -600), new(2530, 2200));
        view.DimensionChain(DimensionSide.Below, [new(0, -450), .. posts[1..].Select(p => p with { YMm = -450 })]);
        view.Dimensions(
            DimensionSide.Left,
            [
                new(new(-200, 0), new(-200, 1800)),
                new(new(-200, 1800), new(-200, 1850)),
                new(new(-200, -450), new(-200, 0)),
            ]
        );
        view.Leader(new(3780, 900), 34, -14, "C4 SHS 60x60x3\nhot-dip galvanised");
        sheet.Balloon(view.At(new(625, 1400)), "F1");
        return sheet.Build("Frame F1 from the south").Trimmed();
    }

    internal static Scene Section()
    {
        var sheet = new SceneBuilder(new(173, 100));
        var view = sheet.View(new(500, new(0, 0), new(14, 40)) { VerticalOneToFactor = 600 });
        SitePoint M(double x, double y) => SitePoint.Metres(x, y);
        SitePoint[] ground = [M(0, 0), M(20, 0.5), M(40, 2), M(60, 2.5), M(75, 3)];
        view.Hatch(HatchPattern.Earth, [.. ground, M(75, 1), M(60, 0.2), M(40, -0.6), M(20, -1.8), M(0, -2.4)]);
        view.Polyline(Layer.Ground, ground);
        view.Rectangle(Layer.Outline, M(4.5, -32), M(5.5, 0.4), Palette.White);
        view.Line(Layer.Water, M(2, -14), M(12, -14)).Text(M(12.5, -14.4), "water at rest −14.0 m", TextStyle.Small);
        view.Line(Layer.Water, M(2, -21), M(12, -21)).Text(M(12.5, -21.4), "pumped −21.0 m", TextStyle.Small);
        view.Polyline(Layer.Pipe, [M(5, -26), M(5, 1.2), M(70, 3), M(70, 14)]);
        view.Polyline(Layer.Electric, [M(5.3, -26), M(5.3, 1.6), M(18, 1.6)]);
        view.Rectangle(Layer.Outline, M(65, 10), M(74, 14.5));
        view.Hatch(HatchPattern.Water, [M(65, 10), M(74, 10), M(74, 13.5), M(65, 13.5)]);
        view.Leader(M(5, -26), 14, 4, "pump, setting 26 m");
        view.Leader(M(40, 2.2), -10, -12, "pipe 63 PE, 65 m");
        view.Dimensions(DimensionSide.Right, [new(M(75, 3), M(75, 10)) { Text = "7.0 m" }]);
        return sheet.Build("Long section of the station").Trimmed();
    }

    internal static Scene Details()
    {
        var sheet = new SceneBuilder(new(173, 78));
        var patterns = Enum.GetValues<HatchPattern>();
        for (var i = 0; i < patterns.Length; i++)
        {
            var left = 1 + (i % 6 * 29.0);
            var top = 1 + (i / 6 * 19.0);
            var box = new PaperBox(left, top, left + 26, top + 13);
            sheet.Hatch(patterns[i], box.Corners).Rectangle(Layer.Outline, box);
            sheet.Text(
                new(left + 13, top + 16.5),
                patterns[i].ToString(),
                TextStyle.Small with
                {
                    Horizontal = HorizontalAnchor.Centre,
                }
            );
        }

        var view = sheet.View(new(20, new(0, 0), new(14, 62)));
        view.Polygon(Layer.Outline, [new(0, 0), new(700, 0), new(700, 300)]);
        view.AlignedDimension(new(new(0, 0), new(700, 300)), 6);
        view.Arc(Layer.Dimension, new(0, 0), 300, 0, 23.2).Text(new(320, 40), "23.2°", TextStyle.Small);
        view.DimensionChain(
            DimensionSide.Below,
            [new(1100, 60), new(1150, 60), new(1200, 60), new(1250, 60), new(1290, 60), new(2100, 60), new(2110, 60)]
        );
        view.Rectangle(Layer.Steel, new(1100, 60), new(2110, 160));
        return sheet.Build("Details").Trimmed();
    }

    private static Table CutList(int rows) =>
        new(
            [
                new("Mark", 0) { WidthMm = 18 },
                new("Section"),
                new("Where it goes", 2),
                new("Length mm", 1, HorizontalAnchor.Right),
                new("Pieces", 0.7, HorizontalAnchor.Right),
                new("Mass kg", 0.8, HorizontalAnchor.Right),
            ],
            [
                TableRow.Section("Frame F1"),
                .. Enumerable
                    .Range(1, rows)
                    .Select(i =>
                        TableRow.Of(
                            $"F1-{i:00}",
                            i % 3 == 0 ? "L 50x50x5" : "SHS 60x60x3",
                            i % 7 == 0
                                ? "between the second and the third post, upper rail, with a slotted hole"
                                : "post",
                            $"{1200 + (i * 37)}",
                            $"{(i % 4) + 1}",
                            $"{i * 1.37:0.0}"
                        )
                    ),
                TableRow.Total("", "", "All parts", "", "112", "486.5"),
            ]
        )
        {
            Caption = "Cut list of frame F1",
            Look = TableLook.Zebra,
        };
}
