using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs.Model;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Marks that a pencil writes: one for each copy, L and R for mirrored ones.</summary>
public sealed partial class MarkTests
{
    public static TheoryData<string> Names => [.. DesignFiles.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_copy_has_its_own_and_mirrored_ones_say_which(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        var copies = piece.Parts.SelectMany(part => part.Copies).ToList();
        Assert.Distinct(copies.Select(copy => copy.Mark));
        Assert.All(
            copies,
            copy =>
                Assert.Equal(
                    copy.Hand switch
                    {
                        Hand.Left => "L",
                        Hand.Right => "R",
                        _ => "",
                    },
                    Mark().Match(copy.Mark).Groups["hand"].Value
                )
        );
        Assert.All(
            piece.Parts,
            part =>
            {
                // Spacers and practice pieces stand nowhere in the piece.
                Assert.Equal(part.Purpose != PartPurpose.Member, part.Copies.IsEmpty);
                Assert.All(part.Copies, (copy, i) => Assert.StartsWith(part.Id + (i + 1), copy.Mark, StringComparison.Ordinal));
            }
        );
        Assert.All(
            piece.Joints,
            joint => Assert.True(copies.Any(copy => copy.Mark == joint.From) && copies.Any(copy => copy.Mark == joint.Into))
        );
    }

    // What is made as a left one has a right one, at the mirrored place.
    [Theory, MemberData(nameof(Names))]
    public void A_left_one_has_a_right_one(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        Assert.Contains(piece.Parts, part => part.Copies.Any(copy => copy.Hand != Hand.Either));
        foreach (var part in piece.Parts.Where(part => part.Copies.Any(copy => copy.Hand != Hand.Either)))
        {
            var mirrored = part
                .Copies.Where(copy => copy.Hand == Hand.Left)
                .Select(copy => copy.Box with { X = piece.Outside.Dx - copy.Box.EndX });
            var rights = part.Copies.Where(copy => copy.Hand == Hand.Right).Select(copy => copy.Box);
            Assert.Equal(mirrored.OrderBy(box => box.Y), rights.OrderBy(box => box.Y));
        }
    }

    [Fact]
    public void Letters_go_on_after_z_and_leave_out_what_looks_like_a_figure()
    {
        var parts = string.Join(
            ",",
            Enumerable
                .Range(0, 60)
                .Select(i =>
                    $$"""{ "name": "P{{i}}", "material": "stile", "length": "{{i + 1}} in", "flat": "y", "at": [ [ "{{i}} in", 0, 0 ] ] }"""
                )
        );
        var json = Made.Carcass("300", "12", "30", "").TrimEnd('}', '\n', ' ') + $$""" }, "parts": [ {{parts}} ] }""";
        var ids = Made.Piece(json).Parts.Select(part => part.Id).ToList();
        Assert.Distinct(ids);
        Assert.Contains("AA", ids);
        Assert.DoesNotContain(ids, id => id.Contains('I') || id.Contains('O'));
    }

    [GeneratedRegex("^(?<letters>[A-Z]+)(?<number>[0-9]+)(?<hand>[LR]?)$")]
    private static partial Regex Mark();
}
