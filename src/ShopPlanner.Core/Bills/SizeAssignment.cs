using System.Collections.Immutable;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>Which figure is the thickness, the width, the length: by what the text calls them, else by their order.</summary>
internal sealed class SizeAssignment
{
    private readonly OrderVotes votes;
    private readonly SizeOrder? named;
    private readonly List<string> doubts = [];
    private readonly List<string> notes = [];
    private readonly List<Length?> rest;
    private Length? thickness;
    private Length? width;
    private Length? length;

    private SizeAssignment(ImmutableArray<ResolvedSide> sides, OrderVotes votes, SizeOrder? named)
    {
        (this.votes, this.named) = (votes, named);
        rest = [.. sides.Where(side => side.Role == SizeRole.None).Select(side => side.Value)];
        Length? Side(SizeRole role) => sides.FirstOrDefault(side => side.Role == role).Value;
        (thickness, width, length) = (Side(SizeRole.Thickness), Side(SizeRole.Width), Side(SizeRole.Length));
        if (Side(SizeRole.Square) is { } square)
            Square(square);
        if (Side(SizeRole.Diameter) is { } diameter)
            Round(diameter);
        if (Side(SizeRole.Height) is { } height)
            Height(height);
        if (Side(SizeRole.Depth) is { } depth)
            Depth(depth);
    }

    /// <summary>Returns the size, with what isn't certain and what else is to be said.</summary>
    /// <param name="sides">In the order written.</param>
    /// <param name="votes">Of the bill.</param>
    /// <param name="named">The order that a heading names.</param>
    /// <param name="heading">The thickness that a heading gives.</param>
    public static (BillSize Size, List<string> Doubts, List<string> Notes) Of(
        ImmutableArray<ResolvedSide> sides,
        OrderVotes votes,
        SizeOrder? named,
        Length? heading
    )
    {
        var made = new SizeAssignment(sides, votes, named);
        var isOpen = made.thickness is null && made.rest.Count < 3 && sides.All(side => side.Role is not SizeRole.Diameter);
        if (isOpen && heading is { } thick && !(made.length is not null && made.rest.Count == 2))
            made.thickness = thick;
        made.Place();
        return (new(made.thickness, made.width, made.length), made.doubts, made.notes);
    }

    private void Place()
    {
        switch (rest)
        {
            case [var first, var second, var third] when thickness is null && width is null && length is null:
                Three(first, second, third);
                break;
            case [var first, var second] when thickness is null && length is not null && width is null:
                (thickness, width) = Sorted(first, second);
                break;
            case [var first, var second] when thickness is null && width is not null && length is null:
                (thickness, length) = Sorted(first, second);
                break;
            case [var first, var second] when width is null && length is null:
                Two(first, second);
                break;
            case [var only] when Missing() == 1:
                One(only);
                break;
            case { Count: > 0 }:
                doubts.Add("The figures aren't three sides of a piece.");
                break;
        }
    }

    private int Missing() => (thickness is null ? 1 : 0) + (width is null ? 1 : 0) + (length is null ? 1 : 0);

    private void One(Length? only)
    {
        if (thickness is null)
            thickness = only;
        else if (width is null)
            width = only;
        else
            length = only;
    }

    private static (Length?, Length?) Sorted(Length? a, Length? b) =>
        a is { } one && b is { } other && one > other ? (b, a) : (a, b);

    private void Three(Length? first, Length? second, Length? third)
    {
        var order = named ?? votes.Order;
        if (first is { } a && second is { } b && third is { } c)
            order = Checked(order, a, b, c);
        var size = SizeOrders.Of(order, first, second, third);
        (thickness, width, length) = (size.Thickness, size.Width, size.Length);
        if (width is { } wide && length is { } lengthwise && wide > lengthwise)
            Wider();
    }

    // A line that goes against the rest of the bill is read by its own figures, with a doubt.
    private SizeOrder Checked(SizeOrder order, Length a, Length b, Length c)
    {
        var isLeastFirst = OrderVotes.IsLeastFirst(a, b, c);
        if (isLeastFirst is null && !(a == b && b == c))
            doubts.Add("Which figure is the thickness isn't clear.");
        if (isLeastFirst is not { } own || own == SizeOrders.IsThicknessFirst(order))
            return order;
        doubts.Add($"The figures don't follow the order of the bill: {SizeOrders.Words(order)}.");
        return named ?? (own ? SizeOrder.ThicknessWidthLength : SizeOrder.LengthWidthThickness);
    }

    private void Wider()
    {
        if (named is not null || votes.IsSettled)
            notes.Add("wider than long, as written");
        else
            doubts.Add("It is wider than long: check which way the grain runs.");
    }

    private void Two(Length? first, Length? second)
    {
        var isWidthFirst = named is { } order ? SizeOrders.IsWidthFirst(order) : votes.IsWidthFirstOfTwo;
        (width, length) = isWidthFirst ?? first < second ? (first, second) : (second, first);
        if (isWidthFirst is null)
            doubts.Add("Which figure is the length isn't clear.");
        else if (width > length)
            Wider();
    }

    private void Square(Length square)
    {
        if (thickness is not null)
            (width, length) = (width ?? square, length ?? square);
        else if (length is not null)
            (thickness, width) = (square, width ?? square);
        else if (rest is [{ } other])
            SquareWith(square, other);
        else
            (width, length) = (square, square);
    }

    private void SquareWith(Length square, Length other)
    {
        rest.Clear();
        if (other >= square)
            (thickness, width, length) = (square, square, other);
        else
            (thickness, width, length) = (other, square, square);
        if (other < square && other * 3 > square)
            doubts.Add("Which sides are the square ones isn't clear.");
    }

    private void Round(Length diameter)
    {
        notes.Add("round");
        if (thickness is null && rest is [{ } other])
        {
            rest.Clear();
            if (other < diameter)
                thickness = other;
            else
                length = other;
        }

        if (thickness is not null)
            (width, length) = (diameter, diameter);
        else
            (thickness, width) = (diameter, diameter);
    }

    private void Height(Length height)
    {
        if (length is null)
            length = height;
        else
            width ??= height;
        doubts.Add("A height is given: check which way the grain runs.");
    }

    private void Depth(Length depth)
    {
        if (width is null)
            width = depth;
        else
            thickness ??= depth;
        doubts.Add("A depth is given: check which side it is.");
    }
}
