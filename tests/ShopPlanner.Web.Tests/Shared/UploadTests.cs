using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using Microsoft.JSInterop;
using ShopPlanner.Services.Designs;
using ShopPlanner.Web.Features.Idea;
using ShopPlanner.Web.Features.Projects;
using ShopPlanner.Web.Features.Stores;
using ShopPlanner.Web.Tests.Projects;

namespace ShopPlanner.Web.Tests.Shared;

/// <summary>A chosen file that does not arrive: the line broke, the file was moved, the browser fell asleep.</summary>
public sealed class UploadTests
{
    private readonly FakeTimeProvider clock = new();

    public static TheoryData<string, string> Breaks()
    {
        var all = new TheoryData<string, string>();
        foreach (var field in new[] { "prices", "parts", "design" })
        foreach (var how in new[] { "io", "time", "gone", "script", "off", "stopped", "short", "hung" })
            all.Add(field, how);
        return all;
    }

    [Theory]
    [MemberData(nameof(Breaks))]
    public async Task A_file_that_does_not_arrive_whole_is_told_and_can_be_chosen_again(string field, string how)
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = Context(shop);
        var (page, said) = Render(context, shop, field);
        var before = page.FindComponent<InputFile>().Instance;

        var reading = ChooseAsync(page, how);
        if (how == "hung")
            clock.Advance(TimeSpan.FromMinutes(2));
        await reading.WaitAsync(TimeSpan.FromSeconds(20), ShopServer.Cancel);

        Assert.Contains("did not arrive complete", said(), StringComparison.Ordinal);
        Assert.Contains("choose it again", said(), StringComparison.Ordinal);
        Assert.Contains("cuts.txt", said(), StringComparison.Ordinal);
        Assert.DoesNotContain("Reading…", page.Markup, StringComparison.Ordinal);
        // A field that holds the same file would not tell that it was chosen again.
        Assert.NotSame(before, page.FindComponent<InputFile>().Instance);
    }

    [Fact]
    public async Task While_bytes_still_come_the_reading_goes_on()
    {
        await using var shop = await PlannedShop.OpenAsync();
        await using var context = Context(shop);
        var (page, _) = Render(context, shop, "prices");

        var reading = ChooseAsync(page, "hung");
        clock.Advance(TimeSpan.FromSeconds(5));

        Assert.False(reading.IsCompleted);
        Assert.Contains("Reading…", page.Markup, StringComparison.Ordinal);
        clock.Advance(TimeSpan.FromMinutes(2));
        await reading.WaitAsync(TimeSpan.FromSeconds(20), ShopServer.Cancel);
    }

    private BunitContext Context(PlannedShop shop)
    {
        var context = PageTest.For(shop);
        context.Services.AddSingleton<TimeProvider>(clock);
        context.Services.AddSingleton(shop.Server.Get<IDesignService>());
        context.Services.AddSingleton(shop.Server.Get<IIdeaService>());
        return context;
    }

    private static (IRenderedComponent<IComponent> Page, Func<string> Said) Render(
        BunitContext context,
        PlannedShop shop,
        string field
    )
    {
        switch (field)
        {
            case "prices":
                var prices = context.Render<PriceImport>(given => given.Add(one => one.Store, shop.Store));
                return (prices, () => prices.Find(".faults").TextContent);
            case "parts":
                var (parts, sheet) = (new FakeParts(), default(SheetState)!);
                sheet = new SheetState(parts, parts.Project);
                var list = context.Render<PartImportField>(given => given.Add(one => one.Sheet, sheet));
                return (list, () => string.Join(' ', sheet.Faults.Select(Web.Shared.FaultWords.Line)));
            default:
                var designs = context.Render<DesignsPage>();
                designs.WaitForElement("input[type=file]");
                return (designs, () => designs.Find(".faults").TextContent);
        }
    }

    private static Task ChooseAsync(IRenderedComponent<IComponent> page, string how)
    {
        const int Good = 40,
            All = 100;
        Exception? problem = how switch
        {
            "io" => new IOException("broken"),
            "time" => new TimeoutException("Did not receive any data in the allotted time."),
            "gone" => new JSDisconnectedException("gone"),
            "script" => new JSException("NotReadableError"),
            "off" => new InvalidOperationException("An error occurred while reading the remote stream: x"),
            "stopped" => new TaskCanceledException(),
            _ => null,
        };
        var file = new BrokenFile(
            "cuts.txt",
            All,
            () => how == "short" ? new MemoryStream(new byte[Good]) : new BrokenStream(Good, problem)
        );
        var field = page.FindComponent<InputFile>().Instance;
        return page.InvokeAsync(() => field.OnChange.InvokeAsync(new InputFileChangeEventArgs([file])));
    }
}
