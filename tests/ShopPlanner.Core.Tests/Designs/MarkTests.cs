using System.Text.RegularExpressions;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Measures;

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

    // A pair of mirrored ones stands at mirrored places, or a half turn apart where the whole piece has that symmetry.
    [Theory, MemberData(nameof(Names))]
    public void A_left_one_has_a_right_one(string name)
    {
        var piece = Made.Piece(File.ReadAllText(DesignFiles.PathOf(name)));
        foreach (var part in piece.Parts.Where(part => part.Copies.Any(copy => copy.Hand != Hand.Either)))
            Assert.Equal(part.Copies.Count(copy => copy.Hand == Hand.Left), part.Copies.Count(copy => copy.Hand == Hand.Right));
    }

    [Fact]
    public void Sides_of_a_case_are_mirrored()
    {
        var side = Made.Piece(File.ReadAllText(DesignFiles.PathOf("bookcase"))).Parts.Single(part => part.Name == "Side");
        Assert.Equal(
            [(Hand.Left, true), (Hand.Right, false)],
            side.Copies.Select(copy => (copy.Hand, copy.Box.X == Length.Zero))
        );
    }

    // Mortises on two faces of a leg: what faces right and back on the front left one, faces right and front on the back left one.
    // With long and end aprons alike in section a square leg can be turned to any corner; a stretcher at the ends alone ends that.
    [Fact]
    public void Legs_a_half_turn_apart_are_alike_and_the_others_are_their_mirror()
    {
        var table = File.ReadAllText(DesignFiles.PathOf("table"));
        Assert.All(Made.Piece(table).Copies("Leg"), leg => Assert.Equal(Hand.Either, leg.Hand));
        var stretched = table.Replace(
            "\"joint\": \"mortise\"",
            "\"joint\": \"mortise\", \"stretcher\": \"apron\", \"stretchers\": \"ends\"",
            StringComparison.Ordinal
        );
        var legs = Made.Piece(stretched).Copies("Leg").ToLookup(leg => leg.Hand, leg => (leg.Box.X, leg.Box.Y));
        Assert.Equal(2, legs[Hand.Left].Count());
        Assert.Equal(2, legs[Hand.Right].Count());
        foreach (var hand in new[] { Hand.Left, Hand.Right })
        {
            var pair = legs[hand].ToList();
            Assert.True(pair[0].X != pair[1].X && pair[0].Y != pair[1].Y);
        }
    }

    // Grooves for panels on other faces make another part of the front legs than of the back ones.
    [Fact]
    public void Legs_with_other_joints_have_another_letter()
    {
        var piece = Made.Piece(Made.PostAndRail(""));
        var legs = piece.Parts.Where(part => part.Name == "Leg").ToList();
        Assert.Equal(2, legs.Count);
        Assert.All(legs, leg => Assert.Single(leg.Copies.Select(copy => copy.Box.Y).Distinct()));
        // Both inner faces of a back leg are grooved alike, so that either will do at either side.
        Assert.Equal([Hand.Left, Hand.Right], legs[0].Copies.Select(copy => copy.Hand));
        Assert.Equal([Hand.Either, Hand.Either], legs[1].Copies.Select(copy => copy.Hand));
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
