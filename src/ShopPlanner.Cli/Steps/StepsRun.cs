using System.Collections.Immutable;
using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Making;
using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Cli.Steps;

/// <summary>What is asked of the steps.</summary>
/// <param name="Finish">Id of the finish; null for the usual one.</param>
/// <param name="Glue">Id of the glue; null for the usual one.</param>
/// <param name="IsJson">Whether they are written as JSON.</param>
internal sealed record StepsAsked(string? Finish, string? Glue, bool IsJson);

/// <summary>One run of the command: read, work out, write.</summary>
internal static class StepsRun
{
    /// <summary>The exit status.</summary>
    public static int Run(string from, IReadOnlyList<string> set, StepsAsked asked, string? to)
    {
        var target = TextOutput.At(to, "list", from, "design");
        var choices = Choices(asked);
        if (DesignInput.WorkOut(from, set) is not { } piece)
            return ExitStatus.Refused;
        var plan = WorkPlanner.Of(piece, choices);
        target.Write(asked.IsJson ? StepsJson.Write(plan) : StepsText.Write(plan));
        return DesignInput.Told(plan.Findings.Select(one => (one.Severity, one.Text)));
    }

    private static WorkChoices Choices(StepsAsked asked) =>
        WorkChoices.Usual with
        {
            Finish = Known("--finish", asked.Finish, WorkLists.Finishes) ?? WorkChoices.Usual.Finish,
            Glue = Known("--glue", asked.Glue, WorkLists.Glues) ?? WorkChoices.Usual.Glue,
        };

    private static string? Known(string option, string? id, ImmutableArray<(string Id, string Name)> list) =>
        id is null || list.Any(one => one.Id == id)
            ? id
            : throw new Complaint($"{option}: '{id}' is not known: write one of {StepsCommand.Ids(list)}");
}
