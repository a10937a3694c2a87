using System.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Projects;

namespace ShopPlanner.Services.Tests.Projects;

/// <summary>Parts out of a cut request.</summary>
public sealed class PartImportTests : IAsyncLifetime
{
    private PlannedShop given = null!;
    private Guid other;

    public async ValueTask InitializeAsync()
    {
        given = await PlannedShop.OpenAsync();
        other = (await given.Shop.Projects.CreateAsync("Copy", LengthUnit.Millimetre, CommandId.New(), TestShop.Cancel))
            .Value!
            .Id;
    }

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task What_a_plan_wrote_is_read_into_another_project_as_the_same_parts()
    {
        var row = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows[0];
        await given.Shop.Parts.SaveAsync(
            given.Project.Id,
            [
                new(row.Texts with { LongBy = "1/2", Practice = "2" }, row.Version),
                Some.New(Some.Part("27", "P", "2", Some.Birch, "13 1/4") with { CanTurn = true }),
            ],
            TestShop.Cancel
        );
        await given.Shop.Stores.SavePriceAsync(
            given.Store.Id,
            Some.Price("96", "64", Some.Birch, "48"),
            CommandId.New(),
            TestShop.Cancel
        );
        var request = await given.Shop.Plans.ExportAsync((await given.PlanAsync()).Summary.Id, plan: false, TestShop.Cancel);

        var sheet = (
            await given.Shop.Parts.ImportAsync(other, Encoding.UTF8.GetBytes(request!), CommandId.New(), TestShop.Cancel)
        ).Value!;

        var before = (await given.Shop.Parts.GetAsync(given.Project.Id, TestShop.Cancel))!.Rows;
        Assert.Equal(before.Select(one => one.Part), sheet.Rows.Select(one => one.Part));
        Assert.Equal(before.Select(one => one.Practice), sheet.Rows.Select(one => one.Practice));
        Assert.Equal("import of 2 rows", sheet.Undo);
        Assert.Empty((await given.Shop.Parts.UndoAsync(other, TestShop.Cancel)).Value!.Rows);
    }

    [Fact]
    public async Task A_mark_that_is_taken_gives_way_and_a_material_is_known_by_its_true_size()
    {
        const string request = """
            { "format": "shop-planner/cut-request", "version": 1, "unit": "in",
              "materials": [ { "id": "M", "form": "board", "thickness": "1 1/2", "width": "1 1/2" }, { "id": "odd", "form": "sheet" } ],
              "stock": [], "parts": [ { "id": "A", "name": "Post", "material": "M", "length": 30, "width": 1 }, { "id": "left rail", "material": "odd", "length": 10, "width": 4 } ] }
            """;
        var sheet = (
            await given.Shop.Parts.ImportAsync(
                given.Project.Id,
                Encoding.UTF8.GetBytes(request),
                CommandId.New(),
                TestShop.Cancel
            )
        ).Value!;
        Assert.Equal(["A", "B", "C"], sheet.Rows.Select(row => row.Texts.Mark));
        Assert.Equal(("Post", "1"), (sheet.Rows[1].Texts.Name, sheet.Rows[1].Texts.Width));
        Assert.Equal("odd", sheet.Rows[2].Texts.Material);
        Assert.Contains(sheet.Rows[2].Faults, fault => fault.Field == nameof(PartTexts.Material));
    }

    [Theory]
    [InlineData("{", "")]
    [InlineData("""{ "format": "shop-planner/cut-request", "version": 3 }""", "version")]
    [InlineData("""{ "format": "shop-planner/cut-plan", "version": 1 }""", "format")]
    public async Task A_document_that_is_none_is_refused_whole(string document, string field)
    {
        var rows = given.Shop.CountRows();
        var outcome = await given.Shop.Parts.ImportAsync(
            given.Project.Id,
            Encoding.UTF8.GetBytes(document),
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal(field, outcome.Faults[0].Field);
        Assert.Equal(rows, given.Shop.CountRows());
    }

    [Fact]
    public async Task More_parts_than_a_list_holds_are_refused_whole()
    {
        var many = string.Join(
            ',',
            Enumerable.Range(0, 5_000).Select(i => $$"""{ "id": "x{{i}}", "material": "M", "length": 9 }""")
        );
        var request = $$"""
            { "format": "shop-planner/cut-request", "version": 1, "unit": "in", "stock": [],
              "materials": [ { "id": "M", "form": "board", "width": 2 } ], "parts": [ {{many}} ] }
            """;
        var rows = given.Shop.CountRows();
        var outcome = await given.Shop.Parts.ImportAsync(
            given.Project.Id,
            Encoding.UTF8.GetBytes(request),
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.Contains("too many", outcome.Faults.Single().Message);
        Assert.Equal(rows, given.Shop.CountRows());
    }
}
