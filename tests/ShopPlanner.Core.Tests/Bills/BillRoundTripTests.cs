using System.Globalization;
using CsCheck;
using ShopPlanner.Core.Bills;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Bills;

/// <summary>A part written in any of the forms and read again is the same part.</summary>
public sealed class BillRoundTripTests
{
    private static readonly string[] Names =
    [
        "legs",
        "front rails",
        "top and bottom boards",
        "door stiles",
        "shelf cleats",
        "end panels",
    ];

    private static readonly string[] Words = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

    private sealed record Made(int Count, string Name, Length Thickness, Length Width, Length Length)
    {
        public string T => Tied(Thickness);

        public string W => Tied(Width);

        public string L => Tied(Length);
    }

    // In sixty-fourths: a thickness up to 2 in., a width above it, a length above that.
    private static readonly Gen<Made> Parts = Gen.Select(
        Gen.Int[2, 40],
        Gen.Int[0, Names.Length - 1],
        Gen.Int[8, 128],
        Gen.Int[1, 1000],
        Gen.Int[1, 4000],
        (count, name, thick, wider, longer) =>
            new Made(count, Names[name], In(thick), In(thick + wider), In(thick + wider + longer))
    );

    // The forms; T, W and L tie a side's fraction to its whole with a hyphen, as books do.
    private static readonly Func<Made, string>[] Forms =
    [
        part => $"{part.Count} {part.Name}, {part.T} by {part.W} by {part.L} in.",
        part => $"{part.Count} {part.Name} {Plain(part.Thickness)} x {Plain(part.Width)} x {Plain(part.Length)}\"",
        part => $"{part.Name}, {part.Count} pieces, {Set(part.Thickness)}\" × {Set(part.Width)}\" × {Set(part.Length)}\"",
        part => $"{part.Name} ({part.Count}): {part.T}-in. by {part.W}-in. by {part.L}-in.",
        part => $"{Counted(part.Count)} {part.Name}, {part.T} in. thick, {part.W} in. wide and {part.L} in. long",
        part => $"{part.Count} {part.Name}, {part.L} in. long, {part.W} in. wide by {part.T} in. thick",
        part => $"{part.Name}, {part.T} by {part.W} by {Feet(part.Length)}, {part.Count} required",
        part => $"{part.Count} pcs. {part.T} x {part.W} x {part.L} in., {part.Name}",
        part => $"For the {part.Name} order {part.Count} pieces {part.T} by {part.W} by {part.L} in.",
        part => $"{part.Count} {part.Name}, {Metric(part.Thickness)} x {Metric(part.Width)} x {Metric(part.Length)} mm",
    ];

    [Fact]
    public void Every_form_reads_back() =>
        Parts.Sample(
            part =>
            {
                foreach (var form in Forms)
                {
                    var line = form(part);
                    var read = Assert.Single(BillText.Read(line).Bill!.Parts);
                    Assert.True(IsSame(part, read), $"{line} was read as {BookBill.Piece(read)}");
                    Assert.True(read.Doubts.All(IsOfSize), $"{line}: {string.Join(' ', read.Doubts)}");
                }
            },
            iter: 300
        );

    // Sides as large as chance makes them may be called unusual, and a bill of one line has no other to show a unit.
    private static bool IsOfSize(string doubt) =>
        doubt.StartsWith("It is unusually", StringComparison.Ordinal) || doubt.StartsWith("No unit", StringComparison.Ordinal);

    private static bool IsSame(Made part, BillPart read)
    {
        var step = read.Unit == LengthUnit.Millimetre ? Length.FromMillimetres(0.05m) : Length.Zero;
        return read.Name == part.Name
            && read.Count == part.Count
            && Near(read.Size.Thickness, part.Thickness, step)
            && Near(read.Size.Width, part.Width, step)
            && Near(read.Size.Length, part.Length, step);
    }

    private static bool Near(Length? read, Length made, Length step) =>
        read is { } length && length - made <= step && made - length <= step;

    private static Length In(int sixtyFourths) => Length.FromInches(0, sixtyFourths, 64);

    private static string Plain(Length length) => LengthFormat.Plain(length, LengthUnit.Inch).Text;

    private static string Set(Length length) =>
        LengthFormat.Set(length, LengthUnit.Inch).Text.Replace(" ", "", StringComparison.Ordinal);

    // As books write it: 1-3/4.
    private static string Tied(Length length) => Plain(length).Replace(' ', '-');

    private static string Feet(Length length)
    {
        var feet = length / Length.FromFeet(1);
        var rest = length - Length.FromFeet(feet);
        return feet == 0 ? Tied(rest) + " in."
            : rest == Length.Zero ? $"{feet} ft."
            : $"{feet} ft. {Tied(rest)} in.";
    }

    private static string Counted(int count) =>
        count <= Words.Length ? Words[count - 1] : count.ToString(CultureInfo.InvariantCulture);

    private static string Metric(Length length) =>
        Math.Round(length.ToMillimetres(), 1).ToString("0.0", CultureInfo.InvariantCulture);
}
