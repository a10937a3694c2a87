using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Tests;
using ShopPlanner.Drawing.Tests.Pieces;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Sections;

namespace ShopPlanner.Packets.Tests;

/// <summary>Invented packets.</summary>
internal static class PacketSamples
{
    /// <summary>A small cabinet: two stores, a leftover from the bin, a sheet and two kinds of board.</summary>
    public static PacketModel Cabinet(PaperSize paper = PaperSize.Letter) =>
        new(
            ["Hall cabinet"],
            new DateOnly(2026, 11, 25),
            paper,
            LengthUnit.Inch,
            "$",
            new(3, "8f3a12bc", null),
            [
                new(
                    "Store by the highway",
                    new DateOnly(2026, 11, 20),
                    [new("Pine 1x3", "8 ft", 3, Money.From(6.48m)), new("Birch plywood 3/4", "4 × 8 ft", 1, Money.From(64))]
                ),
                new(
                    "Corner hardware",
                    null,
                    [new("Poplar 1x4", "6 ft", 2, null), new("Pine 1x2", "8 ft", 12, Money.From(2.98m))]
                ),
            ],
            [new("B7", "Pine 1x3", "41 3/8 in")],
            [
                Layout(Samples.Sheet(), isBoard: false, 1),
                Layout(Samples.Board(), isBoard: true, 3),
                Layout(Legs(), isBoard: true, 1),
            ],
            [
                new(["A1", "A2"], "Side panel", "Birch plywood 3/4", In("30"), In("15 1/2"), In("23/32"), Ripped: true),
                new(["B1", "B2", "B3"], "Shelf", "Birch plywood 3/4", In("22 1/2"), In("13 1/4"), In("23/32"), Ripped: true),
                new(["C1", "C2"], "Rail", "Pine 1x3", In("34 1/2"), In("2 1/2"), In("3/4"), Ripped: false)
                {
                    Trim = "cut 34 ½″ long, trim to 34″ later",
                },
                new(["pC"], "practice for C", "Pine 1x3", In("34 1/2"), In("2 1/2"), In("3/4"), Ripped: false)
                {
                    IsPractice = true,
                },
                new(["D1", "D2", "D3", "D4"], "Block", "Pine 1x3", In("1 1/2"), In("2 1/2"), In("3/4"), Ripped: false),
            ],
            [new(["Z1"], "Long cleat", "longer than any stock of this material")]
        )
        {
            StoreTolerance = In("1/8"),
            Settings =
            [
                new(
                    "Pine 1x3",
                    [
                        new("Crosscut, miter saw", In("34 1/2"), "2–4: 1; 5: 1", true),
                        new("Crosscut, miter saw", In("1 1/2"), "5: 2, 3, 4, 5", true),
                    ]
                ),
                new("Birch plywood 3/4", [new("Rip, table saw", In("15 1/2"), "1: 1", false)]),
            ],
        };

    /// <summary>The cabinet with a name everywhere a person may type one.</summary>
    public static PacketModel Named(string name)
    {
        var model = Cabinet();
        return model with
        {
            Projects = [name, name],
            Stores =
            [
                .. model.Stores.Select(s =>
                    s with
                    {
                        Name = name,
                        Purchases = [.. s.Purchases.Select(p => p with { Item = name, Size = name })],
                    }
                ),
            ],
            OnHand = [.. model.OnHand.Select(o => o with { Tag = name, Material = name, Size = name })],
            Layouts = [.. model.Layouts.Select(l => Rename(l, name))],
            Parts = [.. model.Parts.Select(p => p with { Name = name, Material = name, Marks = [name, "A2"] })],
            Unplaced = [.. model.Unplaced.Select(u => u with { Name = name, Reason = name })],
            Plan = model.Plan! with { OutOfDate = name },
            Pieces = [.. WithPieces(PaperSize.Letter).Pieces.Take(1).Select(p => Rename(p, name))],
            Supplies = [new(name, name, name, SupplyAisle.Hardware), new(name, name, "2", SupplyAisle.Finish)],
            Takes = [new(name, "30″ × 60″", name, Money.From(12.5m), 90, 1440)],
            Work = [Rename(WithWork(PaperSize.Letter).Work[0], name)],
        };
    }

    /// <summary>The cabinet in millimetres.</summary>
    public static PacketModel Metric()
    {
        var model = Cabinet(PaperSize.A4);
        return model with
        {
            Unit = LengthUnit.Millimetre,
            Layouts = [.. model.Layouts.Select(l => l with { Picture = l.Picture with { Unit = LengthUnit.Millimetre } })],
        };
    }

    /// <summary>The cabinet with every built-in design as a piece.</summary>
    public static PacketModel WithPieces(PaperSize paper) =>
        Cabinet(paper) with
        {
            Pieces = [.. BuiltInPieces.Names.Select(name => PieceSheets.Of(BuiltInPieces.Read(name), paper))],
        };

    /// <summary>The cabinet with the work of some built-in designs.</summary>
    public static PacketModel WithWork(PaperSize paper) =>
        Cabinet(paper) with
        {
            Work = [.. Worked.Select(name => Work(BuiltInPieces.Read(name), paper))],
        };

