using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.Verification;

/// <summary>A sound plan, and ways to spoil it.</summary>
internal static class Damage
{
    public const string New = "new";
    public const string Ply = "ply-full";

    /// <summary>Two board parts from one new board, two sheet parts from one new sheet; an offcut too short for all of them.</summary>
    public static readonly CutRequest Request = Some.Request(
        [Some.Board(), Some.Sheet()],
        [
            Some.Stock(New, "96", price: 6),
            Some.Stock("B1", "20", quantity: 1, offcut: true),
            Some.Stock(Ply, "96", "48", 60, 2, material: "ply"),
        ],
        [
            Some.Part("A", "40", 2),
            Some.Part("P", "30", 1, "20", material: "ply"),
            Some.Part("Q", "20", 1, "10", Grain.Any, "ply"),
        ],
        endTrim: "1/2",
        edgeTrim: "1/4"
    );

    public static readonly CutPlan Sound = Some.Planned(Request);

    public static Length SixtyFourth => Some.Of("1/64");

    public static CutPlan Layout(this CutPlan plan, string stock, Func<Layout, Layout> spoil) =>
        plan with
        {
            Layouts = [.. plan.Layouts.Select(layout => layout.Stock == stock ? spoil(layout) : layout)],
        };

    public static CutPlan Piece(this CutPlan plan, string part, Func<PlacedPiece, PlacedPiece> spoil) =>
        plan with
        {
            Layouts =
            [
                .. plan.Layouts.Select(layout =>
                    layout with
                    {
                        Pieces = [.. layout.Pieces.Select(piece => piece.Part == part ? spoil(piece) : piece)],
                    }
                ),
            ],
        };

    public static CutPlan Cut(this CutPlan plan, string stock, Index at, Func<Cut, Cut> spoil) =>
        plan.Layout(stock, layout => layout with { Cuts = Replaced(layout.Cuts, at, spoil) });

    public static CutPlan Kept(this CutPlan plan, string stock, Func<Leftover, Leftover> spoil) =>
        plan.Layout(
            stock,
            layout => layout with { Leftovers = [.. layout.Leftovers.Select(left => left.Keep ? spoil(left) : left)] }
        );

    private static ImmutableArray<T> Replaced<T>(ImmutableArray<T> all, Index at, Func<T, T> spoil)
    {
        var index = at.GetOffset(all.Length);
        return all.SetItem(index, spoil(all[index]));
    }
}
