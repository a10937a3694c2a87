using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using ShopPlanner.Services.Making.Stored;
using ShopPlanner.Services.Trash;
using static ShopPlanner.Services.Tests.Making.WorkProjects;

namespace ShopPlanner.Services.Tests.Making;

/// <summary>The order of work of a project with its builder's hand in it.</summary>
public sealed class WorkTests
{
    [Fact]
    public async Task A_project_without_design_and_parts_has_no_steps()
    {
        await using var given = await OfPartsAsync();
        var view = await given.ReadAsync();
        Assert.Equal((WorkBasis.Nothing, 0), (view.Basis, view.Steps.Length));
        Assert.Null(await given.Work.GetAsync(Guid.NewGuid(), Cancel));
    }

    [Fact]
    public async Task Steps_follow_from_the_design_and_each_comes_after_what_it_waits_for()
    {
        await using var given = await OfDesignAsync();
        var view = await given.ReadAsync();
        Assert.Equal(WorkBasis.Design, view.Basis);
        Assert.NotEmpty(view.On(WorkPage.Build));
        Assert.NotEmpty(view.On(WorkPage.Finish));
        foreach (var (i, one) in view.Steps.Index())
            Assert.Subset(view.Steps.Take(i).Select(s => s.Step.Id).ToHashSet(), one.Step.After.ToHashSet());
    }

    [Fact]
    public async Task What_is_done_and_written_is_kept_by_the_step_through_a_change_of_sizes()
    {
        await using var given = await OfDesignAsync();
        var (first, second) = ((await given.ReadAsync()).Steps[0].Step.Id, (await given.ReadAsync()).Steps[1].Step.Id);
        await given.MarkAsync(first, StepMark.Done);
        await given.WriteAsync(second, texts => texts with { Note = "Ask Sam to hold it", Says = "Slowly.\n\nThen fast." });
        var before = (await given.ReadAsync()).Steps.Select(one => one.Step.Id);
        await given.ResizeAsync("width", "28");
        await given.ResizeAsync("depth", "11");
        var view = await given.ReadAsync();
        Assert.Equal(before, view.Steps.Select(one => one.Step.Id));
        var (done, written) = (view.Steps.Single(one => one.Step.Id == first), view.Steps.Single(one => one.Step.Id == second));
        Assert.Equal((StepMark.Done, new DateTime(2026, 5, 2, 9, 30, 0, DateTimeKind.Utc)), (done.Mark, done.DoneUtc));
        Assert.Equal("Ask Sam to hold it", written.Note);
        Assert.Equal(["Slowly.", "Then fast."], written.Says);
        Assert.True(written.IsEdited);
    }

    [Fact]
    public async Task A_step_that_says_something_else_since_it_was_done_stays_done_and_says_what_it_said()
    {
        await using var given = await OfDesignAsync();
        var step = (await given.ReadAsync()).Steps[0];
        await given.MarkAsync(step.Step.Id, StepMark.Done);
        Assert.False((await given.ReadAsync()).Steps[0].IsChangedSinceDone);
        var kept = StoredStep.New(step.Step.Id) with
        {
            Title = step.Title,
            DoneUtc = DateTime.UnixEpoch,
            DoneAs = [step.Step.Title, "Fence to bit: 1/4″"],
        };
        await given.StoreAsync(WorkDocument.Empty.With(kept));
        var changed = (await given.ReadAsync()).Steps[0];
        Assert.Equal((StepMark.Done, true), (changed.Mark, changed.IsChangedSinceDone));
        Assert.Equal(["Fence to bit: 1/4″"], changed.DoneAs);
        var again = (await given.MarkAsync(step.Step.Id, StepMark.Done)).Steps[0];
        Assert.Equal((StepMark.Done, false, DateTime.UnixEpoch), (again.Mark, again.IsChangedSinceDone, again.DoneUtc));
    }

