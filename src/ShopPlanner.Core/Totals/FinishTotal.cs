using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Totals;

/// <summary>The area of all that gets a finish. Each part is rounded up, so that the can is never too small.</summary>
internal static class FinishTotal
{
    private const int Digits = 2;

    public static PartTotal Of(TotalAsked asked)
    {
        var counted = asked.Parts.Parts.Where(part => !part.Faces.IsNone).ToList();
        if (counted.Count == 0)
            return asked.None("No part has a face to finish.");
        var areas = counted.Select(part => Size(part, asked.Unit)).ToList();
        var sum = Rounded.Sum(areas, QuantityKind.Area, Digits, asked.Unit);
        var shares = counted.Zip(areas, (part, area) => new PartShare(part.Called, How(part, asked), area.Figure));
        return new(
            asked.Form,
            [asked.Ask("All parts", [new("area", sum.Text)], new PartAdded("area", "Area to finish", sum.Figure, [.. shares]))],
            [.. Notes(asked)]
        );
    }

    private static Rounded Size(CountedPart part, LengthUnit unit) =>
        Rounded.Of(
            (double)(part.Faces.Of(part.Length, part.Width, part.Thickness) * part.Quantity).ToSquareMetres(),
            QuantityKind.Area,
            Digits,
            unit,
            MidpointRounding.ToPositiveInfinity
        );

    private static string How(CountedPart part, TotalAsked asked) =>
        $"{part.Faces.Told} of {asked.Sizes(part.Length, part.Width, part.Thickness)}";

    private static IEnumerable<string> Notes(TotalAsked asked)
    {
        var parts = asked.Parts.Parts;
        if (WordList.Of(parts.Where(part => part.Faces.IsNone).Select(part => part.Name)) is { Length: > 0 } hidden)
            yield return $"Not counted, since no finish goes on it: {hidden}.";
        if (WordList.Of(parts.Where(part => !part.Faces.IsSaid).Select(part => part.Name)) is { Length: > 0 } open)
            yield return $"No faces are noted for {open}: both faces, all edges and ends are counted.";
        yield return "What lies in joints is counted too.";
    }
}
