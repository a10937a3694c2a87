using ShopPlanner.Cutting;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>A bad end, edge or corner of a leftover, as typed.</summary>
/// <param name="Where">Which, by its name in the form; empty for none.</param>
/// <param name="Along">How long it is, as typed; not asked of an edge.</param>
/// <param name="Across">How wide it is, as typed; not asked of an end.</param>
public sealed record BadEntry(string Where, string Along, string Across)
{
    /// <summary>The ends and corners to choose from, those of sheets with the edges.</summary>
    public static IReadOnlyList<StockEdges> Choices(bool isBoard) =>
        isBoard ? [.. Ends, .. Corners] : [.. Ends, StockEdges.Front, StockEdges.Back, .. Corners];

    private static StockEdges[] Ends => [StockEdges.Near, StockEdges.Far];

    private static StockEdges[] Corners =>
        [
            StockEdges.Near | StockEdges.Front,
            StockEdges.Near | StockEdges.Back,
            StockEdges.Far | StockEdges.Front,
            StockEdges.Far | StockEdges.Back,
        ];

    /// <summary>The same as the services take it; null where nothing is bad.</summary>
    public BadPlaceTyped? Typed =>
        Where.Length == 0 || !Enum.TryParse<StockEdges>(Where, out var where)
            ? null
            : new(
                where is StockEdges.Near or StockEdges.Far ? BadPlaceKind.End
                    : where is StockEdges.Front or StockEdges.Back ? BadPlaceKind.Edge
                    : BadPlaceKind.Corner,
                where,
                Along,
                Across
            );

    /// <summary>Reads what a row of the form says; null where it doesn't ask.</summary>
    internal static BadEntry? Read(BenchForm form, string row)
    {
        if (form.Text($"{row}.Bad.{nameof(Where)}") is not { } where)
            return null;
        if (where.Length > 0 && !(Enum.TryParse<StockEdges>(where, out var edges) && Choices(isBoard: false).Contains(edges)))
            form.Refuse($"{row}.Bad.{nameof(Where)}", "is none of the list: choose an end or a corner");
        return new(where, form.Text($"{row}.Bad.{nameof(Along)}") ?? "", form.Text($"{row}.Bad.{nameof(Across)}") ?? "");
    }
}
