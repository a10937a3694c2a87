using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging;
using ShopPlanner.Cutting.Formats;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Plans.Stored;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Storage;
using ShopPlanner.Services.Storage.Documents;
using ShopPlanner.Services.Storage.Rows;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Opening;

/// <summary>Brings stored texts to the newest version of their documents, once. The database was copied before.</summary>
internal sealed class DocumentUpgrade(ShopContext db, ILogger log)
{
    private const string Fact = "documents";

    /// <summary>Rises when a stored format gets a new version, so that what is stored is turned over again.</summary>
    private const string Newest = "5";

    // Where a row lies, as each kind of database calls it. It holds for as long as the row is not changed.
    private readonly (string Mark, string Type) row = db.Database.IsSqlite() ? ("rowid", "INTEGER") : ("ctid", "tid");

    /// <summary>Turns over what is not in the newest version. What cannot be read stays as it is, and is named in the
    /// log.</summary>
    public async Task RunAsync(CancellationToken cancel)
    {
        var fact = await db.Facts.FindAsync([Fact], cancel);
        if (fact?.Value == Newest)
            return;
        foreach (var (table, column, turn) in Texts())
            await TurnAsync(table, column, turn, cancel);
        await AddProjectsAsync(cancel);
        if (fact is null)
            db.Facts.Add(new StoredFact { Name = Fact, Value = Newest });
        else
            fact.Value = Newest;
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Columns that hold documents, and how each is turned into its newest version; a text that is damaged throws a
    /// <see cref="StoredDocumentException"/>.</summary>
    public static IEnumerable<(string Table, string Column, Func<string, string> Turn)> Texts() =>
        [
            ("Plans", "OrderJson", Order),
            ("Plans", "RequestJson", text => CutRequestJson.Write(CutDocuments.ReadRequest(text))),
            ("Plans", "PlanJson", text => CutPlanJson.Write(CutDocuments.ReadPlan(text))),
            ("Plans", "NamesJson", text => PlanNamesDocument.Write(PlanNamesDocument.Read(text))),
            ("PlanComparisons", "Document", text => PlanComparisonDocument.Write(PlanComparisonDocument.Read(text))),
            ("PlanJobs", "OrderJson", Order),
            ("PlanJobs", "FaultsJson", text => FaultsDocument.Write(FaultsDocument.Read(text))),
            ("PartSteps", "Before", PartRows),
            ("PartSteps", "After", PartRows),
            ("ProjectIdeas", "Changed", Typed),
            ("ProjectIdeas", "Made", text => MadeRowsDocument.Write(MadeRowsDocument.Read(text))),
            ("IdeaSteps", "ChangedBefore", Typed),
            ("IdeaSteps", "ChangedAfter", Typed),
            ("ProjectWorkings", "Given", Typed),
            ("ProjectWork", "Document", Work),
            ("Weekends", "Document", text => WeekendDocument.Read(text).Write()),
            ("WorkChanges", "Before", Work),
            ("WorkChanges", "After", Work),
        ];

    private static string Order(string text) => PlanOrderDocument.Write(PlanOrderDocument.Read(text));

    private static string PartRows(string text) => PartRowsDocument.Write(PartRowsDocument.Read(text));

    private static string Typed(string text) => TextsDocument.Write(TextsDocument.Read(text));

    private static string Work(string text) => WorkDocument.Read(text).Write();

    // Past the rows' classes: what a row says does not change, nor does its version.
    private async Task TurnAsync(string table, string column, Func<string, string> turn, CancellationToken cancel)
    {
        var write = $"UPDATE \"{table}\" SET \"{column}\" = {{0}} WHERE {row.Mark} = CAST({{1}} AS {row.Type})";
        foreach (var stored in await TextsAsync(table, column, cancel))
            if (Read(table, column, stored, turn) is { } text)
                await db.Database.ExecuteSqlRawAsync(write, [text, stored.Row], cancel);
    }

    // Plans from before there were documents say only in their orders whose they are.
    private async Task AddProjectsAsync(CancellationToken cancel)
    {
        var add = $$"""
            INSERT INTO "PlanProjects" ("PlanId", "ProjectId", "Position")
            SELECT "Plans"."Id", "Projects"."Id", {2} FROM "Plans", "Projects"
            WHERE "Plans".{{row.Mark}} = CAST({0} AS {{row.Type}}) AND "Projects"."Id" = {1}
            ON CONFLICT DO NOTHING
            """;
        foreach (var stored in await TextsAsync("Plans", "OrderJson", cancel))
        foreach (var (position, project) in Read("Plans", "OrderJson", stored, PlanOrderDocument.Read)?.Projects.Index() ?? [])
            await db.Database.ExecuteSqlRawAsync(add, [stored.Row, project, position], cancel);
    }

    private Task<List<StoredText>> TextsAsync(string table, string column, CancellationToken cancel)
    {
        var read = $"SELECT CAST({row.Mark} AS TEXT) AS \"Row\", \"{column}\" AS \"Text\" FROM \"{table}\"";
        return db.Database.SqlQueryRaw<StoredText>(read).ToListAsync(cancel);
    }

    private T? Read<T>(string table, string column, StoredText stored, Func<string, T> read)
        where T : class
    {
        try
        {
            return read(stored.Text);
        }
        catch (StoredDocumentException problem)
        {
            log.LogWarning("{Column} of {Table} row {Row} stays as it is: {Problem}", column, table, stored.Row, problem.Message);
            return null;
        }
    }

    private sealed record StoredText(string Row, string Text);
}
