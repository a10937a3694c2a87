using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Writes a cut plan.</summary>
internal static class CutPlanWriter
{
    public static string Write(CutPlan plan) =>
        JsonOutput.Object(writer =>
        {
            writer.Header(Words.Plan, plan.Unit);
            writer.WriteString("status", DocumentWords.Of(Words.Statuses, plan.Status));
            writer.Money("cost", plan.Cost);
            writer.Money("costLowerBound", plan.CostLowerBound);
            writer.WriteNumber("seconds", Math.Round(plan.Seconds, 3));
            writer.List("buy", plan.Buy, Purchase);
            writer.List("layouts", plan.Layouts, (inner, layout) => Layout(inner, layout, plan.Unit));
            writer.List("unplaced", plan.Unplaced, Unplaced);
        });

    private static void Purchase(Utf8JsonWriter writer, Purchase purchase)
    {
        writer.WriteString("stock", purchase.Stock);
        writer.WriteNumber("quantity", purchase.Quantity);
        writer.Money("cost", purchase.Cost);
    }

    private static void Layout(Utf8JsonWriter writer, Layout layout, LengthUnit unit)
    {
        writer.WriteString("stock", layout.Stock);
        writer.WriteNumber("copies", layout.Copies);
        writer.List("pieces", layout.Pieces, (inner, piece) => Piece(inner, piece, unit));
        writer.List("leftovers", layout.Leftovers, (inner, leftover) => Leftover(inner, leftover, unit));
        writer.List("cuts", layout.Cuts, (inner, cut) => Cut(inner, cut, unit));
    }

    private static void Piece(Utf8JsonWriter writer, PlacedPiece piece, LengthUnit unit)
    {
        writer.WriteString("part", piece.Part);
        Place(writer, piece.X, piece.Y, piece.Dx, piece.Dy, unit);
        writer.WriteBoolean("turned", piece.Turned);
    }

    private static void Leftover(Utf8JsonWriter writer, Leftover leftover, LengthUnit unit)
    {
        Place(writer, leftover.X, leftover.Y, leftover.Dx, leftover.Dy, unit);
        writer.WriteBoolean("keep", leftover.Keep);
    }

    private static void Place(Utf8JsonWriter writer, Length x, Length y, Length dx, Length dy, LengthUnit unit)
    {
        writer.Length("x", x, unit);
        writer.Length("y", y, unit);
        writer.Length("dx", dx, unit);
        writer.Length("dy", dy, unit);
    }

    private static void Cut(Utf8JsonWriter writer, Cut cut, LengthUnit unit)
    {
        writer.WriteNumber("n", cut.N);
        writer.WriteString("piece", cut.Piece);
        writer.WriteString("kind", DocumentWords.Of(Words.Kinds, cut.Kind));
        writer.Length("at", cut.At, unit);
        if (cut.ByStore)
            writer.WriteString("by", DocumentWords.Of(Words.Makers, true));
        writer.Texts("gives", cut.Second is null ? [cut.First] : [cut.First, cut.Second]);
        if (cut.FirstPart is not null || cut.SecondPart is not null)
            writer.Texts("parts", [cut.FirstPart, cut.SecondPart]);
    }

    private static void Unplaced(Utf8JsonWriter writer, UnplacedPart part)
    {
        writer.WriteString("part", part.Part);
        writer.WriteNumber("quantity", part.Quantity);
        writer.WriteString("reason", part.Reason);
    }
}
