using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Drawing.Pieces;

/// <summary>Says how deep and how wide what is cut into the parts is, for below a view that shows it dashed.</summary>
internal static class CutNotes
{
    private static readonly Dictionary<JointKind, string> Names = new()
    {
        [JointKind.Dado] = "Dado",
        [JointKind.Rabbet] = "Rabbet",
        [JointKind.Groove] = "Groove",
        [JointKind.MortiseAndTenon] = "Mortise",
        [JointKind.Dovetail] = "Dovetails",
    };

    /// <summary>A sentence for each cut: <c>Dado ¼ deep, ²³⁄₃₂ wide in A.</c> The letters are those of the parts that are
    /// cut.</summary>
    public static IReadOnlyList<string> Of(Piece piece)
    {
        var copies = piece
            .Parts.SelectMany(part => part.Copies.Select(copy => (copy.Mark, Part: part, Copy: copy)))
            .ToDictionary(one => one.Mark, one => (one.Part, one.Copy));
        return
        [
            .. piece
                .Joints.Where(joint => joint.Depth.IsPositive && Names.ContainsKey(joint.Kind))
                .GroupBy(joint => (joint.Kind, From: copies[joint.From].Part.Id, Into: copies[joint.Into].Part.Id, joint.Depth))
                .Select(alike => (Size: Size(piece, alike.First(), copies), Letter: alike.Key.Into))
                .GroupBy(cut => cut.Size)
                .Select(same => $"{same.Key} in {string.Join(", ", same.Select(one => one.Letter).Distinct())}."),
        ];
    }

    private static string Size(Piece piece, Joint joint, Dictionary<string, (PiecePart Part, PartCopy Copy)> copies)
    {
        var (from, into) = (copies[joint.From], copies[joint.Into]);
        var deep = $"{Names[joint.Kind]} {Figure(joint.Depth + joint.Clearance, piece.Unit)} deep";
        if (joint.Kind is JointKind.MortiseAndTenon or JointKind.Dovetail)
            return deep;
        var scene = new JointScene(piece, joint, from.Part, from.Copy, into.Part, into.Copy);
        return scene.IsTongueKnown
            ? $"{deep}, {Figure(Length.FromMillimetres((decimal)scene.Tongue.Size), piece.Unit)} wide"
            : deep;
    }

    private static string Figure(Length length, LengthUnit unit) =>
        DimensionChain.Figure(DimensionChain.Mark(length, unit), unit);
}
