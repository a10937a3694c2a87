using System.Globalization;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>
/// Tells which copies are congruent with their joints: what is let into a copy, what meets it, what is cut out of it and what is
/// done to its edges, seen in the copy's own length, width and thickness. Copies that a turn brings to the same form are alike; a
/// mirror image is the other hand.
/// </summary>
internal sealed class CutForms
{
    private readonly Dictionary<Draft, Form> whole = [];
    private readonly Dictionary<Draft, Form> letIn = [];

    public CutForms(IReadOnlyList<Draft> drafts, IReadOnlyList<DraftJoint> joints)
    {
        var met = new Dictionary<Draft, List<Cut>>();
        foreach (var joint in joints)
        {
            if (joint.From.Box.Meeting(joint.Into.Box) is not { } box)
                continue;
            Of(met, joint.From).Add(new(joint.Kind, true, joint.Depth.IsPositive, box));
            Of(met, joint.Into).Add(new(joint.Kind, false, joint.Depth.IsPositive, box));
        }

        foreach (var draft in drafts.Where(one => one.Purpose == PartPurpose.Member))
        {
            var cuts = met.GetValueOrDefault(draft) ?? [];
            List<(string, Box)> shapes = [.. FeatureMarks.Of(draft)];
            whole[draft] = Form.Of(draft, cuts, shapes);
            letIn[draft] = Form.Of(draft, [.. cuts.Where(cut => cut.IsLetIn)], shapes);
        }
    }

    /// <summary>The same for copies whose cuts and edges are alike or mirrored.</summary>
    public string LetIn(Draft draft) => letIn.TryGetValue(draft, out var form) ? form.Either : "";

    /// <summary>The form with all that meets the copy; null for what stands nowhere in the piece.</summary>
    public Form? Whole(Draft draft) => whole.GetValueOrDefault(draft);

    private static List<Cut> Of(Dictionary<Draft, List<Cut>> met, Draft draft)
    {
        if (!met.TryGetValue(draft, out var cuts))
            met[draft] = cuts = [];
        return cuts;
    }
}

/// <summary>A place on a copy where a joint is.</summary>
internal sealed record Cut(JointKind Kind, bool IsFrom, bool IsLetIn, Box Box);

/// <summary>What is cut on a copy, written the same however the copy is turned.</summary>
/// <param name="Turned">The same for copies that a turn brings together.</param>
/// <param name="Mirrored">What <paramref name="Turned"/> is of its mirror image.</param>
internal sealed record Form(string Turned, string Mirrored)
{
    // Places nearer than a sixty-fourth of an inch are one: no saw tells them apart. The offset keeps halves and wholes of that
    // step away from where rounding jumps.
    private const long Near = 127;
    private const long Offset = 20;

    /// <summary>The same for both hands.</summary>
    public string Either => string.CompareOrdinal(Turned, Mirrored) <= 0 ? Turned : Mirrored;

    public static Form Of(Draft draft, IReadOnlyList<Cut> cuts, IReadOnlyList<(string Word, Box Place)> shapes)
    {
        if (cuts.Count == 0 && shapes.Count == 0)
            return new("", "");
        var axes = new[] { draft.Along, draft.Across, draft.Flat };
        var all = cuts.Select(cut => (Word: $"{(int)cut.Kind}{(cut.IsFrom ? 'f' : 'i')}", cut.Box)).ToList();
        all.AddRange(shapes.Select(shape => (shape.Word, shape.Place)));
        var isRight = IsRightHanded(axes);
        var (turned, mirrored) = ((string?)null, (string?)null);
        var isSquare = draft.Box.Extent(draft.Across) == draft.Box.Extent(draft.Flat);
        foreach (var swap in isSquare ? new[] { false, true } : [false])
            for (var flips = 0; flips < 8; flips++)
            {
                var order = swap ? new[] { axes[0], axes[2], axes[1] } : axes;
                var text = Text(draft.Box, all, order, flips);
                // A turn keeps the hand: each flip and each swap of two axes changes it.
                var keeps = (int.PopCount(flips) + (swap ? 1 : 0)) % 2 == 0 == isRight;
                if (keeps)
                    turned = Least(turned, text);
                else
                    mirrored = Least(mirrored, text);
            }

        return new(turned!, mirrored!);
    }

    private static string Least(string? one, string other) => one is null || string.CompareOrdinal(other, one) < 0 ? other : one;

    private static string Text(Box whole, List<(string Word, Box Box)> cuts, Axis[] axes, int flips) =>
        string.Join(
            ';',
            cuts.Select(cut =>
                    cut.Word + string.Concat(axes.Select((axis, i) => Side(whole, cut.Box, axis, (flips & (1 << i)) != 0)))
                )
                .Order(StringComparer.Ordinal)
        );

    private static string Side(Box whole, Box cut, Axis axis, bool isFlipped)
    {
        var (start, end) = isFlipped
            ? (whole.End(axis) - cut.End(axis), whole.End(axis) - cut.Start(axis))
            : (cut.Start(axis) - whole.Start(axis), cut.End(axis) - whole.Start(axis));
        return string.Create(CultureInfo.InvariantCulture, $",{Step(start)}-{Step(end)}");
    }

    private static long Step(Length length) => (long)Math.Floor((length.Ticks + Offset) / (decimal)Near);

    private static bool IsRightHanded(Axis[] axes) =>
        (axes[0], axes[1], axes[2]) is (Axis.X, Axis.Y, Axis.Z) or (Axis.Y, Axis.Z, Axis.X) or (Axis.Z, Axis.X, Axis.Y);
}

/// <summary>Which copies of a kind are left and right ones.</summary>
internal static class Hands
{
    /// <summary>Left is the hand of the copy that stands farthest left and in front; nothing is said where one hand is all there
    /// is.</summary>
    public static Func<Draft, Hand> Of(IReadOnlyList<Draft> kind, CutForms forms)
    {
        var hands = new Dictionary<Draft, Hand>();
        foreach (var same in kind.Where(one => forms.Whole(one) is not null).GroupBy(one => forms.Whole(one)!.Either))
        {
            var left = forms.Whole(same.OrderBy(one => one.Box.X).ThenBy(one => one.Box.Y).ThenBy(one => one.Box.Z).First())!;
            if (left.Turned == left.Mirrored || same.All(one => forms.Whole(one)!.Turned == left.Turned))
                continue;
            foreach (var one in same)
                hands[one] = forms.Whole(one)!.Turned == left.Turned ? Hand.Left : Hand.Right;
        }

        return one => hands.GetValueOrDefault(one, Hand.Either);
    }
}
