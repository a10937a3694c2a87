using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Csv;

namespace ShopPlanner.Services.Stores;

/// <summary>A store.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="Name">Differs from the others'.</param>
/// <param name="Unit">Of its price list's texts.</param>
/// <param name="Note">Free text.</param>
/// <param name="Prices">Its price list.</param>
/// <param name="Version">Rises by one with every save.</param>
public sealed record StoreView(Guid Id, string Name, LengthUnit Unit, string Note, ImmutableArray<PriceRow> Prices, int Version)
{
    /// <summary>How many first cuts its saw makes on one sheet or board, as typed; empty for none.</summary>
    public string FirstCuts { get; init; } = "";

    /// <summary>How far such a cut may be off, as typed; left empty where there are cuts, it becomes 1/8 in or 3 mm (common
    /// practice for a panel saw in a store).</summary>
    public string CutTolerance { get; init; } = "";

    /// <summary>What a trip there and back costs, as typed; empty for nothing.</summary>
    public string TripCost { get; init; } = "";

    /// <summary>How many minutes a trip there and back takes, shopping included, as typed; empty for none.</summary>
    public string TripMinutes { get; init; } = "";
}

/// <summary>A line of a price list.</summary>
/// <param name="Id">Never changes.</param>
/// <param name="MaterialId">The material.</param>
/// <param name="MaterialName">What people call it.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across, for sheets; a board's is its material's.</param>
/// <param name="Price">Of one.</param>
/// <param name="InStock">Whether the store had it when last seen; the planner buys only what it has.</param>
/// <param name="Seen">The day the price was seen.</param>
/// <param name="Version">Rises by one with every save.</param>
public sealed record PriceRow(
    Guid Id,
    string MaterialId,
    string MaterialName,
    Length Length,
    Length Width,
    Money Price,
    bool InStock,
    DateOnly Seen,
    int Version
);

/// <summary>A line of a price list to save, as typed.</summary>
/// <param name="Id">Null for a new one.</param>
/// <param name="Material">Id or name.</param>
/// <param name="Length">As typed.</param>
/// <param name="Width">As typed; empty for a board.</param>
/// <param name="Price">As typed.</param>
/// <param name="InStock">See <see cref="PriceRow.InStock"/>.</param>
/// <param name="Version">The one it was read with; null for a new one.</param>
public sealed record PriceEdit(Guid? Id, string Material, string Length, string Width, string Price, bool InStock, int? Version);

/// <summary>A line of a price list in a file.</summary>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Material">The material's name.</param>
/// <param name="Length">Along the grain.</param>
/// <param name="Width">Across; zero for a board.</param>
/// <param name="Price">Of one.</param>
/// <param name="Before">The price that the list has now; null for a new size.</param>
/// <param name="InStock">See <see cref="PriceRow.InStock"/>.</param>
public sealed record PricePreviewRow(
    long Line,
    string Material,
    Length Length,
    Length Width,
    Money Price,
    Money? Before,
    bool InStock
);

/// <summary>What a file would do to a price list. Nothing is stored.</summary>
/// <param name="Rows">The lines that were understood.</param>
/// <param name="Faults">What is wrong with the others; while there is any, nothing is taken over.</param>
/// <param name="Unused">Headings of columns that say nothing about prices.</param>
/// <param name="Format">How the file was read.</param>
public sealed record PricePreview(
    ImmutableArray<PricePreviewRow> Rows,
    ImmutableArray<Fault> Faults,
    ImmutableArray<string> Unused,
    TableFormat Format
);

/// <summary>Keeps stores and their price lists.</summary>
public interface IStoreService
{
    /// <summary>All stores by name.</summary>
    Task<IReadOnlyList<StoreView>> ListAsync(CancellationToken cancel = default);

    /// <summary>One store, or null.</summary>
    Task<StoreView?> GetAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Adds a store.</summary>
    Task<Outcome<StoreView>> CreateAsync(string name, LengthUnit unit, CommandId command, CancellationToken cancel = default);

    /// <summary>Changes name, unit, note, first cuts and their tolerance, or what a trip costs; prices are not touched.</summary>
    Task<Outcome<StoreView>> SaveAsync(StoreView store, CancellationToken cancel = default);

    /// <summary>Adds or changes a price, seen today.</summary>
    Task<Outcome<StoreView>> SavePriceAsync(Guid storeId, PriceEdit edit, CommandId command, CancellationToken cancel = default);

    /// <summary>Takes a price out of the list.</summary>
    Task<Outcome<StoreView>> RemovePriceAsync(Guid storeId, Guid priceId, CancellationToken cancel = default);

    /// <summary>The price list as CSV (RFC 4180) with a heading row; a text cell that a spreadsheet would take for a formula is
    /// quoted with <c>'</c>.</summary>
    Task<string?> ExportCsvAsync(Guid storeId, CancellationToken cancel = default);

    /// <summary>Reads a price list as it would be taken over; stores nothing. Wrong cells are told, each by line and
    /// column.</summary>
    Task<Outcome<PricePreview>> PreviewCsvAsync(Guid storeId, TableFile csv, CancellationToken cancel = default);

    /// <summary>Adds or updates prices from CSV with the heading material, length, width, price, in stock, price checked; all
    /// lines or none, with a fault naming row and column for each wrong cell (at most 100). At most 5 MB. What the choices leave
    /// open is found out as <see cref="PreviewCsvAsync"/> tells it.</summary>
    Task<Outcome<StoreView>> ImportCsvAsync(
        Guid storeId,
        Stream csv,
        TableChoices choices,
        CommandId command,
        CancellationToken cancel = default
    );
}
