using ShopPlanner.Core.Bills;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>What a bill as a whole tells: headings, tables, units, the order of figures. The bills are our own.</summary>
public sealed class WholeBillTests
{
    private static StockBill Read(string text)
    {
        var reading = BillText.Read(text);
        Assert.Empty(reading.Faults);
        return reading.Bill!;
    }

    private static void Is(string text, params string[] pieces)
    {
        var bill = Read(text);
        Assert.Equal(pieces, bill.Parts.Select(BookBill.Piece));
        Assert.All(bill.Parts, part => Assert.Empty(part.Doubts));
    }

    [Fact]
    public void A_heading_sets_the_wood_until_the_next_one() =>
        Is(
            """
            STOOL
            Of quartered oak:
            4 legs, 1-1/2 by 1-1/2 by 16 in.
            1 seat, 7/8 by 12 by 15 in.
            Pine, S-2-S
            2 battens, 3/4 by 2 by 10 in.
            1 cleat, 3/4 by 1 by 9 in., maple
            """,
            "4 legs: 1 1/2 x 1 1/2 x 16, quartered oak",
            "1 seat: 7/8 x 12 x 15, quartered oak",
            "2 battens: 3/4 x 2 x 10, Pine",
            "1 cleat: 3/4 x 1 x 9, maple"
        );

    [Fact]
    public void The_order_of_the_figures_is_that_of_most_lines()
    {
        const string LengthFirst = "2 sides, 30 x 12 x 3/4\n1 top, 24 x 12 x 3/4\n2 feet, 10 x 2 x 1-1/2";
        Is(LengthFirst, "2 sides: 3/4 x 12 x 30", "1 top: 3/4 x 12 x 24", "2 feet: 1 1/2 x 2 x 10");
        Assert.Equal(SizeOrder.LengthWidthThickness, Read(LengthFirst).Order);
        const string LengthSecond = "2 sides, 3/4 x 30 x 12\n1 top, 3/4 x 24 x 12\n2 feet, 1-1/2 x 10 x 2";
        Assert.Equal(SizeOrder.ThicknessLengthWidth, Read(LengthSecond).Order);
        Assert.Equal("1 top: 3/4 x 12 x 24", BookBill.Piece(Read(LengthSecond).Parts[1]));
    }

    [Fact]
    public void A_short_wide_part_is_read_as_the_bill_is() =>
        Assert.Equal(
            "1 apron: 3/4 x 14 x 9",
            BookBill.Piece(
                Read("2 a, 1 by 2 by 8 in.\n2 b, 1 by 3 by 9 in.\n2 c, 1 by 3 by 7 in.\n1 apron, 3/4 by 14 by 9 in.").Parts[3]
            )
        );

    [Fact]
    public void A_heading_names_the_order()
    {
        Is("Length, width and thickness\n2 blocks, 2 x 3 x 1 in.", "2 blocks: 1 x 3 x 2");
        Assert.Equal("2 blocks: 1 x 3 x 2", BookBill.Piece(Read("Size (L x W x T)   Name\n2 blocks, 2 x 3 x 1 in.").Parts[0]));
    }

    [Fact]
    public void A_thickness_stands_in_the_heading() =>
        Is(
            "All of 3/4-in. poplar:\n2 sides, 12 by 30 in.\n2 ends, 12 by 18 in.\n1 lid, 13 by 31 in.",
            "2 sides: 3/4 x 12 x 30, poplar",
            "2 ends: 3/4 x 12 x 18, poplar",
            "1 lid: 3/4 x 13 x 31, poplar"
        );

    [Theory]
    [InlineData("No.  Name   Thick  Wide  Long  Wood\n4    Legs   1 1/2  1 1/2 16    oak\n1    Seat   7/8    12    15    oak")]
    [InlineData("No. Name Thick Wide Long Wood\n4 Legs 1 1/2 1 1/2 16 oak\n1 Seat 7/8 12 15 oak")]
    [InlineData("Name | No. | Long | Wide | Thick | Wood\nLegs | 4 | 16 | 1-1/2 | 1-1/2 | oak\nSeat | 1 | 15 | 12 | 7/8 | oak")]
    [InlineData("Part,Qty,Thickness,Width,Length,Material\nLegs,4,1-1/2,1-1/2,16,oak\nSeat,1,7/8,12,15,oak")]
    [InlineData("Part\tQty\tThickness\tWidth\tLength\tMaterial\nLegs\t4\t1-1/2\t1-1/2\t16\toak\nSeat\t1\t7/8\t12\t15\toak")]
    [InlineData("Pieces | Name | Size | Wood\n4 | Legs | 1-1/2 x 1-1/2 x 16 | oak\n1 | Seat | 7/8 x 12 x 15 | \"")]
    public void Headings_name_columns(string table) => Is(table, "4 Legs: 1 1/2 x 1 1/2 x 16, oak", "1 Seat: 7/8 x 12 x 15, oak");

    [Fact]
    public void A_table_has_both_sizes()
    {
        var bill = Read(
            """
                          Rough size             Finished size
            No. | Name | Thick | Wide | Long | Thick | Wide | Long
            2 | Rails | 1 | 4-1/2 | 24 | 7/8 | 4 | 22-1/2
            2 | Ends | 1 | 6-1/2 | 14 | 7/8 | 6 | 12
            """
        );
        Assert.Equal(["2 Rails: 7/8 x 4 x 22 1/2", "2 Ends: 7/8 x 6 x 12"], bill.Parts.Select(BookBill.Piece));
        Assert.Equal(Length.FromInches(24), bill.Parts[0].Bought!.Value.Length);
        Assert.All(bill.Parts, part => Assert.Empty(part.Doubts));
    }

