using System.Globalization;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Frames;

/// <summary>Bolts with barrel nuts that hold a rail to a leg: they draw the joint tight, and come out again.</summary>
internal static class RailBolts
{
    // Common practice: the barrel nut sits about 1 1/2 in from the rail's end, and the bolt reaches 1 in beyond it.
    private static readonly Length IntoRail = Length.FromInches(2.5m);

    // From this width on a rail takes two bolts, else one and a dowel beside it that keeps it from turning (common practice).
    private static readonly Length Two = Length.FromInches(5);

    /// <summary>Buys what one end of a rail takes.</summary>
    /// <param name="leg">Thickness of the leg where the bolt goes through.</param>
    /// <param name="rail">Width of the rail.</param>
    /// <param name="builder">Takes it.</param>
    public static void Buy(Length leg, Length rail, Builder builder)
    {
        var inches = (int)Math.Ceiling((leg + IntoRail).ToInches());
        var size = string.Create(CultureInfo.InvariantCulture, $"Bolts, 3/8 in × {inches} in, with barrel nuts and washers");
        builder.Buy(size, rail >= Two ? 2 : 1);
        if (rail < Two)
            builder.Buy("Dowels beside the bolts, 3/8 in × 2 in", 1);
        builder.Steps.Add(
            "Bore the long rails for the barrel nuts 1 1/2 in from their ends, and keep the bolts clear of the tenons of the end "
                + "rails."
        );
    }
}
