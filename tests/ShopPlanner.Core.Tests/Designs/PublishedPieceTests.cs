using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Designs against the stock bills of trade books: finished sizes as printed there, in inches, no allowance
/// added.</summary>
public sealed class PublishedPieceTests
{
    [Fact]
    public void The_plant_stand_comes_to_every_line_of_its_bill()
    {
        var piece = Made.Piece(PublishedPieces.PlantStand);
        var bill = Bill(
            (1, 0.75m, 15.5m, 15.5m),
            (4, 1.25m, 1.25m, 20),
            (4, 0.75m, 3, 11),
            (2, 0.75m, 2, 11),
            (1, 0.75m, 6, 10),
            (4, 0.25m, 2, 12.25m),
            (2, 0.25m, 2, 12.75m)
        );
        Assert.Equal(bill, Bill(piece.Parts));
        Assert.All(piece.Parts, part => Assert.Equal((part.Length.Value, part.Width.Value), (part.RoughLength, part.RoughWidth)));
    }

    // A free part has no joint: the slats' mortises, and the lower rails that ours does not set in, are what remains.
    [Fact]
    public void What_the_plant_stand_warns_of_is_its_slats() =>
        Assert.All(
            Made.Piece(PublishedPieces.PlantStand).Warnings,
            warning => Assert.Matches("^End (apron|stretcher) and (long )?slat would be", warning.Text)
        );

    [Fact]
    public void The_bookcase_comes_to_the_lines_of_its_case()
    {
        var piece = Made.Piece(PublishedPieces.Bookcase);
        Assert.Equal(Bill((1, 0.75m, 15, 31.25m)), Of("Top"));
        Assert.Equal(Bill((1, 0.75m, 4, 30.25m)), Of("Top back board"));
        Assert.Equal(Bill((2, 0.75m, 14, 50)), Of("Side"));
        Assert.Equal(Bill((1, 0.75m, 14, 28.75m)), Of("Bottom"));
        Assert.Equal(Bill((1, 0.75m, 4, 28.75m)), Of("Toe board"));
        Assert.Equal(Bill((2, 1.25m, 1.25m, 13)), Of("Bottom cleat"));
        Assert.Equal(Bill((3, 0.5m, 12, 28.5m)), Of("Shelf"));
        Assert.Equal(Made.Inches(29.75m), Assert.Single(piece.Parts, part => part.Name == "Back").Width.Value);

        List<string> Of(string name) => Bill(piece.Parts.Where(part => part.Name == name));
    }

    [Fact]
    public void The_oak_table_s_frame_comes_to_the_lines_of_its_bill()
    {
        var piece = Made.Piece(PublishedPieces.OakTable);
        var bill = Bill((4, 2, 2, 30.625m), (4, 0.875m, 6.5m, 22.5m), (2, 0.875m, 3, 22.5m), (6, 0.375m, 3.5m, 15.5m));
        Assert.Equal(bill, Bill(piece.Parts.Where(part => part.Name != "Top")));
    }

    private static List<string> Bill(params (int Count, decimal Thickness, decimal Width, decimal Length)[] rows) =>
        [
            .. rows.Select(row => Row(row.Count, Made.Inches(row.Thickness), Made.Inches(row.Width), Made.Inches(row.Length)))
                .Order(),
        ];

    // A bill does not tell parts of one size apart.
    private static List<string> Bill(IEnumerable<PiecePart> parts) =>
        [
            .. parts
                .GroupBy(part => (part.Thickness.Value, part.Width.Value, part.Length.Value))
                .Select(group => Row(group.Sum(part => part.Quantity), group.Key.Item1, group.Key.Item2, group.Key.Item3))
                .Order(),
        ];

    private static string Row(int count, Length thickness, Length width, Length length) =>
        $"{count} of {thickness} by {width} by {length}";
}
