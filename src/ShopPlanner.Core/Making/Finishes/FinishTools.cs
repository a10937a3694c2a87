using ShopPlanner.Core.Finishing;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What a finish is put on with, and how (common practice; the can comes first).</summary>
internal static class FinishTools
{
    public const string SyntheticBrush = "Brush with synthetic bristles, for water-based finish";
    public const string NaturalBrush = "Brush with natural bristles, for oil and shellac";
    public const string Rags = "Lint-free rags (pack)";

    /// <summary>By its trade name.</summary>
    public static string For(FinishProduct product) =>
        product switch
        {
            { IsWiped: true } => "lint-free rags",
            { HidesWood: true } => "brush, foam roller",
            { Base: FinishBase.Water } => "synthetic brush or foam pad",
            _ => "natural-bristle brush",
        };

    /// <summary>How it is put on, one sentence or two.</summary>
    public static string Method(FinishProduct product) =>
        product.Id switch
        {
            "primer" => "Brush or roll the primer on thin, into every corner and all edges.",
            "paint" or "enamel" =>
                "Brush corners and edges first, then roll or brush the faces thin. Finish with long strokes one way.",
            "stain" => "Wipe the stain on, and wipe off the excess with the grain before it dries. Keep a wet edge.",
            "shellac" => "Brush on a thin coat in quick, full strokes along the grain, and don't go back over it.",
            "oil" or "hard-wax-oil" => "Rub the oil in with a rag, wait as long as the can says, and wipe off all the excess: "
                + "what stays turns sticky.",
            "wiping-varnish" => "Wipe the varnish on thin with a rag, with the grain, and leave it alone.",
            "wax" => "Rub the wax on thin, let it haze, and buff it with a clean cloth.",
            _ => "Flow on a thin coat with the grain, from the dry into the wet, and don't go back over it.",
        };
}
