using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>
/// Small requests with the saw settings, prices and sizes that people seldom write: a kerf wider than a part, a trim as large as the
/// stock, new stock without a price beside offcuts with one. Sizes are in quarters of an inch, so that edges often meet exactly.
/// </summary>
internal static class SmallRequests
{
    private static readonly Length BoardWidth = Some.Of("10");
    private static readonly string[] Fine = ["1/8", "1/4", "2.7 mm"];
    private static readonly decimal[] Prices = [0, 0, 1, 2.5m, 7];

    private static readonly Gen<Length> Size = Gen.Frequency(
        (4, Gen.Int[1, 48].Select(n => Length.FromInches(0, n, 4))),
        (1, Gen.Int[1, 3000].Select(n => Length.FromMillimetres(n / 10m)))
    );

    private static readonly Gen<Length> Taken = Gen.Frequency(
        (2, Gen.Const(Length.Zero)),
        (2, Gen.Int[0, Fine.Length - 1].Select(i => Some.Of(Fine[i]))),
        (3, Gen.Int[1, 48].Select(n => Length.FromInches(0, n, 4)))
    );

    private static readonly Gen<SawSettings> Saw = Gen.Select(
        Taken,
        Taken,
        Taken,
        (kerf, end, edge) => new SawSettings(kerf, end, edge)
    );

    private static readonly Gen<Length?> Limit = Gen.Frequency(
        (1, Gen.Const((Length?)null)),
        (2, Gen.Int[1, 48].Select(n => (Length?)Length.FromInches(0, n, 4)))
    );

    private static readonly Gen<KeepRule> Keep = Gen.Select(
        Gen.Bool,
        Size,
        Size,
        Size,
        (keeps, board, length, width) => keeps ? new KeepRule(board, length, width) : new KeepRule(null, null, null)
    );

    /// <summary>One material: boards cut to length, boards that are ripped, or sheets.</summary>
    public static readonly Gen<CutRequest> All = Gen.Select(Gen.Int[0, 2], Saw, Keep, Stocks(), Parts(), Request);

    /// <summary>The same with limits of saw, store and car, each now and then.</summary>
    public static readonly Gen<CutRequest> Limited = Gen.Select(All, Limit, Limit, Limit, Gen.Int[0, 3], Taken)
        .Select(
            (request, rip, crosscut, carry, cuts, tolerance) =>
                request with
                {
                    Saw = request.Saw with { WidestRip = rip, LongestCrosscut = crosscut },
                    Store = cuts == 0 ? null : new(cuts, tolerance),
                    Carry = carry is { } longest ? new(longest, Length.Min(longest, BoardWidth)) : null,
                }
        );

    /// <summary>A request, and the same with other stock and settings or with other parts.</summary>
    public static readonly Gen<(CutRequest Before, CutRequest After)> Edited = Gen.Select(
        All,
        Limited,
        Gen.Bool,
        (before, other, parts) =>
            (
                before,
                parts
                    ? before with
                    {
                        Parts =
                        [
                            .. other.Parts.Select(part => part with { Grain = Grain.Length, Width = before.Parts[0].Width }),
                        ],
                    }
                    : other
            )
    );

    private static Gen<ImmutableArray<CutStock>> Stocks() =>
        Gen.Select(
                Size,
                Size,
                Gen.Int[0, Prices.Length - 1].Select(i => Prices[i]),
                Gen.Int[0, 3],
                Gen.Bool,
                (length, width, price, quantity, offcut) =>
                    new CutStock("", "m", length, width, Money.From(price), quantity == 3 ? null : quantity, offcut)
            )
            .Array[1, 4]
            .Select(stocks => stocks.Select((stock, i) => stock with { Id = "S" + i }).ToImmutableArray());

    private static Gen<ImmutableArray<CutPart>> Parts() =>
        Gen.Select(
                Size,
                Size,
                Gen.Bool,
                Gen.Int[1, 3],
                (length, width, any, quantity) =>
                    new CutPart("", "", "m", length, width, any ? Grain.Any : Grain.Length, quantity)
            )
            .Array[1, 4]
            .Select(parts => parts.Select((part, i) => part with { Id = "P" + i }).ToImmutableArray());

    private static CutRequest Request(
        int kind,
        SawSettings saw,
        KeepRule keep,
        ImmutableArray<CutStock> stocks,
        ImmutableArray<CutPart> parts
    )
    {
        var (board, ripped) = (kind < 2, kind == 1);
        return new(
            LengthUnit.Inch,
            saw,
            keep,
            [new("m", board ? StockForm.Board : StockForm.Sheet, null, board ? BoardWidth : null)],
            [.. stocks.Select(stock => board ? stock with { Width = Across(stock, ripped) } : stock)],
            [.. parts.Select(part => board ? part with { Width = Across(part, ripped), Grain = Grain.Length } : part)],
            new(1)
        );
    }

    private static Length Across(CutStock stock, bool ripped) =>
        ripped && stock.Offcut ? Length.Min(stock.Width, BoardWidth) : BoardWidth;

    private static Length Across(CutPart part, bool ripped) => ripped ? Length.Min(part.Width, BoardWidth) : BoardWidth;
}
