using System.Collections.Immutable;
using ShopPlanner.Core.Making.Assembly;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Making;

/// <summary>The openings that doors are fitted to: drawn, measured, and the size of the doors that follows.</summary>
internal static class OpeningReading
{
    /// <summary>Returns the openings of a step, from the left and from below; none where it fits no door.</summary>
    /// <param name="planned">The work.</param>
    /// <param name="step">The step.</param>
    /// <param name="measured">What was measured, as typed, by key.</param>
    public static ImmutableArray<OpeningView> Of(
        PlannedWork planned,
        WorkStep step,
        ImmutableSortedDictionary<string, string> measured
    )
    {
        if (step.Action != WorkAction.FitDoor)
            return [];
        var handled = step.Handles.ToHashSet(StringComparer.Ordinal);
        var openings = planned.Openings.Where(one => one.Marks.Any(leaf => leaf.Any(handled.Contains)));
        return [.. openings.Select((opening, i) => View(opening, i + 1, measured, planned.Unit))];
    }

    private static OpeningView View(
        DoorOpening opening,
        int number,
        ImmutableSortedDictionary<string, string> measured,
        LengthUnit unit
    )
    {
        var view = new OpeningView(number, opening, "", "");
        var (width, height) = (Text(measured, view.WidthKey), Text(measured, view.HeightKey));
        var fit =
            Read(width, unit) is { } wide && Read(height, unit) is { } high
                ? DoorFitting.Fit(opening, new(wide, high), unit)
                : null;
        return view with { Width = width, Height = height, Fit = fit };
    }

    private static string Text(ImmutableSortedDictionary<string, string> measured, string key) =>
        measured.TryGetValue(key, out var text) ? text : "";

    private static Length? Read(string text, LengthUnit unit) =>
        LengthText.ParsePositive(text, unit) is { Ok: true } read ? read.Value : null;
}
