using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Layouts;

namespace ShopPlanner.Drawing.Tests;

/// <summary>Invented layouts.</summary>
internal static class Samples
{
    /// <summary>A 1x3 of 96 in: two rails, six short blocks, a keeper.</summary>
    public static LayoutPicture Board() =>
        BoardOf(
            [
                ("C1", "Rail", "34 1/2"),
                ("C2", "Rail", "34 1/2"),
                ("D1", "Block", "1 1/2"),
                ("D2", "Block", "1 1/2"),
                ("D3", "Block", "1 1/2"),
                ("D4", "Block", "1 1/2"),
            ],
            keep: true
        );

    /// <summary>A 1x3 of 96 in cut from the left by a 1/8 in saw after 1/2 in is squared off.</summary>
    public static LayoutPicture BoardOf((string Mark, string Name, string Length)[] pieces, bool keep)
    {
        var (x, width, kerf) = (In("1/2"), In("2 1/2"), In("1/8"));
        var placed = ImmutableArray.CreateBuilder<PiecePicture>();
        var cuts = ImmutableArray.CreateBuilder<CutPicture>();
        cuts.Add(new(1, new(In("3/8"), Length.Zero, kerf, width)));
        foreach (var (mark, name, length) in pieces)
        {
            placed.Add(new(mark, name, new(x, Length.Zero, In(length), width), Turned: false));
            x += In(length);
            cuts.Add(new(cuts.Count + 1, new(x, Length.Zero, kerf, width), cuts.Count == 2 ? CutState.Next : CutState.Planned));
            x += kerf;
        }

        return new(
            "Pine 1x3, 96 in, board 1 of 3",
            LengthUnit.Inch,
            In("96"),
            width,
            In("3/4"),
            "#F6E6C4",
            HasGrain: true,
            placed.ToImmutable(),
            [new(new(x, Length.Zero, In("96") - x, width), keep, keep ? "B12" : null)],
            [new(Length.Zero, Length.Zero, In("3/8"), width)],
            cuts.ToImmutable()
        );
    }

    /// <summary>A birch sheet: sides, shelves, a stack of thin strips, small squares, a keeper and waste.</summary>
    public static LayoutPicture Sheet()
    {
        var pieces = ImmutableArray.CreateBuilder<PiecePicture>();
        var cuts = ImmutableArray.CreateBuilder<CutPicture>();
        for (var i = 0; i < 2; i++)
            Add($"A{i + 1}", "Side panel", 0.25m + (30.125m * i), 0.25m, 30, 15.5m);
        for (var i = 0; i < 3; i++)
            Add($"B{i + 1}", "Shelf", 0.25m + (22.625m * i), 15.875m, 22.5m, 13.25m);
        for (var i = 0; i < 6; i++)
            Add($"E{i + 1}", "Edge strip", 0.25m, 29.25m + (0.875m * i), 60, 0.75m);
        for (var i = 0; i < 4; i++)
            Add($"F{i + 1}", "Corner block", 60.5m + (1.625m * i), 29.25m, 1.5m, 1.5m);
        Add("G1", "Back", 0.25m, 34.5m, 40, 13, turned: true);
        Add("G2", "A drawer front with quite a long name that goes on", 68.125m, 15.875m, 6.5m, 13.25m);
        cuts.Add(new(1, Area(0.25m, 15.75m, 95.5m, 0.125m), ByStore: true));
        cuts.Add(new(2, Area(0.25m, 29.125m, 95.5m, 0.125m), CutState.Next));
        cuts.Add(new(3, Area(30.25m, 0.25m, 0.125m, 15.5m)));
        cuts.Add(new(4, Area(60.375m, 0.25m, 0.125m, 15.5m)));
        return new(
            "Birch plywood 3/4, sheet 1 of 1",
            LengthUnit.Inch,
            In("96"),
            In("48"),
            In("23/32"),
            "#F2E6CE",
            HasGrain: true,
            pieces.ToImmutable(),
            [
                new(Area(60.5m, 0.25m, 35.25m, 15.5m), Keep: true, "B14"),
                new(Area(74.75m, 15.875m, 21, 13.25m), Keep: false, null),
                new(Area(67, 29.25m, 28.75m, 5.125m), Keep: false, null),
                new(Area(40.375m, 34.5m, 55.375m, 13.25m), Keep: true, "B15"),
            ],
            [Area(0, 0, 96, 0.25m), Area(0, 47.75m, 96, 0.25m), Area(0, 0.25m, 0.25m, 47.5m), Area(95.75m, 0.25m, 0.25m, 47.5m)],
            cuts.ToImmutable()
        );

        void Add(string mark, string name, decimal x, decimal y, decimal dx, decimal dy, bool turned = false) =>
            pieces.Add(new(mark, name, Area(x, y, dx, dy), turned));
    }

    public static Length In(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;

    private static StockArea Area(decimal x, decimal y, decimal dx, decimal dy) =>
        new(Length.FromInches(x), Length.FromInches(y), Length.FromInches(dx), Length.FromInches(dy));
}
