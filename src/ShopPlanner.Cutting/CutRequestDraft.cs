using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting;

// A request as far as it is known: null stands for what is missing or could not be read. Only a draft without faults becomes a
// request.

/// <summary>A whole request.</summary>
internal sealed record CutRequestDraft(
    LengthUnit Unit,
    SawDraft Saw,
    KeepRule Keep,
    MaterialDraft[] Materials,
    StockDraft[] Stock,
    PartDraft[] Parts,
    double? Seconds
)
{
    public StoreCuts? Store { get; init; }

    public CarryLimit? Carry { get; init; }

    /// <summary>Returns the draft of a request, which lacks nothing.</summary>
    public static CutRequestDraft Of(CutRequest request) =>
        new(
            request.Unit,
            new(
                request.Saw.Kerf,
                request.Saw.BoardEndTrim,
                request.Saw.SheetEdgeTrim,
                request.Saw.WidestRip,
                request.Saw.LongestCrosscut
            ),
            request.Keep,
            [.. request.Materials.Select(one => new MaterialDraft(one.Id, one.Form, one.Thickness, one.Width))],
            [.. request.Stock.Select(Of)],
            [.. request.Parts.Select(Of)],
            request.Limits.Seconds
        )
        {
            Store = request.Store,
            Carry = request.Carry,
        };

    /// <summary>Returns the draft without what is out of its range by itself: that is a fault of its own, and says nothing of
    /// other members.</summary>
    public CutRequestDraft InRange() =>
        this with
        {
            Saw = new(
                Length(Saw.Kerf),
                Length(Saw.BoardEndTrim),
                Length(Saw.SheetEdgeTrim),
                Size(Saw.WidestRip),
                Size(Saw.LongestCrosscut)
            ),
            Materials = [.. Materials.Select(one => one with { Id = Name(one.Id), Width = Size(one.Width) })],
            Stock = [.. Stock.Select(InRange)],
            Parts = [.. Parts.Select(InRange)],
        };

    private static StockDraft InRange(StockDraft stock) =>
        stock with
        {
            Id = Name(stock.Id),
            Material = Name(stock.Material),
            Length = Size(stock.Length),
            Width = Size(stock.Width),
            BadPlaces = [.. stock.BadPlaces.Select(InRange)],
        };

    private static PlaceDraft InRange(PlaceDraft place) => new(Length(place.X), Length(place.Y), Size(place.Dx), Size(place.Dy));

    private static PartDraft InRange(PartDraft part) =>
        part with
        {
            Id = Name(part.Id),
            Material = Name(part.Material),
            Length = Size(part.Length),
            Width = Size(part.Width),
            FinishedLength = Size(part.FinishedLength),
            FinishedWidth = Size(part.FinishedWidth),
            PracticeFor = Name(part.PracticeFor),
            Quantity =
                part.Quantity is { } pieces && DocumentRanges.Count(pieces, 1, CutRequestRanges.MostPieces) is null
                    ? pieces
                    : null,
        };

    private static Length? Length(Length? given) =>
        given is { } length && CutRequestRanges.Length(length) is null ? length : null;

    private static Length? Size(Length? given) => given is { } size && CutRequestRanges.Size(size) is null ? size : null;

    private static string? Name(string? given) => given is not null && DocumentRanges.Name(given) is null ? given : null;

    private static StockDraft Of(CutStock stock) =>
        new(
            stock.Id,
            stock.Material,
            stock.Length,
            stock.Width,
            stock.Price,
            stock.Quantity,
            stock.Offcut,
            StoreCuts: !stock.SoldUncut
        )
        {
            Untrimmed = stock.Untrimmed,
            BadPlaces = [.. stock.BadPlaces.Select(place => new PlaceDraft(place.X, place.Y, place.Dx, place.Dy))],
        };

    private static PartDraft Of(CutPart part) =>
        new(part.Id, part.Name, part.Material, part.Length, part.Width, part.Grain, part.Quantity)
        {
            FinishedLength = part.FinishedLength,
            FinishedWidth = part.FinishedWidth,
            PracticeFor = part.PracticeFor,
        };
}

/// <summary>The saw.</summary>
internal sealed record SawDraft(
    Length? Kerf,
    Length? BoardEndTrim,
    Length? SheetEdgeTrim,
    Length? WidestRip,
    Length? LongestCrosscut
);

/// <summary>A material.</summary>
internal sealed record MaterialDraft(string? Id, StockForm? Form, Length? Thickness, Length? Width);

/// <summary>A size of stock.</summary>
internal sealed record StockDraft(
    string? Id,
    string? Material,
    Length? Length,
    Length? Width,
    Money? Price,
    int? Quantity,
    bool Offcut,
    bool StoreCuts
)
{
    public StockEdges? Untrimmed { get; init; }

    public PlaceDraft[] BadPlaces { get; init; } = [];
}

/// <summary>A bad place; where nothing is said, it begins at the edge and goes across the whole board or sheet.</summary>
internal sealed record PlaceDraft(Length? X, Length? Y, Length? Dx, Length? Dy);

/// <summary>A kind of part.</summary>
internal sealed record PartDraft(
    string? Id,
    string? Name,
    string? Material,
    Length? Length,
    Length? Width,
    Grain? Grain,
    int? Quantity
)
{
    public Length? FinishedLength { get; init; }

    public Length? FinishedWidth { get; init; }

    public string? PracticeFor { get; init; }
}
