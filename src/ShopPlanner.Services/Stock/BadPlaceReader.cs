using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Cutting;

namespace ShopPlanner.Services.Stock;

/// <summary>Reads a bad place, as typed.</summary>
/// <param name="now">The piece.</param>
/// <param name="unit">Of figures without one.</param>
/// <param name="faults">Where what is wrong is noted.</param>
internal sealed class BadPlaceReader(PieceNow now, LengthUnit unit, List<Fault> faults)
{
    /// <summary>Returns the place; null where something is wrong with it.</summary>
    public BadPlace? Read(BadPlaceTyped typed)
    {
        if (!IsPlace(typed))
        {
            faults.Add(Fault.Of(nameof(typed.Where), $"{typed.Where}", "isn't a place of that kind: choose one from the list"));
            return null;
        }

        var along = typed.Kind == BadPlaceKind.Edge ? now.Length : Side(nameof(typed.Along), typed.Along, now.Length, "long");
        var across = typed.Kind == BadPlaceKind.End ? now.Width : Side(nameof(typed.Across), typed.Across, now.Width, "wide");
        var isSpot = typed.Kind == BadPlaceKind.Spot;
        var x = Start(
            typed.Where,
            StockEdges.Far,
            isSpot ? typed.FromEnd : null,
            nameof(typed.FromEnd),
            along,
            now.Length,
            "long"
        );
        var y = Start(
            typed.Where,
            StockEdges.Back,
            isSpot ? typed.FromEdge : null,
            nameof(typed.FromEdge),
            across,
            now.Width,
            "wide"
        );
        if (along is null || across is null || x is null || y is null)
            return null;
        var place = new BadPlace(x.Value, y.Value, along.Value, across.Value);
        return Refuse(place) is { } fault ? Refused(fault) : place;
    }

    private static bool IsPlace(BadPlaceTyped typed) =>
        (typed.Kind, typed.Where) switch
        {
            (BadPlaceKind.End, StockEdges.Near or StockEdges.Far) => true,
            (BadPlaceKind.Edge, StockEdges.Front or StockEdges.Back) => true,
            (BadPlaceKind.Corner, var where) => (where & StockEdges.Ends) is StockEdges.Near or StockEdges.Far
                && (where & ~StockEdges.Ends) is StockEdges.Front or StockEdges.Back,
            (BadPlaceKind.Spot, _) => true,
            _ => false,
        };

    private Fault? Refuse(BadPlace place)
    {
        if (BadPlaces.Of([place]).Cover(now.Length, now.Width))
            return new Fault(now.Piece.Tag, "", "would be bad all over: throw it away instead");
        if (now.Condition.BadPlaces.Contains(place))
            return new Fault(now.Piece.Tag, "", "has this bad place already");
        if (now.Condition.BadPlaces.Count >= CutStock.MostBadPlaces)
            return Fault.Of(
                now.Piece.Tag,
                now.Condition.BadPlaces.Count.ToString(CultureInfo.InvariantCulture),
                "bad places are the most that one piece has: remove some, and add one larger place around them"
            );
        return null;
    }

    private BadPlace? Refused(Fault fault)
    {
        faults.Add(fault);
        return null;
    }

    private Length? Side(string field, string text, Length whole, string how)
    {
        var parsed = LengthText.ParsePositive(text, unit);
        if (!parsed.Ok)
            faults.Add(parsed.Fault.At(field));
        else if (parsed.Value > whole)
            faults.Add(Fault.Of(field, text, $"is more than the piece: {now.Piece.Tag} is {Say(whole)} {how}"));
        else
            return parsed.Value;
        return null;
    }

    // From the left end or the top edge where nothing else is said.
    private Length? Start(StockEdges where, StockEdges far, string? text, string field, Length? extent, Length whole, string how)
    {
        if (text is null)
            return where.HasFlag(far) && extent is { } side ? whole - side : Length.Zero;
        var parsed = LengthText.Parse(text, unit);
        if (!parsed.Ok)
            faults.Add(parsed.Fault.At(field));
        else if (parsed.Value >= whole)
            faults.Add(Fault.Of(field, text, $"is outside the piece: {now.Piece.Tag} is {Say(whole)} {how}"));
        else if (extent is { } size && parsed.Value + size > whole)
            faults.Add(
                Fault.Of(field, text, $"puts part of it outside {now.Piece.Tag}, {Say(whole)} {how}: at most {Say(whole - size)}")
            );
        else
            return parsed.Value;
        return null;
    }

    private string Say(Length length) => LengthFormat.WithUnit(length, LengthFormat.MadeIn(unit, length));
}
