using System.Collections.Immutable;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;

namespace ShopPlanner.Services.Search;

/// <summary>What was found, in the order in which groups are shown.</summary>
public enum SearchKind
{
    /// <summary>A project, by name, code or note.</summary>
    Project,

    /// <summary>A row of a parts list, by mark, name, material, size or project.</summary>
    Part,

    /// <summary>A board, sheet or offcut on hand, by tag, material, size or note.</summary>
    Piece,

    /// <summary>A material, by name or the size of its sheets.</summary>
    Material,

    /// <summary>A store, by name or note.</summary>
    Store,

    /// <summary>A cut plan, by name or short id.</summary>
    Plan,

    /// <summary>A design, the builder's own or a built-in one.</summary>
    Design,

    /// <summary>A page of shop math.</summary>
    Calculator,

    /// <summary>A figure saved with a project.</summary>
    Figure,
}

/// <summary>One thing that was found.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Detail">What tells it from others like it; may be empty.</param>
public sealed record SearchHit(SearchKind Kind, string Title, string Detail)
{
    /// <summary>The project, piece, store or plan; of a part or a saved figure its project.</summary>
    public Guid Id { get; init; }

    /// <summary>The material's id, the design's key, or the calculator's name; empty elsewhere.</summary>
    public string Key { get; init; } = "";

    /// <summary>Of a part, its place in the list, from 0.</summary>
    public int Row { get; init; }

    /// <summary>Of a material, how many pieces are on hand.</summary>
    public int OnHand { get; init; }

    /// <summary>Of a material, a store that sells it; null where none does.</summary>
    public Guid? Store { get; init; }

    /// <summary>Of a project, where it stands.</summary>
    public ProjectState? State { get; init; }

    /// <summary>Of a plan, its line in lists.</summary>
    public PlanSummary? Plan { get; init; }
}

/// <summary>Things of one kind.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Hits">The best of them, the best first.</param>
/// <param name="More">How many others there are.</param>
public sealed record SearchGroup(SearchKind Kind, ImmutableArray<SearchHit> Hits, int More);

/// <summary>Finds anything in the shop from one field.</summary>
public interface ISearchService
{
    /// <summary>Longest text that is looked for; the rest is not read.</summary>
    const int MostCharacters = 100;

    /// <summary>Returns what has all the words and sizes of a text, by kind; nothing for a blank text. Words may be begun
    /// only; sizes are inches, feet or millimeters, alone (<c>33 1/2</c>) or as a pair (<c>4x8</c>).</summary>
    /// <param name="text">As typed.</param>
    /// <param name="most">The most of each kind.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<IReadOnlyList<SearchGroup>> FindAsync(string text, int most, CancellationToken cancel = default);
}
