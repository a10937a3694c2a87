using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>What the figures of a bill say about their order: a thickness is the least of three, and most parts are longer than
/// wide.</summary>
internal sealed class OrderVotes
{
    private const int Enough = 3;

    private int thicknessFirst;
    private int thicknessLast;
    private int widthFirst;
    private int lengthFirst;
    private int rising;
    private int falling;

    /// <summary>Counts the votes of a bill's entries.</summary>
    public static OrderVotes Of(IEnumerable<ResolvedEntry> entries)
    {
        var votes = new OrderVotes();
        foreach (var entry in entries)
        {
            if (entry.Unnamed(3) is [var first, var second, var third])
                votes.Three(first, second, third);
            else if (entry.Unnamed(2) is [var one, var other])
                votes.Two(one, other);
        }

        return votes;
    }

    /// <summary>The order that most lines speak for; the usual one where none does.</summary>
    public SizeOrder Order
    {
        get
        {
            var isThicknessFirst = thicknessFirst >= thicknessLast;
            return SizeOrders.With(isThicknessFirst, isThicknessFirst ? widthFirst >= lengthFirst : widthFirst > lengthFirst);
        }
    }

    /// <summary>Whether the bill leaves no doubt about the order of width and length, so that a line may go against the rule.
    /// </summary>
    public bool IsSettled =>
        Math.Max(widthFirst, lengthFirst) >= Enough
        && Math.Max(widthFirst, lengthFirst) >= Enough * Math.Min(widthFirst, lengthFirst);

    /// <summary>Whether of two figures, width and length, the width is first; null where nothing speaks for either.</summary>
    public bool? IsWidthFirstOfTwo =>
        thicknessFirst + thicknessLast > 0 && widthFirst != lengthFirst ? SizeOrders.IsWidthFirst(Order)
        : rising != falling ? rising > falling
        : null;

    /// <summary>Returns where the least of three figures stands: true for first, false for last; null for neither.</summary>
    public static bool? IsLeastFirst(Length first, Length second, Length third) =>
        first <= second && first < third ? true
        : third <= second && third < first ? false
        : null;

    private void Three(Length first, Length second, Length third)
    {
        if (IsLeastFirst(first, second, third) is not { } isFirst)
            return;
        if (isFirst)
            thicknessFirst++;
        else
            thicknessLast++;
        var (a, b) = isFirst ? (second, third) : (first, second);
        if (a < b)
            widthFirst++;
        else if (a > b)
            lengthFirst++;
    }

    private void Two(Length first, Length second)
    {
        if (first < second)
            rising++;
        else if (first > second)
            falling++;
    }
}
