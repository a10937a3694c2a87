using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Web.Features.Shopping;

/// <summary>One thing that was done on a phone's list, with the id of its command.</summary>
/// <param name="Id">Made by the phone.</param>
/// <param name="Kind"><c>buy</c>, <c>back</c>, <c>seen</c> or <c>supply</c>.</param>
internal sealed record ShoppingTick(Guid Id, string Kind)
{
    /// <summary>The line of boards or sheets.</summary>
    public string Stock { get; init; } = "";

    /// <summary>Which piece of the line.</summary>
    public int Place { get; init; }

    /// <summary>As typed; null where it was not typed.</summary>
    public string? Price { get; init; }

    /// <summary>Whether the store has it; null where it was not looked at.</summary>
    public bool? InStock { get; init; }

    /// <summary>The supply's project.</summary>
    public Guid Project { get; init; }

    /// <summary>The supply.</summary>
    public string Key { get; init; } = "";

    /// <summary>Whether the supply is bought; null leaves it.</summary>
    public bool? Bought { get; init; }
}

/// <summary>What became of a tick.</summary>
/// <param name="Id">Of its command.</param>
/// <param name="Ok">Whether it was done.</param>
/// <param name="Say">Why not, in plain words; empty when it was done.</param>
/// <param name="Again">Whether it may be done when sent once more: the disk was full, say.</param>
internal sealed record TickAnswer(Guid Id, bool Ok, string Say, bool Again);

/// <summary>Does what was ticked on a phone's list.</summary>
internal sealed class ShoppingTicks(IBuyingService buying, Guid? plan, string device, CancellationToken cancel)
{
    /// <summary>Does one tick.</summary>
    public Task<TickAnswer> DoAsync(ShoppingTick tick) =>
        (tick.Kind, plan) switch
        {
            ("buy", { } of) => AnswerAsync(
                tick,
                buying.BuyAsync(of, new PiecesBought(tick.Stock, [tick.Place], tick.Price ?? ""), device, Id(tick), cancel)
            ),
            ("back", { } of) => AnswerAsync(
                tick,
                buying.ReturnAsync(of, new PiecesReturned(tick.Stock, [tick.Place]), device, Id(tick), cancel)
            ),
            ("seen", { } of) => AnswerAsync(
                tick,
                buying.NoteAsync(of, new SeenInStore(tick.Stock, tick.Price, tick.InStock), Id(tick), cancel)
            ),
            ("supply", _) => AnswerAsync(
                tick,
                buying.SetSupplyAsync(tick.Project, tick.Key, new SupplyEdit(tick.Bought, tick.Price), device, Id(tick), cancel)
            ),
            _ => Task.FromResult(new TickAnswer(tick.Id, false, "This page is too old: load it again.", false)),
        };

    private static CommandId Id(ShoppingTick tick) => new(tick.Id);

    private static async Task<TickAnswer> AnswerAsync<T>(ShoppingTick tick, Task<Outcome<T>> doing)
        where T : class
    {
        var outcome = await doing;
        var (say, again) = (Words(outcome.Faults), outcome.Faults.Any(fault => fault.Field == "storage"));
        return new TickAnswer(tick.Id, outcome.Ok, say, again);
    }

    private static string Words(ImmutableArray<Fault> faults) => string.Join(' ', faults.Select(Web.Shared.FaultWords.Line));
}
