using ShopPlanner.Core.Measures;
using ShopPlanner.Packets.Labels;
using ShopPlanner.Packets.Model;

namespace ShopPlanner.Packets.Tests.Labels;

/// <summary>Where labels lie on their sheets, read back from the printed file by another library.</summary>
public sealed class LabelSheetTests
{
    // Kept clear within a label: the thick lines at its edges lie so far from them.
    private const double Clear = 3.4 * 25.4 / 72;

    /// <summary>Oracle: an open label-template database (commit 2da9b2d8) and the label list of an open office suite (commit
    /// 2b45cac4): 30-up in inches, 21-up in millimeters; of the 65-up sheets label and pitch, their margins from the middle of the
    /// paper ((210 − 4 × pitch − 38.1) / 2 and (297 − 13 × 21.2) / 2).</summary>
    public static TheoryData<string, double, double, double, double, double, double> Published() =>
        new()
        {
            { "letter-30", 0.1875 * 25.4, 0.5 * 25.4, 2.75 * 25.4, 25.4, 2.625 * 25.4, 25.4 },
            { "letter-30-wide", 0.15625 * 25.4, 0.5 * 25.4, 2.78125 * 25.4, 25.4, 2.625 * 25.4, 25.4 },
            { "a4-21", 7.21, 15.15, 66.04, 38.1, 63.5, 38.1 },
            { "a4-65", 9.75, 10.7, 38.1, 21.2, 38.1, 21.2 },
            { "a4-65-gaps", 4.67, 10.7, 40.64, 21.2, 38.1, 21.2 },
        };

    [Theory]
    [MemberData(nameof(Published))]
    public void Labels_lie_where_the_published_sheet_has_them(
        string key,
        double left,
        double top,
        double across,
        double down,
        double wide,
        double high
    )
    {
        var sheet = LabelSheets.Find(key)!;
        var page = Assert.Single(ReadPaper.Pages(LabelSamples.Print(LabelSamples.Many(sheet.Count), LabelPrint.On(sheet))));
        var corners = Corners(page);
        Assert.Equal(sheet.Count, corners.Count);
        for (var place = 0; place < sheet.Count; place++)
        {
            var (column, row) = (place % sheet.Columns, place / sheet.Columns);
            Assert.Equal(left + (column * across), corners[place].X, 0.1);
            Assert.Equal(top + (row * down), corners[place].Y, 0.1);
            Assert.Equal(wide, corners[place].EndX - corners[place].X, 0.1);
            Assert.Equal(high, corners[place].EndY - corners[place].Y, 0.1);
        }
    }

    /// <summary>Oracle: Letter 8.5 × 11 in, A4 210 × 297 mm (ISO 216).</summary>
    [Fact]
    public void Every_sheet_fits_its_paper_and_no_label_covers_another() =>
        Assert.All(
            LabelSheets.All,
            sheet =>
            {
                var (wide, high) =
                    sheet.Paper == PaperSize.Letter
                        ? (Length.FromInches(8.5m), Length.FromInches(11))
                        : (Length.FromMillimetres(210), Length.FromMillimetres(297));
                Assert.True(sheet.Left + (sheet.Across * (sheet.Columns - 1)) + sheet.Wide <= wide);
                Assert.True(sheet.Top + (sheet.Down * (sheet.Rows - 1)) + sheet.High <= high);
                Assert.True(sheet.Across >= sheet.Wide && sheet.Down >= sheet.High);
                Assert.Equal(sheet, LabelSheets.Find(sheet.Key));
            }
        );

    [Fact]
    public void A_part_used_sheet_begins_at_the_label_that_is_left_and_the_next_one_at_its_first()
    {
        var sheet = LabelSheets.Find("a4-21")!;
        var print = LabelPrint.On(sheet) with { First = 20 };
        var pages = ReadPaper.Pages(LabelSamples.Print(LabelSamples.Many(4), print));
        Assert.Equal([2, 2], pages.Select(page => Corners(page).Count));
        Assert.Equal(7.21 + 66.04, Corners(pages[0])[0].X, 0.1);
        Assert.Equal(15.15 + (6 * 38.1), Corners(pages[0])[0].Y, 0.1);
        Assert.Equal(7.21, Corners(pages[1])[0].X, 0.1);
        Assert.Equal(15.15, Corners(pages[1])[0].Y, 0.1);
    }

    [Fact]
    public void Nudged_labels_are_moved_by_what_was_asked()
    {
        var sheet = LabelSheets.Find("letter-30")!;
        var (print, faults) = LabelPrint.Read("letter-30", "1", "-1.5 mm", "1/32 in", LengthUnit.Inch);
        Assert.Empty(faults);
        var there = Corners(Assert.Single(ReadPaper.Pages(LabelSamples.Print(LabelSamples.Many(30), LabelPrint.On(sheet)))));
        var moved = Corners(Assert.Single(ReadPaper.Pages(LabelSamples.Print(LabelSamples.Many(30), print!))));
        Assert.All(
            there.Zip(moved),
            pair =>
            {
                Assert.Equal(pair.First.X - 1.5, pair.Second.X, 0.01);
                Assert.Equal(pair.First.Y + (25.4 / 32), pair.Second.Y, 0.01);
            }
        );
    }

    [Theory]
    [InlineData("letter-31", "1", "", "", "sheet")]
    [InlineData("letter-30", "0", "", "", "start")]
    [InlineData("letter-30", "31", "", "", "start")]
    [InlineData("letter-30", "1.5", "", "", "start")]
    [InlineData("letter-30", "", "left", "", "right")]
    [InlineData("letter-30", "", "1,5 mm", "", "right")]
    [InlineData("letter-30", "", "", "6 mm", "down")]
    [InlineData("letter-30", "", "", "--1 mm", "down")]
    [InlineData(null, "", "", "", "sheet")]
    public void What_is_wrong_names_its_field(string? sheet, string start, string right, string down, string field)
    {
        var (print, faults) = LabelPrint.Read(sheet, start, right, down, LengthUnit.Inch);
        Assert.Null(print);
        Assert.Equal(field, Assert.Single(faults).Field);
    }

    // The labels of a page by rows, from their thick lines: left and right, top and bottom.
    private static List<DrawnLine> Corners(ReadPage page)
    {
        // Hints' lines are as long as what is between the bands; nothing else is as long.
        var level = page
            .Lines.Where(line => line.IsLevel && line.Long > 12)
            .OrderBy(line => line.Y)
            .ThenBy(line => line.X)
            .ToList();
        var upright = page.Lines.Where(line => line.IsUpright && line.Long > 5).OrderBy(line => line.X).ToList();
        return
        [
            .. level
                .Select(line =>
                {
                    var (x, y) = (Math.Min(line.X, line.EndX), line.Y);
                    // The nearest line at its left that begins a little below it.
                    var left = upright
                        .Where(one => one.X < x && x - one.X < 5 && Math.Min(one.Y, one.EndY) - y is > 0 and < 5)
                        .MaxBy(one => one.X);
                    if (left is null)
                        return null;
                    var right = upright.First(one => one.X > Math.Max(line.X, line.EndX) && Math.Abs(one.Y - left.Y) < 0.01);
                    var bottom = level.First(one => one.Y > Math.Max(left.Y, left.EndY) && Math.Abs(one.X - line.X) < 0.01);
                    return new DrawnLine(left.X - Clear, y - Clear, right.X + Clear, bottom.Y + Clear);
                })
                .OfType<DrawnLine>()
                .OrderBy(one => Math.Round(one.Y))
                .ThenBy(one => one.X),
        ];
    }
}
