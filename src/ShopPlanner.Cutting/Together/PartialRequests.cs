using System.Collections.Immutable;

namespace ShopPlanner.Cutting.Together;

/// <summary>Requests for a part of what a request wants, or for what a plan left of it.</summary>
internal static class PartialRequests
{
    /// <summary>Returns the request for some of the parts, with the materials and the stock that they ask for. Saw, store and car
    /// stay as they are, so that what answers it answers a share of the whole request.</summary>
    public static CutRequest Of(CutRequest request, IReadOnlySet<string> parts)
    {
        ImmutableArray<CutPart> wanted = [.. request.Parts.Where(part => parts.Contains(part.Id))];
        var materials = wanted.Select(part => part.Material).ToHashSet();
        return request with
        {
            Parts = wanted,
            Materials = [.. request.Materials.Where(material => materials.Contains(material.Id))],
            Stock = [.. request.Stock.Where(stock => materials.Contains(stock.Material))],
        };
    }

    /// <summary>Returns the request without the stock that a plan cuts up.</summary>
    public static CutRequest WithoutStock(CutRequest request, CutPlan plan)
    {
        var used = plan.Layouts.ToLookup(layout => layout.Stock, layout => layout.Copies);
        return request with
        {
            Stock =
            [
                .. request
                    .Stock.Select(stock => stock with { Quantity = stock.Quantity - used[stock.Id].Sum() })
                    .Where(stock => stock.Quantity != 0),
            ],
        };
    }

    /// <summary>Returns the request for what a plan leaves: its stock is used up, its pieces are there.</summary>
    public static CutRequest Rest(CutRequest request, CutPlan plan)
    {
        var placed = Placed(plan);
        var rest = request with
        {
            Parts =
            [
                .. request
                    .Parts.Select(part => part with { Quantity = part.Quantity - placed.GetValueOrDefault(part.Id) })
                    .Where(part => part.Quantity > 0),
            ],
        };
        return WithoutStock(Of(rest, rest.Parts.Select(part => part.Id).ToHashSet()), plan);
    }

    /// <summary>Returns the request for some parts from what is on hand alone.</summary>
    public static CutRequest FromHand(CutRequest request, IReadOnlySet<string> parts)
    {
        var some = Of(request, parts);
        return some with { Stock = [.. some.Stock.Where(stock => stock.Offcut)] };
    }

    /// <summary>Returns the pieces that a plan places, by part id.</summary>
    public static Dictionary<string, int> Placed(CutPlan plan)
    {
        var placed = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var layout in plan.Layouts)
        foreach (var piece in layout.Pieces)
            placed[piece.Part] = placed.GetValueOrDefault(piece.Part) + layout.Copies;
        return placed;
    }
}
