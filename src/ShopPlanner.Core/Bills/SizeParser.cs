namespace ShopPlanner.Core.Bills;

/// <summary>Finds sizes in a line: sides with "by" or "×" between them, or sides that are named, in a list.</summary>
/// <param name="tokens">Of the line.</param>
/// <param name="text">The line.</param>
internal sealed class SizeParser(BillToken[] tokens, string text)
{
    private const int MostSides = 8;

    private readonly SideParser sides = new(tokens, text);

    /// <summary>Returns all sizes of a line, in order.</summary>
    public static List<WrittenSize> FindAll(BillToken[] tokens, string text)
    {
        var parser = new SizeParser(tokens, text);
        var found = new List<WrittenSize>();
        var at = 0;
        while (at < tokens.Length)
            if (parser.Read(at) is { } size)
            {
                found.Add(size);
                at = size.End;
            }
            else
                at++;
        return found;
    }

    private WrittenSize? Read(int start)
    {
        if (IsLabel(start) || sides.Read(start, out var next) is not { } first)
            return null;
        var stock = StockAt(first, next);
        if (!stock.Equals(default))
            (next, first) = (stock.End.Value, first with { Role = first.Role == SizeRole.None ? RoleOf(stock) : first.Role });
        var found = new List<WrittenSide> { first };
        while (found.Count < MostSides && Next(found, next, ref stock, out var end) is { } side)
        {
            found.Add(side);
            next = end;
        }

        var isCutOff = IsKind(next, TokenKind.By);
        return
            found is [{ Unit: SizeUnit.None } only] && !isCutOff && (only.Role == SizeRole.None || only.Number.Whole is not null)
            ? null
            : new WrittenSize(start, isCutOff ? next + 1 : next, [.. found]) { IsCutOff = isCutOff, Stock = stock };
    }

    // The next side, or the one after what two sides are of: "2 by 4 in. stock, 6 ft. long".
    private WrittenSide? Next(List<WrittenSide> found, int at, ref Range stock, out int end)
    {
        if (Side(found, at, out end) is { } side)
            return side;
        var between = found.Count > 1 ? StockAt(found[^1], at) : default;
        if (between.Equals(default) || Side(found, between.End.Value, out end) is not { } beyond)
            return null;
        stock = between;
        return beyond;
    }

    private BillToken? At(int place) => place >= 0 && place < tokens.Length ? tokens[place] : null;

    private bool IsKind(int place, TokenKind kind) => At(place)?.Kind == kind;

    // "Fig. 3", "No. 8 by 1 1/4": a number, not a size.
    private bool IsLabel(int start) =>
        At(start)?.Kind == TokenKind.Number
        && At(start - 1) is { } before
        && before.Text is "no" or "nos" or "fig" or "figs" or "page"
        && At(start - 1)!.Kind == TokenKind.Word;

    private WrittenSide? Side(List<WrittenSide> found, int at, out int end)
    {
        end = at;
        var next = IsKind(at, TokenKind.Comma) && IsKind(at + 1, TokenKind.By) ? at + 1 : at;
        if (IsKind(next, TokenKind.By))
            return sides.Read(next + 1, out end);
        if (Told(found) >= 3)
            return null;
        if (IsAt(next))
            return sides.Read(next + 1, out end) is { Unit: SizeUnit.Foot } run && !IsSpacing(end) ? run : null;
        var isParted = false;
        while (
            At(next) is { } mark
            && (mark.Kind == TokenKind.Comma || mark.Text is "and" or "with" || IsLooseDash(mark))
            && next < at + 2
        )
        {
            isParted = true;
            next++;
        }

        return sides.Read(next, out end) is { } side && IsListed(found, side, isParted, end) ? side : null;
    }

    // "2 x 4 @ 8 ft.": how long the boards are; "@ 2 ft. o. c." is how far apart they stand.
    private bool IsAt(int at) => At(at) is { Kind: TokenKind.Other, Text: "@" };

    private bool IsSpacing(int end) => At(end) is { Text: "o" or "oc" or "on" or "apart" };

    private static bool IsLooseDash(BillToken token) => token is { Kind: TokenKind.Dash, Gap: > 0 };

    private static int Told(List<WrittenSide> found) => found.Sum(side => side.Tells);

    // Without "by" a side goes on only where something says that it is one.
    private bool IsListed(List<WrittenSide> found, WrittenSide side, bool isParted, int end)
    {
        var isNamed = found.Any(one => one.Role != SizeRole.None);
        var goesOn = IsKind(end, TokenKind.By);
        if (side.Role is SizeRole.Square or SizeRole.Diameter && Told(found) > 1)
            return false;
        if (side.Role != SizeRole.None)
            return found.All(one => one.Role != side.Role && (!goesOn || one.Role != SizeRole.None));
        if (goesOn)
            return isParted
                && (found is [{ Role: SizeRole.Thickness }] || (found is [{ Role: SizeRole.Length }] && IsSection(end)));
        if (isNamed)
            return isParted && side.Unit != SizeUnit.None && Told(found) == 2 && !IsCount(end);
        return Told(found) == 2 && (side.Unit == SizeUnit.Foot || (isParted && side.Unit != SizeUnit.None)) && !IsCount(end);
    }

    // "36 in. long, 2 by 4 in.", but not "22 in. long, 3/4 by 3 in. tenons".
    private bool IsSection(int by)
    {
        if (sides.Read(by + 1, out var end) is null || IsKind(end, TokenKind.By))
            return false;
        return At(end) is not { Kind: TokenKind.Word } word
            || word.Is("and")
            || word.IsIn(BillWords.SideWords)
            || WoodWords.End(tokens, end, tokens.Length) > end;
    }

    // A figure with a unit before a noun is about that noun: "2 in. screws".
    private bool IsCount(int end) => At(end) is { Kind: TokenKind.Word } word && BillWords.Hardware.Contains(word.Text);

    // "1-in. oak", "3/4-in. stock": what a side is of.
    private Range StockAt(WrittenSide side, int at)
    {
        if (side.Unit is not (SizeUnit.Inch or SizeUnit.Millimetre))
            return default;
        var start = IsKind(at, TokenKind.Dash) ? at + 1 : at;
        var end = WoodWords.End(tokens, start, tokens.Length);
        if (At(end) is { } noun && (noun.IsIn(BillWords.Stock) || noun.IsIn(BillWords.Rounds)))
            end++;
        return end == start ? default : at..end;
    }

    private SizeRole RoleOf(Range stock) =>
        tokens[stock.End.Value - 1].IsIn(BillWords.Rounds) ? SizeRole.Diameter : SizeRole.Thickness;
}
