using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Tests.Designs;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Tests.Totals;

/// <summary>Asks a working of a piece's own parts.</summary>
internal static class Counted
{
    private static readonly Dictionary<string, string> Nothing = [];

    public static Piece Piece(string design) => DesignEvaluator.Evaluate(DesignFiles.Read(design), Nothing).Piece!;

    public static PartTotal Of(string form, Piece piece, LengthUnit unit = LengthUnit.Inch, params string[] more) =>
        Of(form, PieceParts.Of(piece), unit, more);

    public static PartTotal Of(string form, TakenParts parts, LengthUnit unit = LengthUnit.Inch, params string[] more)
    {
        Assert.True(WorkingForms.TryFind(form, out var found));
        return PartTotals.Of(
            found,
            parts,
            unit,
            more.Select(one => one.Split('=', 2)).ToDictionary(pair => pair[0], pair => pair[1])
        );
    }

    /// <summary>A part of this size, everything in inches.</summary>
    public static CountedPart Part(
        string name,
        decimal length,
        decimal width,
        string? properties,
        int quantity = 1,
        decimal? board = null
    ) =>
        new(
            name,
            quantity,
            Length.FromInches(length),
            Length.FromInches(width),
            Length.FromInches(0.75m),
            new(properties ?? "My own board", properties, true, board is { } wide ? Length.FromInches(wide) : null),
            FinishFaces.All
        );

    /// <summary>Parts alone, each solid one a panel of its own.</summary>
    public static TakenParts Taken(params CountedPart[] parts) =>
        new(
            [.. parts],
            [
                .. parts.Select(part => new SolidPanel(
                    part.Name,
                    part.Quantity,
                    part.Width,
                    part.Length,
                    part.Thickness,
                    part.Material,
                    [part.Width]
                )),
            ],
            null
        );
}
