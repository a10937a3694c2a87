using System.Collections.Immutable;
using System.Globalization;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Export;

/// <summary>A step of work in words that page, paper and command line share.</summary>
public static class StepWords
{
    private const int HourMinutes = 60,
        DayMinutes = 24 * HourMinutes,
        LongestInMinutes = 2 * HourMinutes;

    /// <summary>Returns the word of an action in the steps format, by which work is told apart by kind: <c>groove</c>.</summary>
    public static string Kind(WorkAction action) => FormatWords.Of(action);

    /// <summary>Returns the words of a phase: <c>Work on single parts</c>.</summary>
    public static string Of(WorkPhase phase) =>
        phase switch
        {
            WorkPhase.Parts => "Work on single parts",
            WorkPhase.FinishBefore => "Finish before assembly",
            WorkPhase.Assembly => "Put it together",
            WorkPhase.Fitting => "Fit doors, drawers and hardware",
            WorkPhase.Finish => "Finish",
            _ => "In its place",
        };

    /// <summary>Returns a figure to set, at the nearest mark of a rule: <c>Fence to bit: 3/8″</c>.</summary>
    public static string Of(WorkFigure figure, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return $"{figure.Name}: {LengthFormat.WithUnit(figure.Value, unit)}";
    }

    /// <summary>Returns something used up: <c>8 × Pocket screw 1 1/4 in, coarse</c>.</summary>
    public static string Of(WorkItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return string.Create(CultureInfo.InvariantCulture, $"{item.Quantity} × {item.Name}");
    }

    /// <summary>Returns a wait: <c>glue hardens, at least 1 day, 6 clamps for 60 min</c>.</summary>
    public static string Of(WorkWait wait)
    {
        ArgumentNullException.ThrowIfNull(wait);
        var clamps = wait.Clamps switch
        {
            0 => "",
            1 => ", 1 clamp",
            var many => ", " + many.ToString(CultureInfo.InvariantCulture) + " clamps",
        };
        var held = wait.ClampMinutes > 0 && wait.ClampMinutes < wait.Minutes ? " for " + Time(wait.ClampMinutes) : "";
        return $"{wait.What}, at least {Time(wait.Minutes)}{clamps}{held}";
    }

    /// <summary>Returns a check without its remedy: <c>Both diagonals: 38 7/16″, within 1/16″</c>.</summary>
    public static string Of(WorkCheck check, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(check);
        return $"{check.What}: {LengthFormat.WithUnit(check.Reads.Value, unit)}, within {LengthFormat.WithUnit(check.Off, unit)}";
    }

    /// <summary>Returns a time in the largest unit that says it: <c>60 min</c>, <c>3 h</c>, <c>2 days</c>.</summary>
    /// <param name="minutes">Zero or more.</param>
    public static string Time(int minutes)
    {
        if (minutes < LongestInMinutes)
            return Number(minutes) + " min";
        if (minutes < DayMinutes || minutes % HourMinutes != 0)
            return Hours(minutes);
        var (days, rest) = Math.DivRem(minutes, DayMinutes);
        return rest == 0 ? Number(days) + (days == 1 ? " day" : " days") : Hours(minutes);
    }

    /// <summary>Returns all that a step says to a hand, a line each: what to do, tool, figures, fasteners, wait and check. Where
    /// two of them are equal, nothing that matters at the bench has changed.</summary>
    public static ImmutableArray<string> Lines(WorkStep step, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(step);
        string?[] lines =
        [
            .. step.Says,
            step.Tool is { } tool ? "Tool: " + tool : null,
            step.Face is { } face ? "Where: " + face : null,
            .. step.Settings.Select(figure => Of(figure, unit)),
            .. step.Fasteners.Select(Of),
            step.Wait is { } wait ? "Wait: " + Of(wait) : null,
            step.Check is { } check ? "Check " + Of(check, unit) : null,
        ];
        return [.. lines.OfType<string>()];
    }

    private static string Hours(int minutes)
    {
        var (hours, rest) = Math.DivRem(minutes, HourMinutes);
        return rest == 0 ? Number(hours) + " h" : $"{Number(hours)} h {Number(rest)} min";
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
