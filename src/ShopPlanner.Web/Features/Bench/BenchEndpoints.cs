using System.Collections.Immutable;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

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
        var commands = routes.MapGroup("/bench/{planId:guid}").DisableAntiforgery().AddEndpointFilter(CheckAsync);
        commands.MapPost("/cuts", CutAsync);
        commands.MapPost("/finished", FinishAsync);
        commands.MapPost("/reopened", ReopenAsync);
        routes.MapBenchSteps();
        routes.MapBenchAuthority();
        routes.MapWrongCuts();
        routes.MapBenchBin();
    }

    /// <summary>Lets a form of ours through that can be read.</summary>
    internal static async ValueTask<object?> CheckAsync(EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        var context = call.HttpContext;
        if (!await IsReadableAsync(context.Request))
            return Unreadable(new Fault("", "", "This form is incomplete, or it is not from Shop Planner: open the page again"));
        return await context.RequestServices.GetRequiredService<IAntiforgery>().IsRequestValidAsync(context)
            ? await next(call)
            : Unreadable(new Fault("", "", "This page is too old, or it is not from Shop Planner: open it again"));
    }

    // Read here once; it is kept with the request.
    private static async Task<bool> IsReadableAsync(HttpRequest request)
    {
        if (!request.HasFormContentType)
            return false;
        try
        {
            await request.ReadFormAsync(request.HttpContext.RequestAborted);
            return true;
        }
        catch (Exception problem) when (problem is InvalidDataException or IOException)
        {
            return false;
        }
    }

    private static Task<IResult> CutAsync(Guid planId, IBenchService bench, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (command, number, cut, made) = (form.Id("Command"), form.Number("Number"), form.Number("Cut"), form.Flag("Made"));
        var page = form.Box("BySetting") ? Links.BenchSettings(planId) : Links.BenchPlan(planId, number);
        return AtPlaceAsync(
            (planId, number),
            form,
            bench,
            async at =>
                After(
                    await bench.SetCutAsync(
                        planId,
                        at.Layout,
                        at.Copy,
                        cut,
                        made,
                        DeviceName.Of(context),
                        new CommandId(command),
                        cancel
                    ),
                    page
                ),
            cancel
        );
    }

    private static Task<IResult> ReopenAsync(Guid planId, IBenchService bench, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (command, number) = (form.Id("Command"), form.Number("Number"));
        return AtPlaceAsync(
            (planId, number),
            form,
            bench,
            async at =>
                After(
                    await bench.ReopenAsync(planId, at.Layout, at.Copy, DeviceName.Of(context), new CommandId(command), cancel),
                    Links.BenchPlan(planId, number)
                ),
            cancel
        );
    }

    private static async Task<IResult> FinishAsync(
        Guid planId,
        IBenchService bench,
        ILeftoverProposals proposals,
        HttpContext context,
        CancellationToken cancel
    )
    {
        var form = new BenchForm(context.Request.Form);
        var entries = FinishEntries.Read(form);
        if (!form.Faults.IsEmpty)
            return Unread(form, planId);
        var view = await bench.GetAsync(planId, cancel);
        return view?.Stocks.FirstOrDefault(one => one.Number == entries.Number) is { } stock
            ? await EnterAsync(view, stock, entries, (bench, proposals), DeviceName.Of(context), cancel)
            : NoStock();
    }

    private static async Task<IResult> EnterAsync(
        BenchView view,
        BenchStock stock,
        FinishEntries entries,
        (IBenchService Bench, ILeftoverProposals Proposals) services,
        string device,
        CancellationToken cancel
    )
    {
        var plan = view.Plan.Summary.Id;
        // Our page always sends the rows that it shows: where none came, they were lost on the way.
        if (entries.Leftovers.Count == 0 && !Remaining.Of(view, stock, entries.AllCutsMade).IsEmpty)
            return Refusal(
                StatusCodes.Status400BadRequest,
                [new Fault("Leftovers", "", "are missing: open the page again and measure them")],
                Links.BenchFinish(plan, stock.Number, entries.AllCutsMade)
            );
        var outcome = await services.Bench.FinishAsync(
            plan,
            entries.Finished(stock),
            device,
            new CommandId(entries.Command),
            cancel
        );
        if (outcome.Kind != OutcomeKind.Faulty)
            return entries.Next is { } next && view.Stocks.Any(one => one.Number == next && next != stock.Number && !one.Finished)
                ? After(outcome, Links.BenchAfter(plan, next, stock.Number), "earlier")
                : After(outcome, Links.BenchPlan(plan, stock.Number));
        var places = entries.Measured().Select(pair => pair.Place);
        var proposed = await services.Proposals.OfAsync(view, stock, entries.AllCutsMade, cancel);
        return ShowAgain(view, stock, entries, proposed, InForm(outcome.Faults, [.. places]));
    }

    private static async Task<IResult> AtPlaceAsync(
        (Guid Plan, int Number) at,
        BenchForm form,
        IBenchService bench,
        Func<BenchPlace, Task<IResult>> act,
        CancellationToken cancel
    )
    {
        if (!form.Faults.IsEmpty)
            return Unread(form, at.Plan);
        return await bench.FindAsync(at.Plan, at.Number, cancel) is { } place ? await act(place) : NoStock();
    }

    private static RazorComponentResult<PlainDocument> Unread(BenchForm form, Guid plan) => Unread(form, Links.BenchPlan(plan));

    /// <summary>Answers a form with fields that are missing or wrong.</summary>
    internal static RazorComponentResult<PlainDocument> Unread(BenchForm form, string back) =>
        Refusal(StatusCodes.Status400BadRequest, form.Faults, back);

    internal static RazorComponentResult<PlainDocument> NoStock() =>
        Refused(Outcome.Missing<Done>("board or sheet"), Links.Bench);

    // 303: the browser asks for the page with GET, whatever it sent before. Its address puts the focus on what is next.
    internal static IResult After<T>(Outcome<T> outcome, string page, string place = "next")
        where T : class => outcome.Ok ? new SeeOther($"{page}#{place}") : Refused(outcome, page);

    // The services number what they were given; the form may have left empty rows out before.
    internal static ImmutableArray<Fault> InForm(ImmutableArray<Fault> faults, ImmutableArray<int> places) =>
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
        ImmutableArray<ProposedLeftover> proposed,
        ImmutableArray<Fault> faults
    ) =>
        Document<BenchFinishForm>(
            StatusCodes.Status422UnprocessableEntity,
            "Measure the leftovers",
            (nameof(BenchFinishForm.View), view),
            (nameof(BenchFinishForm.Stock), stock),
            (nameof(BenchFinishForm.Entries), entries),
            (nameof(BenchFinishForm.Faults), faults),
            (nameof(BenchFinishForm.Proposed), proposed)
        );

    internal static RazorComponentResult<PlainDocument> Refused<T>(Outcome<T> outcome, string back)
        where T : class =>
        Refusal(
            outcome.Kind == OutcomeKind.Missing ? StatusCodes.Status404NotFound : StatusCodes.Status409Conflict,
            outcome.Faults,
            back
        );

    private static RazorComponentResult<PlainDocument> Unreadable(Fault fault) =>
        Refusal(StatusCodes.Status400BadRequest, [fault], Links.Bench);

    private static RazorComponentResult<PlainDocument> Refusal(int status, ImmutableArray<Fault> faults, string back) =>
        Document<BenchRefused>(
            status,
            "Not done",
            (nameof(BenchRefused.Faults), faults),
            (nameof(BenchRefused.Back), back),
            (nameof(BenchRefused.Words), BackWords(back))
        );

    private static string BackWords(string back) =>
        back.StartsWith(Links.AllBenchSteps, StringComparison.Ordinal) ? "Back to the steps" : "Back to the plan";

    internal static RazorComponentResult<PlainDocument> Document<T>(
        int status,
        string title,
        params (string Name, object? Value)[] given
    )
        where T : IComponent => PlainAnswer.In<BenchLayout, T>(status, title, given);
}
