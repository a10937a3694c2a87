using System.Text.Json;

namespace ShopPlanner.Cutting.Formats;

/// <summary>Reads a cut plan (format <c>shop-planner/cut-plan</c>, version 1). Unknown members are ignored. Whether the plan
/// answers a request and can be cut is for the verification to say.</summary>
public static class CutPlanReader
{
    /// <summary>Reads a plan; every fault is found and names its member.</summary>
    /// <param name="json">A JSON document in UTF-8, at most 50 MB.</param>
    /// <exception cref="IOException">The stream cannot be read.</exception>
    public static DocumentReading<CutPlan> Read(Stream json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var faults = new FaultList();
        using var document = JsonInput.Load(json, faults);
        return DocumentReading<CutPlan>.Of(document is null ? null : Read(document.RootElement, faults), faults);
    }

    private static CutPlan? Read(JsonElement root, FaultList faults)
    {
        if (Heading.Open(root, Words.Plan, faults) is not { } members) return null;
        return new CutPlan(
            members.Unit,
            members.Choice("status", Words.Status, null),
            members.Total("cost"),
            members.Total("costLowerBound"),
            members.OptionalSeconds("seconds") ?? 0,
            [.. members.OptionalObjects("buy").Select(ReadPurchase)],
            [.. members.Objects("layouts").Select(ReadLayout)],
            [.. members.OptionalObjects("unplaced").Select(ReadUnplaced)]);
    }

    private static Purchase ReadPurchase(Members purchase) =>
        new(purchase.Text("stock"), purchase.Count("quantity", 1, int.MaxValue), purchase.Total("cost"));

    private static Layout ReadLayout(Members layout) => new(
        layout.Text("stock"),
        layout.OptionalCount("copies", 1, int.MaxValue) ?? 1,
        [.. layout.Objects("pieces").Select(ReadPiece)],
        [.. layout.OptionalObjects("leftovers").Select(ReadLeftover)],
        [.. layout.OptionalObjects("cuts").Select(ReadCut)]);

    private static PlacedPiece ReadPiece(Members piece) => new(
        piece.Text("part"), piece.Length("x"), piece.Length("y"), piece.Size("dx"), piece.Size("dy"), piece.Flag("turned"));

    private static Leftover ReadLeftover(Members leftover) => new(
        leftover.Length("x"), leftover.Length("y"), leftover.Size("dx"), leftover.Size("dy"), leftover.Flag("keep"));

    private static Cut ReadCut(Members cut)
    {
        var gives = cut.Texts("gives").ToList();
        var finished = cut.Texts("finished").ToList();
        if (gives is not ([not null] or [not null, not null]))
            cut.Refuse("gives", string.Join(", ", gives), "must name the one or two pieces that the cut gives");
        return new(
            cut.Count("n", 1, int.MaxValue), cut.Text("piece"), cut.Choice("kind", Words.Kind, null), cut.Length("at"),
            gives.ElementAtOrDefault(0) ?? "", gives.ElementAtOrDefault(1),
            finished.ElementAtOrDefault(0), finished.ElementAtOrDefault(1));
    }

    private static UnplacedPart ReadUnplaced(Members unplaced) =>
        new(unplaced.Text("part"), unplaced.Count("quantity", 1, int.MaxValue), unplaced.OptionalText("reason") ?? "");
}
