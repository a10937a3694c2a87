using ShopPlanner.Core.Designs.Model;
using Solid = ShopPlanner.Core.Designs.Model.Box;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>A door with all of its parts.</summary>
/// <param name="Marks">Of its copies.</param>
/// <param name="Box">The least box around them.</param>
internal sealed record DoorLeaf(IReadOnlyCollection<string> Marks, Solid Box)
{
    /// <summary>The doors of a piece: a slab by itself, stiles and rails with the panel that their grooves hold.</summary>
    public static IReadOnlyList<DoorLeaf> Of(Piece piece)
    {
        var boxes = piece
            .Parts.Where(part => part.Assembly == "Door")
            .SelectMany(part => part.Copies)
            .ToDictionary(copy => copy.Mark, copy => copy.Box);
        var leaves = boxes.Keys.ToDictionary(mark => mark, mark => new List<string> { mark });
        foreach (var joint in piece.Joints.Where(one => boxes.ContainsKey(one.From) && boxes.ContainsKey(one.Into)))
        {
            var (one, other) = (leaves[joint.From], leaves[joint.Into]);
            if (ReferenceEquals(one, other))
                continue;
            one.AddRange(other);
            foreach (var mark in other)
                leaves[mark] = one;
        }

        return
        [
            .. leaves
                .Values.Distinct()
                .Select(marks => new DoorLeaf(marks, marks.Select(mark => boxes[mark]).Aggregate((a, b) => a.Around(b)))),
        ];
    }
}
