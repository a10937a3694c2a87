using System.Collections.Immutable;
using System.Globalization;

namespace ShopPlanner.Core.Bills;

/// <summary>Reads one side of a size: <c>3/4</c>, <c>2 ft. 6 in.</c>, <c>17 in. square</c>, <c>one-inch</c>,
/// <c>width 4</c>.</summary>
/// <param name="tokens">Of a line.</param>
/// <param name="text">The line.</param>
internal sealed class SideParser(BillToken[] tokens, string text)
{
    /// <summary>Reads a side.</summary>
    /// <param name="start">Where it may begin.</param>
    /// <param name="next">The token after it.</param>
    /// <returns>The side; null where none begins.</returns>
    public WrittenSide? Read(int start, out int next)
    {
        next = start;
        var role = RoleBefore(ref next);
        if (Figure(ref next) is not { } number)
        {
            next = start;
            return null;
        }

        var doubts = ImmutableArray.CreateBuilder<string>();
        var isRange = Range(ref next);
        var unit = UnitAt(ref next);
        var plain = number.Plain + Suffix(unit);
        if (unit == SizeUnit.Foot && Inches(ref next) is { } inches)
            plain += " " + inches + " in";
        if (role == SizeRole.None)
            role = RoleAfter(ref next, unit != SizeUnit.None || number.HasFraction);
        var written = Written(start, next);
        if (isRange)
            doubts.Add($"‘{written}’ is a range: choose one size.");
        if (number.Flaw is { } flaw)
            doubts.Add($"‘{written}’ {flaw}.");
        else if (number.IsCorrected)
            doubts.Add($"‘{written}’ was read as {plain}.");
        doubts.AddRange(Fractions(number, written));
        return new WrittenSide(plain, unit, role, doubts.ToImmutable())
        {
            Number = number,
            IsOpen = isRange || number.Flaw is not null,
        };
    }

    private string Written(int start, int end) => BillNames.Short(text[tokens[start].Start..tokens[end - 1].End]);

    private BillToken? At(int place) => place >= 0 && place < tokens.Length ? tokens[place] : null;

    private bool IsKind(int place, TokenKind kind) => At(place)?.Kind == kind;

    // "thickness 7/8", "width = 4", "length of 22 in.".
    private SizeRole RoleBefore(ref int place)
    {
        if (At(place) is not { Kind: TokenKind.Word } word || !BillWords.Nouns.TryGetValue(word.Text, out var role))
            return SizeRole.None;
        var next = place + 1;
        if (IsKind(next, TokenKind.Colon) || At(next) is { Text: "=" or "of" or "is" })
            next++;
        if (!IsKind(next, TokenKind.Number))
            return SizeRole.None;
        place = next;
        return role;
    }

    private BillNumber? Figure(ref int place)
    {
        if (At(place) is { Kind: TokenKind.Number } token)
        {
            place++;
            return token.Number;
        }

        var next = place;
        if (Spelled(ref next) is not { } number || !IsKind(next, TokenKind.Unit))
            return null;
        place = next;
        return number;
    }

    // "one inch", "seven-eighths inch", "half-inch", "one and one-half inches".
    private BillNumber? Spelled(ref int place)
    {
        if (At(place) is not { Kind: TokenKind.Word } word)
            return null;
        if (word.Text == "half")
        {
            place++;
            return Part(1, 2);
        }

        if (!BillWords.Numbers.TryGetValue(word.Text, out var count))
            return null;
        place++;
        if (Below(place, out var after) is { } below && count < below && count % 2 == 1)
        {
            place = after;
            return Part(count, below);
        }

        var whole = count.ToString(CultureInfo.InvariantCulture);
        if (At(place) is not { Text: "and" } || !Inner(place + 1, out var top, out var bottom, out var end))
            return new BillNumber(whole) { Whole = count };
        place = end;
        return Part(top, bottom) with { Plain = $"{whole} {top}/{bottom}", Before = count };
    }

