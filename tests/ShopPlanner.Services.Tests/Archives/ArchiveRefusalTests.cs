using System.Globalization;
using System.Text.Json.Nodes;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Archives;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Archives;

/// <summary>A file that is not a whole shop is refused whole, with place and reason.</summary>
public sealed class ArchiveRefusalTests(ArchiveRefusalTests.GoodArchive given) : IClassFixture<ArchiveRefusalTests.GoodArchive>
{
    private static CancellationToken Cancel => TestShop.Cancel;

    private TestShop Shop => given.Empty;

    private byte[] Good => given.Zip;

    /// <summary>A whole archive, and an empty shop that refuses every other one.</summary>
    public sealed class GoodArchive : IAsyncLifetime
    {
        internal TestShop Empty { get; private set; } = null!;

        internal byte[] Zip { get; private set; } = [];

        public async ValueTask InitializeAsync()
        {
            await using (var planned = await PlannedShop.OpenAsync())
            {
                await planned.OffcutAsync("40");
                await planned.PlanAsync();
                Zip = await planned.Shop.Get<IArchiveService>().ExportAsync(CancellationToken.None);
            }

            Empty = await TestShop.OpenAsync();
        }

        public ValueTask DisposeAsync() => Empty.DisposeAsync();
    }

    [Theory]
    [InlineData("../parts.json")]
    [InlineData("..\\parts.json")]
    [InlineData("/etc/parts.json")]
    [InlineData("C:\\parts.json")]
    [InlineData("a/../../parts.json")]
    public Task An_entry_that_points_elsewhere_is_refused(string name) =>
        RefusedAsync(ArchiveFiles.Zip([new(name, "{}")]), name, "outside the archive");

    [Theory]
    [InlineData("folder/")]
    [InlineData("parts.exe")]
    [InlineData("folder/parts.json")]
    public Task An_entry_that_is_no_document_is_refused(string name) =>
        RefusedAsync(ArchiveFiles.Zip([new(name, "")]), name, "is no document");

    [Fact]
    public Task Too_many_entries_are_refused() =>
        RefusedAsync(
            ArchiveFiles.Zip(Enumerable.Range(0, 101).Select(i => new KeyValuePair<string, string>(Name(i), "{}"))),
            "101",
            "more than the 100"
        );

    [Fact]
    public void What_comes_out_is_counted_while_it_comes()
    {
        // A megabyte of blanks is a thousand bytes in the file.
        var bomb = ArchiveFiles.Zip([
            new("parts.json", new string(' ', 1_000_000)),
            new("plans.json", new string(' ', 1_000_000)),
        ]);
        Assert.True(bomb.Length < 5_000);
        var (_, fault) = ArchiveUnpacking.Unpack(bomb, 1_500_000);
        Assert.Equal("plans.json", fault!.Field);
        Assert.Null(ArchiveUnpacking.Unpack(bomb, 2_000_000).Fault);
    }

    [Fact]
    public void A_zip_that_says_less_of_itself_than_comes_out_gives_no_more_than_is_allowed()
    {
        var bomb = ArchiveFiles.Zip([new("parts.json", new string(' ', 1_000_000))]);
        // The unpacked size, in the entry's own header and in the directory at the end: 1,000,000, made 10.
        byte[] size = BitConverter.GetBytes(1_000_000);
        for (var at = bomb.AsSpan().IndexOf(size); at >= 0; at = bomb.AsSpan().IndexOf(size))
            BitConverter.GetBytes(10).CopyTo(bomb, at);
        var (entries, fault) = ArchiveUnpacking.Unpack(bomb, 500_000);
        Assert.True(fault is not null || entries.Values.Sum(one => one.Length) <= 500_000);
    }

    [Theory]
    [InlineData("")]
    [InlineData("not a zip")]
    [InlineData("PK\u0003\u0004 cut off")]
    public Task What_is_no_zip_is_refused(string text) =>
        RefusedAsync(System.Text.Encoding.UTF8.GetBytes(text), "", "isn't a zip file");

    [Fact]
    public Task A_zip_that_is_cut_off_is_refused() => RefusedAsync(Good[..(Good.Length / 2)], "", "isn't a zip file");

    [Fact]
    public Task A_newer_format_is_refused() =>
        RefusedAsync(
            ArchiveFiles.With(
                Good,
                "archive.json",
                text => text.Replace("\"version\": 1", "\"version\": 2", StringComparison.Ordinal)
            ),
            "archive.json: version",
            "update Shop Planner"
        );

    [Fact]
    public Task A_newer_schema_is_refused() =>
        RefusedAsync(WithSchema(Good, "29991231000000_Later"), "archive.json: schema", "update Shop Planner");