    [Fact]
    public async Task What_was_kept_for_a_step_that_is_gone_is_shown_until_it_is_removed()
    {
        await using var given = await OfDesignAsync();
        var gone = StoredStep.New("groove:Z:case") with
        {
            Title = "Groove the rails",
            DoneUtc = DateTime.UnixEpoch,
            Note = "Test first",
        };
        await given.StoreAsync(WorkDocument.Empty.With(gone));
        var lost = Assert.Single((await given.ReadAsync()).Lost);
        Assert.Equal(("Groove the rails", StepMark.Done), (lost.Title, lost.Mark));
        Assert.Equal(["Test first"], lost.Lines);
        Assert.Empty(Value(await given.Work.RemoveAsync(given.Project, lost.Id, Cancel)).Lost);
        Assert.Equal(OutcomeKind.Missing, (await given.Work.RemoveAsync(given.Project, lost.Id, Cancel)).Kind);
        Assert.Equal(
            OutcomeKind.Missing,
            (await given.Work.MarkAsync(given.Project, lost.Id, StepMark.Done, CommandId.New(), Cancel)).Kind
        );
    }

    [Fact]
    public async Task A_step_waits_for_what_is_neither_done_nor_skipped()
    {
        await using var given = await OfDesignAsync();
        var view = await given.ReadAsync();
        var step = view.Steps.First(one => one.Step.After.Length > 0);
        Assert.Equal(step.Step.After.Length, step.WaitsFor.Length);
        foreach (var (i, id) in step.Step.After.Index())
            view = await given.MarkAsync(id, i % 2 == 0 ? StepMark.Done : StepMark.Skipped);
        Assert.Empty(view.Steps.Single(one => one.Step.Id == step.Step.Id).WaitsFor);
        view = await given.MarkAsync(step.Step.After[0], StepMark.Open);
        Assert.Single(view.Steps.Single(one => one.Step.Id == step.Step.Id).WaitsFor);
    }

    [Fact]
    public async Task A_step_that_has_to_wait_is_not_moved_and_the_reason_names_the_other()
    {
        await using var given = await OfDesignAsync();
        var steps = (await given.ReadAsync()).On(WorkPage.Build).ToList();
        var at = steps.FindIndex(1, one => one.Step.After.Contains(steps[steps.IndexOf(one) - 1].Step.Id));
        var (before, held) = (steps[at - 1], steps[at]);
        var up = await given.Work.MoveAsync(given.Project, held.Step.Id, WorkPage.Build, true, CommandId.New(), Cancel);
        Assert.Equal(OutcomeKind.Faulty, up.Kind);
        Assert.Contains($"‘{before.Title}’ has to be done first", Assert.Single(up.Faults).Message);
        var down = await given.Work.MoveAsync(given.Project, before.Step.Id, WorkPage.Build, false, CommandId.New(), Cancel);
        Assert.Contains($"‘{held.Title}’ needs it done", Assert.Single(down.Faults).Message);
        var first = await given.Work.MoveAsync(given.Project, steps[0].Step.Id, WorkPage.Build, true, CommandId.New(), Cancel);
        Assert.Contains("is the first already", Assert.Single(first.Faults).Message);
    }

    [Fact]
    public async Task A_step_of_her_own_is_added_moved_edited_and_removed()
    {
        await using var given = await OfDesignAsync();
        var planned = (await given.ReadAsync()).On(WorkPage.Build).Count();
        var view = await given.AddAsync("Fit the  toe kick", "Cut it to fit.\n\nNail it.");
        var own = view.On(WorkPage.Build).Last();
        Assert.Equal(("Fit the toe kick", true, planned + 1), (own.Title, own.IsOwn, view.On(WorkPage.Build).Count()));
        Assert.Equal(["Cut it to fit.", "Nail it."], own.Says);
        for (var i = 0; i < planned; i++)
            view = Value(await given.Work.MoveAsync(given.Project, own.Step.Id, WorkPage.Build, true, CommandId.New(), Cancel));
        Assert.Equal(own.Step.Id, view.On(WorkPage.Build).First().Step.Id);
        await given.ResizeAsync("width", "28");
        Assert.Equal(own.Step.Id, (await given.ReadAsync()).On(WorkPage.Build).First().Step.Id);
        await given.WriteAsync(own.Step.Id, texts => texts with { Title = "Toe kick", Says = "" });
        Assert.Equal("Toe kick", (await given.ReadAsync()).On(WorkPage.Build).First().Title);
        var texts = (await given.Work.TextsAsync(given.Project, own.Step.Id, Cancel))!;
        var empty = await given.Work.SaveTextsAsync(texts with { Title = " " }, Cancel);
        Assert.Equal(("title", OutcomeKind.Faulty), (Assert.Single(empty.Faults).Field, empty.Kind));
        view = Value(await given.Work.RemoveAsync(given.Project, own.Step.Id, Cancel));
        Assert.Equal((planned, 0), (view.On(WorkPage.Build).Count(), view.Lost.Length));
    }

