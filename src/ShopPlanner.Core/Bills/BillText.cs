using System.Text;
using System.Text.Unicode;
using ShopPlanner.Core.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Bills;

/// <summary>
/// Reads a written stock bill, as books and notes have it, into parts: <c>4 posts, 1-3/4 by 1-3/4 by 30 in., S-4-S</c>. Whatever
/// isn't certain carries a doubt in words, and no line is dropped.
/// </summary>
public static class BillText
{
    /// <summary>The longest text that is read.</summary>
    public const int MostBytes = 1_000_000;

    /// <summary>Reads a bill from a stream, of which little more than <see cref="MostBytes"/> is taken.</summary>
    /// <inheritdoc cref="Read(string)" path="/returns"/>
    public static BillReading Read(Stream stream) => Read(CappedReading.Take(stream, MostBytes));

    /// <summary>Reads a bill from a file's bytes: UTF-8, UTF-16 with its mark, or Latin-1.</summary>
    /// <inheritdoc cref="Read(string)" path="/returns"/>
    public static BillReading Read(ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length > MostBytes)
            return Refused("", "is longer than 1 MB: keep only the bill itself");
        var span = JsonText.Bare(bytes).Span;
        if (span is [0xFF, 0xFE, ..])
            return Read(Encoding.Unicode.GetString(span[2..]));
        if (span is [0xFE, 0xFF, ..])
            return Read(Encoding.BigEndianUnicode.GetString(span[2..]));
        if (span.Contains((byte)0))
            return Refused("", "isn't text: save the bill as plain text");
        return Utf8.IsValid(span) ? Read(Encoding.UTF8.GetString(span)) : Read(Encoding.Latin1.GetString(span));
    }

    /// <summary>Reads a bill.</summary>
    /// <param name="text">As pasted.</param>
    /// <returns>The bill and no fault; or no bill, where nothing could be read as a part, and the fault that says why.</returns>
    public static BillReading Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MostBytes)
            return Refused("", "is longer than 1 MB: keep only the bill itself");
        if (string.IsNullOrWhiteSpace(text))
            return Refused("", "is empty: paste a stock bill, one part per line, like 4 posts, 2 by 2 by 30 in.");
        // Halves of characters become marks that can be written out again.
        var whole = Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text));
        var bill = new BillReader(BillStatements.Of(whole)).Read();
        return bill.Parts.IsEmpty
            ? Refused(
                BillNames.Short(whole.Trim()),
                "has no part that can be read: write a count, a name and three figures, like 4 posts, 2 by 2 by 30 in."
            )
            : new BillReading(bill, []);
    }

    private static BillReading Refused(string value, string message) => new(null, [Fault.Of("", value, message)]);
}
