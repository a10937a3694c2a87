using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;

namespace ShopPlanner.Services.Tests.Buying;

/// <summary>The list itself: what stores have now, what else is needed, and the list as a text.</summary>
public sealed class ListTests : IAsyncLifetime
{
    private BuyingShop given = null!;

    private static CancellationToken Cancel => TestShop.Cancel;

    public async ValueTask InitializeAsync() => given = await BuyingShop.OpenAsync();

    public ValueTask DisposeAsync() => given.DisposeAsync();

    [Fact]
    public async Task A_price_seen_in_the_store_goes_into_its_price_list_and_makes_the_plan_worth_planning_again()
    {
        given.Shop.Clock.Advance(TimeSpan.FromDays(3));
        Assert.False((await given.ListAsync()).IsWorthPlanning);
        var list = BuyingShop.Sure(await NoteAsync("7.29", null));
        var price = (await given.Shop.Stores.GetAsync(given.Given.Store.Id, Cancel))!.Prices.Single();
        Assert.Equal((Money.From(7.29m), true, new DateOnly(2026, 5, 5)), (price.Price, price.InStock, price.Seen));
        Assert.Equal((BuyingShop.Each, Money.From(7.29m)), (list.Lines.Single().Planned, list.Lines.Single().Price));
        Assert.Equal(Money.From(21.87m), list.Totals.Left);
        Assert.True(list.IsWorthPlanning);
        Assert.Contains("went from 6.48 to 7.29", Assert.Single((await given.Given.ReadAsync(given.Plan)).Changes));
    }

    [Fact]
    public async Task What_the_store_has_no_more_is_noted_and_planned_without()
    {
        var list = BuyingShop.Sure(await NoteAsync(null, false));
        Assert.Equal((false, true), (list.Lines.Single().InStock, list.IsWorthPlanning));
        var again = await given.Shop.Plans.PreviewAsync(given.Given.Order(replaces: given.Plan), Cancel);
        Assert.Equal(OutcomeKind.Faulty, again.Kind);
        BuyingShop.Sure(await NoteAsync(null, true));
        Assert.False((await given.ListAsync()).IsWorthPlanning);
    }

    [Fact]
    public async Task Once_all_of_a_material_is_bought_its_prices_put_no_plan_out_of_date()
    {
        await given.BoughtAsync(1, 2, 3);
        BuyingShop.Sure(await NoteAsync("7.29", false));
        Assert.Empty((await given.Given.ReadAsync(given.Plan)).Changes);
        Assert.False((await given.ListAsync()).IsWorthPlanning);
    }

    [Fact]
    public async Task A_price_that_is_off_the_price_list_cannot_be_noted()
    {
        var store = (await given.Shop.Stores.GetAsync(given.Given.Store.Id, Cancel))!;
        await given.Shop.Stores.RemovePriceAsync(store.Id, store.Prices.Single().Id, Cancel);
        var outcome = await NoteAsync("7", null);
        Assert.Contains("no longer has this size", outcome.Faults.Single().Message);
        Assert.Null((await given.LineAsync()).Now);
        Assert.True((await given.BuyAsync("", 1)).Ok);
    }

    [Theory]
    [InlineData("seven")]
    [InlineData("")]
    public async Task A_price_seen_that_is_none_is_refused(string price) =>
        Assert.Equal("price", (await NoteAsync(price, null)).Faults.Single().Field);

