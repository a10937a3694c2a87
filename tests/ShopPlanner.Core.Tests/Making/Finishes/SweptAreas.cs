using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Making.Finishes;

/// <summary>Areas of a piece's parts by another way: all space is cut into cells along every side of every box, each cell belongs
/// to one copy or to the air, and every side between a cell of a copy and the air is counted.</summary>
internal sealed class SweptAreas
{
    private static readonly Axis[] Axes = [Axis.X, Axis.Y, Axis.Z];
    private static readonly JointKind[] Loose = [JointKind.Hinged, JointKind.Sliding, JointKind.Resting];

    private readonly List<PartCopy> copies;
    private readonly long[][] sides;
    private readonly int[,,] cells;
    private readonly int[] body;
    private readonly bool[] isMoving;
    private readonly HashSet<(string From, string Into)> letIn;

    public SweptAreas(Piece piece)
    {
        copies = [.. piece.Parts.SelectMany(part => part.Copies)];
        letIn = [.. piece.Joints.Where(joint => joint.Depth.IsPositive).Select(joint => (joint.From, joint.Into))];
        (body, isMoving) = Bodies(piece);
        sides = [.. Axes.Select(axis => Sides(axis).Distinct().Order().ToArray())];
        cells = new int[sides[0].Length, sides[1].Length, sides[2].Length];
        for (var i = 0; i < copies.Count; i++)
            Fill(i);
    }

    /// <summary>Square ticks of a part's open faces, and of those where other wood stands closer than a reach.</summary>
    public (Int128 Open, Int128 Close) Of(PiecePart part, long reach)
    {
        var marks = part.Copies.Select(copy => copy.Mark).ToHashSet();
        var (open, close) = ((Int128)0, (Int128)0);
        for (var i = 0; i < copies.Count; i++)
            if (marks.Contains(copies[i].Mark))
                foreach (var (area, isClose) in Faces(i, reach))
                {
                    open += area;
                    close += isClose ? area : 0;
                }

        return (open, close);
    }

    private IEnumerable<(Int128 Area, bool IsClose)> Faces(int copy, long reach)
    {
        var box = copies[copy].Box;
        var (from, to) = (
            Axes.Select(axis => At(axis, box.Start(axis))).ToArray(),
            Axes.Select(axis => At(axis, box.End(axis))).ToArray()
        );
        for (var x = from[0]; x < to[0]; x++)
        for (var y = from[1]; y < to[1]; y++)
        for (var z = from[2]; z < to[2]; z++)
        {
            if (cells[x, y, z] != copy + 1)
                continue;
            for (var axis = 0; axis < 3; axis++)
                foreach (var step in new[] { -1, 1 })
                    if (IsOpen(copy, [x, y, z], axis, step))
                        yield return (Side([x, y, z], axis), Gap(copy, [x, y, z], axis, step) < reach);
        }
    }

    private bool IsOpen(int copy, int[] cell, int axis, int step)
    {
        cell[axis] += step;
        return Owner(cell) is not { } other || IsApart(copy, other);
    }

    // To the next wood that it is joined with, straight out from the face.
    private long Gap(int copy, int[] cell, int axis, int step)
    {
        var gap = 0L;
        for (cell[axis] += step; cell[axis] >= 0 && cell[axis] < sides[axis].Length - 1; cell[axis] += step)
        {
            if (Owner(cell) is { } other && body[other] == body[copy])
                return other == copy ? long.MaxValue : gap;
            gap += sides[axis][cell[axis] + 1] - sides[axis][cell[axis]];
        }

        return long.MaxValue;
    }

    private int? Owner(int[] cell)
    {
        for (var axis = 0; axis < 3; axis++)
            if (cell[axis] < 0 || cell[axis] >= sides[axis].Length - 1)
                return null;
        var owner = cells[cell[0], cell[1], cell[2]];
        return owner == 0 ? null : owner - 1;
    }

    private Int128 Side(int[] cell, int axis)
    {
        var area = (Int128)1;
        for (var other = 0; other < 3; other++)
            if (other != axis)
                area *= sides[other][cell[other] + 1] - sides[other][cell[other]];
        return area;
    }

    private bool IsApart(int one, int other) => body[one] != body[other] && (isMoving[body[one]] || isMoving[body[other]]);

    private void Fill(int copy)
    {
        var box = copies[copy].Box;
        for (var x = At(Axis.X, box.X); x < At(Axis.X, box.EndX); x++)
        for (var y = At(Axis.Y, box.Y); y < At(Axis.Y, box.EndY); y++)
        for (var z = At(Axis.Z, box.Z); z < At(Axis.Z, box.EndZ); z++)
            if (!IsCutOut(copies[copy], sides[1][y], sides[2][z]) && IsTaken(copy, cells[x, y, z]))
                cells[x, y, z] = copy + 1;
    }

    private bool IsTaken(int copy, int owner)
    {
        if (owner == 0)
            return true;
        var (mark, other) = (copies[copy].Mark, copies[owner - 1].Mark);
        if (letIn.Contains((mark, other)))
            return true;
        return !letIn.Contains((other, mark)) && string.CompareOrdinal(mark, other) < 0;
    }

    private static bool IsCutOut(PartCopy copy, long y, long z) =>
        copy.ToeNotch is { } notch && y < (copy.Box.Y + notch.Deep).Ticks && z < (copy.Box.Z + notch.High).Ticks;

    private IEnumerable<long> Sides(Axis axis)
    {
        foreach (var copy in copies)
        {
            yield return copy.Box.Start(axis).Ticks;
            yield return copy.Box.End(axis).Ticks;
            if (copy.ToeNotch is { } notch && axis != Axis.X)
                yield return (copy.Box.Start(axis) + (axis == Axis.Y ? notch.Deep : notch.High)).Ticks;
        }
    }

    private int At(Axis axis, Length place) => Array.BinarySearch(sides[(int)axis], place.Ticks);

    // Spread from each copy along what stays joined.
    private (int[] Body, bool[] IsMoving) Bodies(Piece piece)
    {
        var index = copies.Select((copy, i) => (copy.Mark, i)).ToDictionary(one => one.Mark, one => one.i);
        var fixedTo = piece
            .Joints.Where(joint => !Loose.Contains(joint.Kind))
            .SelectMany(joint => new[] { (index[joint.From], index[joint.Into]), (index[joint.Into], index[joint.From]) })
            .ToLookup(pair => pair.Item1, pair => pair.Item2);
        var bodies = Enumerable.Repeat(-1, copies.Count).ToArray();
        for (var i = 0; i < copies.Count; i++)
        for (var open = new Stack<int>([i]); open.TryPop(out var at); )
            if (bodies[at] < 0)
            {
                bodies[at] = i;
                foreach (var next in fixedTo[at])
                    open.Push(next);
            }

        var moving = new bool[copies.Count];
        foreach (var joint in piece.Joints.Where(joint => Loose.Contains(joint.Kind)))
            if (bodies[index[joint.From]] != bodies[index[joint.Into]])
                moving[bodies[index[joint.From]]] = true;
        return (bodies, moving);
    }
}
