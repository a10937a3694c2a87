using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Joinery;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Making.Operations;

/// <summary>A tenon and its mortise, as one joint asks for them.</summary>
/// <param name="Joint">The joint.</param>
/// <param name="Thick">Direction of the tenon's thickness.</param>
/// <param name="Wide">Direction of its width.</param>
/// <param name="Thickness">Of the tenon, so the mortise's width.</param>
/// <param name="Width">Of the tenon, so the mortise's length.</param>
/// <param name="Low">Taken off the rail's edge at the start of its width.</param>
/// <param name="IsHaunched">Whether a haunch keeps the mortise away from the part's end.</param>
internal sealed record TenonSizes(
    WorkJoint Joint,
    Axis Thick,
    Axis Wide,
    Working<Length> Thickness,
    Working<Length> Width,
    Length Low,
    bool IsHaunched
)
{
    // The shoulder that the form for mortises proposes (common practice).
    private static readonly Length Edge = Length.FromInches(0.25m);

    /// <summary>Taken off the rail's other edge.</summary>
    public Length High => Joint.From.Box.Extent(Wide) - Width.Value - Low;

    /// <summary>Taken off each face of the rail.</summary>
    public Length Shoulder => MortiseTenon.Beside("Shoulder", Stock, Thickness).Value;

    /// <summary>How deep the mortise is: as the tenon is long and room for glue, or through the part.</summary>
    public Length Depth
    {
        get
        {
            var through = Joint.Into.Box.Extent(Joint.Along);
            return Joint.Depth >= through ? through : MortiseTenon.DepthFor(Working.Given("Tenon length", Joint.Depth)).Value;
        }
    }

    /// <summary>From the nearer face of the mortised part to the mortise.</summary>
    public Length Fence
    {
        get
        {
            var (rail, into) = (Joint.From.Box, Joint.Into.Box);
            return Length.Min(
                rail.Start(Thick) + Shoulder - into.Start(Thick),
                into.End(Thick) - (rail.Start(Thick) + Shoulder + Thickness.Value)
            );
        }
    }

    /// <summary>From the nearer end of the mortised part to the mortise, and whether that is the far one.</summary>
    public (Length Distance, bool AtEnd) FromEnd
    {
        get
        {
            var (rail, into) = (Joint.From.Box, Joint.Into.Box);
            var (start, end) = (rail.Start(Wide) + Low - into.Start(Wide), into.End(Wide) - (rail.End(Wide) - High));
            return end < start ? (end, true) : (start, false);
        }
    }

    private Working<Length> Stock => Working.Given("Rail", Joint.From.Box.Extent(Thick));

    public static TenonSizes Of(WorkJoint joint, PieceWork work)
    {
        var thick = joint.From.Copy.Flat == joint.Along ? joint.From.Across : joint.From.Copy.Flat;
        var wide = BoxSides.Third(joint.Along, thick);
        var thickness = MortiseTenon.Thickness(Working.Given("Rail", joint.From.Box.Extent(thick)), work.Unit);
        // Of a rail that is wider than the part it goes into, only what lies on that part gets a tenon.
        var (from, into) = (joint.From.Box, joint.Into.Box);
        var (start, end) = (Length.Max(from.Start(wide), into.Start(wide)), Length.Min(from.End(wide), into.End(wide)));
        var (over, rail) = (start - from.Start(wide), Working.Given("Rail", end - start));
        var (lowGroove, highGroove) = (Groove(joint, wide, false, work), Groove(joint, wide, true, work));
        var (isLow, isHigh) = (start - into.Start(wide) < Edge, into.End(wide) - end < Edge);
        if (isLow != isHigh)
        {
            // The haunch lies at the end of the part, the groove of a panel at the other edge.
            var groove = isLow ? highGroove : lowGroove;
            var width = MortiseTenon.HaunchedWidth(rail, Working.Given("Groove", groove), work.Unit);
            return new(joint, thick, wide, thickness, width, over + (isLow ? rail.Value - groove - width.Value : groove), true);
        }

        var edge = Length.Min(Length.Max(Edge, Length.Max(lowGroove, highGroove)), Length.FromTicks(rail.Value.Ticks / 4));
        return new(joint, thick, wide, thickness, MortiseTenon.Width(rail, Working.Given("Shoulder", edge)), over + edge, false);
    }

    // Depth of the groove in one edge of the rail.
    private static Length Groove(WorkJoint joint, Axis wide, bool atEnd, PieceWork work) =>
        work
            .Trenches.Where(one => one.Into.Mark == joint.From.Mark && one.Along == wide && one.AtEnd == atEnd)
            .Select(one => one.Depth)
            .DefaultIfEmpty(Length.Zero)
            .Max();
}
