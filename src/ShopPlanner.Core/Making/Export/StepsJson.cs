using System.Text.Json;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Export;

/// <summary>The order of work as JSON for other programs: lengths are numbers of the design's unit. The members are described
/// in the README of this room.</summary>
public static class StepsJson
{
    private const string Format = "shop-planner/steps";
    private const int Version = 1;
    private const int SquareInchesPerSquareFoot = 144,
        SquareMillimetresPerSquareMetre = 1_000_000,
        AreaDigits = 3;

    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="plan">The order of work.</param>
    public static string Write(WorkPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return JsonOutput.Object(writer => Write(writer, plan));
    }

    private static void Write(Utf8JsonWriter writer, WorkPlan plan)
    {
        writer.WriteString("format", Format);
        writer.WriteNumber("version", Version);
        writer.WriteString("name", plan.Name);
        writer.WriteString("unit", DocumentWords.Of(DocumentWords.Units, plan.Unit));
        writer.List("steps", plan.Steps, (inner, step) => Step(inner, step, plan.Unit));
        writer.List("subassemblies", plan.Subassemblies, Unit);
        if (plan.Finish is { } finish)
            writer.Member("finish", inner => Finish(inner, finish, plan.Unit));
        writer.List("findings", plan.Findings, Finding);
    }

    private static void Step(Utf8JsonWriter writer, WorkStep step, LengthUnit unit)
    {
        writer.WriteString("id", step.Id);
        writer.WriteString("phase", FormatWords.Of(step.Phase));
        writer.WriteString("action", FormatWords.Of(step.Action));
        writer.WriteString("title", step.Title);
        writer.Texts("says", step.Says);
        writer.Texts("handles", step.Handles);
        writer.Texts("present", step.Present);
        writer.Texts("after", step.After);
        writer.WriteNumber("minutes", step.Minutes);
        Text(writer, "subassembly", step.Subassembly);
        Text(writer, "tool", step.Tool);
        writer.List("settings", step.Settings, (inner, figure) => Figure(inner, figure, unit));
        Text(writer, "face", step.Face);
        writer.List("fasteners", step.Fasteners, Item);
        writer.Numbers("joints", [.. step.Joints.Select(index => (decimal)index)]);
        writer.List("moves", step.Moves, Move);
        if (step.Wait is { } wait)
            writer.Member("wait", inner => Wait(inner, wait));
        if (step.Check is { } check)
            writer.Member("check", inner => Check(inner, check, unit));
        writer.List("cautions", step.Cautions, Caution);
        if (step.Source is { } source)
            writer.Member("source", inner => Source(inner, source));
    }

    private static void Move(Utf8JsonWriter writer, WorkMove move)
    {
        writer.Texts("marks", move.Marks);
        if (move.Along is not { } along)
            return;
        writer.WriteString("along", FormatWords.Of(along));
        writer.WriteBoolean("forward", move.Forward);
    }

    private static void Figure(Utf8JsonWriter writer, WorkFigure figure, LengthUnit unit)
    {
        writer.WriteString("name", figure.Name);
        writer.Length("value", figure.Value, unit);
    }

    private static void Wait(Utf8JsonWriter writer, WorkWait wait)
    {
        writer.WriteString("what", wait.What);
        writer.WriteNumber("minutes", wait.Minutes);
        writer.WriteNumber("clamps", wait.Clamps);
        writer.WriteNumber("clamp_minutes", wait.ClampMinutes);
        writer.Member("source", inner => Source(inner, wait.Source));
    }

    private static void Check(Utf8JsonWriter writer, WorkCheck check, LengthUnit unit)
    {
        writer.WriteString("what", check.What);
        writer.Length("reads", check.Reads.Value, unit);
        writer.Length("off", check.Off, unit);
        writer.WriteString("remedy", check.Remedy);
        writer.Member("source", inner => Source(inner, check.Source));
    }

    private static void Caution(Utf8JsonWriter writer, Caution caution)
    {
        writer.WriteString("id", caution.Id);
        writer.WriteString("text", caution.Text);
        writer.Member("source", inner => Source(inner, caution.Source));
    }

    private static void Source(Utf8JsonWriter writer, SourceNote source)
    {
        writer.WriteString("text", source.Text);
        writer.WriteString("certainty", SourceWords.Of(source.Certainty));
    }

    private static void Unit(Utf8JsonWriter writer, Subassembly unit)
    {
        writer.WriteString("id", unit.Id);
        writer.WriteString("name", unit.Name);
        writer.Texts("marks", unit.Marks);
        writer.List("units", unit.Units, (inner, marks) => inner.Texts("marks", marks));
        Text(writer, "within", unit.Within);
    }

    private static void Finish(Utf8JsonWriter writer, FinishAmounts finish, LengthUnit unit)
    {
        writer.WriteString("id", finish.Finish);
        writer.List("areas", finish.Areas, (inner, area) => Area(inner, area, unit));
        writer.List("buy", finish.Buy, Item);
    }

    private static void Area(Utf8JsonWriter writer, FinishArea area, LengthUnit unit)
    {
        writer.WriteString("part", area.Part);
        writer.WriteNumber("area", Squares(area.Area, unit));
        writer.WriteNumber("before_assembly", Squares(area.BeforeAssembly, unit));
    }

    private static void Item(Utf8JsonWriter writer, WorkItem item)
    {
        writer.WriteString("name", item.Name);
        writer.WriteNumber("quantity", item.Quantity);
    }

    private static void Finding(Utf8JsonWriter writer, WorkFinding finding)
    {
        writer.WriteString("severity", FormatWords.Of(finding.Severity));
        writer.WriteString("text", finding.Text);
        writer.Texts("marks", finding.Marks);
    }

    private static decimal Squares(Area area, LengthUnit unit) =>
        Math.Round(
            unit == LengthUnit.Inch
                ? area.ToSquareFeet() * SquareInchesPerSquareFoot
                : area.ToSquareMetres() * SquareMillimetresPerSquareMetre,
            AreaDigits,
            MidpointRounding.AwayFromZero
        );

    private static void Text(Utf8JsonWriter writer, string name, string? text)
    {
        if (text is not null)
            writer.WriteString(name, text);
    }
}
