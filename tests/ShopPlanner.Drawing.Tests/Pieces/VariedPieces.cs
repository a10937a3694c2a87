using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Tests.Designs;

namespace ShopPlanner.Drawing.Tests.Pieces;

/// <summary>The built-in designs at values within their limits.</summary>
internal static class VariedPieces
{
    private const int Seed = 20261128;

    /// <summary>A design as it stands, with the least of all values, and at random.</summary>
    /// <param name="design">Its name.</param>
    /// <param name="trials">How many at random.</param>
    public static IEnumerable<(string Values, Piece Piece)> Of(string design, int trials)
    {
        yield return ("as it stands", BuiltInPieces.Read(design));
        var document = BuiltInPieces.Document(design);
        var values = DesignValues.Of(document, trials, Seed).ToList();
        foreach (var one in values.Take(1).Concat(values.TakeLast(trials)))
            if (DesignEvaluator.Evaluate(document, one).Piece is { } piece)
                yield return (string.Join(", ", one.Select(set => $"{set.Key} {set.Value}")), piece);
    }
}
