using System.Diagnostics;
using System.Text;
using ShopPlanner.Core.Bills;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>What isn't a bill, and bills with anything in them.</summary>
public sealed class BillRobustnessTests
{
    private const int Mutations = 500;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private static readonly string[] Inserts =
    [
        "\"",
        "''",
        "(",
        ")",
        "|",
        "—",
        "1/0",
        "99999999999999999999",
        "½",
        "⁄",
        "¹",
        "x",
        " by ",
        "\t",
        "\n",
        "\0",
        "\u202e",
        "\ud83e",
        "e\u0301",
        "ft.",
        "mm",
        "S-4-S",
        "S-",
        "do.",
        ",,",
        "l/2",
        "O",
        "1,5",
        "-",
        "and",
        "dozen",
        "half-inch",
        "Thick Wide Long",
        "finished",
        "rough",
        ";",
        ".",
        ":",
    ];

    [Theory]
    [InlineData("")]
    [InlineData("  \n\t\n ")]
    [InlineData("The leaves are falling, two by two,\nAnd so am I, and so are you.")]
    [InlineData("שלום עולם, זה לא רשימת חומרים")]
    [InlineData("4 hinges\n12 screws, 1-1/4 in.\nglue")]
    [InlineData("|||| ---- ,,,, ;;;; 1 2 3 4 5")]
    [InlineData("\u0001\u0002\u0003PNG\u0004")]
    public void Without_a_part_there_is_no_bill_and_one_fault(string text)
    {
        var reading = BillText.Read(text);
        Assert.Null(reading.Bill);
        Assert.NotEmpty(Assert.Single(reading.Faults).Message);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        Assert.Contains("isn't text", Message([0x89, 0x50, 0, 1, 2, 0xFF]), StringComparison.Ordinal);
        Assert.Contains("longer than 1 MB", Message(new byte[10_000_000]), StringComparison.Ordinal);
        Assert.Contains(
            "longer than 1 MB",
            BillText.Read(new string('4', BillText.MostBytes + 1)).Faults[0].Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Old_encodings_are_read()
    {
        const string Line = "2 rails, ¾ by 4 by 22½ in.";
        Encoding[] all = [Encoding.Latin1, new UTF8Encoding(true), Encoding.Unicode, Encoding.BigEndianUnicode];
        foreach (var encoding in all)
        {
            var bill = BillText.Read((ReadOnlyMemory<byte>)(byte[])[.. encoding.GetPreamble(), .. encoding.GetBytes(Line)]).Bill!;
            Assert.Equal("2 rails: 3/4 x 4 x 22 1/2", BookBill.Piece(bill.Parts[0]));
        }
    }

    [Fact]
    public void A_right_to_left_name_keeps_its_figures()
    {
        var part = BillText.Read("2 \u05de\u05d3\u05e4\u05d9\u05dd, 3/4 by 4 by 22 in.").Bill!.Parts[0];
        Assert.Equal((2, Length.FromInches(4), "\u05de\u05d3\u05e4\u05d9\u05dd"), (part.Count, part.Size.Width, part.Name));
    }

    [Fact]
    public void Bills_with_anything_in_them_never_throw()
    {
        var chance = new Random(20261128);
        var texts = BookBill.All.Select(bill => bill.Text).ToArray();
        for (var turn = 0; turn < Mutations; turn++)
        {
            var text = Mutated(texts[turn % texts.Length], chance);
            if (BillText.Read(text).Bill is not { } bill)
                continue;
            Assert.NotEmpty(BillJson.Write(bill));
            Assert.All(
                bill.Parts,
                part => Assert.True(part.Doubts.Length > 0 || (part.Size.IsWhole && part.Count > 0), part.AsWritten)
            );
        }
    }

    private static string Mutated(string text, Random chance)
    {
        var mutated = new StringBuilder(text);
        for (var times = chance.Next(1, 8); times > 0 && mutated.Length > 2; times--)
        {
            var at = chance.Next(mutated.Length - 1);
            switch (chance.Next(3))
            {
                case 0:
                    mutated.Remove(at, Math.Min(chance.Next(1, 6), mutated.Length - at));
                    break;
                case 1:
                    mutated.Insert(at, Inserts[chance.Next(Inserts.Length)]);
                    break;
                default:
                    (mutated[at], mutated[at + 1]) = (mutated[at + 1], mutated[at]);
                    break;
            }
        }

        return mutated.ToString();
    }

    // Ten times the text takes some ten times as long: far from the hundred times of a square.
    [Theory]
    [InlineData("1 ")]
    [InlineData("4 posts ")]
    [InlineData("1 x ")]
    [InlineData("3/4 by 4 by 22 in., ")]
    [InlineData("2 rails, 3/4 by 4 by 22 in. and ")]
    [InlineData("2 rails, 3/4 by 4 by 22 in.\n")]
    [InlineData("((((")]
    [InlineData("quarter-")]
    [InlineData("l")]
    [InlineData("1-")]
    [InlineData("\" ")]
    [InlineData("one and ")]
    [InlineData("¾")]
    [InlineData("rails\n")]
    [InlineData("oak or ")]
    [InlineData("S-4-S ")]
    [InlineData("Thick Wide Long\n2 3 4\n")]
    public void Long_texts_are_read_in_linear_time(string unit)
    {
        var watch = Stopwatch.StartNew();
        var whole = string.Concat(Enumerable.Repeat(unit, BillText.MostBytes / 4 / unit.Length));
        BillText.Read("2 rails, 3/4 by 4 by 22 in.\n" + whole);
        Assert.True(watch.Elapsed < Patience, $"took {watch.Elapsed}");
    }

    private static string Message(byte[] bytes) => Assert.Single(BillText.Read(bytes).Faults).Message;
}
