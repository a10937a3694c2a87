using Microsoft.AspNetCore.Http.HttpResults;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>What the forms about wrong cuts do.</summary>
internal static class BenchWrongEndpoints
{
    /// <summary>Maps the addresses.</summary>
    public static void MapWrongCuts(this IEndpointRouteBuilder routes)
    {
        var commands = routes
            .MapGroup("/bench/{planId:guid}/wrong")
            .DisableAntiforgery()
            .AddEndpointFilter(BenchEndpoints.CheckAsync);
        commands.MapPost("/look", LookAsync);
        commands.MapPost("/noted", NoteAsync);
        commands.MapPost("/accepted", AcceptAsync);
        commands.MapPost("/undone", UndoAsync);
    }

    private static Task<IResult> LookAsync(Guid planId, IWrongCutService wrong, HttpContext context, CancellationToken cancel) =>
        ReadAsync(
            planId,
            wrong,
            context,
            async (entries, _, start) =>
            {
                var outcome = await wrong.ProposeAsync(entries.Wrong(planId), cancel);
                return outcome.Ok ? Proposal(start, entries, outcome.Value) : Again(start, entries, outcome);
            },
            cancel
        );

    private static Task<IResult> NoteAsync(Guid planId, IWrongCutService wrong, HttpContext context, CancellationToken cancel) =>
        ReadAsync(
            planId,
            wrong,
            context,
            async (entries, _, start) =>
            {
                var command = new CommandId(entries.Command);
                var outcome = await wrong.NoteAsync(entries.Wrong(planId), DeviceName.Of(context), command, cancel);
                return outcome.Ok ? BenchEndpoints.After(outcome, Links.BenchWrongCuts(planId)) : Again(start, entries, outcome);
            },
            cancel
        );

    private static Task<IResult> AcceptAsync(
        Guid planId,
        IWrongCutService wrong,
        HttpContext context,
        CancellationToken cancel
    ) =>
        ReadAsync(
            planId,
            wrong,
            context,
            async (entries, form, start) =>
            {
                var outcome = await wrong.AcceptAsync(
                    entries.Wrong(planId),
                    form.Text("Proposal") ?? "",
                    DeviceName.Of(context),
                    new CommandId(entries.Command),
                    cancel
                );
                return outcome.Ok
                    ? BenchEndpoints.After(outcome, Links.BenchWrongCuts(outcome.Value.RestPlan ?? planId))
                    : Again(start, entries, outcome);
            },
            cancel
        );

    private static async Task<IResult> UndoAsync(
        Guid planId,
        IWrongCutService wrong,
        HttpContext context,
        CancellationToken cancel
    )
    {
        var form = new BenchForm(context.Request.Form);
        var (command, id) = (form.Id("Command"), form.Id("Wrong"));
        if (!form.Faults.IsEmpty)
            return BenchEndpoints.Unread(form, Links.BenchWrongCuts(planId));
        var outcome = await wrong.UndoAsync(id, DeviceName.Of(context), new CommandId(command), cancel);
        var page = outcome.Value is { } undone ? Links.BenchPlan(undone.Plan, undone.Number) : Links.BenchWrongCuts(planId);
        return BenchEndpoints.After(outcome, page);
    }

    private static async Task<IResult> ReadAsync(
        Guid plan,
        IWrongCutService wrong,
        HttpContext context,
        Func<WrongEntries, BenchForm, WrongCutStart, Task<IResult>> act,
        CancellationToken cancel
    )
    {
        var form = new BenchForm(context.Request.Form);
        var entries = WrongEntries.Read(form);
        if (!form.Faults.IsEmpty)
            return BenchEndpoints.Unread(form, Links.BenchPlan(plan));
        return await wrong.OfCutAsync(plan, entries.Number, entries.Cut, cancel) is { } start
            ? await act(entries, form, start)
            : BenchEndpoints.NoStock();
    }

    // What was typed is shown again with what is wrong beside it; what somebody else changed is told by itself.
    private static RazorComponentResult<PlainDocument> Again<T>(WrongCutStart start, WrongEntries entries, Outcome<T> outcome)
        where T : class
    {
        if (outcome.Kind != OutcomeKind.Faulty)
            return BenchEndpoints.Refused(outcome, Links.BenchPlan(start.View.Plan.Summary.Id, start.Stock.Number));
        var faults = entries.InForm(outcome.Faults);
        return BenchEndpoints.Document<BenchWrongForm>(
            StatusCodes.Status422UnprocessableEntity,
            "A cut went wrong",
            (nameof(BenchWrongForm.Start), start),
            (nameof(BenchWrongForm.Entries), entries),
            (nameof(BenchWrongForm.Faults), faults)
        );
    }

    private static RazorComponentResult<PlainDocument> Proposal(
        WrongCutStart start,
        WrongEntries entries,
        RestProposal proposal
    ) =>
        BenchEndpoints.Document<BenchRestProposal>(
            StatusCodes.Status200OK,
            "The rest, planned again",
            (nameof(BenchRestProposal.Start), start),
            (nameof(BenchRestProposal.Entries), entries),
            (nameof(BenchRestProposal.Proposal), proposal)
        );
}
