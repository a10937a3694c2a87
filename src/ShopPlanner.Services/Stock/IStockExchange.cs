using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Stock;

/// <summary>A piece as a file has it.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="Tag">The file's tag where no piece has it yet; empty where the piece gets the next one.</param>
/// <param name="TagBefore">The file's tag, where another piece has it; empty elsewhere.</param>
/// <param name="Place">Rack or bin.</param>
/// <param name="Material">The material's name.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across the grain.</param>
/// <param name="Pieces">How many alike.</param>
/// <param name="Note">Free text.</param>
public sealed record StockPreviewRow(
    long Line,
    string Tag,
    string TagBefore,
    StockPlace Place,
    string Material,
    Length Length,
    Length Width,
    int Pieces,
    string Note
);

/// <summary>What a file would add to rack and bin. Nothing is stored.</summary>
/// <param name="Rows">The lines that were understood.</param>
/// <param name="Faults">What is wrong with the others, by line and column; while there is any, nothing is added.</param>
/// <param name="Unused">Headings of columns that say nothing about stock.</param>
/// <param name="Format">How the file was read.</param>
/// <param name="Unit">Of the shop.</param>
public sealed record StockPreview(
    ImmutableArray<StockPreviewRow> Rows,
    ImmutableArray<Fault> Faults,
    ImmutableArray<string> Unused,
    TableFormat Format,
    LengthUnit Unit
);

/// <summary>Rack and bin as tables of text.</summary>
public interface IStockExchange
{
    /// <summary>The largest file that is read, in bytes.</summary>
    const int MostBytes = 5_000_000;

    /// <summary>The most pieces of one file.</summary>
    const int MostPieces = 2_000;

    /// <summary>Returns everything on hand as CSV (RFC 4180), a line for each piece with its tag, condition and bad places. Read
    /// into an empty shop it gives the same pieces.</summary>
    Task<string> ExportCsvAsync(CancellationToken cancel = default);

    /// <summary>Reads a table of stock as it would be added; stores nothing. Columns: tag, where, material, length, width,
    /// pieces, note, edges as bought, bad places; only material and length must be there.</summary>
    Task<Outcome<StockPreview>> PreviewCsvAsync(TableFile csv, CancellationToken cancel = default);

    /// <summary>Adds all pieces of such a table, or none with a fault for each wrong cell. A tag that no piece has or had is
    /// kept, every other piece gets the next one.</summary>
    Task<Outcome<IReadOnlyList<StockPiece>>> ImportCsvAsync(
        TableFile csv,
        string device,
        CommandId command,
        CancellationToken cancel = default
    );
}
