using System.Collections.Immutable;
using ShopPlanner.Cli.Designs;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Counting;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cli.Work;

/// <summary>The parts of a document: a design's, worked out, or a cut request's.</summary>
internal static class FromDocument
{
    // The greater of what both formats allow.
    private const int MostBytes = 64 * 1024 * 1024;

    /// <summary>The parts, or the faults that say why there are none.</summary>
    public static (TakenParts? Parts, ImmutableArray<Fault> Faults) Read(string file, IReadOnlyList<string> set)
    {
        var json = DocumentInput.Read(file, "design", stream => CappedReading.Take(stream, MostBytes));
        if (!IsRequest(json))
            return ReadDesign(json, DesignChanges.Of(set));
        if (set.Count > 0)
            throw new Complaint("--set: a cut request has no named dimensions: leave it out");
        var (request, faults) = CutRequestJson.Read(json);
        return request is null ? (null, faults) : (RequestParts.Of(request), []);
    }

    private static (TakenParts? Parts, ImmutableArray<Fault> Faults) ReadDesign(
        ReadOnlyMemory<byte> json,
        Dictionary<string, string> changed
    )
    {
        var (document, faults) = DesignJson.Read(json);
        if (document is null)
            return (null, faults);
        var evaluation = DesignEvaluator.Evaluate(document, changed);
        return evaluation.Piece is { } piece
            ? (PieceParts.Of(piece), [])
            : (null, [.. evaluation.Faults.Select(fault => DesignChanges.Place(fault, changed))]);
    }

    // By the name of the format, so that what is wrong inside is told by that format's own reader.
    private static bool IsRequest(ReadOnlyMemory<byte> json) => json.Span.IndexOf("\"shop-planner/cut-request\""u8) >= 0;
}
