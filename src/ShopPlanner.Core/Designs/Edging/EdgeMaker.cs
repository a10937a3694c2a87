using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Edging;

/// <summary>Treats edges of copies. A lipping or a strip is a part of its own, glued to a panel that was made narrower by
/// it.</summary>
internal static class EdgeMaker
{
    /// <summary>Treats one edge.</summary>
    /// <param name="panel">The copy, as narrow as the edging leaves it.</param>
    /// <param name="side">The edge.</param>
    /// <param name="asked">What is done to it.</param>
    /// <param name="builder">Takes the strip.</param>
    /// <param name="clear">Where a strip may run, where the panel itself reaches farther, into dadoes; null for the panel's
    /// length.</param>
    public static void Treat(Draft panel, BoxSide side, EdgeAsked asked, Builder builder, Box? clear = null)
    {
        if (asked.Work is not { } work)
            return;
        var size = work == EdgeWork.RoundOver ? asked.Radius : asked.Takes;
        panel.Edges = panel.Edges.Add(new(side, work, size));
        if (asked.Wood is { } wood && asked.Takes.IsPositive)
        {
            var (axis, run) = (side.Axis(), BoxSides.Third(side.Axis(), panel.Flat));
            var box = Beside(panel.Box, side, asked.Takes)
                .With(run, (clear ?? panel.Box).Start(run), (clear ?? panel.Box).End(run));
            if (work == EdgeWork.Strip)
                box = box.With(panel.Flat, box.End(panel.Flat) - wood.Width!.Value, box.End(panel.Flat));
            var name = work == EdgeWork.Strip ? "Edge strip" : "Lipping";
            var strip = builder.Add(new(name, panel.Assembly, wood, box, run, axis) { FacesToFinish = "outer face, edges" });
            builder.Join(JointKind.Glued, strip, panel, axis);
        }
    }

    /// <summary>Treats all four edges of a panel.</summary>
    public static void TreatAll(Draft panel, EdgeAsked asked, Builder builder)
    {
        foreach (var side in Enum.GetValues<BoxSide>().Where(side => side.Axis() != panel.Flat))
            Treat(panel, side, asked, builder);
    }

    private static Box Beside(Box panel, BoxSide side, Length thick)
    {
        var axis = side.Axis();
        return side.IsFar()
            ? panel.With(axis, panel.End(axis), panel.End(axis) + thick)
            : panel.With(axis, panel.Start(axis) - thick, panel.Start(axis));
    }
}
