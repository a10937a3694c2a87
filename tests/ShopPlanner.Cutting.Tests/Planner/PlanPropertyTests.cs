using System.Collections.Immutable;
using CsCheck;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Tests.Planner;

/// <summary>What holds for every plan: the independent verifier passes it, however odd the sizes.</summary>
public sealed class PlanPropertyTests
{
    private static readonly SearchControl Brief = new() { Time = TimeSpan.FromMilliseconds(120), Workers = 1 };

    private static readonly Gen<Length> Size = Gen.OneOf(
        Gen.Int[8, 640].Select(n => Length.FromInches(0, n, 16)),
        Gen.Int[20, 12_000].Select(n => Length.FromMillimetres(n / 10m))
    );

    private static readonly Gen<SawSettings> Saw = Gen.Select(
        OneOf("0", "1/8", "3/32", "2.7 mm"),
        OneOf("0", "1/16", "1/2"),
        OneOf("0", "1/16", "1/4"),
        (kerf, end, edge) => new SawSettings(Some.Of(kerf), Some.Of(end), Some.Of(edge))
    );

    /// <summary>Odd sizes in inches and millimetres, boards with ripped parts and sheets, new stock and offcuts.</summary>
    internal static readonly Gen<CutRequest> Requests = Gen.Select(Saw, Gen.Bool, Parts(), Stocks(), Request);

    [Fact]
    public void Every_plan_passes_the_verifier() =>
        Requests.Sample(request => Some.Planned(request, Brief), iter: 150, threads: 1);

    [Fact]
    public void More_stock_never_makes_a_proven_plan_dearer() =>
        Requests.Sample(
            request =>
            {
                var more = request with
                {
                    Stock =
                    [
                        .. request.Stock,
                        Some.Stock("more", "60", "40", 0, 2, true) with
                        {
                            Material = request.Materials[0].Id,
                        },
                    ],
                };
                var (plain, richer) = (Some.Planned(request, Brief), Some.Planned(more, Brief));
                if (plain.Status == PlanStatus.Proven && richer.Status == PlanStatus.Proven)
                    Assert.True(richer.Cost <= plain.Cost);
            },
            iter: 40,
            threads: 1
        );

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static Gen<ImmutableArray<CutPart>> Parts() =>
        Gen.Select(
                Size,
                Size,
                Gen.Bool,
                Gen.Int[1, 4],
                (length, width, any, quantity) =>
                    new CutPart("", "", "m", length, width, any ? Grain.Any : Grain.Length, quantity)
            )
            .Array[1, 7]
            .Select(parts => parts.Select((part, i) => part with { Id = "P" + i }).ToImmutableArray());

    private static Gen<ImmutableArray<CutStock>> Stocks() =>
        Gen.Select(
                Gen.Int[300, 2440],
                Gen.Int[100, 1220],
                Gen.Int[0, 60],
                Gen.Int[0, 3],
                Gen.Bool,
                (length, width, price, quantity, offcut) =>
                    new CutStock(
                        "",
                        "m",
                        Length.FromMillimetres(length),
                        Length.FromMillimetres(width),
                        Money.From(offcut ? 0 : price),
                        offcut ? quantity : null,
                        offcut
                    )
            )
            .Array[1, 4]
            .Select(stocks => stocks.Select((stock, i) => stock with { Id = "S" + i }).ToImmutableArray());

    private static CutRequest Request(SawSettings saw, bool board, ImmutableArray<CutPart> parts, ImmutableArray<CutStock> stocks)
    {
        var width = Some.Of("5 1/2");
        return new(
            LengthUnit.Millimetre,
            saw,
            new(Some.Of("12"), Some.Of("12"), Some.Of("6")),
            [new("m", board ? StockForm.Board : StockForm.Sheet, null, board ? width : null)],
            board ? [.. stocks.Select(stock => stock with { Width = width })] : stocks,
            board
                ?
                [
                    .. parts.Select(
                        (part, i) =>
                            part with
                            {
                                Width = i % 3 == 0 ? Length.Min(part.Width, width) : width,
                                Grain = Grain.Length,
                            }
                    ),
                ]
                : parts,
            new(1)
        );
    }
}