    [Fact]
    public void A_cell_that_is_not_read_is_a_doubt_and_no_figure()
    {
        var part = Read("Name | No. | Thick | Wide | Long\nLegs | 4 | 2 in. | as wide as it comes | 16 in.").Parts[0];
        Assert.Equal("4 Legs: 2 x ? x 16", BookBill.Piece(part));
        Assert.Contains(part.Doubts, doubt => doubt.Contains("as wide as it comes", StringComparison.Ordinal));
    }

    [Fact]
    public void Metric_bills_are_metric()
    {
        Is(
            "2 rails, 20 x 60 x 800 mm\n4 legs, 40 x 40 x 700\n1 top, 1.8 cm by 30 cm by 90 cm",
            "2 rails: 20 x 60 x 800",
            "4 legs: 40 x 40 x 700",
            "1 top: 18 x 300 x 900"
        );
        Is("All sizes in mm\n2 rails, 20 x 60 x 800\n1 top, 18 x 300 x 900", "2 rails: 20 x 60 x 800", "1 top: 18 x 300 x 900");
    }

    [Fact]
    public void Without_any_unit_or_fraction_inches_are_a_doubt() =>
        Assert.All(
            Read("2 rails, 20 x 60 x 800\n4 legs, 40 x 40 x 700").Parts,
            part => Assert.Contains("No unit is written in the bill: inches were assumed.", part.Doubts)
        );

    [Fact]
    public void Marks_stand_for_what_is_above() =>
        Is(
            "2 pieces 15 x 1-3/4 x 1/2\n2   \"    3 x 1-3/4 x 1/2\n2 do. 3-1/2 x 1-3/4 x 3/8",
            "2 pieces: 1/2 x 1 3/4 x 15",
            "2 pieces: 1/2 x 1 3/4 x 3",
            "2 pieces: 3/8 x 1 3/4 x 3 1/2"
        );

    [Fact]
    public void Several_parts_stand_on_a_line() =>
        Is(
            "4 legs, 2 by 2 by 16 in., 2 rails, 1 by 3 by 12 in. and one shelf 1 by 9 by 12 in.\nLid, 1 piece, 1 by 10 by 12 in.",
            "4 legs: 2 x 2 x 16",
            "2 rails: 1 x 3 x 12",
            "1 shelf: 1 x 9 x 12",
            "1 Lid: 1 x 10 x 12"
        );

    [Fact]
    public void A_list_may_be_set_as_one_paragraph() =>
        Is(
            """
            4 legs, 2 by 2 by 16 in., 2 long
            rails, 1 by 3 by 22 in., 2 short rails, 1 by 3
            by 12 in., 4 pieces
            edging, 1/2 by 1 by 12 in. and one shelf,
            3/4 by 9 by 12 in.
            """,
            "4 legs: 2 x 2 x 16",
            "2 long rails: 1 x 3 x 22",
            "2 short rails: 1 x 3 x 12",
            "4 pieces edging: 1/2 x 1 x 12",
            "1 shelf: 3/4 x 9 x 12"
        );

    [Fact]
    public void A_heading_may_count_what_its_parts_are_for()
    {
        var bill = Read("2 drawers:\n2 sides, 1/2 by 4 by 16 in.\n1 lid, 1/2 by 5 by 17 in.");
        Assert.Equal(["2 sides: 1/2 x 4 x 16", "1 lid: 1/2 x 5 x 17"], bill.Parts.Select(BookBill.Piece));
        Assert.All(bill.Parts, part => Assert.Equal("for: drawers", Assert.Single(part.Notes)));
        Assert.All(bill.Parts, part => Assert.Contains("for 2 alike", Assert.Single(part.Doubts), StringComparison.Ordinal));
    }

    [Fact]
    public void Running_text_is_read_by_its_sentences()
    {
        var bill = Read(
            """
            The stool is made of red oak throughout and takes one evening. For the legs
            order four pieces 1-1/2 by 1-1/2 by 16 in., and for the seat one piece 7/8 in.
            thick, 12 in. wide and 15 in. long. Cut a mortise 3/8 by 1 in. in each leg. The
            two rails are 7/8 in. thick, 3 in. wide and 10 in. long. Use glue and 6 screws.
            """
        );
        Assert.Equal(
            ["4 legs: 1 1/2 x 1 1/2 x 16, red oak", "1 seat: 7/8 x 12 x 15, red oak", "2 rails: 7/8 x 3 x 10, red oak"],
            bill.Parts.Select(BookBill.Piece)
        );
        Assert.Equal([1, 2, 3], bill.Parts.Select(part => part.Line));
    }

    [Fact]
    public void A_thickness_told_in_running_text_is_a_doubt()
    {
        var bill = Read(
            "The box that is shown here is made throughout of one-inch stock, planed on both sides.\n\n"
                + "2 sides, 12 by 30 in.\n2 ends, 12 by 18 in."
        );
        Assert.Equal("2 sides: 1 x 12 x 30", BookBill.Piece(bill.Parts[0]));
        Assert.Contains("The thickness is from the text above.", bill.Parts[0].Doubts);
    }
}
