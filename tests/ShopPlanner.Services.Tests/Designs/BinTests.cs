using System.Collections.Immutable;
using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;

namespace ShopPlanner.Services.Tests.Designs;

/// <summary>Counts that ask the bin; planned first-fit, which is sound for these boards.</summary>
public sealed class BinTests
{
    [Theory]
    [InlineData(9, 9)]
    [InlineData(8, 8)]
    [InlineData(20, 12)]
    public async Task As_many_slats_as_the_offcuts_hold(int offcuts, int expected)
    {
        await using var given = await Ideas.BeginAsync("boot-room-bench");
        // One slat of about 13 in comes from each offcut of 20 in.
        await given.Shop.Stock.AddAsync(
            Some.Offcut("20", "pine-1x3", offcuts.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            Ideas.Cancel
        );
        var answer = await AskAsync(given, "slats");
        Assert.Equal((expected, "Slat"), (answer.Value!.Count, answer.Value.Parts.Single()));
    }

    // A low shelf that belongs to its frame: a slat of about 15 in comes from each offcut of 20 in, and nine find room.
    [Theory]
    [InlineData(7, 7)]
    [InlineData(20, 9)]
    public async Task The_low_shelf_of_a_cabinet_takes_what_the_offcuts_hold(int offcuts, int expected)
    {
        await using var given = await Ideas.BeginAsync("post-and-rail-cabinet");
        await given.Shop.Stock.AddAsync(
            Some.Offcut("20", "pine-1x3", offcuts.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            Some.Inch,
            Some.Device,
            CommandId.New(),
            Ideas.Cancel
        );
        var answer = await AskAsync(given, "slats");
        Assert.Equal((expected, "Slat"), (answer.Value!.Count, answer.Value.Parts.Single()));
    }

    [Fact]
    public async Task An_empty_bin_allows_none()
    {
        await using var given = await Ideas.BeginAsync("boot-room-bench");
        Assert.Null((await AskAsync(given, "slats")).Value!.Count);
    }

    [Fact]
    public async Task What_lies_in_the_rack_is_not_the_bin()
    {
        await using var given = await Ideas.BeginAsync("boot-room-bench");
        await given.Shop.Stock.AddAsync(
            Some.Offcut("96", "pine-1x3", "3") with
            {
                Place = ShopPlanner.Services.Common.StockPlace.Rack,
            },
            Some.Inch,
            Some.Device,
            CommandId.New(),
            Ideas.Cancel
        );
        Assert.Null((await AskAsync(given, "slats")).Value!.Count);
    }

    [Fact]
    public async Task An_idea_that_cannot_be_worked_out_says_why()
    {
        await using var given = await Ideas.BeginAsync("boot-room-bench");
        await given.SetAsync("width", "wide");
        Assert.Equal(OutcomeKind.Faulty, (await AskAsync(given, "slats")).Kind);
    }

    [Fact]
    public async Task The_shops_stores_rack_and_bin_say_what_is_largest_and_cheapest()
    {
        await using var given = await Ideas.BeginAsync();
        await Some.StoreAsync(
            given.Shop,
            Some.Price("96", "6.48"),
            Some.Price("72", "5.40"),
            Some.Price("96", "64", Some.Birch, "48")
        );
        await given.Shop.Stock.AddAsync(Some.Offcut("120"), Some.Inch, Some.Device, CommandId.New(), Ideas.Cancel);
        var reach = await given.Pieces.ReachAsync(Ideas.Cancel);
        Assert.Equal(Length.FromInches(120), reach.Largest[Some.Pine].Length);
        // 6.48 for 8 ft is 2.6575 for a metre; 64 for 32 square feet is 21.53 for a square metre.
        Assert.Equal(2.6575m, reach.PricePerMetre[Some.Pine], 4);
        Assert.Equal(21.528m, reach.PricePerSquareMetre[Some.Birch], 3);
    }

    [Theory]
    [InlineData("pine-1x3", "pine-eastern-white")]
    [InlineData("birch-ply-3-4", "plywood-hardwood-faced")]
    [InlineData("mdf-3-4", "mdf")]
    [InlineData("birch-multiply-18mm", "plywood")]
    public async Task A_material_of_the_shop_brings_its_sizes_and_its_wood(string id, string species)
    {
        await using var given = await Ideas.BeginAsync();
        var material = await given.Pieces.MaterialAsync("slat", id, Ideas.Cancel);
        Assert.Equal(("slat", id, species), (material!.Role, material.Id, material.Species));
        Assert.NotNull(Core.Wood.StrengthTable.Find(species));
    }

    private static async Task<Outcome<BinAllows>> AskAsync(Ideas given, string name)
    {
        var idea = (await given.ReadAsync()).Idea;
        var count = DimensionRange.Of(idea.Document, idea.Changed).Single(one => one.Dimension.Name == name);
        return await given.Pieces.AsManyAsBinAllowsAsync(idea, count, Ideas.Cancel);
    }
}
