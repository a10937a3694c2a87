using Microsoft.AspNetCore.Mvc;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Making;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench.Outbox;

/// <summary>
/// Takes what the bench's pages kept until there was a network. The Origin header says that only our own pages send it
/// (<see cref="Security.OriginGate"/>): a page that was opened yesterday has no token that is good. Every answer carries a mark,
/// so that a browser does not take the page of a public network's login for one.
/// </summary>
internal static class BenchOutboxEndpoints
{
    /// <summary>The header that only this program sends.</summary>
    public const string Mark = "Shop-Planner-Bench";

    private const int MostCommands = 100,
        MostBytes = 1024 * 1024;

    /// <summary>Maps the address.</summary>
    public static void MapBenchOutbox(this IEndpointRouteBuilder routes) =>
        routes
            .MapPost(Links.BenchCommands, TakeAsync)
            .DisableAntiforgery()
            .WithMetadata(new RequestSizeLimitAttribute(MostBytes));

    // In order: what was marked and cleared again ends cleared.
    private static async Task<IResult> TakeAsync(
        [FromBody] BenchSending sending,
        IBenchService bench,
        IWorkService work,
        TimeProvider clock,
        HttpContext context,
        CancellationToken cancel
    )
    {
        context.Response.Headers[Mark] = "1";
        if (!IsReadable(sending))
            return TypedResults.BadRequest();
        var commands = new BenchCommands(bench, work, sending.Sender, DeviceName.Of(context), cancel);
        var answers = new List<BenchCommandAnswer>();
        foreach (var command in sending.Commands)
            answers.Add(await commands.DoAsync(command));
        return TypedResults.Json(
            new BenchHeard(
                answers,
                sending.Plan is { } plan && await bench.GetAsync(plan, cancel) is { } view
                    ? BenchPlanStanding.Of(view, clock)
                    : null,
                sending.Project is { } project ? await StepsAsync(work, project, cancel) : null
            ),
            BenchPlanStanding.Format
        );
    }

    private static bool IsReadable(BenchSending sending) =>
        sending.Sender != Guid.Empty
        && !sending.Commands.IsDefault
        && sending.Commands.Length <= MostCommands
        && sending.Commands.All(command => command is { Kind: not null, Step: not null, Text: not null, Fields: not null });

    private static async Task<Dictionary<string, string>?> StepsAsync(
        IWorkService work,
        Guid project,
        CancellationToken cancel
    ) => await work.GetAsync(project, cancel) is { } view ? BenchSteps.Marks(view) : null;
}
