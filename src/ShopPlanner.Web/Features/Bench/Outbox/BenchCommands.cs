using System.Collections.Immutable;
using Microsoft.Extensions.Primitives;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Features.Bench.Outbox;

/// <summary>Does what was marked at the bench, one command after the other.</summary>
internal sealed class BenchCommands(IBenchService bench, IWorkService work, Guid sender, string device, CancellationToken cancel)
{
    /// <summary>Does one command.</summary>
    public async Task<BenchCommandAnswer> DoAsync(BenchCommand command) =>
        command.Kind switch
        {
            "cut" => Answer(
                command,
                await bench.NoteCutAsync(command.Plan, command.Stock, command.Cut, command.Done, device, Id(command), cancel)
            ),
            "step" => Answer(
                command,
                await work.MarkAsync(
                    command.Project,
                    command.Step,
                    command.Done ? StepMark.Done : StepMark.Open,
                    Id(command),
                    cancel
                )
            ),
            "note" => Answer(command, await work.NoteAsync(command.Project, command.Step, command.Text, Id(command), cancel)),
            "finish" => await FinishAsync(command),
            _ => new(command.Id, false, "This page is too old for this program. Load it again.", false),
        };

    // Measured in the page's own form, and read as that form is.
    private async Task<BenchCommandAnswer> FinishAsync(BenchCommand command)
    {
        var fields = command.Fields.ToDictionary(field => field.Key, field => new StringValues(field.Value));
        var form = new BenchForm(new FormCollection(fields));
        var entries = FinishEntries.Read(form);
        if (!form.Faults.IsEmpty)
            return Refused(command, form.Faults, false);
        var view = await bench.GetAsync(command.Plan, cancel);
        if (view?.Stocks.FirstOrDefault(one => one.Number == entries.Number) is not { } stock)
            return Refused(command, Outcome.Missing<Done>("board or sheet").Faults, false);
        return Answer(
            command,
            await bench.FinishAsync(command.Plan, entries.Finished(stock), device, new CommandId(command.Id), cancel)
        );
    }

    private CommandId Id(BenchCommand command) => new(command.Id) { Turn = new(sender, command.Number) };

    private static BenchCommandAnswer Answer<T>(BenchCommand command, Outcome<T> outcome)
        where T : class =>
        outcome.Ok
            ? new(command.Id, true, "", false)
            : Refused(command, outcome.Faults, outcome.Faults.Any(fault => fault.Field == "storage"));

    private static BenchCommandAnswer Refused(BenchCommand command, ImmutableArray<Fault> faults, bool again) =>
        new(command.Id, false, string.Join(' ', faults.Select(FaultWords.Line)), again);
}
