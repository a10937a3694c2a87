using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Rows;

namespace ShopPlanner.Services.Archives;

/// <summary>One kind of thing in an archive: a table of the database, and the document that holds its rows.</summary>
/// <param name="Table">The table.</param>
/// <param name="Says">What it is, in a few words; null for what only belongs to something else.</param>
internal sealed record ArchiveTable(string Table, string? Says)
{
    /// <summary>The document's name, <c>stock-ledger.json</c> for <c>StockLedger</c>.</summary>
    public string Document { get; } =
        string.Concat(Table.Select((c, at) => char.IsUpper(c) && at > 0 ? "-" + c : c.ToString())).ToLowerInvariant() + ".json";
}

/// <summary>What of the database is in an archive and what is not. A test fails for a table that is in neither list.</summary>
internal static class ArchiveTables
{
    /// <summary>Rows that are archived, with what a person calls them.</summary>
    public static IReadOnlyDictionary<Type, string?> Kept { get; } =
        new Dictionary<Type, string?>
        {
            [typeof(StoredShop)] = "setup",
            [typeof(StoredMaterial)] = "materials",
            [typeof(StoredProject)] = "projects",
            [typeof(StoredPart)] = "parts",
            [typeof(StoredPartStep)] = null,
            [typeof(StoredWorking)] = "kept workings",
            [typeof(StoredDesign)] = "own designs",
            [typeof(StoredIdea)] = "ideas",
            [typeof(StoredIdeaStep)] = null,
            [typeof(StoredWork)] = "orders of work",
            [typeof(StoredWorkChange)] = null,
            [typeof(StoredWeekends)] = "weekends",
            [typeof(StoredStore)] = "stores",
            [typeof(StoredPrice)] = "prices",
            [typeof(StoredPiece)] = "pieces of rack and bin",
            [typeof(StoredEntry)] = "stock entries",
            [typeof(StoredPromise)] = null,
            [typeof(StoredPurchase)] = "purchases",
            [typeof(StoredSupply)] = "supplies",
            [typeof(StoredPlan)] = "cut plans",
            [typeof(StoredPlanProject)] = null,
            [typeof(StoredPlanPart)] = null,
            [typeof(StoredComparison)] = null,
            [typeof(StoredCut)] = "cuts made",
            [typeof(StoredFinish)] = null,
            [typeof(StoredLeftOut)] = null,
            [typeof(StoredWrongCut)] = "cuts gone wrong",
            [typeof(StoredWrongPiece)] = null,
            [typeof(StoredCounter)] = null,
            [typeof(StoredFact)] = null,
        };

    /// <summary>Rows that are left out, each with its reason.</summary>
    public static IReadOnlyDictionary<Type, string> LeftOut { get; } =
        new Dictionary<Type, string>
        {
            [typeof(StoredCommand)] = "answers to presses of buttons on this shop's devices: no other shop is asked them again",
            [typeof(StoredTurn)] = "what this shop's tablets said last, so that nothing they send again counts twice",
            [typeof(StoredJob)] = "planning runs end with the program that runs them; the plans they made are in the archive",
        };

    /// <summary>The tables that are archived, by document.</summary>
    public static ImmutableArray<ArchiveTable> Of(DbContext db) =>
        [
            .. Kept.Select(one => new ArchiveTable(Row(db, one.Key).GetTableName()!, one.Value))
                .OrderBy(table => table.Document, StringComparer.Ordinal),
        ];

    /// <summary>The rows that belong to the shop: which program wrote the database is that program's own.</summary>
    public static string Where(string table) => table == "Facts" ? $" WHERE \"Name\" <> '{Migrator.WrittenBy}'" : "";

    /// <summary>The name of a column as a member of a document.</summary>
    public static string Member(string column) => char.ToLowerInvariant(column[0]) + column[1..];

    private static IEntityType Row(DbContext db, Type type) => db.Model.FindEntityType(type)!;
}
