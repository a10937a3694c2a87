using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Totals;
using ShopPlanner.Cutting;

namespace ShopPlanner.Cli.Work;

/// <summary>The parts of a cut request, as workings add them up. It doesn't say which faces get a finish, nor how the piece
/// stands.</summary>
internal static class RequestParts
{
    /// <summary>Parts proper at their finished size; practice pieces are left out.</summary>
    public static TakenParts Of(CutRequest request)
    {
        var materials = request.Materials.ToDictionary(one => one.Id, StringComparer.Ordinal);
        var parts = request.Parts.Where(part => part.PracticeFor is null).ToList();
        var thick = parts.Where(part => materials[part.Material].Thickness is not null).ToList();
        return new(
            [.. thick.Select(part => Count(part, materials[part.Material]))],
            [
                .. thick
                    .Where(part => materials[part.Material].Form == StockForm.Board)
                    .Select(part => Panel(part, materials[part.Material])),
            ],
            null
        )
        {
            Left =
            [
                .. parts
                    .Except(thick)
                    .Select(part => $"Not counted: {part.Name}. The request doesn't say how thick {part.Material} is."),
            ],
        };
    }

    private static CountedPart Count(CutPart part, CutMaterial material) =>
        new(
            part.Name,
            part.Quantity,
            part.FinishedLength ?? part.Length,
            part.FinishedWidth ?? part.Width,
            material.Thickness!.Value,
            Material(material),
            FinishFaces.NotSaid
        );

    private static SolidPanel Panel(CutPart part, CutMaterial material)
    {
        var width = part.FinishedWidth ?? part.Width;
        return new(
            part.Name,
            part.Quantity,
            width,
            part.FinishedLength ?? part.Length,
            material.Thickness!.Value,
            Material(material),
            [width]
        );
    }

    private static CountedMaterial Material(CutMaterial material) =>
        new(material.Id, StoreProperties.OfNamed(material.Id), material.Form == StockForm.Board, material.Width);
}
