using Microsoft.EntityFrameworkCore;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Storage;

namespace ShopPlanner.Services.Paper;

/// <summary>What the designs of projects know of their parts.</summary>
internal sealed class KnownParts
{
    private readonly Dictionary<Guid, ILookup<string, PartLabel>> projects = [];

    private KnownParts() { }

    /// <summary>Reads the designs of some projects as they stand now; one that has errors tells nothing.</summary>
    public static async Task<KnownParts> ReadAsync(ShopContext db, IReadOnlyCollection<Guid> projects, CancellationToken cancel)
    {
        var known = new KnownParts();
        foreach (var project in projects)
            if (await PieceAsync(db, project, cancel) is { } piece)
                known.projects[project] = PartLabels.Of(piece).ToLookup(one => one.Part.Id, StringComparer.Ordinal);
        return known;
    }

    /// <summary>A project's piece; null where it has no design, or one with errors.</summary>
    public static async Task<Piece?> PieceAsync(ShopContext db, Guid project, CancellationToken cancel)
    {
        if (await db.Ideas.AsNoTracking().SingleOrDefaultAsync(row => row.ProjectId == project, cancel) is not { } row)
            return null;
        var idea = IdeaService.Idea(row);
        return DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece;
    }

    /// <summary>What is known of one copy of a row whose letter and name a part of the design has; null for nothing.</summary>
    /// <param name="project">The project.</param>
    /// <param name="letter">The row's mark.</param>
    /// <param name="name">The row's name.</param>
    /// <param name="number">Which copy, from 1.</param>
    public PartLabel? Find(Guid project, string letter, string name, int number) =>
        projects.TryGetValue(project, out var parts)
        && parts[letter].ElementAtOrDefault(number - 1) is { } label
        && label.Part.Name == name
            ? label
            : null;
}
