using ShopPlanner.Drawing.Lettering;
using ShopPlanner.Drawing.Shapes;
using ShopPlanner.Packets.Flow;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Sections;

/// <summary>The joints of each piece, beside each other: what is joined, the section, what to know; and the spacers and test
/// pieces to cut.</summary>
internal static class JointSection
{
    /// <summary>Whether a piece has joints, spacers or test pieces.</summary>
    public static bool Has(PacketModel model) =>
        model.Pieces.Any(piece => !piece.Joints.IsEmpty || piece.Parts.Any(part => part.IsHelp));

    /// <summary>Adds them.</summary>
    public static void Add(PageFlow flow, PacketModel model, string title)
    {
        var width = flow.ColumnWidth(PieceSheets.JointColumns);
        flow.Section(title, [.. model.Pieces.SelectMany(piece => Of(piece, width, model))], PieceSheets.JointColumns);
    }

    private static IEnumerable<Block> Of(PacketPiece piece, double width, PacketModel model)
    {
        if (model.Pieces.Length > 1)
            yield return Blocks.Subheading(piece.Name, width);
        foreach (var joint in piece.Joints)
            yield return Joint(joint, width);
        foreach (var help in piece.Parts.Where(part => part.IsHelp))
            yield return Blocks.Paragraph(
                $"{help.Name} ({Words.All(help.Marks)}): cut {Words.Of(help.Quantity)} from {help.Material}, "
                    + $"{Words.Of(help.RoughLength, help.RoughWidth, piece.Unit, model.Unit)}, "
                    + $"{Words.Of(help.Thickness, piece.Unit, model.Unit)} thick.",
                width,
                4
            );
    }

    private static Block Joint(PacketJoint joint, double width)
    {
        var count = joint.Count > 1 ? $", {Words.Of(joint.Count)} like this" : "";
        return Blocks.Stack([
            Blocks.Paragraph(Capped(joint.Title + count), width, weight: Weight.Medium),
            Blocks.Figure(joint.Drawing),
            .. joint.Note.Length > 0 ? [Blocks.Paragraph(Capped(joint.Note), width, tone: Tone.Faded)] : Array.Empty<Block>(),
        ]) with
        {
            Before = 9,
        };
    }

    // A name may be as long as it likes; a block may not.
    private static string Capped(string words) => words.Length > 300 ? words[..300] + "…" : words;
}
