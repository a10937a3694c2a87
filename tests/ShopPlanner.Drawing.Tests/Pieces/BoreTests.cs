using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Making.Operations;
using ShopPlanner.Drawing.Layouts;
using ShopPlanner.Drawing.Pieces;
using ShopPlanner.Drawing.Shapes;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>Holes are drawn where the steps of work bore them.</summary>
public sealed class BoreTests
{
    [Fact]
    public void Rows_of_pins_are_drawn_where_the_steps_drill_them()
    {
        var piece = BuiltInPieces.Read("bookcase");
        var step = OperationList.Of(piece, WorkChoices.Usual).Single(one => one.Id == "shelf-pins");
        var side = piece.Parts.Single(part => part.Name == "Side").Copies[1];
        var drawing = PieceDrawings.Side(piece, DrawingRoom.PieceOnScreen);
        var outline = drawing
            .Shapes.OfType<Marked>()
            .Where(one => one.Mark == side.Mark)
            .SelectMany(one => one.Shapes.OfType<Polyline>())
            .Single(one => one.Stroke == Stroke.Outline)
            .Spots;
        var (front, back) = (outline.Min(spot => spot.X), outline.Max(spot => spot.X));
        var perMm = (back - front) / (double)side.Box.Dy.ToMillimetres();
        var rows = drawing.Leaves().OfType<Line>().Where(one => one.Stroke == Stroke.Centre).Select(one => one.From.X).ToList();
        Assert.NotEmpty(rows);
        IsTold(step, "Front row from the front", (rows.Min() - front) / perMm);
        IsTold(step, "Back row from the back", (back - rows.Max()) / perMm);
    }

    // Two doors over two of another height: each has its own cups, as far from its lower end as the steps say.
    [Fact]
    public void Doors_of_any_height_show_their_cups()
    {
        var piece = BuiltInPieces.Of(
            """
            {
              "format": "shop-planner/design", "version": 1, "unit": "in", "name": "Cupboard",
              "dimensions": [
                { "name": "width", "value": "30" }, { "name": "depth", "value": "14" }, { "name": "height", "value": "60" }
              ],
              "materials": [ { "role": "case", "name": "Plywood", "form": "sheet", "thickness": "3/4" } ],
              "frame": { "kind": "sheet-carcass", "case": "case" },
              "bays": {
                "split": { "kind": "fixed-shelf", "material": "case" },
                "sizes": [ "20 in", "*" ],
                "bays": [
                  { "fills": [ { "kind": "doors", "make": "slab", "material": "case", "fit": "inset" } ] },
                  { "fills": [ { "kind": "doors", "make": "slab", "material": "case", "fit": "inset" } ] }
                ]
              }
            }
            """
        );
        var cups = OperationList
            .Of(piece, WorkChoices.Usual)
            .Where(one => one.Id.StartsWith("hinge-cups:", StringComparison.Ordinal))
            .ToList();
        Assert.NotEmpty(cups);
        var doors = piece.Joints.Count(one => one.Kind == JointKind.Hinged);
        var drawn = PieceDrawings
            .Front(piece, DrawingRoom.PieceOnScreen)
            .Leaves()
            .OfType<Frame>()
            .Count(one => one.Stroke == Stroke.Hidden && one.Radius > 0);
        Assert.InRange(drawn, 2 * doors, 5 * doors);
    }

    private static void IsTold(WorkStep step, string name, double drawn) =>
        Assert.Contains(
            step.Settings,
            one =>
                one.Name.StartsWith(name, StringComparison.Ordinal) && Math.Abs((double)one.Value.ToMillimetres() - drawn) < 0.1
        );
}
