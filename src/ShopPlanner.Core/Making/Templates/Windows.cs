using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Making.Templates;

/// <summary>Which piece of a face a template shows: what is drilled or cut, and the edge and end it is measured from where they
/// are near.</summary>
internal static class Windows
{
    // Around what is drawn; how near an edge or an end has to be to be drawn too; holes farther apart are templates of their own.
    private static readonly Length Around = Length.FromMillimetres(12);
    private static readonly Length AroundCut = Length.FromMillimetres(25);
    private static readonly Length EdgeNear = Length.FromMillimetres(120);
    private static readonly Length EndNear = Length.FromMillimetres(180);
    private static readonly Length FirstEndNear = Length.FromMillimetres(300);
    private static readonly Length Apart = Length.FromMillimetres(250);

    /// <summary>The window around what is cut out of a face, with the ends and edges that are near.</summary>
    public static FaceWindow OfCut(FaceWindow room, Length wide, Length high) =>
        new(
            room.X <= EndNear ? Length.Zero : Length.Max(Length.Zero, room.X - AroundCut),
            room.Y <= EdgeNear ? Length.Zero : Length.Max(Length.Zero, room.Y - AroundCut),
            wide - room.EndX <= EndNear ? wide : Length.Min(wide, room.EndX + AroundCut),
            high - room.EndY <= EdgeNear ? high : Length.Min(high, room.EndY + AroundCut)
        );

    /// <summary>The window around holes, from the end and the edge that they are measured from: the one where lengths begin, else
    /// the other one, where it is near enough.</summary>
    public static FaceWindow OfHoles(IReadOnlyCollection<TemplateHole> holes, Length wide, Length high)
    {
        var room = holes.Select(Room).Aggregate(Together);
        var window = Alone(holes, wide, high);
        if (room.X <= FirstEndNear)
            window = window with { X = Length.Zero };
        else if (wide - room.EndX <= EndNear)
            window = window with { EndX = wide };
        if (Length.Min(room.Y, high - room.EndY) > EdgeNear)
            return window;
        return room.Y <= high - room.EndY ? window with { Y = Length.Zero } : window with { EndY = high };
    }

    /// <summary>The window around holes alone, no larger than the face.</summary>
    public static FaceWindow Alone(IReadOnlyCollection<TemplateHole> holes, Length wide, Length high)
    {
        var room = holes.Select(Room).Aggregate(Together);
        return new(
            Length.Max(Length.Zero, room.X - Around),
            Length.Max(Length.Zero, room.Y - Around),
            Length.Min(wide, room.EndX + Around),
            Length.Min(high, room.EndY + Around)
        );
    }

    /// <summary>Holes in groups that lie together along the part.</summary>
    public static IEnumerable<List<TemplateHole>> Clusters(IEnumerable<TemplateHole> holes)
    {
        var cluster = new List<TemplateHole>();
        foreach (var hole in holes.OrderBy(one => one.At.X).ThenBy(one => one.At.Y))
        {
            if (cluster.Count > 0 && hole.At.X - cluster[^1].At.X > Apart)
            {
                yield return cluster;
                cluster = [];
            }

            cluster.Add(hole);
        }

        if (cluster.Count > 0)
            yield return cluster;
    }

    /// <summary>The least window around both.</summary>
    public static FaceWindow Together(FaceWindow one, FaceWindow other) =>
        new(
            Length.Min(one.X, other.X),
            Length.Min(one.Y, other.Y),
            Length.Max(one.EndX, other.EndX),
            Length.Max(one.EndY, other.EndY)
        );

    /// <summary>Whether two overlap or touch.</summary>
    public static bool Meet(FaceWindow one, FaceWindow other) =>
        one.X <= other.EndX && other.X <= one.EndX && one.Y <= other.EndY && other.Y <= one.EndY;

    private static FaceWindow Room(TemplateHole hole)
    {
        var half = Length.FromTicks(hole.Diameter.Ticks / 2);
        return new(hole.At.X - half, hole.At.Y - half, hole.At.X + half, hole.At.Y + half);
    }
}
