using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Export;

/// <summary>What is cut out of a copy, and what is done to its edges, as a builder reads it; sides are those of the copy as it
/// stands in the piece.</summary>
public static class FeatureText
{
    /// <summary>A sentence for each shape and each treated edge; the notch of a toe space is left out.</summary>
    /// <param name="copy">The copy.</param>
    /// <param name="unit">Of the lengths.</param>
    public static IEnumerable<string> Of(PartCopy copy, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(copy);
        string Text(Length length) => LengthFormat.WithUnit(length, unit);
        return copy
            .Features.Where(one => one is not Notch { IsToe: true })
            .Select(one => Shape(one, copy.Box, Text) + ".")
            .Concat(copy.Edges.Select(one => Edge(one, Text) + "."));
    }

    private static string Shape(PartFeature feature, Box whole, Func<Length, string> text) =>
        feature switch
        {
            Hole hole => Hole(hole, text),
            Slot slot =>
                $"{(slot.IsRabbet(whole) ? "Rabbet" : "Groove")} {text(slot.Width)} wide and {text(slot.Depth)} deep in the "
                    + $"{Words.Side(slot.Face)} side, {text(slot.From)} from the {Near(slot.Across)}",
            Notch notch => Notch(notch, text),
            Bevel bevel => FormattableString.Invariant($"Bevel of {bevel.Degrees}° at the {Words.Side(bevel.Edge)}, ")
                + $"full size at the {Words.Side(bevel.Keeps)}",
            Taper taper =>
                $"Taper of the {Words.Side(taper.Face)} side toward the {Words.Side(taper.End)}, over {text(taper.Long)}: "
                    + $"{text(taper.Off)} off at the end",
            Arc arc => $"{(arc.IsHollow ? "Hollow" : "Crown")} at the {Words.Side(arc.Edge)}: rise {text(arc.Rise)}, "
                + $"radius {text(arc.Radius)}",
            Corner corner => $"Corner {Words.Side(corner.First)} and {Words.Side(corner.Second)} rounded to a radius of "
                + text(corner.Radius),
            _ => throw new ArgumentOutOfRangeException(nameof(feature), feature, "is no kind of shape"),
        };

    private static string Hole(Hole hole, Func<Length, string> text)
    {
        var deep = hole.Depth is { } depth ? $"{text(depth)} deep" : "right through";
        var (one, other) = hole.Axes;
        return $"Hole {text(hole.Diameter)} wide, {deep}, from the {Words.Side(hole.Face)}: "
            + $"{text(hole.First)} from the {Near(one)} "
            + $"and {text(hole.Second)} from the {Near(other)}";
    }

    private static string Notch(Notch notch, Func<Length, string> text)
    {
        var (one, other) = notch.Axes;
        return $"Notch {text(notch.To - notch.From)} by {text(notch.SecondTo - notch.SecondFrom)}, {text(notch.From)} from the "
            + $"{Near(one)} and {text(notch.SecondFrom)} from the {Near(other)}";
    }

    private static string Edge(EdgeTreatment edge, Func<Length, string> text)
    {
        var done = edge.Work switch
        {
            EdgeWork.Band => "edge band",
            EdgeWork.Lipping => $"solid lipping, {text(edge.Size)} thick",
            EdgeWork.Strip => $"edge strip, {text(edge.Size)} thick",
            _ => $"rounded over, radius {text(edge.Size)}",
        };
        return $"Edge at the {Words.Side(edge.Side)}: {done}";
    }

    private static string Near(Axis axis) => Words.Side(BoxSides.Of(axis, isFar: false));
}
