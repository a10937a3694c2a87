using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Edging;
using ShopPlanner.Core.Designs.Joining;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Finishing;
using ShopPlanner.Core.Materials;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Finishes;

/// <summary>What of a piece is finished, copy by copy.</summary>
internal sealed class PieceSurfaces
{
    private const long WorthIt = 8;

    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];

    private readonly ExposedFaces faces;
    private readonly bool panelsFirst;
    private readonly bool isBanded;
    private readonly ILookup<string, Joint> from;
    private readonly HashSet<string> glued;
    private readonly Dictionary<string, PartCopy> copies;

    private PieceSurfaces(Piece piece, bool panelsFirst)
    {
        this.panelsFirst = panelsFirst;
        // A design that asks for band in its hardware alone has it on all edges that are seen.
        isBanded =
            piece.Hardware.Any(item => EdgeSummary.IsBand(item.Name))
            && !piece
                .Parts.SelectMany(part => part.Copies)
                .SelectMany(copy => copy.Edges)
                .Any(edge => edge.Work == EdgeWork.Band);
        faces = new(piece, new(piece));
        from = piece.Joints.ToLookup(joint => joint.From, StringComparer.Ordinal);
        glued = [.. piece.Joints.Where(joint => IsGlued(joint.Kind)).SelectMany(joint => new[] { joint.From, joint.Into })];
        copies = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark, StringComparer.Ordinal);
    }

    // Many glue pocket-screwed joints too (common practice), so those places stay bare as well.
    private static bool IsGlued(JointKind kind) => kind == JointKind.PocketScrew || Fastenings.IsGlued(kind);

    /// <summary>All copies, in the order of the marks.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="panelsFirst">Whether panels in grooves are finished before they go in.</param>
    public static ImmutableArray<FinishSurface> Of(Piece piece, bool panelsFirst)
    {
        var surfaces = new PieceSurfaces(piece, panelsFirst);
        return [.. piece.Parts.SelectMany(surfaces.Of)];
    }

    // Hidden strips of less than an eighth of a part are not worth an extra round (our rule): nobody sees into the gap.
    private IEnumerable<FinishSurface> Of(PiecePart part)
    {
        var copies = part.Copies.Select(copy => Of(part, copy)).ToList();
        var isWorthIt = Sum(copies.Select(one => one.Before)) * WorthIt >= Sum(copies.Select(one => one.Area));
        return copies.Select(one => one with { GoesInFinished = isWorthIt && one.Before > Area.Zero });
    }

    private FinishSurface Of(PiecePart part, PartCopy copy)
    {
        var open = faces.Of(copy).ToList();
        var isSheet = part.Material.Form == MaterialForm.Sheet;
        var isPanel = IsPanel(copy);
        var all = Sum(open.Select(face => face.Open));
        var before = (isPanel && panelsFirst) || IsSetIn(copy, open) ? all : Sum(open.Select(face => Hidden(part, copy, face)));
        return new(
            part.Id,
            part.Name,
            copy.Mark,
            FinishWood.Of(part.Material.Id, part.Material.Name, part.Material.Species, isSheet),
            all,
            before
        )
        {
            IsDrawerBox = part is { Assembly: "Drawer", Name: not "Drawer front" },
            IsPanel = isPanel,
            IsGlued = glued.Contains(copy.Mark),
            SeenEdges = isSheet && !isBanded ? Edges(part, copy, open) : Length.Zero,
            Thickness = copy.Box.Extent(copy.Flat),
        };
    }

    // In grooves both along and across its grain; a rail is in grooves at its ends only.
    private bool IsPanel(PartCopy copy)
    {
        var grooves = from[copy.Mark].Where(joint => joint.Kind == JointKind.Groove).Select(joint => joint.Along).Distinct();
        return grooves.Count(axis => axis != copy.Flat) == 2;
    }

    // All its edges lie within a frame, and not on wood all round: it is dropped in, and nobody gets at them again.
    private static bool IsSetIn(PartCopy copy, List<ExposedFace> open)
    {
        var edges = open.Where(face => face.Axis != copy.Flat).ToList();
        return edges.TrueForAll(face => face.Open == face.Close) && edges.Exists(face => face.Open > Area.Zero);
    }

    private Area Hidden(PiecePart part, PartCopy copy, ExposedFace face) =>
        IsPlantedOn(part, copy, face) ? face.Open : face.Close;

    // The face by which a back or a face frame is put on: it turns inward for good.
    private bool IsPlantedOn(PiecePart part, PartCopy copy, ExposedFace face) =>
        face.Axis == copy.Flat
        && part.Assembly != "Drawer"
        && from[copy.Mark]
            .Any(joint =>
                joint.Along == copy.Flat
                && joint.Depth == Length.Zero
                && (joint.Kind == JointKind.Glued || IsBack(part, copy, joint))
                && Touches(copy.Box, copies[joint.Into].Box, face)
            );

    private static bool IsBack(PiecePart part, PartCopy copy, Joint joint) =>
        copy.Flat == Axis.Y
        && part.Material.Form == MaterialForm.Sheet
        && joint.Kind is JointKind.Screwed or JointKind.PocketScrew or JointKind.Rabbet;

    private static bool Touches(Box box, Box into, ExposedFace face) =>
        face.AtEnd ? into.Start(face.Axis) == box.End(face.Axis) : into.End(face.Axis) == box.Start(face.Axis);

    // Those that the design names, and the front one, less those that it bands; each as long as what is open of it.
    private static Length Edges(PiecePart part, PartCopy copy, List<ExposedFace> open)
    {
        var thick = copy.Box.Extent(copy.Flat);
        return open.Where(face => face.Axis != copy.Flat && !IsBanded(copy, face) && IsSeen(part.FacesToFinish, copy, face))
            .Select(face => (face.Open - face.Close).SquareTicks / thick.Ticks)
            .Aggregate(Length.Zero, (sum, ticks) => sum + Length.FromTicks((long)ticks));
    }

    private static bool IsBanded(PartCopy copy, ExposedFace face) =>
        copy.Edges.Any(edge => edge.Work == EdgeWork.Band && (edge.Side.Axis(), edge.Side.IsFar()) == (face.Axis, face.AtEnd));

    private static bool IsSeen(string words, PartCopy copy, ExposedFace face) =>
        (face.Axis, face.AtEnd) == (Axis.Y, false)
        || words
            .Split(", ")
            .Any(word =>
                word switch
                {
                    "all faces" or "all edges" => true,
                    "edges" => face.Axis == Axes.First(axis => axis != copy.Along && axis != copy.Flat),
                    "upper edge" => (face.Axis, face.AtEnd) == (Axis.Z, true),
                    "lower edge" => (face.Axis, face.AtEnd) == (Axis.Z, false),
                    _ => false,
                }
            );

    private static Area Sum(IEnumerable<Area> areas) => areas.Aggregate(Area.Zero, (sum, area) => sum + area);
}
