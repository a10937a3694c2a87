using System.Collections.Immutable;

namespace ShopPlanner.Services.Designs;

/// <summary>What making parts again would do to a project's parts list.</summary>
/// <param name="IsMade">Whether the list holds rows that were made from the idea.</param>
/// <param name="Rows">The rows that would change, in the order of their marks; none where the list is up to date.</param>
public sealed record PartsUpdate(bool IsMade, ImmutableArray<RowUpdate> Rows);

/// <summary>What happens to a row.</summary>
public enum RowChange
{
    /// <summary>The design has a part more.</summary>
    Added,

    /// <summary>The design changed the part.</summary>
    Changed,

    /// <summary>The design has the part no more.</summary>
    Removed,
}

/// <summary>A row that making parts again would change.</summary>
/// <param name="Change">What happens to it.</param>
/// <param name="Mark">The part's letter.</param>
/// <param name="Name">The part's name.</param>
/// <param name="Fields">What is written; of an added or a removed row its size and quantity.</param>
/// <param name="Kept">What a person changed and keeps: <see cref="FieldUpdate.From"/> stays, the design says <see
/// cref="FieldUpdate.To"/>.</param>
public sealed record RowUpdate(
    RowChange Change,
    string Mark,
    string Name,
    ImmutableArray<FieldUpdate> Fields,
    ImmutableArray<FieldUpdate> Kept
);

/// <summary>A text of a row, before and after.</summary>
/// <param name="Label">The column.</param>
/// <param name="From">The text before; empty for none.</param>
/// <param name="To">The text after; empty for none.</param>
public sealed record FieldUpdate(string Label, string From, string To);
