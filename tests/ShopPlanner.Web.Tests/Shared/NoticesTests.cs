using Bunit;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Shared;

/// <summary>Notes at the foot of the page.</summary>
public sealed class NoticesTests : PageContext
{
    [Fact]
    public async Task An_undo_that_fails_says_so()
    {
        var foot = Render<MudSnackbarProvider>();
        var notices = Services.GetRequiredService<Notices>();
        await foot.InvokeAsync(() =>
            notices.SayWithUndo("A was thrown away.", () => throw new InvalidOperationException("the disk is gone"))
        );
        await foot.InvokeAsync(() =>
            foot.FindAll("button").Single(button => button.TextContent.Trim() == "Undo").ClickAsync(new())
        );
        foot.WaitForAssertion(() => Assert.Contains("That was not undone", foot.Markup, StringComparison.Ordinal));
    }
}
