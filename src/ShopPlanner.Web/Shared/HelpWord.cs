namespace ShopPlanner.Web.Shared;

/// <summary>A word of the trade with what it means.</summary>
/// <param name="Key">Names it, and its picture: <c>help-kerf</c> in the icons.</param>
/// <param name="Name">The word as people read it.</param>
/// <param name="Says">What it means, in two lines.</param>
internal sealed record HelpWord(string Key, string Name, string Says)
{
    /// <summary>The words that are explained, by key.</summary>
    public static IReadOnlyDictionary<string, HelpWord> All { get; } =
        new HelpWord[]
        {
            new("kerf", "Kerf", "The width of wood that the blade turns to dust. Five cuts of 1/8 in take 5/8 in off a board."),
            new(
                "nominal",
                "Nominal size",
                "The name a board is sold by, from before it was planed. A 1x4 is really 3/4 in thick and 3 1/2 in wide."
            ),
            new(
                "grain",
                "Grain",
                "The direction the fibers run. Wood is strongest along the grain, so a part keeps to it unless it can rotate."
            ),
            new(
                "squaring",
                "Squaring",
                "Cutting a thin slice off a board's rough end, so that it is clean and square before you measure from it."
            ),
            new(
                "rip",
                "Rip",
                "A cut along the grain, which makes a board narrower. On a table saw the good edge runs along the fence."
            ),
            new(
                "crosscut",
                "Crosscut",
                "A cut across the grain, which makes a board shorter. Use a miter saw, a sled or a miter gauge."
            ),
            new(
                "edge-trim",
                "Edge trim",
                "A strip along each edge of a new sheet that is not used, because edges arrive bruised or out of square."
            ),
            new(
                "bad-place",
                "Bad place",
                "A split, a crushed corner or a knot that no part may come from. Plans keep parts off it; it becomes scrap."
            ),
            new(
                "offcut",
                "Offcut",
                "What is left of a board or sheet. Keep it in the bin with its size and tag, and the next plan uses it."
            ),
            new(
                "just-under",
                "Just under",
                "A setting just short of a mark on the rule. Just under by 1/64 in: put a shim that thick at the stop, or "
                    + "nudge the fence in."
            ),
            new(
                "waste",
                "Waste",
                "Sawdust, trims and scrap, as a share of the wood you cut up. Offcuts you keep aren't waste. Parts count at "
                    + "their cut size."
            ),
            new(
                "project-cost",
                "Cost by project",
                "Projects share the price of a board or sheet by the area of their parts on it. Stock from your rack and bin "
                    + "counts as free."
            ),
        }.ToDictionary(word => word.Key);

    /// <summary>The name of its picture among the icons.</summary>
    public string Picture => "help-" + Key;
}
