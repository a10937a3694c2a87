using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Building;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Designs.Edging;

/// <summary>Edges that the document treats on its free parts. The part has the size that the document gives it with its
/// edging; the panel within is smaller. Of two lippings that meet, the first one named covers the end of the other.</summary>
internal static class FreeEdges
{
    /// <summary>What can be done to an edge.</summary>
    public static readonly ImmutableArray<KindInfo> Kinds =
    [
        new("band", "Edge band", "A thin band, ironed on: sizes stay as they are.", [Side]),
        new(
            "lipping",
            "Lipping",
            "A strip of solid wood as high as the edge, glued on: the panel is narrower by it.",
            [Side, new("material", "Strip", MemberType.Role, null)]
        ),
        new(
            "strip",
            "Edge strip",
            "A strip of solid wood on edge, flush with the upper face, that stiffens a shelf: the panel is narrower by it.",
            [Side, new("material", "Strip", MemberType.Role, null)]
        ),
        new(
            "round",
            "Rounded edge",
            "Both corners of the edge rounded over.",
            [Side, new("radius", "Radius", MemberType.Length, "1/8 in")]
        ),
    ];

    private static MemberInfo Side => new("side", "Edge", MemberType.Choice, null, [.. DesignReader.Sides.Keys]);

    public static void Add(
        IReadOnlyDictionary<FreePart, IReadOnlyList<Draft>> free,
        Func<DesignNode, KindInfo, NodeReader> reader,
        Builder builder,
        List<Fault> faults
    )
    {
        foreach (var (part, copies) in free.Where(one => !one.Key.Edges.IsEmpty && one.Value.Count > 0))
        {
            var known = faults.Count;
            var asked = Read(part, copies[0].Material, reader, faults);
            if (faults.Count > known)
                continue;
            builder.Path = part.Path;
            foreach (var copy in copies)
                Treat(copy, asked, builder);
        }
    }

    private static List<(BoxSide Side, EdgeAsked Asked)> Read(
        FreePart part,
        RoleMaterial panel,
        Func<DesignNode, KindInfo, NodeReader> reader,
        List<Fault> faults
    )
    {
        var edges = new List<(BoxSide Side, EdgeAsked Asked)>();
        foreach (var node in part.Edges)
        {
            if (KindChoice.Find(Kinds, one => one, node, faults) is not { } kind)
                continue;
            var members = reader(node, kind);
            var (side, asked) = (members.Side("side"), EdgeAsked.Read(kind.Name, members, panel, "material", "radius"));
            if (!members.Failed && side.Axis() == part.Flat)
                members.Fail("side", Export.Words.Side(side), "is a face of the part: only edges and ends are treated");
            if (!members.Failed && edges.Exists(one => one.Side == side))
                members.Fail("side", Export.Words.Side(side), "is treated twice: name each edge once");
            if (!members.Failed)
                edges.Add((side, asked));
        }

        return edges;
    }

    private static void Treat(Draft copy, List<(BoxSide Side, EdgeAsked Asked)> edges, Builder builder)
    {
        var rest = copy.Box;
        var runs = new List<Box>();
        foreach (var (side, asked) in edges)
        {
            runs.Add(rest);
            rest = Less(rest, side, asked.Takes);
        }

        copy.Length = Less(copy.Length, copy.Box.Extent(copy.Along) - rest.Extent(copy.Along));
        copy.Width = Less(copy.Width, copy.Box.Extent(copy.Across) - rest.Extent(copy.Across));
        copy.Box = rest;
        foreach (var ((side, asked), run) in edges.Zip(runs))
            EdgeMaker.Treat(copy, side, asked, builder, run);
    }

    private static Box Less(Box box, BoxSide side, Length deep) =>
        side.IsFar() ? box.Grown(side.Axis(), Length.Zero, -deep) : box.Grown(side.Axis(), -deep, Length.Zero);

    private static Working<Length>? Less(Working<Length>? size, Length edging) =>
        size is null || edging == Length.Zero
            ? size
            : Working.Of(
                size.Name + " less its edging",
                size.Value - edging,
                "{whole} − {edging}",
                Working.Geometry,
                ("whole", size),
                ("edging", Working.Given("edging", edging))
            );
}