    [Theory]
    [InlineData("parts.json", "{ \"format\": ", "isn't JSON")]
    [InlineData("parts.json", "", "is empty")]
    [InlineData("parts.json", "[]", "isn't shop-planner/archive-rows")]
    [InlineData("parts.json", "{ \"format\": 1 }", "isn't shop-planner/archive-rows")]
    [InlineData("parts.json", "{ \"format\": \"shop-planner/archive-rows\", \"version\": 1 }", "is missing")]
    [InlineData("parts.json", "{ \"format\": \"shop-planner/archive-rows\", \"version\": 1, \"rows\": [7] }", "isn't an object")]
    [InlineData("archive.json", "{ \"format\": \"shop-planner/archive\", \"version\": 1 }", "schema")]
    public Task A_broken_document_is_named(string name, string text, string said) =>
        RefusedAsync(ArchiveFiles.With(Good, name, _ => text), name, said);

    public static TheoryData<string, string, string?, string> Rows() =>
        new()
        {
            { "parts.json", "projectId", "\"11111111-1111-1111-1111-111111111111\"", "projects.json doesn't have" },
            { "parts.json", "position", "\"first\"", "isn't a whole number" },
            { "parts.json", "position", "1.5", "isn't a whole number" },
            { "parts.json", "name", "null", "isn't a text" },
            { "parts.json", "name", null, "is missing" },
            { "parts.json", "color", "\"red\"", "isn't a member" },
            { "pieces.json", "place", "77", "isn't a kind" },
            { "part-steps.json", "id", "\"nonsense\"", "isn't an id" },
            { "stock-ledger.json", "whenUtc", "\"yesterday\"", "isn't a time" },
            { "projects.json", "isArchived", "3", "isn't 0 or 1" },
            { "plans.json", "planJson", "\"{}\"", "can't be read" },
            { "part-steps.json", "after", "\"[\"", "can't be read" },
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public Task A_wrong_value_is_named_by_document_row_and_member(string document, string member, string? value, string said) =>
        RefusedAsync(
            ArchiveFiles.WithRow(
                Good,
                document,
                row =>
                {
                    row.Remove(member);
                    if (value is not null)
                        row[member] = JsonNode.Parse(value);
                }
            ),
            document + ": rows[0]",
            said
        );

    [Fact]
    public Task A_row_that_is_there_twice_is_refused() =>
        RefusedAsync(
            ArchiveFiles.With(
                Good,
                "projects.json",
                text =>
                {
                    var document = JsonNode.Parse(text)!;
                    var rows = document["rows"]!.AsArray();
                    rows.Add(rows[0]!.DeepClone());
                    return document.ToJsonString();
                }
            ),
            "projects.json: rows[1]",
            "that another row has"
        );

    [Fact]
    public Task A_document_that_is_missing_is_named()
    {
        var texts = ArchiveFiles.Read(Good);
        texts.Remove("prices.json");
        return RefusedAsync(ArchiveFiles.Zip(texts), "prices.json", "is missing");
    }

    [Fact]
    public async Task A_shop_that_is_not_empty_says_what_is_there_and_stays_as_it_is()
    {
        await using var given = await PlannedShop.OpenAsync();
        await given.OffcutAsync("40");
        var (before, archives) = (given.Shop.CountRows(), given.Shop.Get<IArchiveService>());
        var seen = (await archives.PreviewAsync(Good, Cancel)).Value!;
        Assert.Contains("projects: 1, stores: 1, pieces of rack and bin: 1", seen.Hindrance!.Value, StringComparison.Ordinal);
        var refused = await archives.ImportAsync(Good, CommandId.New(), Cancel);
        Assert.Equal(OutcomeKind.Faulty, refused.Kind);
        Assert.Contains("empty shop only", refused.Faults[0].Message, StringComparison.Ordinal);
        Assert.Equal(before, given.Shop.CountRows());
    }

    [Fact]
    public async Task An_archive_of_an_older_schema_is_brought_up()
    {
        // The step that added the weekends made one table, and changed no other.
        var texts = ArchiveFiles.Read(WithSchema(Good, "20261128074538_WrongCuts"));
        Assert.True(texts.Remove("weekends.json"));
        await using var empty = await TestShop.OpenAsync();
        var taken = await empty.Get<IArchiveService>().ImportAsync(ArchiveFiles.Zip(texts), CommandId.New(), Cancel);
        Assert.True(taken.Ok, string.Join("; ", taken.Faults));
        Assert.Single(await empty.Projects.ListAsync(cancel: Cancel));
    }

    private async Task RefusedAsync(byte[] zip, string place, string said)
    {
        var before = Shop.CountRows();
        var archives = Shop.Get<IArchiveService>();
        var outcome = await archives.ImportAsync(zip, CommandId.New(), Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        var told = string.Join<Fault>('\n', outcome.Faults);
        Assert.Contains(place, told, StringComparison.Ordinal);
        Assert.Contains(said, told, StringComparison.Ordinal);
        Assert.Equal(before, Shop.CountRows());
        Assert.Empty(Directory.GetFiles(Shop.Folder, "Shop.db.new*"));
    }

    private static byte[] WithSchema(byte[] zip, string schema) =>
        ArchiveFiles.With(
            zip,
            "archive.json",
            text =>
            {
                var head = JsonNode.Parse(text)!;
                head["schema"] = schema;
                return head.ToJsonString();
            }
        );

    private static string Name(int i) => string.Create(CultureInfo.InvariantCulture, $"a{i}.json");
}
