using ShopPlanner.Core.Bills;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>One line of a bill, in each form that bills have. The lines are our own.</summary>
public sealed class BillLineTests
{
    // Two lines before it show the order and that lines have counts.
    private const string Above = "4 posts, 2 by 2 by 30 in.\n2 boards for the back, 3/4 by 6 by 31 in.\n";

    private static BillPart Read(string line) => Assert.Single(BillText.Read(Above + line).Bill!.Parts, part => part.Line > 2);

    [Theory]
    [InlineData("3 rails, 7/8 by 4 by 22-1/2 in.", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, 7/8 x 4 x 22 1/2 in.", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails ⅞ × 4 × 22½", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails 7/8X4X22½\"", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails .875 x 4.0 x 22.5", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, ¹⁵⁄₁₆ by 4 by 22-½ in.", "3 rails: 15/16 x 4 x 22 1/2")]
    [InlineData("3 rails, 7/8-in. by 4-in. by 22-1/2-in.", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, 7/8\" x 4\" x 22 1/2\"", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, 7/8 in. thick, 4 in. wide and 22-1/2 in. long", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, 22-1/2 in. long, 4 in. wide and 7/8 in. thick", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, 7/8 in. thick by 4 in. wide by 22-1/2 in. long", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, thickness 7/8, width 4, length 22-1/2 in.", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails, seven-eighths inch thick, 4 in. wide, 22-1/2 in. long", "3 rails: 7/8 x 4 x 22 1/2")]
    [InlineData("3 rails of 7/8-in. oak, 4 in. wide and 22-1/2 in. long", "3 rails: 7/8 x 4 x 22 1/2, oak")]
    [InlineData("3 rails, one-inch oak, 4 by 22-1/2 in.", "3 rails: 1 x 4 x 22 1/2, oak")]
    [InlineData("3 rails, 7/8 by 4 in. by 6 ft.", "3 rails: 7/8 x 4 x 72")]
    [InlineData("3 rails, 7/8 by 4 by 2 ft. 6 in.", "3 rails: 7/8 x 4 x 30")]
    [InlineData("3 rails, 7/8\" x 4\" x 2' 6\"", "3 rails: 7/8 x 4 x 30")]
    [InlineData("3 rails, 7/8\" x 4\" x 2'-6 1/2\"", "3 rails: 7/8 x 4 x 30 1/2")]
    [InlineData("3 rails, 7/8 by 4 in., 6 ft. long", "3 rails: 7/8 x 4 x 72")]
    [InlineData("3 rails 1 x 4 - 6 ft.", "3 rails: 1 x 4 x 72")]
    [InlineData("3 rails, 2x4 @ 8'", "3 rails: 2 x 4 x 96")]
    [InlineData("3 rails, 1 x 4 @ 2' 6\"", "3 rails: 1 x 4 x 30")]
    [InlineData("3 rails, 36 in. long, 2 by 4 in.", "3 rails: 2 x 4 x 36")]
    [InlineData("1 piece, 36 in. long, 4 by 2 in. oak", "1 piece: 2 x 4 x 36, oak")]
    public void Sizes_are_written_in_many_ways(string line, string piece) => Is(piece, line);

    [Theory]
    [InlineData("3 legs, 1-3/4 in. square by 30 in. long", "3 legs: 1 3/4 x 1 3/4 x 30")]
    [InlineData("3 legs, 30 in. long and 1-3/4 in. square", "3 legs: 1 3/4 x 1 3/4 x 30")]
    [InlineData("1 seat, 7/8 in. thick and 17 in. square", "1 seat: 7/8 x 17 x 17")]
    [InlineData("1 seat, 17 in. square, 7/8 in. thick", "1 seat: 7/8 x 17 x 17")]
    [InlineData("1 seat, 17 in. square by 7/8 in.", "1 seat: 7/8 x 17 x 17")]
    [InlineData("6 pegs, 3/8 in. in diameter and 2 in. long", "6 pegs: 3/8 x 3/8 x 2")]
    public void Square_and_round_stock_tells_two_sides_at_once(string line, string piece) => Is(piece, line);

    [Theory]
    [InlineData("Front rails, 2 pieces, ¾ x 4 x 22½", "2 Front rails: 3/4 x 4 x 22 1/2")]
    [InlineData("Front rails: 2 pcs., 3/4 x 4 x 22", "2 Front rails: 3/4 x 4 x 22")]
    [InlineData("Front rails (2), 3/4 x 4 x 22", "2 Front rails: 3/4 x 4 x 22")]
    [InlineData("Front rails, 2, 3/4 x 4 x 22", "2 Front rails: 3/4 x 4 x 22")]
    [InlineData("Front rails, 3/4 x 4 x 22 in., 2 pieces", "2 Front rails: 3/4 x 4 x 22")]
    [InlineData("Front rails, 3/4 x 4 x 22 in., 2 required", "2 Front rails: 3/4 x 4 x 22")]
    [InlineData("Two front rails, 3/4 x 4 x 22", "2 front rails: 3/4 x 4 x 22")]
    [InlineData("For the front rails order two pieces 3/4 x 4 x 22 in.", "2 front rails: 3/4 x 4 x 22")]
    [InlineData("1 pc. 3/4 x 4 x 22, front rail", "1 front rail: 3/4 x 4 x 22")]
    [InlineData("2pcs. 3/4 x 4 x 22 for the front", "2 front: 3/4 x 4 x 22")]
    [InlineData("2 3/4 x 4 x 22 in. by hand", null)]
    [InlineData("2 2 x 4 x 22 front rails", "2 front rails: 2 x 4 x 22")]
    [InlineData("1 top and 1 bottom board, 3/4 by 4 by 22", "2 top and bottom board: 3/4 x 4 x 22")]
    [InlineData("Lid, 3/4 by 4 by 22", "1 Lid: 3/4 x 4 x 22")]
    public void Counts_stand_before_the_name_or_after_it(string line, string? piece)
    {
        if (piece is null)
            Assert.NotEmpty(Read(line).Doubts);
        else
            Is(piece, line);
    }

    [Theory]
    [InlineData("3 rails, 7/8 by 4 by 22 in., oak, S-4-S.", "oak", "S-4-S")]
    [InlineData("3 oak rails, 7/8 by 4 by 22 in. S. 2 S.", "oak", "S-2-S")]
    [InlineData("3 rails, 7/8 by 4 by 22 in., S4S, quarter-sawed white oak", "quarter-sawed white oak", "S-4-S")]
    [InlineData("3 rails, 7/8 by 4 by 22 in. S-2-S., quartered oak", "quartered oak", "S-2-S")]
    [InlineData("3 rails of soft wood, 7/8 by 4 by 22 in.", "soft wood", null)]
    [InlineData("3 rails, birch or maple, 7/8 by 4 by 22 in., 5-2-S", "birch or maple", "S-2-S")]
    [InlineData("3 rails, 7/8 by 4 by 22 in.", null, null)]
    public void Wood_and_planing_stand_on_the_line(string line, string? wood, string? planing)
    {
        var part = Read(line);
        Assert.Equal((wood, planing, "rails"), (part.Material, part.Surfacing, part.Name));
        Assert.Empty(part.Doubts);
    }

    [Theory]
    [InlineData("2 rails, finished 3/4 x 4 x 22, rough 1 x 4-1/2 x 24")]
    [InlineData("2 rails, rough 1 x 4-1/2 x 24, finished 3/4 x 4 x 22")]
    [InlineData("2 rails, 3/4 x 4 x 22 finished (1 x 4-1/2 x 24 rough)")]
    [InlineData("2 rails, finished size 3/4 x 4 x 22; rough 1 x 4-1/2 x 24")]
    public void Sizes_as_bought_and_as_finished_are_told_apart(string line)
    {
        var part = Read(line);
        Assert.Equal("2 rails: 3/4 x 4 x 22", BookBill.Piece(part));
        Assert.Equal("2 rails: 1 x 4 1/2 x 24", BookBill.Piece(part with { Size = part.Bought!.Value }));
    }

    // A wrong size is a ruined board: what can be read in two ways says so.
    [Theory]
    [InlineData("rails, 7/8 by 4 by 22 in.", "No count is written.")]
    [InlineData("Leg, 2 by 2 by 22 in.", "one was assumed")]
    [InlineData("3 rails, 7/8 by 4 in.", "thickness isn't known")]
    [InlineData("3 rails, 7/8 by 4 by", "breaks off")]
    [InlineData("3 joists, 2x4 @ 2 ft. on centers", "length isn't known")]
    [InlineData("3 rails, 22 in. long, 3/4 by 3 in. tenons", "width isn't known")]
    [InlineData("3 rails, 13/4 by 4 by 22 in.", "a mark between whole number and fraction may be missing")]
    [InlineData("3 rails, l-3/4 by 4 by 22 in.", "was read as 1 3/4")]
    [InlineData("3 rails, 1% by 4 by 22 in.", "can't be read")]
    [InlineData("3 rails, 1,5 by 4 by 22 in.", "has a comma")]
    [InlineData("3 rails, 3/7 by 4 by 22 in.", "isn't a mark on a rule")]
    [InlineData("3 rails, 5/4 by 4 by 22 in.", "rough thickness")]
    [InlineData("3 rails, 7/8 in. thick, 3 to 4 in. wide, 22 in. long", "is a range")]
    [InlineData("3 rails, about 7/8 by 4 by 22 in.", "approximate")]
    [InlineData("3 rails, 22 by 4 by 7/8 in.", "don't follow the order of the bill")]
    [InlineData("3 rails, 7/8 by 22 by 4 in.", "wider than long")]
    [InlineData("3 rails, 4 by 7/8 by 22 in.", "isn't clear")]
    [InlineData("3 rails, 7/8 by 4 by 22 by 30 in.", "aren't three sides")]
    [InlineData("3 rails, rough, 7/8 by 4 by 22 in.", "size as bought")]
    [InlineData("3 rails, 7/8 by 4 by 220 ft.", "unusually large")]
    [InlineData("1 pair of rails, 7/8 by 4 by 22 in.", "in pairs")]
    [InlineData("3 rails, 20 mm by 4 in. by 22 in.", "mixes inches and metric")]
    [InlineData("3 handles, 7/8 by 4 by 22 in.", "may be hardware")]
    [InlineData("3 sheets of 1/4-in. plywood, 4 by 8 ft.", "before feet has no unit")]
    [InlineData("900 rails, 7/8 by 4 by 22 in.", "unlikely")]
    [InlineData("4 3/4 x 3 x 22 rails", "may be 4 pieces of 3/4")]
    public void What_is_not_certain_is_a_doubt(string line, string doubt)
    {
        var part = Read(line);
        Assert.Contains(part.Doubts, one => one.Contains(doubt, StringComparison.Ordinal));
        Assert.Equal(line, part.AsWritten);
    }

    [Theory]
    [InlineData("4 brass hinges, 1-1/2 by 2 in.", BillNoteKind.Hardware)]
    [InlineData("Screws, 2 dozen, 1-1/4 in. No. 8", BillNoteKind.Hardware)]
    [InlineData("1 piece of glass, 1/8 by 12 by 20 in.", BillNoteKind.Hardware)]
    [InlineData("Glue", BillNoteKind.Hardware)]
    [InlineData("4 casters.", BillNoteKind.Hardware)]
    [InlineData("4 keys from waste", BillNoteKind.NoSize)]
    [InlineData("4 mortises, 3/8 by 2 by 1 in.", BillNoteKind.Text)]
    [InlineData("Sand everything well before it is put together, then stain it dark.", BillNoteKind.Text)]
    public void What_is_no_part_is_kept_beside_the_parts(string line, BillNoteKind kind)
    {
        var bill = BillText.Read(Above + line).Bill!;
        Assert.Equal(2, bill.Parts.Length);
        var note = Assert.Single(bill.Others);
        Assert.Equal((kind, 3), (note.Kind, note.Line));
        Assert.Equal(line.TrimEnd('.'), note.AsWritten.TrimEnd('.'));
    }

    [Theory]
    [InlineData("2 lock rails, 3/4 by 4 by 22 in.")]
    [InlineData("1 screw block, 3 by 3 by 6 in.")]
    [InlineData("1 mirror frame, 3/4 by 4 by 22 in.")]
    [InlineData("2 pieces for handles, 3/4 by 4 by 22 in.")]
    public void A_part_named_for_hardware_is_a_part(string line) => Assert.Empty(Read(line).Doubts);

    private static void Is(string piece, string line)
    {
        var part = Read(line);
        Assert.Equal(piece, BookBill.Piece(part));
        Assert.Empty(part.Doubts);
    }
}
