using System.Collections.Immutable;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Frame;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>
/// What the bench's forms do. Each answers with a redirect to the page that shows the new state, so that reloading sends nothing
/// again, and each command has an id, so that sending again does nothing again.
/// </summary>
internal static class BenchEndpoints
{
    /// <summary>Maps the addresses. Forms are checked against the page's own token here, not by the framework, which would answer
    /// with an empty page.</summary>
    public static void MapBench(this IEndpointRouteBuilder routes)
    {
        var commands = routes.MapGroup("/bench/{planId:guid}").DisableAntiforgery().AddEndpointFilter(CheckTokenAsync);
        commands.MapPost("/cuts", CutAsync);
        commands.MapPost("/finished", FinishAsync);
        commands.MapPost("/reopened", ReopenAsync);
    }

    private static async ValueTask<object?> CheckTokenAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        var context = call.HttpContext;
        if (await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context))
            return await next(call);
        return Refusal(
            StatusCodes.Status400BadRequest,
            [new Fault("", "", "The page that this was sent from is too old, or is none of this program")],
            Links.Bench
        );
    }

    private static Task<IResult> CutAsync(
        Guid planId,
        [FromForm] Guid command,
        [FromForm] int number,
        [FromForm] int cut,
        [FromForm] bool made,
        IBenchService bench,
        HttpContext context,
        CancellationToken cancel
    ) =>
        WithStockAsync(
            planId,
            number,
            bench,
            async (_, stock) =>
            {
                var outcome = await bench.SetCutAsync(
                    planId,
                    stock.Layout,
                    stock.Copy,
                    cut,
                    made,
                    DeviceName.Of(context),
                    new CommandId(command),
                    cancel
                );
                return outcome.Ok
                    ? See(Links.BenchPlan(planId, number) + "#next")
                    : (IResult)Refused(outcome, Links.BenchPlan(planId, number));
            },
            cancel
        );

    private static Task<IResult> ReopenAsync(
        Guid planId,
        [FromForm] Guid command,
        [FromForm] int number,
        IBenchService bench,
        HttpContext context,
        CancellationToken cancel
    ) =>
        WithStockAsync(
            planId,
            number,
            bench,
            async (_, stock) =>
            {
                var outcome = await bench.ReopenAsync(
                    planId,
                    stock.Layout,
                    stock.Copy,
                    DeviceName.Of(context),
                    new CommandId(command),
                    cancel
                );
                return outcome.Ok
                    ? See(Links.BenchPlan(planId, number))
                    : (IResult)Refused(outcome, Links.BenchPlan(planId, number));
            },
            cancel
        );

    private static Task<IResult> FinishAsync(
        Guid planId,
        [FromForm] FinishEntries entries,
        IBenchService bench,
        HttpContext context,
        CancellationToken cancel
    ) =>
        WithStockAsync(
            planId,
            entries.Number,
            bench,
            async (view, stock) =>
            {
                var measured = entries.Measured().ToList();
                var outcome = await bench.FinishAsync(
                    planId,
                    entries.Finished(stock),
                    DeviceName.Of(context),
                    new CommandId(entries.Command),
                    cancel
                );
                if (outcome.Ok)
                    return See(Links.BenchPlan(planId, entries.Number));
                return outcome.Kind == OutcomeKind.Faulty
                    ? ShowAgain(view, stock, entries, InForm(outcome.Faults, [.. measured.Select(pair => pair.Place)]))
                    : Refused(outcome, Links.BenchPlan(planId, entries.Number));
            },
            cancel
        );

    private static async Task<IResult> WithStockAsync(
        Guid planId,
        int number,
        IBenchService bench,
        Func<BenchView, BenchStock, Task<IResult>> act,
        CancellationToken cancel
    )
    {
        var view = await bench.GetAsync(planId, cancel);
        var stock = view?.Stocks.FirstOrDefault(one => one.Number == number);
        return view is null || stock is null
            ? Refused(Outcome.Missing<BenchView>("board or sheet"), Links.Bench)
            : await act(view, stock);
    }

    // 303: the browser asks for the page with GET, whatever it sent before.
    private static SeeOther See(string address) => new SeeOther(address);

    // The services number what they were given; the form may have left empty rows out before.
    private static ImmutableArray<Fault> InForm(ImmutableArray<Fault> faults, ImmutableArray<int> places) =>
        [
            .. faults.Select(fault =>
                Enumerable
                    .Range(0, places.Length)
                    .Where(i => fault.Field.StartsWith($"leftovers[{i}].", StringComparison.Ordinal))
                    .Select(i =>
                        fault.At(fault.Field.Replace($"leftovers[{i}]", $"Leftovers[{places[i]}]", StringComparison.Ordinal))
                    )
                    .FirstOrDefault(fault)
            ),
        ];

    private static RazorComponentResult<PlainDocument> ShowAgain(
        BenchView view,
        BenchStock stock,
        FinishEntries entries,
        ImmutableArray<Fault> faults
    ) =>
        Document(
            StatusCodes.Status422UnprocessableEntity,
            "What is left?",
            builder =>
            {
                builder.OpenComponent<BenchFinishForm>(0);
                builder.AddComponentParameter(1, nameof(BenchFinishForm.View), view);
                builder.AddComponentParameter(2, nameof(BenchFinishForm.Stock), stock);
                builder.AddComponentParameter(3, nameof(BenchFinishForm.Entries), entries);
                builder.AddComponentParameter(4, nameof(BenchFinishForm.Faults), faults);
                builder.CloseComponent();
            }
        );

    private static RazorComponentResult<PlainDocument> Refused(Outcome<BenchView> outcome, string back) =>
        Refusal(
            outcome.Kind == OutcomeKind.Missing ? StatusCodes.Status404NotFound : StatusCodes.Status409Conflict,
            outcome.Faults,
            back
        );

    private static RazorComponentResult<PlainDocument> Refusal(int status, ImmutableArray<Fault> faults, string back) =>
        Document(
            status,
            "Not done",
            builder =>
            {
                builder.OpenComponent<BenchRefused>(0);
                builder.AddComponentParameter(1, nameof(BenchRefused.Faults), faults);
                builder.AddComponentParameter(2, nameof(BenchRefused.Back), back);
                builder.CloseComponent();
            }
        );

    private static RazorComponentResult<PlainDocument> Document(int status, string title, RenderFragment body) =>
        new(
            new Dictionary<string, object?>
            {
                [nameof(PlainDocument.Title)] = title,
                [nameof(PlainDocument.Body)] = InLayout(body),
            }
        )
        {
            StatusCode = status,
        };

    private static RenderFragment InLayout(RenderFragment body) =>
        builder =>
        {
            builder.OpenComponent<BenchLayout>(0);
            builder.AddComponentParameter(1, nameof(BenchLayout.Body), body);
            builder.CloseComponent();
        };

    private sealed record SeeOther(string Address) : IResult
    {
        public Task ExecuteAsync(HttpContext httpContext)
        {
            httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
            httpContext.Response.Headers.Location = Address;
            return Task.CompletedTask;
        }
    }
}
