using System.Text;
using ShopPlanner.Core.Bills;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>Ten bills of books in the public domain: every part right, and none in doubt.</summary>
public sealed class BookBillTests
{
    public static TheoryData<string> Titles() => [.. BookBill.All.Select(bill => bill.Title)];

    private static BookBill Find(string title) => BookBill.All.Single(bill => bill.Title == title);

    [Theory]
    [MemberData(nameof(Titles))]
    public void Every_part_is_read(string title)
    {
        var bill = Read(Find(title).Text);
        Assert.Equal(Find(title).Pieces, bill.Parts.Select(BookBill.Piece));
        Assert.All(bill.Parts, part => Assert.Empty(part.Doubts));
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void A_narrow_page_changes_nothing(string title)
    {
        var book = Find(title);
        Assert.Equal(book.Pieces, Read(Wrapped(book.Text, 34)).Parts.Select(BookBill.Piece));
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void Fractions_as_one_character_change_nothing(string title)
    {
        var book = Find(title);
        var set = book
            .Text.Replace("-1/2", "½", StringComparison.Ordinal)
            .Replace("-3/4", "¾", StringComparison.Ordinal)
            .Replace("3/4 ", "¾ ", StringComparison.Ordinal);
        Assert.Equal(book.Pieces, Read(set).Parts.Select(BookBill.Piece));
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void No_word_is_dropped(string title)
    {
        var book = Find(title);
        var bill = Read(book.Text);
        var kept = string.Join(
            ' ',
            bill.Parts.Select(part => part.AsWritten).Concat(bill.Others.Select(other => other.AsWritten))
        );
        Assert.Equal(Letters(book.Text), Letters(kept));
    }

    private static StockBill Read(string text)
    {
        var reading = BillText.Read(text);
        Assert.Empty(reading.Faults);
        return reading.Bill!;
    }

    private static string Letters(string text) => string.Concat(text.Where(char.IsLetterOrDigit).Order());

    // Each line broken where it is full, the rest set in.
    private static string Wrapped(string text, int width)
    {
        var wrapped = new StringBuilder();
        foreach (var line in text.Split('\n'))
        {
            var room = width;
            foreach (var word in line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                if (room < word.Length && room < width)
                {
                    wrapped.Append("\n    ");
                    room = width;
                }

                wrapped.Append(word).Append(' ');
                room -= word.Length + 1;
            }

            wrapped.Append('\n');
        }

        return wrapped.ToString();
    }
}
