using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ShopPlanner.Core.Measures;
using ShopPlanner.Web.Frame;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Shared;

/// <summary>The notice of a page.</summary>
public sealed class NoticesTests : PageContext
{
    private readonly FakeTimeProvider clock = new();
    private readonly IRenderedComponent<NoticeLine> line;
    private readonly Notices notices;

    public NoticesTests()
    {
        Services.AddSingleton<TimeProvider>(clock);
        line = Render<NoticeLine>();
        notices = Services.GetRequiredService<Notices>();
    }

    private string Text => line.Find("[role=status]").TextContent.Trim();

    [Fact]
    public void The_newest_notice_is_the_only_one()
    {
        notices.Say("A was added.");
        notices.SayWithUndo("B was thrown away.", () => Task.CompletedTask);
        Shows("B was thrown away.");
        Assert.DoesNotContain("A was added.", line.Markup, StringComparison.Ordinal);
        Assert.Single(line.FindAll("[data-note-undo]"));
    }

    [Theory]
    [InlineData(false, 6)]
    [InlineData(true, 15)]
    public void A_notice_leaves_on_time(bool canUndo, int seconds)
    {
        if (canUndo)
            notices.SayWithUndo("A was thrown away.", () => Task.CompletedTask);
        else
            notices.Say("A was added.");
        clock.Advance(TimeSpan.FromSeconds(seconds - 1));
        Assert.NotNull(notices.Now);
        clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Null(notices.Now);
        line.WaitForAssertion(() => Assert.Equal(("", 0), (Text, line.FindAll("button").Count)));
    }

    // The timer of the notice before is not the new one's.
    [Fact]
    public void A_second_notice_has_its_whole_time()
    {
        notices.Say("A was added.");
        clock.Advance(TimeSpan.FromSeconds(5));
        notices.Say("B was added.");
        clock.Advance(TimeSpan.FromSeconds(5));
        Assert.Equal("B was added.", notices.Now?.Text);
        clock.Advance(TimeSpan.FromSeconds(1));
        Assert.Null(notices.Now);
    }

    [Fact]
    public async Task A_notice_stays_while_the_pointer_or_the_focus_is_on_it()
    {
        notices.SayWithUndo("A was thrown away.", () => Task.CompletedTask);
        Shows("A was thrown away.");
        await line.Find("[data-note]").TriggerEventAsync("onfocusin", new());
        clock.Advance(TimeSpan.FromMinutes(2));
        Assert.NotNull(notices.Now);
        await line.Find("[data-note]").TriggerEventAsync("onfocusout", new());
        clock.Advance(TimeSpan.FromSeconds(15));
        Assert.Null(notices.Now);
    }

    [Fact]
    public async Task Undo_is_done_once_and_says_so()
    {
        var times = 0;
        notices.SayWithUndo(
            "A was thrown away.",
            () =>
            {
                times++;
                return Task.CompletedTask;
            }
        );
        Shows("A was thrown away.");
        await line.InvokeAsync(() => Task.WhenAll(notices.UndoAsync(), notices.UndoAsync()));
        Shows("Undone.");
        Assert.Equal(1, times);
    }

    [Fact]
    public async Task An_undo_that_fails_says_so()
    {
        notices.SayWithUndo("A was thrown away.", () => throw new InvalidOperationException("the disk is gone"));
        Shows("A was thrown away.");
        await line.InvokeAsync(() => line.Find("[data-note-undo]").ClickAsync(new()));
        line.WaitForAssertion(() => Assert.Contains("That was not undone", Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_undo_that_is_refused_does_not_claim_to_be_done()
    {
        notices.SayWithUndo(
            "A was thrown away.",
            () =>
            {
                notices.SayWrong([Fault.Of("A", "", "is cut already")]);
                return Task.CompletedTask;
            }
        );
        await line.InvokeAsync(notices.UndoAsync);
        line.WaitForAssertion(() => Assert.Contains("is cut already", Text, StringComparison.Ordinal));
        Assert.True(notices.Now?.IsWrong);
    }

    private void Shows(string text) => line.WaitForAssertion(() => Assert.StartsWith(text, Text, StringComparison.Ordinal));
}
