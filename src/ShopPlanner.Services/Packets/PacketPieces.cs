using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs;
using ShopPlanner.Packets.Model;
using ShopPlanner.Packets.Sections;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Packets;

/// <summary>The pieces of a plan's projects that were worked out from designs, drawn for the packet.</summary>
internal static class PacketPieces
{
    /// <summary>As the ideas stand now; a project without one, or with one that has faults, is left out.</summary>
    public static async Task<ImmutableArray<PacketPiece>> ReadAsync(
        ShopContext db,
        PlanView plan,
        PaperSize paper,
        CancellationToken cancel
    )
    {
        var wanted = plan.Order.Projects.ToList();
        var rows = await db.Ideas.AsNoTracking().Where(row => wanted.Contains(row.ProjectId)).ToListAsync(cancel);
        var names = plan
            .Parts.Values.GroupBy(part => part.ProjectId)
            .ToDictionary(same => same.Key, same => same.First().Project);
        return
        [
            .. rows.OrderBy(row => wanted.IndexOf(row.ProjectId))
                .Select(IdeaService.Idea)
                .Zip(rows.OrderBy(row => wanted.IndexOf(row.ProjectId)))
                .Select(pair => (Row: pair.Second, DesignEvaluator.Evaluate(pair.First.Document, pair.First.Changed).Piece))
                .Where(pair => pair.Piece is not null && names.ContainsKey(pair.Row.ProjectId))
                .Select(pair => PieceSheets.Of(pair.Piece!, paper) with { Name = names[pair.Row.ProjectId] }),
        ];
    }
}
