using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Gives every copy its mark: copies of one kind share a letter and are counted; I and O are left out, which a pencil
/// makes into figures. Copies are of one kind if they have one size and the same cuts for their joints; a mirrored one carries L
/// or R.</summary>
internal sealed class Marking
{
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private readonly Dictionary<Draft, string> marks = [];
    private readonly Dictionary<Draft, string> ids = [];

    public ImmutableArray<PiecePart> Parts { get; }

    public Marking(IReadOnlyList<Draft> drafts, IReadOnlyList<DraftJoint> joints)
    {
        var forms = new CutForms(drafts, joints);
        var kinds = Alike(drafts, forms);
        foreach (var (kind, i) in kinds.Select((kind, i) => (kind, i)))
        foreach (var draft in kind)
            ids[draft] = Letter(i);
        Parts = [.. kinds.Select((kind, i) => Part(Letter(i), kind, Hands.Of(kind, forms)))];
    }

    public string Mark(Draft draft) => marks[draft];

    public string Id(Draft draft) => ids[draft];

    /// <summary>A, B, … Z, AA, AB, …</summary>
    internal static string Letter(int i) =>
        i < Letters.Length ? Letters[i].ToString() : Letter((i / Letters.Length) - 1) + Letters[i % Letters.Length];

    // In the order of the first of each. Sizes that differ by a tick, which is less than any tool cuts, are one size.
    private static List<ImmutableArray<Draft>> Alike(IReadOnlyList<Draft> drafts, CutForms forms)
    {
        var kinds = new List<List<Draft>>();
        var like = new Dictionary<object, List<List<Draft>>>();
        foreach (var draft in drafts)
        {
            var key = (Kind(draft), forms.LetIn(draft));
            if (!like.TryGetValue(key, out var known))
                like[key] = known = [];
            var kind = known.Find(one => IsOfOneSize(one[0], draft));
            if (kind is null)
            {
                kind = [];
                known.Add(kind);
                kinds.Add(kind);
            }

            kind.Add(draft);
        }

        return [.. kinds.Select(one => one.ToImmutableArray())];
    }

    private static bool IsOfOneSize(Draft one, Draft other) =>
        IsNear(one.Box.Extent(one.Along), other.Box.Extent(other.Along))
        && IsNear(one.Box.Extent(one.Across), other.Box.Extent(other.Across))
        && IsNear(one.Box.Extent(one.Flat), other.Box.Extent(other.Flat))
        && IsNear(one.CutWideBy, other.CutWideBy);

    private static bool IsNear(Length one, Length other) => Math.Abs((one - other).Ticks) <= 1;

    private static object Kind(Draft draft) =>
        (
            draft.Name,
            draft.Assembly,
            draft.Material.Role,
            (draft.CutLongBy, draft.GrainMatters, draft.Purpose, draft.FacesToFinish)
        );

    private PiecePart Part(string id, ImmutableArray<Draft> drafts, Func<Draft, Hand> hand)
    {
        var first = drafts[0];
        var (length, width) = (Size("Length", first, first.Along, first.Length), Size("Width", first, first.Across, first.Width));
        for (var i = 0; i < drafts.Length; i++)
            marks[drafts[i]] = Name(id, i, hand(drafts[i]));
        return new(
            id,
            first.Name,
            first.Assembly,
            first.Material,
            length,
            width,
            Size("Thickness", first, first.Flat, null),
            length.Value + first.CutLongBy,
            width.Value + first.CutWideBy,
            first.GrainMatters,
            first.Purpose,
            first.FacesToFinish,
            first.Purpose == PartPurpose.Member ? [.. drafts.Select(draft => Copy(draft, hand(draft)))] : [],
            drafts.Length
        )
        {
            PracticeFor = first.PracticeFor is { } other ? ids[other] : null,
        };
    }

    private PartCopy Copy(Draft draft, Hand hand) =>
        new(marks[draft], draft.Box, hand, draft.Along, draft.Flat) { Features = draft.Features, Edges = draft.Edges };

    private static string Name(string id, int i, Hand hand) =>
        FormattableString.Invariant($"{id}{i + 1}")
        + hand switch
        {
            Hand.Left => "L",
            Hand.Right => "R",
            _ => "",
        };

    private static Working<Length> Size(string name, Draft draft, Axis axis, Working<Length>? working)
    {
        var extent = draft.Box.Extent(axis);
        if (working is null)
            return Working.Given(name, extent);
        return working.Value == extent
            ? working
            : throw new InvalidOperationException($"{draft.Name}: worked out as {working.Value}, drawn as {extent}");
    }
}
