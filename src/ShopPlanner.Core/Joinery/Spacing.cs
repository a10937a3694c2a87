using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Joinery;

/// <summary>Members at equal gaps along a span: slats, spindles, shelf pins, screws.</summary>
/// <param name="Gap">Clear gap, to the tick; what a tick cannot be divided into goes to the first gaps.</param>
/// <param name="Positions">Near edge of each member, from one end, each worked out from that end so that no rounding adds
/// up.</param>
/// <param name="Count">Members.</param>
public sealed record Spacing(Working<Length> Gap, Working<ImmutableArray<Length>> Positions, int Count)
{
    /// <summary>Spaces a number of members.</summary>
    /// <param name="span">Clear span.</param>
    /// <param name="member">Width of one.</param>
    /// <param name="count">How many, one or more.</param>
    /// <param name="membersAtEnds">True where a member stands at each end, false where a gap does.</param>
    /// <returns>Null where the members are wider together than the span.</returns>
    public static Spacing? Of(Working<Length> span, Working<Length> member, int count, bool membersAtEnds)
    {
        var gaps = Gaps(count, membersAtEnds);
        var free = span.Value.Ticks - (member.Value.Ticks * count);
        if (free < 0 || gaps < 1)
            return null;
        var number = Working.Given("Pieces", count, QuantityKind.Bare, 0);
        var room = Length.FromTicks(free / gaps);
        var gap = Working.Of(
            "Gap",
            room,
            new SettingFigure(room),
            "({span} − {members} × {member}) ÷ {gaps}",
            Working.Geometry,
            ("span", span),
            ("members", number),
            ("member", member),
            ("gaps", Counted(gaps, number, membersAtEnds))
        );
        ImmutableArray<Length> positions =
        [
            .. Enumerable.Range(0, count).Select(i => Near(member.Value.Ticks, free, gaps, i, membersAtEnds)),
        ];
        return new(
            gap,
            Working.Of(
                "Near edge of each piece, from one end",
                positions,
                new LengthsFigure(positions),
                "start + n × ({member} + {gap})",
                Working.Geometry,
                ("member", member),
                ("gap", gap)
            ),
            count
        );
    }

    /// <summary>The fewest members with no gap wider than a limit.</summary>
    /// <inheritdoc cref="Of" path="/param[@name='span' or @name='member' or @name='membersAtEnds']"/>
    /// <param name="span">Clear span.</param>
    /// <param name="member">Width of one.</param>
    /// <param name="widest">Widest gap allowed, more than zero.</param>
    /// <param name="membersAtEnds">True where a member stands at each end.</param>
    public static Spacing? Within(Working<Length> span, Working<Length> member, Length widest, bool membersAtEnds) =>
        Of(span, member, (int)Fewest(span.Value, member.Value, widest, membersAtEnds), membersAtEnds);

    /// <summary>How many members leave no gap wider than a limit, whether they fit or not.</summary>
    /// <inheritdoc cref="Within" path="/param"/>
    public static long Fewest(Length span, Length member, Length widest, bool membersAtEnds)
    {
        var (s, m, g) = (span.Ticks, member.Ticks, widest.Ticks);
        return Math.Max(membersAtEnds ? 2 : 1, membersAtEnds ? Up(s + g, m + g) : Up(s - g, m + g));
    }

    private static Working<double> Counted(int gaps, Working<double> members, bool membersAtEnds) =>
        Working.Of(
            "Gaps",
            gaps,
            QuantityKind.Bare,
            0,
            membersAtEnds ? "{members} − 1" : "{members} + 1",
            Working.Geometry,
            ("members", members)
        );

    private static int Gaps(int count, bool membersAtEnds) => membersAtEnds ? count - 1 : count + 1;

    private static long Up(long a, long b) => (a + b - 1) / b;

    // The n-th gap ends at n/gaps of all free room, rounded down: sums stay exact.
    private static Length Near(long member, long free, int gaps, int i, bool membersAtEnds) =>
        Length.FromTicks((member * i) + (long)((Int128)free * (membersAtEnds ? i : i + 1) / gaps));
}
