using System.Collections.Immutable;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Drawing.Shapes;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Where a slanted view can be pressed: a part on its wood, a bay on its opening, but for what fills it or lies before
/// it.</summary>
internal sealed class SlantPicks
{
    private readonly PiecePicks picks;
    private readonly Func<Spot, Spot> put;
    private readonly ImmutableArray<Placed> solids;
    private readonly HashSet<string> stops;
    private readonly ILookup<int, Opening> bays;

    /// <summary>Finds the places.</summary>
    /// <param name="picks">What can be chosen.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="solids">The parts as they are painted.</param>
    /// <param name="put">From millimetres to the page.</param>
    public SlantPicks(PiecePicks picks, Piece piece, ImmutableArray<Placed> solids, Func<Spot, Spot> put)
    {
        (this.picks, this.put, this.solids) = (picks, put, solids);
        stops =
        [
            .. Enumerable
                .Range(0, solids.Length)
                .Reverse()
                .GroupBy(i => solids[i].Part.Part.Id)
                .Where(alike => alike.Any(IsSeen))
                .Select(alike => solids[alike.First(IsSeen)].Part.Copy.Mark),
        ];
        bays = piece.Openings.Where(bay => picks.Bays.ContainsKey(bay.Path)).ToLookup(Before);
    }

    /// <summary>The parts with the bays between them.</summary>
    /// <param name="wood">The parts as they are painted.</param>
    public IEnumerable<Shape> Among(IReadOnlyList<Marked> wood)
    {
        for (var i = 0; i < wood.Count; i++)
        {
            foreach (var bay in bays[i])
                yield return Area(bay);
            var part = solids[i].Part;
            yield return stops.Contains(part.Copy.Mark) ? picks.Stop(wood[i], part.Part) : wood[i];
        }

        foreach (var bay in bays[wood.Count])
            yield return Area(bay);
    }

    private Marked Area(Opening bay)
    {
        ImmutableArray<Spot> spots = [.. FrontOf(bay.Box).Select(put)];
        return picks.Area(
            bay,
            new Face(spots, "", 0, Stroke.Thin, Fill.Clear),
            new Polyline(Stroke.NextCut, spots, Closed: true)
        );
    }

    // The first part that is painted over the bay: it stands in it, or before it.
    private int Before(Opening bay)
    {
        var (around, front) = (PieceScale.Around(FrontOf(bay.Box)), PieceScale.Mm(bay.Box.Y));
        for (var i = 0; i < solids.Length; i++)
            if (
                solids[i].Extent.Overlaps(around)
                && (solids[i].Corners[4] < front + 0.01 || solids[i].Part.Box.Shared(bay.Box) is not null)
            )
                return i;
        return solids.Length;
    }

    private static IEnumerable<Spot> FrontOf(Solid bay)
    {
        var (x, y, z) = (PieceScale.Mm(bay.X), PieceScale.Mm(bay.Y), PieceScale.Mm(bay.Z));
        var (endX, endZ) = (PieceScale.Mm(bay.EndX), PieceScale.Mm(bay.EndZ));
        return [Placed.Flat(x, y, z), Placed.Flat(endX, y, z), Placed.Flat(endX, y, endZ), Placed.Flat(x, y, endZ)];
    }

    // By the middles of its faces.
    private bool IsSeen(int i) =>
        solids[i]
            .Faces.Select(face => new Spot((face[0].X + face[2].X) / 2, (face[0].Y + face[2].Y) / 2))
            .Any(middle => !solids.Skip(i + 1).Any(other => other.Covers(middle)));
}
