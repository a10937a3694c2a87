using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Building;

/// <summary>Gives every copy its mark: copies of one kind share a letter and are counted; I and O are left out, which a pencil
/// makes into figures. A mirrored copy carries L or R.</summary>
internal sealed class Marking
{
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private readonly Dictionary<Draft, string> marks = [];
    private readonly Dictionary<Draft, string> ids = [];

    public ImmutableArray<PiecePart> Parts { get; }

    public Marking(IReadOnlyList<Draft> drafts)
    {
        var kinds = drafts.GroupBy(Kind).ToList();
        foreach (var (kind, i) in kinds.Select((kind, i) => (kind, i)))
        foreach (var draft in kind)
            ids[draft] = Letter(i);
        Parts = [.. kinds.Select((kind, i) => Part(Letter(i), [.. kind]))];
    }

    public string Mark(Draft draft) => marks[draft];

    public string Id(Draft draft) => ids[draft];

    /// <summary>A, B, … Z, AA, AB, …</summary>
    internal static string Letter(int i) =>
        i < Letters.Length ? Letters[i].ToString() : Letter((i / Letters.Length) - 1) + Letters[i % Letters.Length];

    private static object Kind(Draft draft) =>
        (
            draft.Name,
            draft.Assembly,
            draft.Material.Role,
            draft.Box.Extent(draft.Along),
            draft.Box.Extent(draft.Across),
            draft.Box.Extent(draft.Flat),
            (draft.CutLongBy, draft.CutWideBy, draft.GrainMatters, draft.Purpose, draft.FacesToFinish, draft.Notch)
        );

    private PiecePart Part(string id, ImmutableArray<Draft> drafts)
    {
        var first = drafts[0];
        var (length, width) = (Size("Length", first, first.Along, first.Length), Size("Width", first, first.Across, first.Width));
        for (var i = 0; i < drafts.Length; i++)
            marks[drafts[i]] = Name(id, i, drafts[i].Hand);
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
            first.Purpose == PartPurpose.Member ? [.. drafts.Select(Copy)] : [],
            drafts.Length
        )
        {
            PracticeFor = first.PracticeFor is { } other ? ids[other] : null,
        };
    }

    private PartCopy Copy(Draft draft) =>
        new(marks[draft], draft.Box, draft.Hand, draft.Along, draft.Flat) { Notch = draft.Notch };

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
