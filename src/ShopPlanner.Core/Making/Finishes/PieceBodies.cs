using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>Which copies hold together when everything that moves is taken off, and whose wood it is where boxes share
/// some.</summary>
internal sealed class PieceBodies
{
    private static readonly JointKind[] Moving = [JointKind.Hinged, JointKind.Sliding, JointKind.Resting];

    private readonly Dictionary<string, string> above = new(StringComparer.Ordinal);
    private readonly HashSet<string> moving = new(StringComparer.Ordinal);
    private readonly Dictionary<(string, string), string> letIn = [];

    public PieceBodies(Piece piece)
    {
        foreach (var joint in piece.Joints.Where(joint => !Moving.Contains(joint.Kind)))
            above[Body(joint.From)] = Body(joint.Into);
        foreach (var joint in piece.Joints.Where(joint => Moving.Contains(joint.Kind)))
            if (Body(joint.From) != Body(joint.Into))
                moving.Add(Body(joint.From));
        foreach (var joint in piece.Joints.Where(joint => joint.Depth > Length.Zero))
            letIn.TryAdd(Pair(joint.From, joint.Into), joint.From);
    }

    /// <summary>Whether two copies come apart again by hand: a door and its case, a drawer, a shelf that lies loose.</summary>
    public bool ComeApart(string mark, string other) =>
        Body(mark) is var one && Body(other) is var two && one != two && (moving.Contains(one) || moving.Contains(two));

    /// <summary>Whether two copies hold together.</summary>
    public bool HoldTogether(string mark, string other) => Body(mark) == Body(other);

    /// <summary>Whether the wood that two boxes share is the first one's: of what is let in; else of the first by mark.</summary>
    public bool Owns(string mark, string other) =>
        letIn.TryGetValue(Pair(mark, other), out var from) ? from == mark : string.CompareOrdinal(mark, other) < 0;

    // The way is shortened as it is walked.
    private string Body(string mark)
    {
        if (!above.TryGetValue(mark, out var next) || next == mark)
            return mark;
        return above[mark] = Body(next);
    }

    private static (string, string) Pair(string a, string b) => string.CompareOrdinal(a, b) < 0 ? (a, b) : (b, a);
}
