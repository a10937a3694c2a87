using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Core.Tests.Designs;

/// <summary>Named sizes, extra parts and whole bays changed by a person: what results reads back and can be worked out.</summary>
public sealed class OwnSizesAndPartsTests
{
    private static readonly Dictionary<string, string> NoChange = [];

    [Fact]
    public void A_size_is_added_used_changed_and_taken_out()
    {
        var added = DesignFiles.Read("bookcase").AddDimension(new("lip", "Lip", false, "toe / 2", null, "2"));
        var used = added.WithMember("frame", "let_in", "lip - 1 1/2 in");
        Assert.Empty(DesignEvaluator.Evaluate(used, NoChange).Faults);
        Assert.Equal(DesignJson.Write(used), DesignJson.Write(Again(used)));
        var limited = used.WithDimension("lip", DimensionText.Most, "1").WithDimension("lip", DimensionText.Label, " ");
        Assert.Equal(("1", "Lip"), (limited.Dimensions[^1].Most, limited.Dimensions[^1].Label));
        var fault = Assert.Single(DesignEvaluator.Evaluate(limited, NoChange).Faults);
        Assert.Equal("dimensions.lip", fault.Field);
        Assert.Null(limited.WithDimension("lip", DimensionText.Most, "").Dimensions[^1].Most);
        var gone = used.RemoveDimension("lip");
        Assert.Contains("isn't a name in this design", DesignEvaluator.Evaluate(gone, NoChange).Faults.Single().Message);
    }

    [Theory]
    [InlineData("", "is missing")]
    [InlineData("Lip", "isn't a name: use lowercase")]
    [InlineData("2nd", "isn't a name: use lowercase")]
    [InlineData("mm", "is a word of arithmetic")]
    [InlineData("max", "is a word of arithmetic")]
    [InlineData("toe", "is taken")]
    public void A_name_that_will_not_do_says_why_and_adds_nothing(string name, string says)
    {
        var document = DesignFiles.Read("bookcase");
        Assert.StartsWith(says, document.CheckName(name)!.Message, StringComparison.Ordinal);
        Assert.Same(document, document.AddDimension(new(name, "Lip", false, "1", null, null)));
    }

    [Fact]
    public void The_outside_size_stays()
    {
        var document = DesignFiles.Read("bookcase");
        Assert.All(DesignSizes.Outside, name => Assert.Same(document, document.RemoveDimension(name)));
    }

    [Fact]
    public void A_part_is_added_put_in_its_place_and_taken_out()
    {
        var document = DesignFiles.Read("bookcase");
        var placed = document
            .AddPart("Back rail")
            .WithPart("parts.0", OwnPartText.Material, "face")
            .WithPart("parts.0", OwnPartText.Width, "")
            .WithPart("parts.0", OwnPartText.Length, "width - 2 * 23/32 in")
            .WithPart("parts.0", OwnPartText.Flat, "y")
            .WithPart("parts.0", OwnPartText.At, "23/32 in, max(2 in, depth / 2), 30 in; 23/32 in, 2 in, 40 in");
        var (piece, faults) = DesignEvaluator.Evaluate(placed, NoChange);
        Assert.Empty(faults);
        var rail = Assert.Single(piece!.Parts, part => part.Name == "Back rail");
        Assert.Equal((2, Length.FromInches(1, 1, 2)), (rail.Quantity, rail.Width.Value));
        Assert.Equal(Length.FromInches(5.625m), rail.Copies[0].Box.Y);
        Assert.Equal(DesignJson.Write(placed), DesignJson.Write(Again(placed)));
        Assert.Equal(DesignJson.Write(document), DesignJson.Write(placed.RemovePart("parts.0")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("1 in, 2 in")]
    [InlineData("1 in, 2 in, 3 in; nowhere")]
    public void A_corner_that_is_none_is_a_fault_at_the_corner(string typed)
    {
        var document = DesignFiles.Read("bookcase").AddPart("Rail").WithPart("parts.0", OwnPartText.At, typed);
        Assert.Contains(
            DesignEvaluator.Evaluate(document, NoChange).Faults,
            fault => fault.Field.StartsWith("parts.0.at", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_bay_becomes_like_the_one_beside_it()
    {
        var document = DesignFiles.Read("bookcase");
        var copied = document.CopyBay("bays.bays.0", "bays.bays.1");
        Assert.Equal(["adjustable-shelves"], copied.Bays!.Bays[1].Fills.Select(fill => fill.Kind));
        Assert.Equal("bays.bays.1.fills.0", copied.Bays.Bays[1].Fills[0].Path);
        Assert.Equal("below", copied.Bays.Bays[1].Fills[0].Members["count"]);
        Assert.Empty(DesignEvaluator.Evaluate(copied, NoChange).Faults);
        Assert.Equal(["bays.bays.1"], document.Beside("bays.bays.0").Select(bay => bay.Path));
        Assert.Empty(document.Beside("bays"));
    }

    [Theory]
    [InlineData("bays", "bays.bays.0")]
    [InlineData("bays.bays.0", "bays")]
    [InlineData("bays.bays.0", "bays.bays.0")]
    [InlineData("bays.bays.9", "bays.bays.0")]
    public void A_bay_takes_none_that_it_lies_in_or_that_is_not_there(string from, string to)
    {
        var document = DesignFiles.Read("bookcase");
        Assert.Same(document, document.CopyBay(from, to));
    }

    [Fact]
    public void Mirrored_twice_a_bay_is_as_it_was()
    {
        var document = DesignFiles.Read("bookcase").WithSize("bays", 0, "20 in");
        var mirrored = document.MirrorBays("bays");
        Assert.Equal(["*", "20 in"], mirrored.Bays!.Sizes);
        Assert.Equal(["above", "below"], mirrored.Bays.Bays.Select(bay => bay.Fills[0].Members["count"]));
        Assert.Empty(DesignEvaluator.Evaluate(mirrored, NoChange).Faults);
        Assert.Equal(DesignJson.Write(document), DesignJson.Write(mirrored.MirrorBays("bays")));
    }

    private static DesignDocument Again(DesignDocument document) =>
        DesignJson.Read(System.Text.Encoding.UTF8.GetBytes(DesignJson.Write(document))).Document!;
}
