using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>What the forms of the steps at the bench do.</summary>
internal static class BenchStepEndpoints
{
    /// <summary>Maps the address.</summary>
    public static void MapBenchSteps(this IEndpointRouteBuilder routes)
    {
        var steps = routes
            .MapGroup(Links.AllBenchSteps + "{projectId:guid}")
            .DisableAntiforgery()
            .AddEndpointFilter(BenchEndpoints.CheckAsync);
        steps.MapPost("/mark", MarkAsync);
        steps.MapPost("/took", TookAsync);
    }

    private static async Task<IResult> TookAsync(Guid projectId, IWorkService work, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (command, step, took) = (form.Id("Command"), form.Text("Step"), form.Text("Took"));
        if (step is null || took is null)
            form.Refuse("Step", "is incomplete: open the page again and repeat");
        var page = Links.BenchSteps(projectId);
        return form.Faults.IsEmpty
            ? BenchEndpoints.After(await work.TookAsync(projectId, step!, took!, new CommandId(command), cancel), page)
            : BenchEndpoints.Unread(form, page);
    }

    private static async Task<IResult> MarkAsync(Guid projectId, IWorkService work, HttpContext context, CancellationToken cancel)
    {
        var form = new BenchForm(context.Request.Form);
        var (command, step, isDone) = (form.Id("Command"), form.Text("Step"), form.Flag("Done"));
        if (step is null)
            form.Refuse("Step", "is missing: open the page again and repeat");
        var page = Links.BenchSteps(projectId);
        if (!form.Faults.IsEmpty)
            return BenchEndpoints.Unread(form, page);
        var mark = isDone ? StepMark.Done : StepMark.Open;
        return BenchEndpoints.After(await work.MarkAsync(projectId, step!, mark, new CommandId(command), cancel), page);
    }
}
