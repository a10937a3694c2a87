using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Plans.Stored;

namespace ShopPlanner.Services.Bench.Wrong;

/// <summary>Tells what a piece of wood could still become.</summary>
internal static class RestUses
{
    // A longer list is not read at a saw.
    private const int Most = 6;

    /// <summary>Returns whether a part fits into a piece: turned only where its grain doesn't matter.</summary>
    public static bool Fits(CutPart part, Length length, Length width) =>
        (part.Length <= length && part.Width <= width)
        || (part.Grain == Grain.Any && part.Length <= width && part.Width <= length);

    /// <summary>Returns the parts of a request that fit into a piece, the largest first.</summary>
    public static ImmutableArray<string> Of(PlanDraft draft, string material, Length length, Length width) =>
        [
            .. draft
                .Request.Parts.Where(part => part.Material == material && part.PracticeFor is null && Fits(part, length, width))
                .OrderByDescending(part => part.Length)
                .ThenByDescending(part => part.Width)
                .Take(Most)
                .Select(part => draft.Basis.Parts[part.Id])
                .Select(name => $"{name.Mark} {name.Name}".TrimEnd()),
        ];
}
