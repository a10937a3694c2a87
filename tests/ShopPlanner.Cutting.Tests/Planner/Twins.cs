using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>Requests changed in ways that change no least cost, or that can only lower it.</summary>
internal static class Twins
{
    private static readonly Length TwinKerf = Length.FromMillimetres(3.2m);

    /// <summary>The least cost stays what it was.</summary>
    public static readonly Dictionary<string, Func<CutRequest, CutRequest>> Equal = new()
    {
        ["seven times as large"] = request => Resized(request, length => length * 7),
        ["parts and stock the other way round"] = request =>
            request with
            {
                Parts = [.. request.Parts.Reverse()],
                Stock = [.. request.Stock.Reverse()],
                Materials = [.. request.Materials.Reverse()],
            },
        ["every piece under an id of its own"] = request => request with { Parts = [.. request.Parts.SelectMany(Split)] },
        ["every stock under two ids"] = request => request with { Stock = [.. request.Stock.SelectMany(Halved)] },
        ["sheets a quarter turn round"] = Turned,
        ["a kerf in place of air"] = KerfTwin,
        ["a part of no place beside"] = request =>
            request with
            {
                Materials = [.. request.Materials, new("other", StockForm.Board, null, Some.Of("2"))],
                Parts = [.. request.Parts, new("none", "", "other", Some.Of("10"), Some.Of("2"), Grain.Length, 1)],
            },
    };

    /// <summary>The least cost is no higher than it was.</summary>
    public static readonly Dictionary<string, Func<CutRequest, CutRequest>> Cheaper = new()
    {
        ["one more offcut"] = request => request with { Stock = [.. request.Stock, Offcut(request)] },
        ["one more size to buy"] = request => request with { Stock = [.. request.Stock, Bought(request)] },
        ["one piece fewer"] = request => request with { Parts = [.. Fewer(request.Parts[0]), .. request.Parts[1..]] },
        ["a thinner blade"] = request =>
            request with
            {
                Saw = request.Saw with { Kerf = Length.FromTicks(request.Saw.Kerf.Ticks / 2) },
            },
        ["less to trim"] = request =>
            request with
            {
                Saw = request.Saw with { BoardEndTrim = Length.Zero, SheetEdgeTrim = Length.Zero },
            },
        ["parts that may be turned"] = request =>
            EachPart(request, part => part.Material == "sheet" ? part with { Grain = Grain.Any } : part),
        ["every piece a little shorter"] = request =>
            EachPart(request, part => part with { Length = part.Length - Length.FromTicks(127) }),
    };

    /// <summary>The same request without kerf, from which <c>a kerf in place of air</c> starts.</summary>
    public static CutRequest WithoutKerf(CutRequest request) => request with { Saw = request.Saw with { Kerf = Length.Zero } };

    private static CutRequest Resized(CutRequest request, Func<Length, Length> side) => Resized(request, side, side, side);

    private static CutRequest Resized(
        CutRequest request,
        Func<Length, Length> part,
        Func<Length, Length> stock,
        Func<Length, Length> saw
    ) =>
        request with
        {
            Saw = new(saw(request.Saw.Kerf), saw(request.Saw.BoardEndTrim), saw(request.Saw.SheetEdgeTrim)),
            Materials =
            [
                .. request.Materials.Select(material =>
                    material with
                    {
                        Width = material.Width is { } width ? part(width) : null,
                    }
                ),
            ],
            Stock = [.. request.Stock.Select(one => one with { Length = stock(one.Length), Width = stock(one.Width) })],
            Parts = [.. request.Parts.Select(one => one with { Length = part(one.Length), Width = part(one.Width) })],
        };

    // n pieces in a row need Σa + (n−1)k ≤ W exactly when Σ(a+k) ≤ W+k: with ten times the size and k off every side of parts and
    // stock, the same pieces fit the same places as without a kerf.
    private static CutRequest KerfTwin(CutRequest request)
    {
        var twin = Resized(
            WithoutKerf(request),
            side => (side * 10) - TwinKerf,
            side => (side * 10) - TwinKerf,
            trim => trim * 10
        );
        return twin with { Saw = twin.Saw with { Kerf = TwinKerf } };
    }

    private static CutRequest Turned(CutRequest request) =>
        request with
        {
            Stock =
            [
                .. request.Stock.Select(one =>
                    one.Material == "sheet" ? one with { Length = one.Width, Width = one.Length } : one
                ),
            ],
            Parts =
            [
                .. request.Parts.Select(one =>
                    one.Material == "sheet" ? one with { Length = one.Width, Width = one.Length } : one
                ),
            ],
        };

    private static IEnumerable<CutPart> Split(CutPart part) =>
        Enumerable.Range(0, part.Quantity).Select(n => part with { Id = $"{part.Id}.{n}", Quantity = 1 });

    private static IEnumerable<CutStock> Halved(CutStock stock) =>
        stock.Quantity == 1
            ? [stock]
            :
            [
                stock with
                {
                    Quantity = stock.Quantity - 1,
                },
                stock with
                {
                    Id = stock.Id + "'",
                    Quantity = stock.Quantity is null ? null : 1,
                },
            ];

    private static CutStock Offcut(CutRequest request) =>
        new(
            "more",
            request.Materials[^1].Id,
            Some.Of("41 3/8"),
            request.Materials[^1].Width ?? Some.Of("23"),
            Money.Zero,
            1,
            true
        );

    private static CutStock Bought(CutRequest request) =>
        Offcut(request) with
        {
            Price = Money.From(7),
            Quantity = null,
            Offcut = false,
        };

    private static CutRequest EachPart(CutRequest request, Func<CutPart, CutPart> change) =>
        request with
        {
            Parts = [.. request.Parts.Select(change)],
        };

    private static IEnumerable<CutPart> Fewer(CutPart part) =>
        part.Quantity == 1 ? [] : [part with { Quantity = part.Quantity - 1 }];
}
