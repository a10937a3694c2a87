using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Packets;

/// <summary>The pieces of a plan's projects that were worked out from designs.</summary>
internal static class PacketPieces
{
    /// <summary>As the ideas stand now, by project; one without an idea, or with one that has faults, is left out.</summary>
    public static async Task<Dictionary<Guid, Piece>> ReadAsync(
        ShopContext db,
        IReadOnlyCollection<Guid> projects,
        CancellationToken cancel
    )
    {
        var pieces = new Dictionary<Guid, Piece>();
        foreach (var row in await db.Ideas.AsNoTracking().Where(row => projects.Contains(row.ProjectId)).ToListAsync(cancel))
        {
            var idea = IdeaService.Idea(row);
            if (DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece is { } piece)
                pieces[row.ProjectId] = piece;
        }

        return pieces;
    }
}
