using System.Text.Json;
using ShopPlanner.Services.Making;

namespace ShopPlanner.Web.Features.Bench;

/// <summary>Steps at the bench, as their page's script knows them.</summary>
internal static class BenchSteps
{
    /// <summary>Returns how each step stands: <c>open</c>, <c>done</c> or <c>skipped</c>.</summary>
    public static Dictionary<string, string> Marks(WorkView view) => view.Steps.ToDictionary(step => step.Step.Id, Mark);

    /// <summary>Returns the same as the page holds it: no sign that could end the element.</summary>
    public static string MarksJson(WorkView view) => JsonSerializer.Serialize(Marks(view));

    /// <summary>Returns how a step stands.</summary>
    public static string Mark(WorkStepView step) =>
        step.Mark switch
        {
            StepMark.Done => "done",
            StepMark.Skipped => "skipped",
            _ => "open",
        };
}
