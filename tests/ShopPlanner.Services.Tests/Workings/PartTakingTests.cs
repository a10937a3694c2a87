using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Tests.Designs;
using ShopPlanner.Services.Workings;

namespace ShopPlanner.Services.Tests.Workings;

/// <summary>A project's parts as they are added up: of its list, with what only its design knows.</summary>
public sealed class PartTakingTests
{
    [Theory, InlineData("bookcase"), InlineData("table"), InlineData("drawer-chest"), InlineData("pantry-cupboard")]
    public async Task A_list_made_from_a_design_adds_up_as_the_design_does(string design)
    {
        await using var given = await Ideas.BeginAsync(design);
        var before = (await TakeAsync(given.Shop, given.Project)).Parts;
        await given.MakeAsync();
        var listed = (await TakeAsync(given.Shop, given.Project)).Parts;
        var idea = (await given.ReadAsync()).Idea;
        var whole = PieceParts.Of(DesignEvaluator.Evaluate(idea.Document, idea.Changed).Piece!);
        foreach (var form in PartTotals.Forms)
        {
            Assert.Equal(Figures(form, whole), Figures(form, before));
            Assert.Equal(Figures(form, whole).Order(), Figures(form, listed).Order());
        }
    }

    [Fact]
    public async Task Sizes_changed_in_the_list_count_and_not_the_designs()
    {
        await using var given = await Ideas.BeginAsync();
        await given.MakeAsync();
        var rows = await given.RowsAsync();
        var shelf = rows.First(row => row.Texts.Name == "Shelf");
        var before = Figures("weight", (await TakeAsync(given.Shop, given.Project)).Parts);
        await given.Shop.Parts.SaveAsync(
            given.Project,
            [new PartEdit(shelf.Texts with { Quantity = "1" }, shelf.Version)],
            TestShop.Cancel
        );
        Assert.NotEqual(before, Figures("weight", (await TakeAsync(given.Shop, given.Project)).Parts));
    }

    [Fact]
    public async Task A_row_wider_than_its_board_is_a_panel_to_glue_and_other_faulty_rows_are_named()
    {
        await using var shop = await TestShop.OpenAsync();
        var project = await Some.ProjectAsync(shop);
        PartEdit[] rows =
        [
            Some.New(Some.Part("30", "A", "2", width: "12") with { Name = "Lid" }),
            Some.New(Some.Part("thirty", "B") with { Name = "Rail" }),
        ];
        await shop.Parts.SaveAsync(project.Id, rows, TestShop.Cancel);
        var taken = (await TakeAsync(shop, project.Id)).Parts;
        var panel = Assert.Single(taken.Panels);
        Assert.Equal(("Lid", 2, 12m, true), (panel.Name, panel.Quantity, panel.Width.ToInches(), panel.IsGlued));
        Assert.Contains("Rail", Assert.Single(taken.Left), StringComparison.Ordinal);
        Assert.Null(taken.Standing);
    }

    [Fact]
    public async Task A_project_that_is_gone_has_nothing()
    {
        await using var shop = await TestShop.OpenAsync();
        Assert.Null(await shop.Get<IPartTaking>().TakeAsync(Guid.CreateVersion7(), TestShop.Cancel));
        var project = await Some.ProjectAsync(shop);
        Assert.NotEmpty((await TakeAsync(shop, project.Id)).Parts.Left);
    }

    private static async Task<ProjectParts> TakeAsync(TestShop shop, Guid project) =>
        (await shop.Get<IPartTaking>().TakeAsync(project, TestShop.Cancel))!;

    private static List<string> Figures(string name, TakenParts parts)
    {
        Assert.True(WorkingForms.TryFind(name, out var form));
        return
        [
            .. PartTotals
                .Of(form, parts, LengthUnit.Inch, new Dictionary<string, string>())
                .Questions.Select(one =>
                    string.Join(
                        "; ",
                        one.Given.Select(pair => $"{pair.Key}={pair.Value}").Append(one.Added[0].Figure.Text(LengthUnit.Inch))
                    )
                ),
        ];
    }
}
