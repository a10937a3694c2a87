using System.Collections.Immutable;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Plans.Stored;

/// <summary>The names of one project's share of a draft, as they would be in a plan of its own.</summary>
internal static class AloneDrafts
{
    /// <summary>Returns the projects of a draft in the order in which they choose from what is on hand: those that are cut first,
    /// then the others, as ordered.</summary>
    public static IReadOnlyList<Guid> Order(PlanDraft draft)
    {
        var own = draft.Request.Parts.Select(part => draft.Basis.Parts[part.Id].ProjectId).ToHashSet();
        return
        [
            .. draft.Order.Projects.Distinct().Where(own.Contains).OrderBy(project => !draft.Order.FromHand.Contains(project)),
        ];
    }

    /// <summary>Returns the ids of some projects' parts.</summary>
    public static ImmutableHashSet<string> PartsOf(PlanDraft draft, IReadOnlyCollection<Guid> projects) =>
        [.. draft.Basis.Parts.Where(part => projects.Contains(part.Value.ProjectId)).Select(part => part.Key)];

    /// <summary>Returns the names that a project's own request asks for.</summary>
    public static PlanBasis Basis(PlanDraft draft, Guid project, CutRequest request)
    {
        var all = draft.Basis;
        var (stocks, parts) = (request.Stock.Select(one => one.Id).ToHashSet(), request.Parts.Select(one => one.Id).ToHashSet());
        var materials = request.Materials.Select(one => one.Id).ToHashSet();
        return new(
            all.Parts.Values.First(part => part.ProjectId == project).Project,
            Some(all.Stocks, stocks.Contains),
            Some(all.Parts, parts.Contains)
                .ToImmutableSortedDictionary(
                    pair => pair.Key,
                    pair => pair.Value with { Mark = PartIds.MarkOf(pair.Key) },
                    StringComparer.Ordinal
                ),
            Some(all.Rows, parts.Contains),
            Some(all.Pieces, stocks.Contains),
            Some(all.Seen, stocks.Contains),
            Some(all.Materials, materials.Contains),
            all.Units.Where(unit => unit.Key == project).ToImmutableSortedDictionary()
        )
        {
            CutBefore = Some(all.CutBefore, parts.Contains),
        };
    }

    private static ImmutableSortedDictionary<string, T> Some<T>(
        ImmutableSortedDictionary<string, T> all,
        Func<string, bool> isIn
    ) => all.Where(pair => isIn(pair.Key)).ToImmutableSortedDictionary(StringComparer.Ordinal);
}