    private bool Inner(int place, out int top, out int bottom, out int end)
    {
        (top, bottom, end) = (1, 2, place + 1);
        if (At(place) is not { Kind: TokenKind.Word } word)
            return false;
        if (word.Text is "half" or "a" && (word.Text == "half" || At(place + 1) is { Text: "half" }))
        {
            end = place + (word.Text == "half" ? 1 : 2);
            return true;
        }

        if (!BillWords.Numbers.TryGetValue(word.Text, out top) || Below(place + 1, out end) is not { } below)
            return false;
        bottom = below;
        return true;
    }

    private int? Below(int place, out int after)
    {
        after = IsKind(place, TokenKind.Dash) ? place + 1 : place;
        if (At(after) is not { Kind: TokenKind.Word } word || !BillWords.Fractions.TryGetValue(word.Text, out var below))
            return null;
        after++;
        return below;
    }

    private static BillNumber Part(int top, int bottom) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{top}/{bottom}")) { Numerator = top, Denominator = bottom };

    // "3 to 4", "1 or 1-1/8", "3-4".
    private bool Range(ref int place)
    {
        var isBetween = At(place) is { Text: "to" or "or" } || (At(place) is { Kind: TokenKind.Dash, Gap: 0, Text: "-" or "–" });
        if (!isBetween || !IsKind(place + 1, TokenKind.Number) || IsKind(place + 2, TokenKind.By))
            return false;
        if (At(place)!.Kind == TokenKind.Dash && !IsKind(place + 2, TokenKind.Unit))
            return false;
        place += 2;
        return true;
    }

    private SizeUnit UnitAt(ref int place) => IsKind(place, TokenKind.Unit) ? tokens[place++].Unit : SizeUnit.None;

    // After feet: "6 in.", "6", "- 6 1/2", but not the next side.
    private string? Inches(ref int place)
    {
        var next = place;
        if (IsKind(next, TokenKind.Dash) || (IsKind(next, TokenKind.Comma) && IsInches(next + 2)) || At(next) is { Text: "and" })
            next++;
        if (At(next) is not { Kind: TokenKind.Number, Number: { Flaw: null } number })
            return null;
        var isMark = At(place - 1) is { Text: "'" or "′" or "’" or "‘" };
        if (
            !IsInches(next + 1) && !(isMark && next == place && number.Whole is null or < 12 && !IsKind(next + 1, TokenKind.Unit))
        )
            return null;
        place = IsInches(next + 1) ? next + 2 : next + 1;
        return number.Plain;
    }

    private bool IsInches(int place) => At(place) is { Kind: TokenKind.Unit, Unit: SizeUnit.Inch };

    // "thick", "in width", "in. in diameter", "-wide". After a bare whole number an adjective may belong to the name: 4 long
    // rails.
    private SizeRole RoleAfter(ref int place, bool isSure)
    {
        var next = place;
        if (At(next) is { Kind: TokenKind.Dash, Gap: 0 })
            next++;
        if (At(next) is { Kind: TokenKind.Word } adjective && BillWords.After.TryGetValue(adjective.Text, out var role))
        {
            if (!isSure && At(next + 1) is { Kind: TokenKind.Word } noun && noun.Text is not ("and" or "by" or "with"))
                return SizeRole.None;
            place = next + 1;
            return role;
        }

        if (At(next) is { Text: "in" or "of" })
            next++;
        if (At(next) is not { Kind: TokenKind.Word } word || !BillWords.Nouns.TryGetValue(word.Text, out role))
            return SizeRole.None;
        if (IsKind(next + 1, TokenKind.Number) && next == place)
            return SizeRole.None;
        place = next + 1;
        return role;
    }

    private static IEnumerable<string> Fractions(BillNumber number, string written)
    {
        if (number.Flaw is not null || !number.HasFraction)
            yield break;
        if (number.Denominator is not (2 or 4 or 8 or 16 or 32 or 64))
            yield return $"‘{written}’ isn't a mark on a rule.";
        else if (number.Numerator >= number.Denominator)
            yield return $"‘{written}’ is a rough thickness as lumberyards sell it.";
    }

    /// <summary>Returns a unit as a length is written with it.</summary>
    public static string Suffix(SizeUnit unit) =>
        unit switch
        {
            SizeUnit.Inch => " in",
            SizeUnit.Foot => " ft",
            SizeUnit.Millimetre => " mm",
            SizeUnit.Centimetre => " cm",
            SizeUnit.Metre => " m",
            _ => "",
        };
}
