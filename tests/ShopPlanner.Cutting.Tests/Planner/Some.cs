using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting.Planning;
using ShopPlanner.Cutting.Verification;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Small requests, written with as few words as the case needs; lengths are texts in inches.</summary>
internal static class Some
{
    public static readonly SearchControl Short = new() { Time = TimeSpan.FromSeconds(2) };

    public static Length Of(string text) => LengthText.Parse(text, LengthUnit.Inch).Value;

    public static CutMaterial Board(string id = "pine", string width = "2 1/2") => new(id, StockForm.Board, Of("3/4"), Of(width));

    public static CutMaterial Sheet(string id = "ply") => new(id, StockForm.Sheet, Of("23/32"), null);

    public static CutStock Stock(
        string id,
        string length,
        string width = "2 1/2",
        decimal price = 0,
        int? quantity = null,
        bool offcut = false,
        string material = "pine"
    ) => new(id, material, Of(length), Of(width), Money.From(price), quantity, offcut);

    public static CutPart Part(
        string id,
        string length,
        int quantity = 1,
        string width = "2 1/2",
        Grain grain = Grain.Length,
        string material = "pine"
    ) => new(id, id, material, Of(length), Of(width), grain, quantity);

    public static CutRequest Request(
        IEnumerable<CutMaterial> materials,
        IEnumerable<CutStock> stock,
        IEnumerable<CutPart> parts,
        string kerf = "1/8",
        string endTrim = "0",
        string edgeTrim = "0",
        KeepRule? keep = null
    ) =>
        new(
            LengthUnit.Inch,
            new(Of(kerf), Of(endTrim), Of(edgeTrim)),
            keep ?? new(Of("12"), Of("12"), Of("6")),
            [.. materials],
            [.. stock],
            [.. parts],
            new(5)
        );

    /// <summary>Plans, and fails where the independent verifier finds anything.</summary>
    public static CutPlan Planned(CutRequest request, SearchControl? control = null)
    {
        var plan = CutPlanner.Plan(request, control ?? Short);
        Assert.Empty(PlanVerifier.Check(request, plan));
        return plan;
    }

    public static ImmutableArray<PlacedPiece> AllPieces(this CutPlan plan) =>
        [.. plan.Layouts.SelectMany(layout => Enumerable.Repeat(layout.Pieces, layout.Copies)).SelectMany(pieces => pieces)];
}
