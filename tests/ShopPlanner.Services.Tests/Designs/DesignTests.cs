using ShopPlanner.Core.Designs;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;

namespace ShopPlanner.Services.Tests.Designs;

public sealed class DesignTests
{
    private static CancellationToken Cancel => TestShop.Cancel;

    [Fact]
    public async Task The_built_in_designs_lie_beside_the_program()
    {
        await using var shop = await TestShop.OpenAsync();
        var all = await shop.Get<IDesignService>().ListAsync(Cancel);
        Assert.Contains(all, one => one is { Key: "bookcase", OwnId: null });
        Assert.Equal(all.Select(one => one.Document.Name).Order(StringComparer.Ordinal), all.Select(one => one.Document.Name));
        Assert.Null(await shop.Get<IDesignService>().GetAsync("no-such", Cancel));
    }

    [Fact]
    public async Task An_own_design_is_saved_replaced_taken_out_and_put_back()
    {
        await using var shop = await TestShop.OpenAsync();
        var designs = shop.Get<IDesignService>();
        var document = (await designs.GetAsync("bookcase", Cancel))!.Document;
        var own = (await designs.SaveAsync(document with { Name = "Hall bookcase" }, CommandId.New(), Cancel)).Value!;
        Assert.Equal("Hall bookcase", (await designs.ListAsync(Cancel))[0].Document.Name);
        var wider = document.WithValues(new Dictionary<string, string> { ["width"] = "36" }) with { Name = "Wide bookcase" };
        var replaced = (await designs.ReplaceAsync(own.OwnId!.Value, own.Version, wider, Cancel)).Value!;
        Assert.Equal(own.Version + 1, replaced.Version);
        Assert.Equal(OutcomeKind.Conflict, (await designs.ReplaceAsync(own.OwnId.Value, own.Version, document, Cancel)).Kind);
        var gone = (await designs.RemoveAsync(own.OwnId.Value, Cancel)).Value!;
        Assert.Null(await designs.GetAsync(own.Key, Cancel));
        Assert.True((await designs.PutBackAsync(gone, CommandId.New(), Cancel)).Ok);
        Assert.Equal(DesignJson.Write(wider), DesignJson.Write((await designs.GetAsync(own.Key, Cancel))!.Document));
    }

    [Fact]
    public async Task A_file_that_is_no_design_is_refused_with_its_faults()
    {
        await using var shop = await TestShop.OpenAsync();
        var refused = await shop.Get<IDesignService>().ImportAsync("{\"format\":\"other\"}"u8.ToArray(), CommandId.New(), Cancel);
        Assert.Equal((OutcomeKind.Faulty, "format"), (refused.Kind, refused.Faults[0].Field));
        Assert.Equal(0, shop.CountRows()["OwnDesigns"]);
        var document = (await shop.Get<IDesignService>().GetAsync("table", Cancel))!.Document;
        Assert.True(
            (
                await shop.Get<IDesignService>()
                    .ImportAsync(System.Text.Encoding.UTF8.GetBytes(DesignJson.Write(document)), CommandId.New(), Cancel)
            ).Ok
        );
        var deep = DesignJson.Write(document).Replace("1 1/4 in", "9 in", StringComparison.Ordinal);
        var faulty = await shop.Get<IDesignService>()
            .ImportAsync(System.Text.Encoding.UTF8.GetBytes(deep), CommandId.New(), Cancel);
        Assert.Equal((OutcomeKind.Faulty, "frame.tenon"), (faulty.Kind, faulty.Faults[0].Field));
        Assert.Equal(1, shop.CountRows()["OwnDesigns"]);
        Assert.Equal(
            "name",
            (await shop.Get<IDesignService>().SaveAsync(document with { Name = " " }, CommandId.New(), Cancel)).Faults[0].Field
        );
    }
}