    [Fact]
    public async Task The_plans_words_come_back_when_hers_are_erased()
    {
        await using var given = await OfDesignAsync();
        var step = (await given.ReadAsync()).Steps[0];
        await given.WriteAsync(step.Step.Id, texts => texts with { Title = "My way", Says = "As I like." });
        var edited = (await given.ReadAsync()).Steps[0];
        Assert.Equal(("My way", true), (edited.Title, edited.IsEdited));
        Assert.Empty(edited.WrittenFor);
        await given.WriteAsync(step.Step.Id, texts => texts with { Title = "", Says = "" });
        var back = (await given.ReadAsync()).Steps[0];
        Assert.Equal((step.Title, false), (back.Title, back.IsEdited));
        Assert.Equal(step.Says, back.Says);
    }

    [Fact]
    public async Task Words_written_for_what_the_plan_said_before_say_so()
    {
        await using var given = await OfDesignAsync();
        var id = (await given.ReadAsync()).Steps[0].Step.Id;
        var kept = StoredStep.New(id) with { Title = "Old", Words = new("Mine", [], ["Old", "Set the fence to 3 in."]) };
        await given.StoreAsync(WorkDocument.Empty.With(kept));
        Assert.Equal(["Old", "Set the fence to 3 in."], (await given.ReadAsync()).Steps[0].WrittenFor);
    }

    [Fact]
    public async Task Changes_are_taken_back_and_done_again_one_by_one()
    {
        await using var given = await OfDesignAsync();
        var id = (await given.ReadAsync()).Steps[0].Step.Id;
        await given.MarkAsync(id, StepMark.Done);
        var view = await given.AddAsync("Fit the toe kick");
        Assert.Equal("new step Fit the toe kick", view.Undo);
        view = Value(await given.Work.UndoAsync(given.Project, view.Version, Cancel));
        Assert.Equal((StepMark.Done, "new step Fit the toe kick"), (view.Steps[0].Mark, view.Redo));
        view = Value(await given.Work.UndoAsync(given.Project, view.Version, Cancel));
        Assert.Equal((StepMark.Open, (string?)null), (view.Steps[0].Mark, view.Undo));
        Assert.Equal(OutcomeKind.Faulty, (await given.Work.UndoAsync(given.Project, view.Version, Cancel)).Kind);
        view = Value(await given.Work.RedoAsync(given.Project, view.Version, Cancel));
        Assert.Equal(StepMark.Done, view.Steps[0].Mark);
        var late = await given.Work.RedoAsync(given.Project, view.Version - 1, Cancel);
        Assert.Equal(OutcomeKind.Conflict, late.Kind);
    }

    [Fact]
    public async Task Another_devices_texts_are_not_overwritten()
    {
        await using var given = await OfDesignAsync();
        var id = (await given.ReadAsync()).Steps[0].Step.Id;
        var read = (await given.Work.TextsAsync(given.Project, id, Cancel))!;
        await given.WriteAsync(id, texts => texts with { Note = "First" });
        var late = await given.Work.SaveTextsAsync(read with { Note = "Second" }, Cancel);
        Assert.Equal(OutcomeKind.Conflict, late.Kind);
        Assert.Equal("First", (await given.ReadAsync()).Steps[0].Note);
    }

