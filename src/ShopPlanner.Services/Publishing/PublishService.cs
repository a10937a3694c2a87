using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Plans;
using ShopPlanner.Services.Projects;
using ShopPlanner.Services.Sawing;
using ShopPlanner.Services.Shop;

namespace ShopPlanner.Services.Publishing;

internal sealed class PublishService(
    IProjectService projects,
    IIdeaService ideas,
    IWorkService works,
    IPlanService plans,
    IShopService shop,
    CostlyWork costly,
    TimeProvider clock
) : IPublishService
{
    public async Task<Outcome<Publication>> PublishAsync(
        Guid projectId,
        PublishChoices choices,
        ImmutableArray<CleanPhoto> photos,
        CancellationToken cancel = default
    )
    {
        if (TextRules.Line("by", choices.By, TextRules.NameCharacters) is { } fault)
            return Outcome.Faulty<Publication>(fault);
        if (await projects.GetAsync(projectId, cancel) is not { } project)
            return Outcome.Missing<Publication>("project");
        if (await ideas.GetAsync(projectId, cancel) is not { } idea)
            return Outcome.Faulty<Publication>(
                new Fault("design", project.Name, "has none: start it from a design under Idea, then publish it")
            );
        var settings = await shop.GetAsync(cancel);
        var asked = new PublishAsked(idea.Idea.Document.WithValues(idea.Idea.Changed), choices.License, Today)
        {
            Title = project.Name,
            By = choices.By,
            Paper = settings.Paper,
            Choices = (await works.GetAsync(projectId, cancel))?.Choices ?? WorkChoices.Usual,
            Photos = photos,
            Shopping = choices.ShowsShop ? await ShoppingAsync(projectId, choices, settings.CurrencySign, cancel) : [],
        };
        var (publication, faults) = await costly.RunAsync(() => Task.FromResult(PublicationWriter.Write(asked)), cancel);
        return publication is null ? Outcome.Faulty<Publication>(faults) : publication;
    }

    private DateOnly Today => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    // Of the newest plan that holds this project alone: another's purchases are nobody's business here.
    private async Task<ImmutableArray<OwnShopping>> ShoppingAsync(
        Guid project,
        PublishChoices choices,
        string sign,
        CancellationToken cancel
    )
    {
        var alone = (await plans.ListOfAsync(project, cancel)).FirstOrDefault(one => one.Projects.Length == 1);
        return alone is null || await plans.GetAsync(alone.Id, cancel) is not { } plan
            ? []
            : [.. Bought(plan, choices, sign), .. Taken(plan, choices)];
    }

    private static IEnumerable<OwnShopping> Bought(PlanView plan, PublishChoices choices, string sign) =>
        choices.HasPrices || choices.HasStores
            ? plan
                .Plan.Buy.Select(buy => (buy.Quantity, Stock: plan.Request.Stock.Single(one => one.Id == buy.Stock)))
                .Select(one => new OwnShopping(
                    plan.Materials.GetValueOrDefault(one.Stock.Material, one.Stock.Material),
                    Size(plan, one.Stock.Id),
                    one.Quantity,
                    choices.HasPrices ? sign + one.Stock.Price.ToString() : "",
                    choices.HasStores ? plan.Stocks[one.Stock.Id].Store ?? "" : ""
                ))
            : [];

    private static IEnumerable<OwnShopping> Taken(PlanView plan, PublishChoices choices) =>
        choices.HasStock
            ? plan
                .Plan.Layouts.Select(layout => plan.Request.Stock.Single(one => one.Id == layout.Stock))
                .Where(stock => stock.Offcut)
                .Select(stock => new OwnShopping(
                    plan.Materials.GetValueOrDefault(stock.Material, stock.Material),
                    Size(plan, stock.Id),
                    1,
                    "",
                    string.Create(CultureInfo.InvariantCulture, $"rack and bin, {plan.Stocks[stock.Id].Tag}")
                ))
            : [];

    private static string Size(PlanView plan, string stock) =>
        PlanLayouts.Size(plan, plan.Plan.Layouts.Index().First(one => one.Item.Stock == stock).Index);
}
