namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes a cut plan; <see cref="CutPlanReader"/> reads the same back.</summary>
public static class CutPlanWriter
{
    /// <summary>Writes the whole document.</summary>
    /// <exception cref="IOException">The stream cannot be written.</exception>
    public static void Write(CutPlan plan, Stream to)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(to);
        using var json = new JsonOutput(to, Words.Plan, plan.Unit);
        json.Text("status", Words.Status.Word(plan.Status));
        json.Money("cost", plan.Cost);
        json.Money("costLowerBound", plan.CostLowerBound);
        json.Seconds("seconds", plan.Seconds);
        json.Objects("buy", plan.Buy, purchase => WritePurchase(json, purchase));
        json.Objects("layouts", plan.Layouts, layout => WriteLayout(json, layout));
        json.Objects("unplaced", plan.Unplaced, unplaced => WriteUnplaced(json, unplaced));
    }

    private static void WritePurchase(JsonOutput json, Purchase purchase)
    {
        json.Text("stock", purchase.Stock);
        json.Count("quantity", purchase.Quantity);
        json.Money("cost", purchase.Cost);
    }

    private static void WriteLayout(JsonOutput json, Layout layout)
    {
        json.Text("stock", layout.Stock);
        json.Count("copies", layout.Copies);
        json.Objects("pieces", layout.Pieces, piece => WritePiece(json, piece));
        json.Objects("leftovers", layout.Leftovers, leftover => WriteLeftover(json, leftover));
        json.Objects("cuts", layout.Cuts, cut => WriteCut(json, cut));
    }

    private static void WritePiece(JsonOutput json, PlacedPiece piece)
    {
        json.Text("part", piece.Part);
        json.Length("x", piece.X);
        json.Length("y", piece.Y);
        json.Length("dx", piece.Dx);
        json.Length("dy", piece.Dy);
        json.Flag("turned", piece.Turned);
    }

    private static void WriteLeftover(JsonOutput json, Leftover leftover)
    {
        json.Length("x", leftover.X);
        json.Length("y", leftover.Y);
        json.Length("dx", leftover.Dx);
        json.Length("dy", leftover.Dy);
        json.Flag("keep", leftover.Keep);
    }

    private static void WriteCut(JsonOutput json, Cut cut)
    {
        json.Count("n", cut.N);
        json.Text("piece", cut.Piece);
        json.Text("kind", Words.Kind.Word(cut.Kind));
        json.Length("at", cut.At);
        json.Texts("gives", cut.Second is null ? [cut.First] : [cut.First, cut.Second]);
        if (cut.FirstPart is not null || cut.SecondPart is not null)
            json.Texts("finished", cut.Second is null ? [cut.FirstPart] : [cut.FirstPart, cut.SecondPart]);
    }

    private static void WriteUnplaced(JsonOutput json, UnplacedPart unplaced)
    {
        json.Text("part", unplaced.Part);
        json.Count("quantity", unplaced.Quantity);
        json.Text("reason", unplaced.Reason);
    }
}
