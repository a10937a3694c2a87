using System.Collections.Immutable;
using System.Text.Json;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Cutting.Formats;

/// <summary>
/// Reads the members of a cut plan. Where a fault was noted something neutral stands; the plan is given out only when there is
/// none. Whether the plan answers a request is for the verifier to say.
/// </summary>
internal sealed class CutPlanReader(DocumentObject root, LengthUnit unit)
{
    private const int MostEntries = 200_000;

    // A search lasts a day at most; its plan may say a little more.
    private const double MostSeconds = 10 * CutRequestRanges.MostSeconds;

    public CutPlan Read() =>
        new(
            unit,
            root["status"].Required("write one of " + string.Join(", ", Words.Statuses.Keys)).OneOf(Words.Statuses) ?? default,
            root["cost"].Required("write an amount").Total() ?? Money.Zero,
            root["costLowerBound"].Total() ?? Money.Zero,
            root["seconds"].Seconds(MostSeconds, orNone: true) ?? 0,
            Entries(root["buy"], Purchase),
            Entries(root["layouts"].Required("write a list […]"), Layout),
            Entries(root["unplaced"], Unplaced)
        );

    private static ImmutableArray<T> Entries<T>(DocumentValue list, Func<DocumentObject, T> read) =>
        [.. list.Items(MostEntries).Select(item => read(item.Required("write an object {…}").Object()))];

    private static Purchase Purchase(DocumentObject purchase) =>
        new(Name(purchase["stock"]), Count(purchase["quantity"]), purchase["cost"].Total() ?? Money.Zero);

    private Layout Layout(DocumentObject layout) =>
        new(
            Name(layout["stock"]),
            layout["copies"].Present ? Count(layout["copies"]) : 1,
            Entries(layout["pieces"].Required("write a list […]"), Piece),
            Entries(layout["leftovers"], Leftover),
            Entries(layout["cuts"], Cut)
        );

    private PlacedPiece Piece(DocumentObject piece) =>
        new(
            Name(piece["part"]),
            At(piece["x"]),
            At(piece["y"]),
            Size(piece["dx"]),
            Size(piece["dy"]),
            piece["turned"].Flag() ?? false
        );

    private Leftover Leftover(DocumentObject leftover) =>
        new(At(leftover["x"]), At(leftover["y"]), Size(leftover["dx"]), Size(leftover["dy"]), leftover["keep"].Flag() ?? false);

    private Cut Cut(DocumentObject cut)
    {
        var gives = Names(cut["gives"].Required("write one or two names"), least: 1);
        var parts = Names(cut["parts"], least: 0);
        return new(
            Count(cut["n"]),
            Name(cut["piece"]),
            cut["kind"].Required("write \"crosscut\" or \"rip\"").OneOf(Words.Kinds) ?? default,
            At(cut["at"]),
            gives.ElementAtOrDefault(0) ?? "",
            gives.ElementAtOrDefault(1),
            parts.ElementAtOrDefault(0),
            parts.ElementAtOrDefault(1)
        )
        {
            ByStore = cut["by"].OneOf(Words.Makers) ?? false,
        };
    }

    private static string?[] Names(DocumentValue list, int least)
    {
        if (!list.Present)
            return [];
        string?[] names = [.. list.Items(2).Select(item => item.Id())];
        if (list.Element.ValueKind == JsonValueKind.Array && names.Length < least)
            list.Refuse("names no piece: write one or two names");
        return names;
    }

    private static UnplacedPart Unplaced(DocumentObject part) =>
        new(Name(part["part"]), Count(part["quantity"]), part["reason"].Text() ?? "");

    private Length At(DocumentValue value) => value.Required("write a length").Length(unit) ?? Length.Zero;

    private Length Size(DocumentValue value) => value.Required("write a length").Size(unit) ?? Length.Zero;

    private static string Name(DocumentValue value) => value.Required("write the id").Id() ?? "";

    private static int Count(DocumentValue value) => value.Required("write a whole number").Count(1, int.MaxValue) ?? 0;
}
