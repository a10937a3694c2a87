using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Hardware;

/// <summary>How far a door on cup hinges covers the case, by hinge, cup and plate. All of it is in millimeters, as hinges
/// are.</summary>
internal static class CupOverlay
{
    /// <summary>Overlay by plate and cup.</summary>
    public static readonly SourceNote Planning = new(
        "A cup-hinge maker's planning table: overlay = constant + edge − plate; the constant belongs to the hinge's arm",
        Certainty.Read
    );

    /// <summary>Setback of the plate for an inset door.</summary>
    public static readonly SourceNote Inset = new(
        "The same maker's table for inset doors: plate set back by the door's thickness + 1.5 mm",
        Certainty.Read
    );

    /// <summary>Cup and plate positions.</summary>
    public static readonly SourceNote Positions = new(
        "A hardware maker's sheet for 35 mm cups: center 17.5 mm + edge; screw holes 9.5 mm farther in are from memory",
        Certainty.FromMemory
    );

    /// <summary>Overlay of a full-overlay arm with the cup at the door's edge and no plate.</summary>
    private const double Full = 15;

    private static readonly Length CupRadius = Length.FromMillimetres(17.5m);
    private static readonly Length ToScrews = Length.FromMillimetres(9.5m);
    private static readonly Length InsetMore = Length.FromMillimetres(1.5m);

    /// <summary>The constant of an arm: what it takes off the full overlay is 0, 3, 9.5 or 19 mm.</summary>
    /// <param name="arm">As chosen.</param>
    public static Working<double> Constant(string arm)
    {
        var less = arm switch
        {
            "full" => 0,
            "medium" => 3,
            "half" => 9.5,
            _ => 19,
        };
        return Working.Looked("Hinge constant", Full - less, Millimetres, 1, Planning);
    }

    /// <summary>A bare number of millimeters, in both systems.</summary>
    public static readonly QuantityKind Millimetres = new("mm", "mm", 1);

    /// <summary>Overlay, or less than zero for the gap of an inset door.</summary>
    public static Working<double> Overlay(Working<double> constant, Working<double> edge, Working<double> plate) =>
        Working.Of(
            "Overlay",
            constant.Value + edge.Value - plate.Value,
            Millimetres,
            1,
            "{constant} + {edge} − {plate}",
            Planning,
            ("constant", constant),
            ("edge", edge),
            ("plate", plate)
        );

    /// <summary>Gap beside an inset door.</summary>
    public static Working<double> Gap(Working<double> constant, Working<double> edge, Working<double> plate) =>
        Working.Of(
            "Gap beside the door",
            plate.Value - edge.Value - constant.Value,
            Millimetres,
            1,
            "{plate} − {edge} − ({constant})",
            Planning,
            ("plate", plate),
            ("edge", edge),
            ("constant", constant)
        );

    /// <summary>The plate that gives an overlay.</summary>
    public static Working<double> Plate(Working<double> constant, Working<double> edge, Working<double> overlay) =>
        Working.Of(
            "Plate height for it",
            constant.Value + edge.Value - overlay.Value,
            Millimetres,
            1,
            "{constant} + {edge} − {overlay}",
            Planning,
            ("constant", constant),
            ("edge", edge),
            ("overlay", overlay)
        );

    /// <summary>The wood between cup and edge that gives an overlay with a plate.</summary>
    public static Working<double> Edge(Working<double> constant, Working<double> plate, Working<double> overlay) =>
        Working.Of(
            "Wood between cup and edge for it",
            overlay.Value - constant.Value + plate.Value,
            Millimetres,
            1,
            "{overlay} − {constant} + {plate}, with this plate",
            Planning,
            ("overlay", overlay),
            ("constant", constant),
            ("plate", plate)
        );

    /// <summary>Center of the cup from the door's edge.</summary>
    public static Working<Length> CupCenter(Working<double> edge) =>
        At("Cup center from the door's edge", CupRadius, "17.5 mm + {edge}", edge);

    /// <summary>Line of the cup's screws from the door's edge.</summary>
    public static Working<Length> ScrewLine(Working<double> edge) =>
        At("Cup screws from the door's edge", CupRadius + ToScrews, "27 mm + {edge}", edge);

    /// <summary>How far the plate of an inset door is set back.</summary>
    public static Working<Length> Setback(Working<Length> thickness) =>
        Working.Of(
            "Plate set back by",
            thickness.Value + InsetMore,
            new OwnUnitFigure(thickness.Value + InsetMore, LengthUnit.Millimetre),
            "{thickness} + 1.5 mm",
            Inset,
            ("thickness", thickness)
        );

    private static Working<Length> At(string name, Length from, string template, Working<double> edge)
    {
        var at = from + Length.FromMillimetres((decimal)edge.Value);
        return Working.Of(name, at, new OwnUnitFigure(at, LengthUnit.Millimetre), template, Positions, ("edge", edge));
    }
}
