using System.Text.Json;
using ShopPlanner.Core.Designs.Export;
using ShopPlanner.Core.Designs.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Designs.Books;

/// <summary>
/// Pieces from trade books in the public domain, written as designs with all their joints: the parts file has the pieces of the
/// book's stock bill by count and size, in inches, tenons included. Where a book leaves a place to its drawing, the place is
/// ours: heights of rails, shelves and stretchers, the gaps between slats, how far through tenons stand out.
/// </summary>
public sealed class BookPieceTests
{
    // Thickness, width, length, count.
    private static readonly Dictionary<string, (decimal, decimal, decimal, int)[]> Bills = new()
    {
        // H. H. Windsor, Mission Furniture: How to Make It, Part 3 (Popular Mechanics Company, Chicago 1912), p. 5-7 (Project
        // Gutenberg 23666). Tenons of 3/4 in follow from its figures: rails of 36 in and 13 in under a top of 40 1/2 by 16 1/2 in
        // leave an overhang of 1 1/2 in and 1 in. They are mitered where they meet in the posts.
        ["piano-bench"] =
        [
            (1, 16.5m, 40.5m, 1),
            (1.5m, 1.5m, 20, 4),
            (0.875m, 4.25m, 36, 2),
            (0.875m, 4.25m, 13, 2),
            (0.875m, 2.5m, 13, 2),
            (0.875m, 3.75m, 36, 1),
            (0.375m, 1.25m, 11, 6),
        ],
        // H. H. Windsor, Mission Furniture, Part 2 (1910), p. 50-51 (Project Gutenberg 23991). A bottom of 8 by 12 in between
        // sides and ends of 12 and 8 in with their tenons fixes the tenons at 3/8 in, and notches of 3/8 in around the posts.
        ["footstool"] = [(1.5m, 1.5m, 12, 4), (0.75m, 3, 12, 2), (0.75m, 3, 8, 2), (0.75m, 8, 12, 1)],
        // H. H. Windsor, Mission Furniture, Part 1 (1909), p. 17-20 (Project Gutenberg 23770). The book's legs slope; ours stand
        // upright, so that the lower stretchers stand out by 1/2 in. Its keys are cut from waste and are not in its bill.
        ["tabouret"] = [(0.875m, 17, 17, 1), (0.875m, 4.75m, 18.5m, 4), (0.875m, 2.75m, 15.75m, 2), (0.875m, 2.25m, 13.25m, 2)],
        // H. H. Windsor, Mission Furniture, Part 3 (1912), p. 28-30 (Project Gutenberg 23666). The trough pieces stand upright
        // here; the double tenons of the shelf are one.
        ["book-trough"] = [(0.875m, 10, 31, 2), (0.875m, 10, 35, 1), (0.875m, 4, 35, 2), (0.625m, 0.625m, 3, 8)],
        // Edwin W. Foster, Carpentry and Woodwork (Doubleday, Page & Company, 1911), fig. 133 (Project Gutenberg 43574). Its
        // partitions of 3 1/2 in between sides 3 in apart fix the dadoes at 1/4 in. It has no bottom in the bill.
        ["nail-box"] = [(0.5m, 1.75m, 15, 2), (0.5m, 1.75m, 3, 2), (0.375m, 1.75m, 3.5m, 2)],
    };

    public static TheoryData<string> Names => [.. Bills.Keys];

    [Theory, MemberData(nameof(Names))]
    public void Its_parts_are_those_of_the_stock_bill(string name)
    {
        using var parts = JsonDocument.Parse(PartsJson.Write(Piece(name)));
        var made = parts
            .RootElement.GetProperty("parts")
            .EnumerateArray()
            .Where(part => !part.TryGetProperty("purpose", out _))
            .GroupBy(part => (Size(part, "thickness"), Size(part, "width"), Size(part, "length")))
            .Select(same =>
                (same.Key.Item1, same.Key.Item2, same.Key.Item3, same.Sum(part => part.GetProperty("quantity").GetInt32()))
            );
        Assert.Equal(Bills[name].Order(), made.Order());
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_part_is_joined_and_no_two_are_in_one_place(string name)
    {
        var piece = Piece(name);
        var joined = piece.Joints.SelectMany(joint => new[] { joint.From, joint.Into }).ToHashSet();
        var copies = piece.Parts.SelectMany(part => part.Copies).ToDictionary(copy => copy.Mark);
        Assert.All(copies.Keys, mark => Assert.Contains(mark, joined));
        Assert.All(piece.Joints, joint => Assert.NotNull(copies[joint.From].Box.Meeting(copies[joint.Into].Box)));
        Assert.DoesNotContain(piece.Warnings, warning => warning.Severity == Severity.Fails);
        Assert.Equal(piece.Outside, copies.Values.Select(copy => copy.Box).Aggregate((a, b) => a.Around(b)));
    }

    [Fact]
    public void The_bottom_of_the_footstool_is_notched_around_its_posts()
    {
        var piece = Piece("footstool");
        var bottom = Assert.Single(piece.Copies("Bottom"));
        var posts = piece.Copies("Post").ToList();
        Assert.Equal(4, bottom.Features.OfType<Notch>().Count());
        Assert.All(
            bottom.Features,
            notch => Assert.Contains(posts, post => notch.Room(bottom.Box) == post.Box.Shared(bottom.Box))
        );
    }

    [Fact]
    public void The_stretchers_of_the_tabouret_are_halved_into_each_other()
    {
        var piece = Piece("tabouret");
        foreach (var name in new[] { "Top stretcher", "Lower stretcher" })
        {
            var pair = piece.Copies(name).ToList();
            Assert.Equal(2, pair.Count);
            var (upper, lower) = (pair[0].Features[0].Room(pair[0].Box), pair[1].Features[0].Room(pair[1].Box));
            Assert.Equal((lower.Dz, lower.EndZ), (upper.Dz, upper.Z));
            Assert.Equal(pair[0].Box.Shared(pair[1].Box), upper.Around(lower));
        }
    }

    private static Piece Piece(string name) =>
        Made.Piece(
            File.ReadAllText(
                Path.Combine(DesignFiles.Root, "tests", "ShopPlanner.Core.Tests", "Designs", "Books", name + ".json")
            )
        );

    private static decimal Size(JsonElement part, string name) => part.GetProperty(name).GetDecimal();
}