    [Fact]
    public async Task A_design_s_hardware_screws_and_glue_are_on_the_list_and_can_be_ticked_and_priced()
    {
        var ideas = given.Shop.Get<IIdeaService>();
        var project = BuyingShop.Sure(await ideas.BeginAsync("pantry-cupboard", "Pantry", CommandId.New(), Cancel)).Id;
        var list = (await given.Buying.OfProjectAsync(project, Cancel))!;
        var lines = list.Supplies.Single().Lines;
        Assert.Contains(lines, line => line.Name.StartsWith("Hinge for ", StringComparison.Ordinal) && line.Amount != "");
        Assert.Contains(lines, line => line.Name.StartsWith("Wood glue", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Name.StartsWith("Wood screws, #", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.False(line.Bought));
        var hinges = lines.First(line => line.Name.StartsWith("Hinge", StringComparison.Ordinal));
        BuyingShop.Sure(await SetAsync(project, hinges.Key, new SupplyEdit(true, "18.90")));
        list = (await given.Buying.OfProjectAsync(project, Cancel))!;
        Assert.Equal(Money.From(18.9m), list.Totals.Spent);
        Assert.Equal(lines.Length - 1, list.Totals.Unpriced);
        BuyingShop.Sure(await SetAsync(project, hinges.Key, new SupplyEdit(false, null)));
        list = (await given.Buying.OfProjectAsync(project, Cancel))!;
        Assert.Equal((Money.Zero, Money.From(18.9m)), (list.Totals.Spent, list.Totals.Left));
    }

    [Fact]
    public async Task A_line_of_the_builder_s_own_is_added_once_and_removed()
    {
        var project = given.Given.Project.Id;
        var own = BuyingShop.Sure(await AddAsync("  Sandpaper 120  grit "));
        Assert.Equal(("Sandpaper 120 grit", "5 sheets", true), (own.Name, own.Amount, own.Own));
        Assert.Contains("is on the list already", (await AddAsync("SANDPAPER 120 GRIT")).Faults.Single().Message);
        Assert.Contains("is empty", (await AddAsync(" ")).Faults.Single().Message);
        BuyingShop.Sure(await SetAsync(project, own.Key, new SupplyEdit(true, "4")));
        Assert.Equal(Money.From(4m), (await given.ListAsync()).Totals.Spent);
        Assert.True((await given.Buying.RemoveSupplyAsync(project, own.Key, Cancel)).Ok);
        Assert.Equal(Money.Zero, (await given.ListAsync()).Totals.Spent);
        Assert.Equal(OutcomeKind.Missing, (await SetAsync(project, own.Key, new SupplyEdit(true, null))).Kind);
    }

    [Fact]
    public async Task As_a_text_the_list_names_what_is_still_to_be_bought()
    {
        await given.Given.OffcutAsync("41 3/8");
        var plan = (await given.Given.PlanAsync(given.Given.Order(replaces: given.Plan))).Summary.Id;
        BuyingShop.Sure(await AddAsync("Sandpaper"));
        const string Whole = """
            To buy: Boot-room bench

            Corner lumber
            - 3 × Pine 1x3, 8 ft, $6.48 each
            About $19.44 before tax

            Hardware and supplies
            - Sandpaper, 5 sheets

            Already on hand: B1 Pine 1x3, 41 3/8 in

            """;
        Assert.Equal(Whole.ReplaceLineEndings("\n"), ShoppingText.Of(await given.ListAsync(plan), "$"));
        var project = given.Given.Project.Id;
        BuyingShop.Sure(await SetAsync(project, "SANDPAPER", new SupplyEdit(true, null)));
        Assert.DoesNotContain("Hardware", ShoppingText.Of(await given.ListAsync(plan), "$"));
    }

    [Fact]
    public async Task There_is_no_list_of_what_is_not_there()
    {
        Assert.Null(await given.Buying.OfPlanAsync(Guid.NewGuid(), Cancel));
        Assert.Null(await given.Buying.OfProjectAsync(Guid.NewGuid(), Cancel));
        Assert.Equal(
            OutcomeKind.Missing,
            (await given.Buying.NoteAsync(Guid.NewGuid(), new("", "1", null), CommandId.New(), Cancel)).Kind
        );
    }

    private Task<Outcome<ShoppingList>> NoteAsync(string? price, bool? inStock) =>
        given.Buying.NoteAsync(given.Plan, new SeenInStore(given.Line, price, inStock), CommandId.New(), Cancel);

    private Task<Outcome<SupplyLine>> SetAsync(Guid project, string key, SupplyEdit edit) =>
        given.Buying.SetSupplyAsync(project, key, edit, Some.Device, CommandId.New(), Cancel);

    private Task<Outcome<SupplyLine>> AddAsync(string name) =>
        given.Buying.AddSupplyAsync(given.Given.Project.Id, name, "5 sheets", Some.Device, CommandId.New(), Cancel);
}
