using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>A panel that is let into grooves all around its opening.</summary>
internal static class GroovedPanel
{
    /// <summary>Its size across an opening.</summary>
    /// <param name="name">What the size is called.</param>
    /// <param name="clear">Of the opening.</param>
    /// <param name="groove">How deep each groove is.</param>
    /// <param name="clearance">What stays free in each groove.</param>
    public static Working<Length> Size(string name, Length clear, Length groove, Length clearance) =>
        Working.Of(
            name,
            clear + ((groove - clearance) * 2),
            "{clear} + 2 × {groove} − 2 × {clearance}",
            Working.Geometry,
            ("clear", Working.Given("Clear opening", clear)),
            ("groove", Working.Given("groove", groove)),
            ("clearance", Working.Given("clearance", clearance))
        );
}
