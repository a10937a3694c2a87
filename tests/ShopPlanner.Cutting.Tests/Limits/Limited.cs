using ShopPlanner.Cutting.Tests.Planner;

namespace ShopPlanner.Cutting.Tests.Limits;

/// <summary>Requests with limits of saw, car and store; lengths are texts in inches.</summary>
internal static class Limited
{
    public static CutRequest By(
        this CutRequest request,
        int? storeCuts = null,
        string tolerance = "0",
        string? longest = null,
        string? widest = null
    ) =>
        request with
        {
            Store = storeCuts is { } most ? new(most, Some.Of(tolerance)) : null,
            Carry = longest is null ? null : new(Some.Of(longest), Some.Of(widest ?? longest)),
        };

    public static CutRequest Saw(this CutRequest request, string? rip = null, string? crosscut = null) =>
        request with
        {
            Saw = request.Saw with
            {
                WidestRip = rip is null ? null : Some.Of(rip),
                LongestCrosscut = crosscut is null ? null : Some.Of(crosscut),
            },
        };

    /// <summary>Parts of plywood, 96 by 48 in unless said otherwise.</summary>
    public static CutRequest Sheets(
        IEnumerable<CutPart> parts,
        string kerf = "1/8",
        string trim = "0",
        string length = "96",
        string width = "48"
    ) => Some.Request([Some.Sheet()], [Some.Stock("s", length, width, 60, material: "ply")], parts, kerf, edgeTrim: trim);

    public static CutPart Panel(string id, string length, string width, int quantity = 1, Grain grain = Grain.Length) =>
        Some.Part(id, length, quantity, width, grain, "ply");

    public static Cut[] StoreCuts(this Layout layout) => [.. layout.Cuts.Where(cut => cut.ByStore)];
}
