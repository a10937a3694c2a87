using System.Globalization;
using System.Text;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Export;

/// <summary>The order of work as plain text, to read at a terminal or to print.</summary>
public static class StepsText
{
    private const string Indent = "   ";

    /// <summary>The text, ended by a line feed.</summary>
    /// <param name="plan">The order of work.</param>
    public static string Write(WorkPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var text = new StringBuilder();
        Line(text, plan.Name);
        foreach (var finding in plan.Findings)
            Line(text, $"{SeverityWords.Of(finding.Severity)}: {finding.Text}");
        AddSubassemblies(text, plan);
        WorkPhase? phase = null;
        var told = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (i, step) in plan.Steps.Index())
        {
            if (phase != step.Phase)
                Heading(text, StepWords.Of(step.Phase));
            phase = step.Phase;
            AddStep(text, plan, i + 1, step);
            AddCautions(text, step, i + 1, told);
        }

        if (plan.Finish is { } finish)
            AddFinish(text, finish, plan.Unit);
        return text.ToString();
    }

    /// <summary>Returns an area as paint is bought for it: <c>12.5 sq ft</c>, <c>1.16 m²</c>.</summary>
    public static string Of(Area area, LengthUnit unit) =>
        unit == LengthUnit.Inch
            ? area.ToSquareFeet().ToString("0.0", CultureInfo.InvariantCulture) + " sq ft"
            : area.ToSquareMetres().ToString("0.00", CultureInfo.InvariantCulture) + " m²";

    private static void AddSubassemblies(StringBuilder text, WorkPlan plan)
    {
        var units = plan.Subassemblies;
        if (units.IsEmpty)
            return;
        Heading(text, "Built by themselves");
        foreach (var unit in units)
        {
            var within = units.FirstOrDefault(one => one.Id == unit.Within);
            Line(text, $"{unit.Name}: {string.Join(", ", unit.Marks)}{(within is null ? "" : $" (part of {within.Name})")}");
        }

        foreach (var group in InAnyOrder.Of(units, plan.Steps))
            Line(text, InAnyOrder.Sentence(group));
    }

    private static void AddStep(StringBuilder text, WorkPlan plan, int number, WorkStep step)
    {
        var marks = step.Handles.IsEmpty ? "" : $" ({string.Join(", ", step.Handles)})";
        Line(text, $"{number.ToString(CultureInfo.InvariantCulture)}. {step.Title}{marks}, about {StepWords.Time(step.Minutes)}");
        foreach (var line in StepWords.Lines(step, plan.Unit))
            Line(text, Indent + line);
        if (step.Check is { } check)
            Line(text, $"{Indent}If not: {check.Remedy}");
        if (step.Source is { } source)
            Line(text, $"{Indent}{SourceWords.Short(source)}");
    }

    // In full the first time only: a caution repeated at every step is skipped.
    private static void AddCautions(StringBuilder text, WorkStep step, int number, Dictionary<string, int> told)
    {
        foreach (var caution in step.Cautions)
        {
            var words = told.TryAdd(caution.Id, number)
                ? caution.Text
                : string.Create(CultureInfo.InvariantCulture, $"as in step {told[caution.Id]}.");
            Line(text, $"{Indent}{SeverityWords.Of(Severity.Safety)}: {words}");
        }
    }

    private static void AddFinish(StringBuilder text, FinishAmounts finish, LengthUnit unit)
    {
        Heading(text, "What the finish takes");
        foreach (var area in finish.Areas)
        {
            var before = area.BeforeAssembly > Area.Zero ? $", {Of(area.BeforeAssembly, unit)} of it before assembly" : "";
            Line(text, $"Part {area.Part}: {Of(area.Area, unit)}{before}");
        }

        foreach (var item in finish.Buy)
            Line(text, StepWords.Of(item));
    }

    private static void Heading(StringBuilder text, string words)
    {
        text.Append('\n');
        Line(text, words);
    }

    private static void Line(StringBuilder text, string words) => text.Append(words).Append('\n');
}