    /// <summary>A project without parts.</summary>
    public static PacketModel Empty() => Cabinet() with { Stores = [], OnHand = [], Layouts = [], Parts = [], Unplaced = [] };

    /// <summary>The cabinet with so many layouts, boards and sheets in turn.</summary>
    public static PacketModel Many(int layouts) =>
        Cabinet() with
        {
            Layouts =
            [
                .. Enumerable
                    .Range(0, layouts)
                    .Select(i => Layout(i % 2 == 0 ? Samples.Sheet() : Samples.Board(), i % 2 == 1, 1)),
            ],
        };

    /// <summary>A design alone: no plan yet.</summary>
    public static PacketModel Unplanned(PaperSize paper = PaperSize.Letter) =>
        Cabinet(paper) with
        {
            Projects = ["Bookcase"],
            Plan = null,
            Stores = [],
            OnHand = [],
            Layouts = [],
            Parts = [],
            Unplaced = [],
            Settings = [],
            Pieces = [PieceSheets.Of(BuiltInPieces.Read("bookcase"), paper)],
            Work = [Work(BuiltInPieces.Read("bookcase"), paper)],
        };

    private static readonly string[] Worked = ["bookcase", "pantry-cupboard", "table"];

    private static PacketWork Work(Piece piece, PaperSize paper)
    {
        var plan = WorkPlanner.Of(piece, WorkChoices.Usual);
        ImmutableArray<PacketStep> Steps(Func<WorkStep, bool> isMeant) =>
            [
                .. plan
                    .Steps.Where(isMeant)
                    .Select(
                        (step, i) => WorkSheets.Step(piece, step, plan.Unit, i + 1, i == 0 ? "Ask Sam to hold it." : "", paper)
                    ),
            ];
        return new(
            piece.Name,
            ["Left side and Right side can be built in any order."],
            Steps(step => step.Phase != WorkPhase.Finish),
            Steps(step => step.Phase == WorkPhase.Finish),
            [new("A", "Side", "12.5 sq ft", "1.0 sq ft"), new("B", "Shelf", "9.0 sq ft", "")],
            [new("Latex paint, 1 qt", 2)]
        );
    }

    private static PacketWork Rename(PacketWork work, string name) =>
        work with
        {
            Name = name,
            AnyOrder = [name],
            Build = [.. work.Build.Select(step => Rename(step, name))],
            Finish = [.. work.Finish.Select(step => Rename(step, name))],
            Areas = [new(name, name, "12.5 sq ft", "")],
            Buy = [new(name, 2)],
        };

    private static PacketStep Rename(PacketStep step, string name) =>
        step with
        {
            Title = name,
            Marks = [name, "A2"],
            Says = [name, name],
            Figures = [name],
            Facts = [name],
            Check = name,
            Cautions = [name],
            Note = name,
        };

    private static PacketPiece Rename(PacketPiece piece, string name) =>
        piece with
        {
            Name = name,
            Parts = [.. piece.Parts.Select(p => p with { Name = name, Material = name, Marks = [name, "A2"] })],
            Joints = [.. piece.Joints.Select(j => j with { Title = name, Note = name })],
            Warnings = [name],
        };

    private static PacketLayout Rename(PacketLayout layout, string name) =>
        layout with
        {
            Picture = layout.Picture with
            {
                Title = name,
                Pieces = [.. layout.Picture.Pieces.Select((p, i) => p with { Name = name, Mark = i == 0 ? name : p.Mark })],
                Leftovers = [.. layout.Picture.Leftovers.Select(l => l with { Tag = name })],
            },
            Cuts =
            [
                .. layout.Cuts.Select(c => c with { Doing = name, Gives = name, Piece = name, Sizes = name, Caution = name }),
            ],
            Store = name,
        };

    private static LayoutPicture Legs() =>
        Samples.BoardOf([("E1", "Leg", "28 3/4"), ("E2", "Leg", "28 3/4"), ("E3", "Leg", "28 3/4")], keep: false);

    private static PacketLayout Layout(LayoutPicture picture, bool isBoard, int copies) =>
        new(
            picture,
            isBoard,
            copies,
            [
                .. picture.Cuts.Select(c => new PacketCut(
                    c.N,
                    c.N == 1 ? (isBoard ? "board" : "sheet") : $"{c.N - 1}b",
                    c.Kerf.Dx < c.Kerf.Dy ? CutWay.Crosscut : CutWay.Rip,
                    c.Kerf.Dx < c.Kerf.Dy ? c.Kerf.X : c.Kerf.Y,
                    c.Kerf.Dx < c.Kerf.Dy
                        ? "Crosscut the piece with a circular saw along a straightedge"
                        : "Rip the piece on the table saw",
                    $"{c.N}a is scrap, keep {c.N}b",
                    c.ByStore
                )
                {
                    Sizes = c.ByStore ? $"{c.N}a 15 ¾″ × 96″, {c.N}b 32 ⅛″ × 96″" : "",
                }),
            ]
        )
        {
            Store = "Store by the highway",
        };

    private static Length In(string text) => Samples.In(text);
}
