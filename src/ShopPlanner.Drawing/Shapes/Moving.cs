namespace ShopPlanner.Drawing.Shapes;

/// <summary>Moves shapes about the page.</summary>
public static class Moving
{
    /// <summary>The same shape elsewhere.</summary>
    /// <param name="shape">Any but a hatch or a dimension, which are taken apart first.</param>
    /// <param name="dx">To the right.</param>
    /// <param name="dy">Down.</param>
    public static Shape Moved(this Shape shape, double dx, double dy) =>
        shape switch
        {
            Line line => line with { From = line.From.Moved(dx, dy), To = line.To.Moved(dx, dy) },
            Polyline polyline => polyline with { Spots = [.. polyline.Spots.Select(s => s.Moved(dx, dy))] },
            Frame frame => frame with { Box = frame.Box.Moved(dx, dy) },
            Patch patch => patch with { Box = patch.Box.Moved(dx, dy) },
            Caption caption => caption with { At = caption.At.Moved(dx, dy) },
            Face face => face with { Spots = [.. face.Spots.Select(s => s.Moved(dx, dy))] },
            Marked marked => marked with { Shapes = [.. marked.Shapes.Select(s => s.Moved(dx, dy))] },
            RingMark ring => ring with { At = ring.At.Moved(dx, dy) },
            _ => throw new ArgumentException($"a {shape.GetType().Name} is taken apart before it is moved", nameof(shape)),
        };

    private static Spot Moved(this Spot spot, double dx, double dy) => new(spot.X + dx, spot.Y + dy);

    private static Box Moved(this Box box, double dx, double dy) => box with { X = box.X + dx, Y = box.Y + dy };
}
