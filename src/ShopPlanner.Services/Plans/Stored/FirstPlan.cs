using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using static ShopPlanner.Services.Plans.Stored.FirstRecords;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>A plan as it was stored before there were documents.</summary>
internal sealed record FirstPlan(
    string Unit,
    string Status,
    long Cost,
    long CostLowerBound,
    double Seconds,
    ImmutableArray<FirstPlan.PurchaseRecord> Buy,
    ImmutableArray<FirstPlan.LayoutRecord> Layouts,
    ImmutableArray<FirstPlan.UnplacedRecord> Unplaced
)
{
    /// <summary>The plan of a stored text.</summary>
    /// <exception cref="System.Text.Json.JsonException">It is damaged.</exception>
    public static CutPlan Read(string text)
    {
        var old = Read<FirstPlan>(text);
        return new CutPlan(
            FirstRecords.Unit(old.Unit),
            StatusOf(old.Status),
            Money.FromCount(old.Cost),
            Money.FromCount(old.CostLowerBound),
            old.Seconds,
            [.. old.Buy.Select(one => new Purchase(one.Stock, one.Quantity, Money.FromCount(one.Cost)))],
            [.. old.Layouts.Select(LayoutOf)],
            [.. old.Unplaced.Select(one => new UnplacedPart(one.Part, one.Quantity, one.Reason))]
        );
    }

    private static T Read<T>(string text) => FirstRecords.Read<T>(text);

    private static PlanStatus StatusOf(string word) =>
        Word(word, ("Proven", PlanStatus.Proven), ("BestFound", PlanStatus.BestFound), ("Incomplete", PlanStatus.Incomplete));

    private static Layout LayoutOf(LayoutRecord old) =>
        new(
            old.Stock,
            old.Copies,
            [
                .. old.Pieces.Select(one => new PlacedPiece(
                    one.Part,
                    Size(one.X),
                    Size(one.Y),
                    Size(one.Dx),
                    Size(one.Dy),
                    one.Turned
                )),
            ],
            [.. old.Leftovers.Select(one => new Leftover(Size(one.X), Size(one.Y), Size(one.Dx), Size(one.Dy), one.Keep))],
            [.. old.Cuts.Select(CutOf)]
        );

    private static Cut CutOf(CutRecord old) =>
        new(
            old.N,
            old.Piece,
            Word(old.Kind, ("Crosscut", CutKind.Crosscut), ("Rip", CutKind.Rip)),
            Size(old.At),
            old.First,
            old.Second,
            old.FirstPart,
            old.SecondPart
        )
        {
            ByStore = old.ByStore,
        };

    internal sealed record PurchaseRecord(string Stock, int Quantity, long Cost);

    internal sealed record LayoutRecord(
        string Stock,
        int Copies,
        ImmutableArray<PieceRecord> Pieces,
        ImmutableArray<LeftoverRecord> Leftovers,
        ImmutableArray<CutRecord> Cuts
    );

    internal sealed record PieceRecord(string Part, long X, long Y, long Dx, long Dy, bool Turned);

    internal sealed record LeftoverRecord(long X, long Y, long Dx, long Dy, bool Keep);

    internal sealed record CutRecord(
        int N,
        string Piece,
        string Kind,
        long At,
        string First,
        string? Second,
        string? FirstPart,
        string? SecondPart,
        bool ByStore = false
    );

    internal sealed record UnplacedRecord(string Part, int Quantity, string Reason);
}
