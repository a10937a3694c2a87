using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Projects;

/// <summary>A row as it would be added.</summary>
/// <param name="Line">The line of the file that it comes from, from 1.</param>
/// <param name="Row">The row and what it means.</param>
/// <param name="MarkBefore">The mark in the file, where the row gets another because that one is taken; null elsewhere.</param>
/// <param name="Faults">What is wrong, each naming the member of <see cref="PartTexts"/>, or <c>Unit</c>, <c>Thickness</c>
/// or <c>End of line</c>.</param>
public sealed record PartPreviewRow(long Line, PartRow Row, string? MarkBefore, ImmutableArray<Fault> Faults);

/// <summary>What a file would add to a parts list. Nothing is stored.</summary>
/// <param name="Rows">In the order of the file.</param>
/// <param name="Unused">Headings of columns that say nothing about parts.</param>
/// <param name="Unit">Of the project, and of sizes that name none.</param>
public sealed record PartPreview(ImmutableArray<PartPreviewRow> Rows, ImmutableArray<string> Unused, LengthUnit Unit)
{
    /// <summary>How the file was read.</summary>
    public required TableFormat Format { get; init; }

    /// <summary>Rows that something is wrong with.</summary>
    public int Faulty => Rows.Count(row => !row.Faults.IsEmpty);
}

/// <summary>Parts out of a list and into it: tables of text, and rows of other projects.</summary>
public interface IPartExchange
{
    /// <summary>Largest file that is read, in bytes.</summary>
    const int MostBytes = 5_000_000;

    /// <summary>Returns the parts list as CSV (RFC 4180), faulty rows too; null when the project is gone. Read back into an
    /// empty list it gives the same rows.</summary>
    Task<string?> ExportCsvAsync(Guid projectId, CancellationToken cancel = default);

    /// <summary>Reads a table of parts as it would be added; stores nothing. Columns may stand in any order under their
    /// usual names (mark, part, material, thickness, length, width, qty, note, grain, can rotate …); a heading may name a
    /// unit (<c>Length (mm)</c>), a column <c>unit</c> that of a line; cells are parted by commas, semicolons or tabs;
    /// beside semicolons a comma is the decimal mark. What the file's choices leave open is found out, and told with the rows.
    /// Faulty where the whole file cannot be read.</summary>
    Task<Outcome<PartPreview>> PreviewCsvAsync(Guid projectId, TableFile csv, CancellationToken cancel = default);

    /// <summary>Adds all rows of such a table at the end, as one step to undo; rows with faults come in as typed and are
    /// marked on the list. Refused whole where a text cannot be kept.</summary>
    Task<Outcome<PartSheet>> ImportCsvAsync(Guid projectId, TableFile csv, CommandId command, CancellationToken cancel = default);

    /// <summary>Adds copies of another project's rows at the end, as one step to undo; sizes stay the same where the units
    /// differ, a mark that is taken becomes the next free letter. A conflict when one of the rows is gone.</summary>
    /// <param name="projectId">The project they are added to.</param>
    /// <param name="from">The project they come from.</param>
    /// <param name="rows">Ids of its rows.</param>
    /// <param name="command">Made by the device.</param>
    /// <param name="cancel">Stops asking.</param>
    Task<Outcome<PartSheet>> CopyAsync(
        Guid projectId,
        Guid from,
        IReadOnlyCollection<Guid> rows,
        CommandId command,
        CancellationToken cancel = default
    );
}
