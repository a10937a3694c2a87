using System.Collections.Immutable;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Buying;

/// <summary>Pieces of a line that are bought, as a device says it.</summary>
/// <param name="Stock">The line.</param>
/// <param name="Places">Which pieces, from 1. A piece that is bought already stays as it is.</param>
/// <param name="Price">What each cost, as typed; empty for the plan's price.</param>
public sealed record PiecesBought(string Stock, ImmutableArray<int> Places, string Price)
{
    /// <summary>The store's name; empty for the plan's.</summary>
    public string Store { get; init; } = "";
}

/// <summary>Pieces of a line that are not bought after all, or were taken back to the store.</summary>
/// <param name="Stock">The line.</param>
/// <param name="Places">Which pieces; those that are not bought are left out.</param>
public sealed record PiecesReturned(string Stock, ImmutableArray<int> Places);

/// <summary>What a builder saw in the store.</summary>
/// <param name="Stock">The line.</param>
/// <param name="Price">What one costs now, as typed; null where it was not looked at.</param>
/// <param name="InStock">Whether there is any; null where it was not looked at.</param>
public sealed record SeenInStore(string Stock, string? Price, bool? InStock);

/// <summary>What is said about a supply.</summary>
/// <param name="Bought">Whether it is bought; null leaves it.</param>
/// <param name="Price">What all of it costs, as typed; empty for unknown, null leaves it.</param>
public sealed record SupplyEdit(bool? Bought, string? Price);

/// <summary>
/// Keeps shopping lists. What is ticked lies in the rack, promised to its plan, with the money that was paid for it; what is
/// taken back leaves both. Each command is done once, and so is the same tick of two devices.
/// </summary>
public interface IBuyingService
{
    /// <summary>Returns a plan's list; null where there is no such plan.</summary>
    Task<ShoppingList?> OfPlanAsync(Guid plan, CancellationToken cancel = default);

    /// <summary>Returns what a project needs besides boards and sheets, as a list; null where there is no such project.</summary>
    Task<ShoppingList?> OfProjectAsync(Guid project, CancellationToken cancel = default);

    /// <summary>Buys pieces of a line: those that the plan cuts are promised to it, the others are free stock of the rack.
    /// Refused for a plan that is canceled or all cut; a conflict where a piece was bought at another price than the one
    /// given.</summary>
    Task<Outcome<ShoppingList>> BuyAsync(
        Guid plan,
        PiecesBought bought,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Buys all that is still to be bought at a store, at the prices known now. What the store was seen without is left
    /// to buy. A fault where nothing is.</summary>
    Task<Outcome<ShoppingList>> BuyRestAsync(
        Guid plan,
        string store,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Takes pieces of a line back: they leave the rack, and the money with them. A conflict, with the reason, where one
    /// of them was cut, thrown away or promised to another plan.</summary>
    Task<Outcome<ShoppingList>> ReturnAsync(
        Guid plan,
        PiecesReturned returned,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Corrects what was paid for each piece of a line that was ticked.</summary>
    Task<Outcome<ShoppingList>> CorrectPriceAsync(
        Guid plan,
        string stock,
        string price,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Writes what was seen in the store into its price list, seen today.</summary>
    Task<Outcome<ShoppingList>> NoteAsync(Guid plan, SeenInStore seen, CommandId command, CancellationToken cancel = default);

    /// <summary>Ticks a supply, or says what it costs.</summary>
    Task<Outcome<SupplyLine>> SetSupplyAsync(
        Guid project,
        string key,
        SupplyEdit edit,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Adds a line of the builder's own.</summary>
    Task<Outcome<SupplyLine>> AddSupplyAsync(
        Guid project,
        string name,
        string amount,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );

    /// <summary>Removes a line of the builder's own, and the money with it.</summary>
    Task<Outcome<Done>> RemoveSupplyAsync(Guid project, string key, CancellationToken cancel = default);
}
