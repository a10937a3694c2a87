using System.Collections.Frozen;

namespace ShopPlanner.Core.Bills;

/// <summary>Names of woods as bills write them: <c>quarter-sawed white oak</c>, <c>soft wood</c>,
/// <c>birch or maple</c>.</summary>
internal static class WoodWords
{
    private const int MostWords = 12;

    private static readonly FrozenSet<string> Woods = (
        "oak pine maple birch ash walnut cherry mahogany poplar whitewood basswood cedar cypress chestnut gum redwood "
        + "spruce fir elm "
        + "beech hickory butternut sycamore teak rosewood ebony holly hemlock larch alder willow plywood hardwood softwood mdf "
        + "hardboard particleboard veneer"
    )
        .Split(' ')
        .ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Before = (
        "quarter quartered sawed sawn plain white red black yellow hard soft sugar sweet clear straight grained dry kiln dried "
        + "georgia southern norway northern western eastern cheap common good select selected best hungarian african cuban "
        + "honduras american english circassian bird's eye curly figured flat rift"
    )
        .Split(' ')
        .ToFrozenSet(StringComparer.Ordinal);

    // "wood" alone says nothing; "soft wood" does.
    private static readonly FrozenSet<string> Grades = "hard soft cheap cheaper common"
        .Split(' ')
        .ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Returns where a wood's name that begins at a token ends; the beginning itself where none begins.</summary>
    /// <param name="tokens">Of a line.</param>
    /// <param name="start">Where it may begin.</param>
    /// <param name="end">Where the line ends.</param>
    public static int End(BillToken[] tokens, int start, int end)
    {
        var found = One(tokens, start, end);
        if (found == start)
            return start;
        return
            found + 1 < end
            && (tokens[found].Is("or") || tokens[found].Is("and"))
            && One(tokens, found + 1, end) is var next
            && next > found + 1
            ? next
            : found;
    }

    private static int One(BillToken[] tokens, int start, int end)
    {
        var last = Math.Min(end, start + MostWords);
        for (var at = start; at < last; at++)
        {
            if (tokens[at].IsIn(Woods))
                return at + 1;
            if (tokens[at].Is("wood"))
                return at > start && tokens[at - 1].IsIn(Grades) ? at + 1 : start;
            var isJoined = tokens[at].Kind == TokenKind.Dash && at > start && tokens[at].Gap == 0;
            if (!isJoined && !tokens[at].IsIn(Before))
                return start;
        }

        return start;
    }
}
