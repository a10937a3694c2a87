using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The joints of a piece, two beside each other: what is joined, the section, what to know.</summary>
internal static class JointSection
{
    private const double TitleSize = 9.5,
        NoteSize = 8.5,
        LineHeight = 1.3,
        Gap = 20;

    /// <summary>Adds the joints.</summary>
    public static void Add(PageFlow flow, PacketPiece piece)
    {
        if (piece.Joints.IsEmpty)
            return;
        var rows = piece.Joints.Chunk(2).ToList();
        var width = (flow.Width - PieceSheets.Gutter) / 2;
        flow.Heading("Joints", rows[0].Max(joint => HeightOf(joint, width)));
        foreach (var row in rows)
            flow.Add(
                row.Max(joint => HeightOf(joint, width)),
                y => row.SelectMany((joint, i) => Draw(joint, flow.Left + (i * (width + PieceSheets.Gutter)), y, width))
            );
    }

    private static double HeightOf(PacketJoint joint, double width) =>
        (Title(joint, width).Count * TitleSize * LineHeight)
        + joint.Drawing.Height
        + (Note(joint, width).Count * NoteSize * LineHeight)
        + Gap;

    private static IEnumerable<Shape> Draw(PacketJoint joint, double x, double y, double width)
    {
        foreach (var line in Title(joint, width))
        {
            yield return new Caption(new(x, y + (TitleSize * LineHeight / 2)), line, TitleSize, Weight: Weight.Medium);
            y += TitleSize * LineHeight;
        }

        foreach (var shape in joint.Drawing.Primitives())
            yield return shape.Moved(x, y);
        y += joint.Drawing.Height;
        foreach (var line in Note(joint, width))
        {
            yield return new Caption(new(x, y + (NoteSize * LineHeight / 2)), line, NoteSize, Tone: Tone.Faded);
            y += NoteSize * LineHeight;
        }
    }

    private static IReadOnlyList<string> Title(PacketJoint joint, double width)
    {
        var count = joint.Count > 1 ? $", {Words.Of(joint.Count)} like this" : "";
        return TextFit.Wrap(TextFit.Clean(joint.Title + count, Weight.Medium), Weight.Medium, TitleSize, width, 3);
    }

    private static IReadOnlyList<string> Note(PacketJoint joint, double width) =>
        joint.Note.Length == 0 ? [] : TextFit.Wrap(TextFit.Clean(joint.Note), Weight.Regular, NoteSize, width, 5);
}