    [Fact]
    public async Task Parts_without_a_design_have_work_and_finish_but_no_assembly()
    {
        await using var given = await OfPartsAsync("34 1/2", "12 1/0");
        var shelf = Some.Part("18") with { Name = "Shelf", LongBy = "1/2" };
        Assert.True((await given.Shop.Parts.SaveAsync(given.Project, [Some.New(shelf)], Cancel)).Ok);
        var view = await given.ReadAsync();
        Assert.Equal(WorkBasis.Parts, view.Basis);
        Assert.Null(view.Piece);
        Assert.Equal(
            [WorkPhase.Parts, WorkPhase.FinishBefore, WorkPhase.Finish],
            view.Steps.Select(one => one.Step.Phase).Distinct()
        );
        Assert.Equal(["Leg", "Shelf"], view.Names.Values.Order());
        Assert.Equal(view.Names.Keys.Order(), view.Finish!.Areas.Select(area => area.Part));
        // What is cut long is cut to size before it is sanded.
        var size = view.Steps.Single(one => one.Step.Action == WorkAction.TrimToSize).Step;
        Assert.Equal("Shelf", view.Names[Assert.Single(size.Handles)]);
        Assert.Contains(size.Settings, figure => figure.Value == Core.Measures.Length.FromInches(18));
        var sand = view.Steps.First(one => one.Step.Action == WorkAction.Sand).Step;
        Assert.Contains(size.Id, sand.After);
        Assert.Empty(view.Findings);
        Assert.Equal("Glue it", (await given.AddAsync("Glue it")).On(WorkPage.Build).Last().Title);
    }

    [Fact]
    public async Task Parts_by_the_thousand_are_told_by_their_letter_and_take_their_time()
    {
        await using var given = await OfPartsAsync();
        var pegs = Some.Part("4", quantity: "9999");
        Assert.True((await given.Shop.Parts.SaveAsync(given.Project, [Some.New(pegs)], Cancel)).Ok);
        var ease = (await given.ReadAsync()).Steps.Single(one => one.Step.Action == WorkAction.EaseEdges).Step;
        Assert.Single(ease.Handles);
        Assert.InRange(ease.Minutes, 10_000, 30_000);
    }

    [Fact]
    public async Task A_copy_of_a_project_begins_with_what_was_decided_and_nothing_done()
    {
        await using var given = await OfDesignAsync();
        var id = (await given.ReadAsync()).Steps[0].Step.Id;
        await given.MarkAsync(id, StepMark.Done);
        await given.WriteAsync(id, texts => texts with { Note = "Ask Sam" });
        await given.AddAsync("Fit the toe kick");
        var copies = given.Shop.Get<Services.Designs.IProjectCopies>();
        var copy = Value(await copies.DuplicateAsync(given.Project, CommandId.New(), Cancel));
        var view = (await given.Work.GetAsync(copy.Id, Cancel))!;
        Assert.Equal((StepMark.Open, "Ask Sam"), (view.Steps[0].Mark, view.Steps[0].Note));
        Assert.Contains(view.Steps, one => one is { IsOwn: true, Title: "Fit the toe kick" });
        Assert.Null(view.Undo);
    }

    [Fact]
    public async Task The_work_of_a_project_rests_in_the_trash_with_it_and_ends_with_it()
    {
        await using var given = await OfDesignAsync();
        var id = (await given.ReadAsync()).Steps[0].Step.Id;
        await given.MarkAsync(id, StepMark.Done);
        var trash = given.Shop.Get<ITrashService>();
        Value(await trash.DeleteAsync(given.Project, Cancel));
        Assert.Null(await given.Work.GetAsync(given.Project, Cancel));
        var late = await given.Work.MarkAsync(given.Project, id, StepMark.Open, CommandId.New(), Cancel);
        Assert.Equal(OutcomeKind.Missing, late.Kind);
        Value(await trash.RestoreAsync(given.Project, Cancel));
        Assert.Equal(StepMark.Done, (await given.ReadAsync()).Steps[0].Mark);
        Value(await trash.DeleteAsync(given.Project, Cancel));
        await given.Shop.Work.WriteAsync(
            db => TrashedProjects.RemoveOldAsync(db, given.Shop.Clock.GetUtcNow().UtcDateTime.AddDays(31), Cancel),
            Cancel
        );
        Assert.Equal(
            ("0", "0"),
            (given.Shop.Ask("SELECT COUNT(*) FROM ProjectWork"), given.Shop.Ask("SELECT COUNT(*) FROM WorkChanges"))
        );
    }
}
