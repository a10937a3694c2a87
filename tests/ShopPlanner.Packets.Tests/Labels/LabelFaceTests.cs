using ShopPlanner.Core.Making.Labels;
using ShopPlanner.Core.Measures;
using ShopPlanner.Drawing.Tests.Pieces;
using ShopPlanner.Packets.Labels;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace ShopPlanner.Packets.Tests.Labels;

/// <summary>What stands on a label, read back from the printed file by other libraries.</summary>
public sealed class LabelFaceTests
{
    private const string Project = "Project Q7";

    private const string Address = "http://192.168.100.200:5080/bench/steps/0193e7b2-aaaa-7bbb-8ccc-0123456789ab?part=A10L";

    public static TheoryData<string> Sheets => [.. LabelSheets.All.Select(sheet => sheet.Key)];

    /// <summary>Names as people and other programs may write them.</summary>
    private static readonly string[] Hostile =
    [
        new('W', 300),
        "🪚🪵 " + new string('x', 290),
        "שלום עולם ארון ספרים",
        "\u202Egnirts \u0000 \t tab",
        "",
        "ﷺ 书架 Überlänge e\u0301",
    ];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Nothing_leaves_its_label_whatever_is_written(string key)
    {
        var sheet = LabelSheets.Find(key)!;
        var labels = Hostile
            .SelectMany(text =>
                new[]
                {
                    new Label(text, text, text, text)
                    {
                        Lies = text,
                        Note = text,
                        Hints = Hints(text),
                        Code = Address,
                    },
                    new Label("A1", text, "1″", "x") { Triangle = Triangle(), Hints = Hints("pocket hole") },
                }
            )
            .ToList();
        var page = Assert.Single(ReadPaper.Pages(LabelSamples.Print(labels, LabelPrint.On(sheet))));
        var (left, top) = ((double)sheet.Left.ToMillimetres(), (double)sheet.Top.ToMillimetres());
        var (across, down) = ((double)sheet.Across.ToMillimetres(), (double)sheet.Down.ToMillimetres());
        var (wide, high) = ((double)sheet.Wide.ToMillimetres(), (double)sheet.High.ToMillimetres());
        Assert.NotEmpty(page.Letters);
        Assert.All(
            page.Letters,
            letter =>
            {
                var (column, row) = ((int)((letter.X - left) / across), (int)((letter.Y - top) / down));
                Assert.InRange(letter.X, left + (column * across), left + (column * across) + wide);
                Assert.InRange(letter.EndX, left + (column * across), left + (column * across) + wide);
                Assert.InRange(letter.Y, top + (row * down), top + (row * down) + high);
                Assert.InRange(letter.EndY, top + (row * down), top + (row * down) + high);
                Assert.True(letter.Size >= 4.7, $"{letter.Text} is {letter.Size} pt");
            }
        );
    }

    [Fact]
    public void What_does_not_fit_ends_with_an_ellipsis()
    {
        var label = new Label("A1", string.Join(' ', Enumerable.Repeat("Shelf", 60)), "28 ½″ × 11″ × ¾″", "Bookcase");
        var words = ReadPaper.Pages(LabelSamples.Print([label], LabelPrint.On(LabelSheets.Find("a4-65")!)))[0].Words;
        Assert.Contains("…", words, StringComparison.Ordinal);
        Assert.Contains("28 ½″ × 11″ × ¾″", words, StringComparison.Ordinal);
        Assert.Contains("Bookcase", words, StringComparison.Ordinal);
    }

    /// <summary>Oracle: ZXing reads the code from the modules as they are printed (ISO/IEC 18004).</summary>
    [Theory]
    [MemberData(nameof(Sheets))]
    public void The_code_says_the_address(string key)
    {
        var label = new Label("A10L", "Side", "60″ × 11 ¼″ × ¾″", "Bookcase") { Hints = LabelSamples.AllRound, Code = Address };
        var page = ReadPaper.Pages(LabelSamples.Print([label], LabelPrint.On(LabelSheets.Find(key)!)))[0];
        Assert.Equal(Address, Decode(page));
    }

    [Fact]
    public void Modules_are_large_enough_for_a_phone_on_the_smallest_label()
    {
        var label = new Label("A1", "Side", "60″", "x") { Hints = LabelSamples.AllRound, Code = Address };
        var boxes = ReadPaper.Pages(LabelSamples.Print([label], LabelPrint.On(LabelSheets.Find("a4-65")!)))[0].Boxes;
        // Common practice: a quarter of a millimeter from office printers.
        Assert.True(boxes.Min(box => Math.Min(box.Wide, box.High)) >= 0.25);
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_copy_of_a_built_in_piece_has_its_label_with_mark_name_size_and_project(string design)
    {
        var piece = BuiltInPieces.Read(design);
        var labels = PartLabels.Of(piece).Select(one => Label.For(one, piece.Unit, Project)).ToList();
        Assert.Equal(
            piece.Parts.SelectMany(part => part.Copies).Select(copy => copy.Mark).Order(),
            labels.Select(label => label.Mark).Order()
        );
        var sheet = LabelSheets.Find("a4-21")!;
        var words = string.Concat(ReadPaper.Pages(LabelSamples.Print(labels, LabelPrint.On(sheet))).Select(page => page.Words));
        Assert.All(
            labels,
            label =>
            {
                Assert.Contains(label.Mark, words, StringComparison.Ordinal);
                Assert.Contains(label.Name, words, StringComparison.Ordinal);
                Assert.Contains(label.Size, words, StringComparison.Ordinal);
            }
        );
        Assert.Equal(labels.Count, words.Split(Project).Length - 1);
    }

    public static TheoryData<string> Designs => [.. BuiltInPieces.Names];

    [Fact]
    public void The_same_labels_give_the_same_bytes() =>
        Assert.Equal(
            LabelSamples.Print(LabelSamples.Many(40), LabelPrint.On(LabelSheets.All[0])),
            LabelSamples.Print(LabelSamples.Many(40), LabelPrint.On(LabelSheets.All[0]))
        );

    private static EdgeHints Hints(string text) => new([text], [text], [text], [text], [text]);

    private static TrianglePiece Triangle()
    {
        var (zero, ten) = (Length.Zero, Length.FromMillimetres(10));
        return new(new(zero, zero, ten * 3, ten * 4), new(zero, zero, ten * 3, ten), IsUpright: true);
    }

    // The printed modules as a picture of eight points a module.
    private static string? Decode(ReadPage page)
    {
        const int dots = 8;
        var (left, top) = (page.Boxes.Min(box => box.X), page.Boxes.Min(box => box.Y));
        var module = page.Boxes.Min(box => Math.Min(box.Wide, box.High));
        var size = (int)Math.Round((page.Boxes.Max(box => box.X + box.Wide) - left) / module);
        var side = (size + 8) * dots;
        var light = Enumerable.Repeat((byte)255, side * side).ToArray();
        foreach (var box in page.Boxes)
            for (var y = At(box.Y - top); y < At(box.Y + box.High - top); y++)
                Array.Fill(light, (byte)0, (y * side) + At(box.X - left), At(box.X + box.Wide - left) - At(box.X - left));
        var picture = new RGBLuminanceSource(light, side, side, RGBLuminanceSource.BitmapFormat.Gray8);
        return new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(picture)))?.Text;

        int At(double millimetres) => (int)Math.Round(((millimetres / module) + 4) * dots);
    }
}
