using System.Text.Json;
using System.Text.Json.Serialization;
using ShopPlanner.Services.Bench;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>How a board or sheet stands.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Cuts">Numbers of all its cuts, in order.</param>
/// <param name="Made">Numbers of those that are made.</param>
/// <param name="IsFinished">Whether nothing more is cut from it.</param>
internal sealed record BenchStockStanding(int Number, IReadOnlyList<int> Cuts, IReadOnlyList<int> Made, bool IsFinished);

/// <summary>How a plan stands at the bench, as its page's script knows it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="At">When it was read, by this computer's clock: of two the later one counts.</param>
/// <param name="Form">Changes with whatever the page shows beside ticks: finished boards, a plan out of date or canceled.</param>
/// <param name="Stocks">Its boards and sheets.</param>
internal sealed record BenchPlanStanding(Guid Plan, long At, string Form, IReadOnlyList<BenchStockStanding> Stocks)
{
    /// <summary>How the page's script reads and writes.</summary>
    public static JsonSerializerOptions Format { get; } =
        new(JsonSerializerDefaults.Web) { DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull };

    /// <summary>Returns how a plan stands.</summary>
    public static BenchPlanStanding Of(BenchView view, TimeProvider clock) =>
        new(
            view.Plan.Summary.Id,
            clock.GetUtcNow().ToUnixTimeMilliseconds(),
            string.Join(
                ' ',
                view.Stocks.Where(stock => stock.Finished)
                    .Select(stock => $"{stock.Number}:{string.Join(',', stock.Binned.Select(piece => piece.Tag))}")
                    .Append(
                        IsGone(view) ? "canceled"
                        : view.Plan.OutOfDate ? "old"
                        : "good"
                    )
            ),
            [
                .. view.Stocks.Select(stock => new BenchStockStanding(
                    stock.Number,
                    [.. stock.Cuts.Select(cut => cut.Cut.N)],
                    [.. stock.Cuts.Where(cut => cut.Made).Select(cut => cut.Cut.N)],
                    stock.Finished
                )),
            ]
        );

    /// <summary>Returns it as the page holds it: no sign that could end the element.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Format);

    private static bool IsGone(BenchView view) => view.Plan.Summary.State == Services.Common.PlanState.Withdrawn;
}
