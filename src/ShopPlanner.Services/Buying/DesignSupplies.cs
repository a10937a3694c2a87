using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Buying;

/// <summary>Something that a design asks for besides boards and sheets.</summary>
/// <param name="Name">As asked for in a store.</param>
/// <param name="Amount">How much.</param>
internal sealed record DesignSupply(string Name, string Amount);

/// <summary>Reads the hardware, screws and glue of designs. What was worked out last is kept: a tick need not do it
/// again.</summary>
internal sealed class DesignSupplies
{
    private const int Most = 64;

    private readonly ConcurrentDictionary<Guid, Kept> kept = [];

    /// <summary>Returns what an idea asks for; nothing where it cannot be worked out.</summary>
    public ImmutableArray<DesignSupply> Of(StoredIdea row)
    {
        if (kept.TryGetValue(row.ProjectId, out var known) && known.Document == row.Document && known.Changed == row.Changed)
            return known.Supplies;
        var idea = IdeaService.Idea(row);
        var piece = DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece;
        var supplies = piece is null ? [] : Of(piece);
        if (kept.Count >= Most)
            kept.Clear();
        kept[row.ProjectId] = new Kept(row.Document, row.Changed, supplies);
        return supplies;
    }

    private static ImmutableArray<DesignSupply> Of(Piece piece) =>
        [.. piece.Hardware.Select(item => new DesignSupply(item.Name, item.Quantity.ToString(CultureInfo.InvariantCulture)))];

    private sealed record Kept(string Document, string Changed, ImmutableArray<DesignSupply> Supplies);
}
