using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;
using ShopPlanner.Services.Materials;
using ShopPlanner.Services.Pictures;
using ShopPlanner.Services.Stock;

namespace ShopPlanner.Services.Bench.Bin;

/// <summary>What is looked for, read: sizes of zero where they don't matter.</summary>
/// <param name="Material">Id of the material; empty for any.</param>
/// <param name="Thickness">The thickness; null for any.</param>
/// <param name="Length">The least length.</param>
/// <param name="Width">The least width.</param>
internal sealed record OffcutSearch(string Material, Length? Thickness, Length Length, Length Width)
{
    // 3/4 in plywood measures 23/32: nobody counts that as another thickness (common practice).
    private static readonly Length Slack = Length.FromInches(0, 1, 32);

    // A size that doesn't matter is some wood at least.
    private static readonly Length Point = Length.FromTicks(1);

    /// <summary>Reads a search; what is wrong with it is noted.</summary>
    public static OffcutSearch Read(BinSearch search, LengthUnit unit, List<Fault> faults)
    {
        Length? Size(string field, string text)
        {
            if (text.Trim().Length == 0)
                return null;
            var parsed = LengthText.ParsePositive(text, unit);
            if (parsed.Ok)
                return parsed.Value;
            faults.Add(parsed.Fault.At(field));
            return null;
        }

        return new(
            search.Material.Trim(),
            Size(nameof(search.Thickness), search.Thickness),
            Size(nameof(search.Length), search.Length) ?? Length.Zero,
            Size(nameof(search.Width), search.Width) ?? Length.Zero
        );
    }

    /// <summary>Returns how a piece will do: as it lies, or turned where its grain doesn't matter. Null where it won't, also
    /// where a bad place leaves no sound part of that size.</summary>
    public FoundOffcut? Find(PieceNow now, MaterialIndex materials)
    {
        var material = materials[now.Piece.MaterialId];
        if (Material.Length > 0 && material.Id != Material)
            return null;
        if (Thickness is { } wanted && (Length.Max(material.Thickness, wanted) - Length.Min(material.Thickness, wanted)) > Slack)
            return null;
        var piece = StockViews.Of(now, materials);
        if (HasRoom(now, Length, Width))
            return new(piece, IsTurned: false);
        var mayTurn = material.Form == StockForm.Sheet && !StockPictures.HasGrain(material.Id, material.Form);
        return mayTurn && HasRoom(now, Width, Length) ? new(piece, IsTurned: true) : null;
    }

    // A sound rectangle, where there is one, can be pushed left and up until it meets the edge or a bad place.
    private static bool HasRoom(PieceNow now, Length least, Length leastAcross)
    {
        var (length, width) = (Length.Max(least, Point), Length.Max(leastAcross, Point));
        var places = now.Condition.BadPlaces;
        IEnumerable<Length> Begins(Func<BadPlace, Length> end) => places.Select(end).Append(Length.Zero);
        return Begins(place => place.EndX)
            .Any(x =>
                Begins(place => place.EndY)
                    .Any(y =>
                        x + length <= now.Length
                        && y + width <= now.Width
                        && !places.Any(place => place.Touches(x, y, length, width))
                    )
            );
    }
}
