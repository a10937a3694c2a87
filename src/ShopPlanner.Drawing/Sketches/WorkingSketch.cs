using System.Collections.Immutable;
using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Sketches;

/// <summary>Draws what a working measures: the piece with the dimensions that are given and that come out.</summary>
public static class WorkingSketch
{
    private static readonly Dictionary<string, Action<SketchInputs, Canvas>> Sketches = new(StringComparer.Ordinal)
    {
        ["actual-size"] = StockSketches.ActualSize,
        ["board-feet"] = StockSketches.BoardFeet,
        ["weight"] = StockSketches.Weight,
        ["moisture"] = WoodSketches.Moisture,
        ["movement"] = WoodSketches.Movement,
        ["glue-up"] = WoodSketches.GlueUp,
        ["sag"] = StandingSketches.Sag,
        ["stability"] = StandingSketches.Stability,
        ["spacing"] = FittingSketches.Spacing,
        ["groove"] = FittingSketches.Groove,
        ["door"] = FittingSketches.Door,
        ["drawer"] = FittingSketches.Drawer,
        ["hinges"] = HoleSketches.Hinges,
        ["pins"] = HoleSketches.Pins,
        ["dowels"] = HoleSketches.Dowels,
        ["screws"] = ScrewSketches.Screws,
        ["coats"] = StockSketches.Coats,
        ["mortise"] = JointSketches.Mortise,
        ["dado"] = JointSketches.Dado,
        ["fronts"] = FrontSketches.Fronts,
        ["slides"] = FrontSketches.Slides,
        ["butt-hinges"] = HingeSketches.Butt,
        ["hinge-overlay"] = HingeSketches.Overlay,
        ["top-fastening"] = HeldSketches.Top,
        ["wall"] = HeldSketches.Wall,
        ["screw-holding"] = HeldSketches.Screw,
        ["slats"] = HeldSketches.Slat,
        ["square"] = AngleSketches.Square,
        ["taper"] = AngleSketches.Taper,
        ["miter"] = AngleSketches.Miter,
        ["arc"] = AngleSketches.Arc,
        ["kerf"] = SawSketches.Kerf,
        ["five-cuts"] = SawSketches.FiveCuts,
        ["parallel"] = SawSketches.Parallel,
        ["price"] = BuyingSketches.Price,
        ["edge-band"] = BuyingSketches.Band,
        ["convert"] = BuyingSketches.Convert,
    };

    /// <summary>The drawing, or null for a form that has none.</summary>
    /// <param name="form">The form.</param>
    /// <param name="given">Texts by key; what is missing or cannot be read is drawn with its default.</param>
    /// <param name="unit">Of lengths without a suffix, and of the figures shown.</param>
    /// <param name="answer">What came out; null where nothing did.</param>
    public static LineDrawing? Of(WorkingForm form, IReadOnlyDictionary<string, string> given, LengthUnit unit, Answer? answer)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (!Sketches.TryGetValue(form.Name, out var draw))
            return null;
        var inputs = new SketchInputs(form, given, unit, answer);
        var canvas = new Canvas();
        draw(inputs, canvas);
        if (inputs.UsesExamples)
            canvas.Note("Sizes you haven't entered are drawn as examples.");
        return canvas.Finish(form.Title, inputs.Description);
    }

    /// <summary>Names of the forms that have a drawing.</summary>
    public static ImmutableArray<string> Names { get; } = [.. Sketches.Keys];
}
