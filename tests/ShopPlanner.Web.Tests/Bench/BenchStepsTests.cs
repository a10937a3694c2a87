using System.Net;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Designs;
using ShopPlanner.Services.Making;
using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Bench;

/// <summary>The steps of a project at the bench, sent by plain forms.</summary>
public sealed class BenchStepsTests
{
    private static CancellationToken Cancel => ShopServer.Cancel;

    [Fact]
    public async Task A_step_is_marked_as_done_and_taken_back_by_plain_forms()
    {
        await using var server = await ShopServer.OpenAsync();
        using var browser = server.Browse();
        var project = await BeginAsync(server);
        var first = (await ReadAsync(server, project)).Steps[0];

        var page = await browser.OpenAsync(Links.BenchSteps(project));
        using var done = await browser.SubmitAsync(page.FormOf("Done: " + first.Title));
        Assert.Equal(
            (HttpStatusCode.SeeOther, Links.BenchSteps(project) + "#next"),
            (done.StatusCode, done.Headers.Location!.OriginalString)
        );
        Assert.Equal(StepMark.Done, (await ReadAsync(server, project)).Steps[0].Mark);
        // Sent again late, it is the same command.
        using var again = await browser.SubmitAsync(page.FormOf("Done: " + first.Title));
        Assert.Equal(HttpStatusCode.SeeOther, again.StatusCode);

        page = await browser.OpenAsync(Links.BenchSteps(project));
        Assert.StartsWith("1 of ", page.QuerySelector("h1")!.TextContent, StringComparison.Ordinal);
        using var undone = await browser.SubmitAsync(page.FormOf("Undo: " + first.Title));
        Assert.Equal(StepMark.Open, (await ReadAsync(server, project)).Steps[0].Mark);
    }

    [Fact]
    public async Task How_long_a_step_took_is_sent_by_a_plain_form()
    {
        await using var server = await ShopServer.OpenAsync();
        using var browser = server.Browse();
        var project = await BeginAsync(server);
        var first = (await ReadAsync(server, project)).Steps[0];
        var page = await browser.OpenAsync(Links.BenchSteps(project));
        Assert.Empty(page.QuerySelectorAll(".bench-took"));
        using var done = await browser.SubmitAsync(page.FormOf("Done: " + first.Title));
        page = await browser.OpenAsync(Links.BenchSteps(project));
        var form = page.FormOf("Save time: " + first.Title);
        using var saved = await browser.PostAsync(
            Links.BenchSteps(project) + "/took",
            PlainBrowser.FieldsOf(form).With(("Took", "1:30"))
        );
        Assert.Equal(HttpStatusCode.SeeOther, saved.StatusCode);
        Assert.Equal("1:30", (await ReadAsync(server, project)).Steps[0].Took);
        page = await browser.OpenAsync(Links.BenchSteps(project));
        form = page.FormOf("Save time: " + first.Title);
        Assert.Equal("1:30", form.QuerySelector("input[name=Took]")!.GetAttribute("value"));
        using var wrong = await browser.PostAsync(
            Links.BenchSteps(project) + "/took",
            PlainBrowser.FieldsOf(form).With(("Took", "an hour"))
        );
        Assert.Equal(HttpStatusCode.Conflict, wrong.StatusCode);
    }

    [Fact]
    public async Task A_form_that_is_damaged_or_for_a_step_that_is_gone_changes_nothing()
    {
        await using var server = await ShopServer.OpenAsync();
        using var browser = server.Browse();
        var project = await BeginAsync(server);
        var page = await browser.OpenAsync(Links.BenchSteps(project));
        var form = page.FormOf("Done: " + (await ReadAsync(server, project)).Steps[0].Title);
        var fields = PlainBrowser.FieldsOf(form);
        var address = Links.BenchSteps(project) + "/mark";
        using var without = await browser.PostAsync(address, fields.Without("Step"));
        Assert.Equal(HttpStatusCode.BadRequest, without.StatusCode);
        using var gone = await browser.PostAsync(address, fields.With(("Step", "groove:Z:nowhere")));
        Assert.Equal(HttpStatusCode.NotFound, gone.StatusCode);
        Assert.Null((await ReadAsync(server, project)).Undo);
    }

    [Fact]
    public async Task Where_an_opening_was_measured_the_bench_says_what_its_doors_are_trimmed_to()
    {
        await using var server = await ShopServer.OpenAsync();
        using var browser = server.Browse();
        var project = await BeginAsync(server, "pantry-cupboard");
        Assert.Empty((await browser.OpenAsync(Links.BenchSteps(project))).QuerySelectorAll(".work-fit"));

        var view = await ReadAsync(server, project);
        var step = view.Steps.First(one => !one.Openings.IsEmpty);
        var (opening, work) = (step.Openings[0], server.Get<IWorkService>());
        var texts = (await work.TextsAsync(project, step.Step.Id, Cancel))!;
        var measured = texts
            .Measured.SetItem(opening.WidthKey, LengthFormat.Exact(opening.Drawn.Width, view.Unit))
            .SetItem(opening.HeightKey, LengthFormat.Exact(opening.Drawn.Height, view.Unit));
        Assert.True((await work.SaveTextsAsync(texts with { Measured = measured }, Cancel)).Ok);

        var line = Assert.Single((await browser.OpenAsync(Links.BenchSteps(project))).QuerySelectorAll(".work-fit")).TextContent;
        var now = (await ReadAsync(server, project)).Steps.Single(one => one.Step.Id == step.Step.Id).Openings[0];
        Assert.Contains(LengthFormat.WithUnit(now.Fit!.Trim!.Width.Value, view.Unit) + " wide", line, StringComparison.Ordinal);
    }

    private static async Task<Guid> BeginAsync(ShopServer server, string design = "bookcase") =>
        (await server.Get<IIdeaService>().BeginAsync(design, "Hall cupboard", CommandId.New(), Cancel)).Value!.Id;

    private static async Task<WorkView> ReadAsync(ShopServer server, Guid project) =>
        (await server.Get<IWorkService>().GetAsync(project, Cancel))!;
}
