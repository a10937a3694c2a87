using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using ShopPlanner.Services.Buying;
using ShopPlanner.Services.Shop;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Shopping;

/// <summary>
/// What phone lists send: ticks in order, by the page's script, or one button of the form where there is no script. The Origin
/// header says that only our own pages send them (<see cref="Security.OriginGate"/>): a page that was opened yesterday, and is
/// shown again without a network, has no token that is good.
/// </summary>
internal static class ShoppingEndpoints
{
    /// <summary>Most ticks sent at once; the script sends the rest after them.</summary>
    public const int Most = 100;

    /// <summary>Maps the addresses.</summary>
    public static void MapShopping(this IEndpointRouteBuilder routes)
    {
        var lists = routes.MapGroup(Links.Shopping).DisableAntiforgery();
        lists.MapPost("/{plan:guid}/ticks", OfPlanAsync);
        lists.MapPost("/project/{project:guid}/ticks", OfProjectAsync);
        lists.MapPost("/{plan:guid}/pressed", PressedAsync);
        lists.MapPost("/project/{project:guid}/pressed", PressedOfProjectAsync);
    }

    private static Task<IResult> OfPlanAsync(
        Guid plan,
        [FromBody] ShoppingTick[] ticks,
        IBuyingService buying,
        HttpContext context,
        CancellationToken cancel
    ) => DoAsync(plan, ticks, () => buying.OfPlanAsync(plan, cancel), buying, context, cancel);

    private static Task<IResult> OfProjectAsync(
        Guid project,
        [FromBody] ShoppingTick[] ticks,
        IBuyingService buying,
        HttpContext context,
        CancellationToken cancel
    ) => DoAsync(null, ticks, () => buying.OfProjectAsync(project, cancel), buying, context, cancel);

    // In order: a piece that was ticked and cleared again ends cleared.
    private static async Task<IResult> DoAsync(
        Guid? plan,
        ShoppingTick[] ticks,
        Func<Task<ShoppingList?>> read,
        IBuyingService buying,
        HttpContext context,
        CancellationToken cancel
    )
    {
        if (ticks.Length > Most || ticks.Any(tick => tick is null))
            return TypedResults.BadRequest();
        var doing = new ShoppingTicks(buying, plan, DeviceName.Of(context), cancel);
        var answers = new List<TickAnswer>();
        foreach (var tick in ticks)
            answers.Add(await doing.DoAsync(tick));
        return await read() is { } list
            ? TypedResults.Json(await AnswerAsync(answers, list, context), ShoppingState.Format)
            : TypedResults.NotFound();
    }

    private static async Task<ShoppingAnswer> AnswerAsync(List<TickAnswer> answers, ShoppingList list, HttpContext context)
    {
        var shop = await context.RequestServices.GetRequiredService<IShopService>().GetAsync(context.RequestAborted);
        return new(answers, ShoppingState.Of(list), list.IsWorthPlanning, ShoppingText.Of(list, shop.CurrencySign));
    }

    private static Task<IResult> PressedAsync(Guid plan, IBuyingService buying, HttpContext context, CancellationToken cancel) =>
        PressAsync(plan, () => buying.OfPlanAsync(plan, cancel), Links.ShoppingList(plan), buying, context, cancel);

    private static Task<IResult> PressedOfProjectAsync(
        Guid project,
        IBuyingService buying,
        HttpContext context,
        CancellationToken cancel
    ) => PressAsync(null, () => buying.OfProjectAsync(project, cancel), Links.ShoppingListOf(project), buying, context, cancel);

    private static async Task<IResult> PressAsync(
        Guid? plan,
        Func<Task<ShoppingList?>> read,
        string back,
        IBuyingService buying,
        HttpContext context,
        CancellationToken cancel
    )
    {
        if (!context.Request.HasFormContentType || await read() is not { } list)
            return TypedResults.NotFound();
        var form = await context.Request.ReadFormAsync(cancel);
        var doing = new ShoppingTicks(buying, plan, DeviceName.Of(context), cancel);
        foreach (var tick in PressedButton.Read(form, list))
            if (await doing.DoAsync(tick) is { Ok: false } refused)
                return Refused(refused.Say, back);
        return TypedResults.LocalRedirect(back, permanent: false, preserveMethod: false);
    }

    private static RazorComponentResult<PlainDocument> Refused(string say, string back) =>
        new(
            new Dictionary<string, object?>
            {
                [nameof(PlainDocument.Title)] = "Not done",
                [nameof(PlainDocument.Body)] = (RenderFragment)(
                    builder =>
                    {
                        builder.OpenComponent<ShoppingRefused>(0);
                        builder.AddComponentParameter(1, nameof(ShoppingRefused.Say), say);
                        builder.AddComponentParameter(2, nameof(ShoppingRefused.Back), back);
                        builder.CloseComponent();
                    }
                ),
            }
        )
        {
            StatusCode = StatusCodes.Status409Conflict,
        };

    /// <summary>What the script hears.</summary>
    /// <param name="Answers">Of each tick.</param>
    /// <param name="State">The list as it is now.</param>
    /// <param name="Again">Whether planning again may find better.</param>
    /// <param name="Text">The list as a text.</param>
    private sealed record ShoppingAnswer(IReadOnlyList<TickAnswer> Answers, ShoppingState State, bool Again, string Text);
}
