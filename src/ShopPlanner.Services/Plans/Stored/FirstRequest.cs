using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using static ShopPlanner.Services.Plans.Stored.FirstRecords;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>A request as it was stored before there were documents.</summary>
internal sealed record FirstRequest(
    string Unit,
    FirstRequest.SawRecord Saw,
    FirstRequest.KeepRecord Keep,
    ImmutableArray<FirstRequest.MaterialRecord> Materials,
    ImmutableArray<FirstRequest.StockRecord> Stock,
    ImmutableArray<FirstRequest.PartRecord> Parts,
    FirstRequest.LimitsRecord Limits,
    FirstRequest.StoreRecord? Store = null,
    FirstRequest.CarryRecord? Carry = null
)
{
    /// <summary>The request of a stored text.</summary>
    /// <exception cref="System.Text.Json.JsonException">It is damaged.</exception>
    public static CutRequest Read(string text)
    {
        var old = Read<FirstRequest>(text);
        return new CutRequest(
            FirstRecords.Unit(old.Unit),
            new SawSettings(Size(old.Saw.Kerf), Size(old.Saw.BoardEndTrim), Size(old.Saw.SheetEdgeTrim))
            {
                WidestRip = Size(old.Saw.WidestRip),
                LongestCrosscut = Size(old.Saw.LongestCrosscut),
            },
            new KeepRule(Size(old.Keep.BoardLength), Size(old.Keep.SheetLength), Size(old.Keep.SheetWidth)),
            [.. old.Materials.Select(one => new CutMaterial(one.Id, FormOf(one.Form), Size(one.Thickness), Size(one.Width)))],
            [.. old.Stock.Select(StockOf)],
            [.. old.Parts.Select(PartOf)],
            new CutLimits(old.Limits.Seconds)
        )
        {
            Store = old.Store is { } store ? new StoreCuts(store.Most, Size(store.Tolerance)) : null,
            Carry = old.Carry is { } carry ? new CarryLimit(Size(carry.Longest), Size(carry.Widest)) : null,
        };
    }

    private static T Read<T>(string text) => FirstRecords.Read<T>(text);

    private static StockForm FormOf(string word) => Word(word, ("Board", StockForm.Board), ("Sheet", StockForm.Sheet));

    private static CutStock StockOf(StockRecord old) =>
        new(old.Id, old.Material, Size(old.Length), Size(old.Width), Money.FromCount(old.Price), old.Quantity, old.Offcut)
        {
            SoldUncut = old.SoldUncut,
        };

    private static CutPart PartOf(PartRecord old) =>
        new(
            old.Id,
            old.Name,
            old.Material,
            Size(old.Length),
            Size(old.Width),
            Word(old.Grain, ("Length", Grain.Length), ("Any", Grain.Any)),
            old.Quantity
        )
        {
            FinishedLength = Size(old.FinishedLength),
            FinishedWidth = Size(old.FinishedWidth),
            PracticeFor = old.PracticeFor,
        };

    internal sealed record SawRecord(
        long Kerf,
        long BoardEndTrim,
        long SheetEdgeTrim,
        long? WidestRip = null,
        long? LongestCrosscut = null
    );

    internal sealed record KeepRecord(long? BoardLength, long? SheetLength, long? SheetWidth);

    internal sealed record MaterialRecord(string Id, string Form, long? Thickness, long? Width);

    internal sealed record StockRecord(
        string Id,
        string Material,
        long Length,
        long Width,
        long Price,
        int? Quantity,
        bool Offcut,
        bool SoldUncut = false
    );

    internal sealed record PartRecord(
        string Id,
        string Name,
        string Material,
        long Length,
        long Width,
        string Grain,
        int Quantity,
        long? FinishedLength = null,
        long? FinishedWidth = null,
        string? PracticeFor = null
    );

    internal sealed record LimitsRecord(double Seconds);

    internal sealed record StoreRecord(int Most, long Tolerance);

    internal sealed record CarryRecord(long Longest, long Widest);
}
