using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Plans;
using ShopPlanner.Web.Features.Plans;

namespace ShopPlanner.Web.Tests.Plans;

/// <summary>What is told while a plan is looked for.</summary>
public sealed class PlanProgressTests : BunitContext
{
    private static readonly PlanJobView Going = new(
        Guid.NewGuid(),
        PlanJobState.Running,
        "Pine 1x3",
        Money.From(42),
        Money.From(39.5m),
        TimeSpan.FromSeconds(4.2),
        10,
        null,
        []
    );

    [Fact]
    public void A_run_tells_the_best_so_far_the_bound_the_gap_and_the_time()
    {
        var page = Show(Going);

        Assert.Equal("$42.00", Figure(page, "Best plan so far"));
        Assert.Equal("$39.50", Figure(page, "No plan can cost less than"));
        Assert.Equal("$2.50", Figure(page, "Could be cheaper by up to"));
        Assert.Equal("Pine 1x3", Figure(page, "Working on"));
        Assert.Equal("4 of 10 seconds", Figure(page, "Time"));
        Assert.Equal(("4.2", "10"), (page.Find("progress").GetAttribute("value"), page.Find("progress").GetAttribute("max")));
    }

    [Fact]
    public void Before_there_is_a_plan_no_figure_is_made_up()
    {
        var page = Show(Going with { Cost = null });

        Assert.Equal("none yet", Figure(page, "Best plan so far"));
        Assert.Equal("not known yet", Figure(page, "Could be cheaper by up to"));
        Assert.Equal("Stop", page.Find("button").TextContent.Trim());
    }

    [Fact]
    public void Stopping_is_asked_once()
    {
        var asked = 0;
        var page = Show(Going, () => asked++);
        Assert.Equal("Stop and use the best", page.Find("button").TextContent.Trim());

        page.Find("button").Click();

        Assert.Equal(1, asked);
        Assert.Equal("true", page.Find("button").GetAttribute("aria-disabled"));
    }

    [Theory]
    [InlineData(PlanJobState.Failed, "No plan could be made")]
    [InlineData(PlanJobState.Stopped, "Stopped before a plan was found")]
    public void A_run_that_ended_without_a_plan_says_why(PlanJobState state, string heading)
    {
        var page = Show(
            Going with
            {
                State = state,
                Cost = null,
                Faults = [new Fault("BB A", "400", "is longer than any stock")],
            }
        );

        Assert.Equal(heading, page.Find("h1").TextContent.Trim());
        Assert.Contains("BB A: ‘400’ is longer than any stock.", page.Find("[role=alert]").TextContent);
        Assert.Empty(page.FindAll("button"));
    }

    private IRenderedComponent<PlanProgress> Show(PlanJobView job, Action? stop = null) =>
        Render<PlanProgress>(given =>
            given
                .Add(p => p.Job, job)
                .Add(p => p.Sign, "$")
                .Add(p => p.OnStop, EventCallback.Factory.Create(this, stop ?? (() => { })))
        );

    private static string Figure(IRenderedComponent<PlanProgress> page, string name) =>
        page.FindAll("dt").Single(dt => dt.TextContent == name).NextElementSibling!.TextContent.Trim();
}
