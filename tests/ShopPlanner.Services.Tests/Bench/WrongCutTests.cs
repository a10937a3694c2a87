using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Bench.Wrong;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Tests.Bench;

/// <summary>A cut goes wrong. Three legs of 30 in: the first from an offcut of 41 3/8 in (board 1), two from a new board of 96 in
/// (board 2).</summary>
public sealed class WrongCutTests : WrongCutTest
{
    [Fact]
    public async Task The_pieces_of_the_cut_and_what_is_still_to_be_cut_can_be_said()
    {
        await TickAsync(1, 1);
        var start = (await Wrong.OfCutAsync(PlanId, 2, 2, TestShop.Cancel))!;
        Assert.Equal([("A3", true), ("A2", false)], start.Given.Select(piece => (piece.Mark, piece.IsOfCut)));
        Assert.Equal(["35 3/4"], start.Rests.Select(rest => LengthFormat.Exact(rest.Dx, Some.Inch)));
        Assert.Null(await Wrong.OfCutAsync(PlanId, 2, 9, TestShop.Cancel));
        Assert.Null(await Wrong.OfCutAsync(PlanId, 9, 1, TestShop.Cancel));
        Assert.Null(await Wrong.OfCutAsync(Guid.CreateVersion7(), 1, 1, TestShop.Cancel));
    }

    [Fact]
    public async Task Looking_at_a_new_plan_changes_nothing()
    {
        var (rows, changes) = (Given.Shop.CountRows(), Given.Shop.Work.Changes);
        var proposal = await ProposeAsync(Spoiled(2, 1, 0, "29"));
        Assert.Equal(rows, Given.Shop.CountRows());
        Assert.Equal(changes, Given.Shop.Work.Changes);
        Assert.Equal(3, proposal.Plan.Request.Parts.Single().Quantity);
        Assert.Equal(
            [(2, "B2 B3")],
            proposal.Stopped.Select(one => (one.Number, string.Join(' ', one.Pieces.Select(p => p.Tag))))
        );
        Assert.Equal(("A2", "B3"), (proposal.Left.Single().Mark, proposal.Left.Single().Left!.Tag));
    }

    // B1 gives one leg and the rest of 65 7/8 in two more: nothing is bought beyond the board that was begun.
    [Fact]
    public async Task The_rest_of_the_board_in_hand_is_planned_before_the_store()
    {
        var proposal = await ProposeAsync(Spoiled(2, 1, 0, "29"));
        Assert.Equal((Money.Zero, Money.Zero), (proposal.ToBuy, proposal.Extra));
        Assert.Equal(["B1", "B2"], proposal.Plan.Plan.Layouts.Select(layout => layout.Stock).Order(StringComparer.Ordinal));
        Assert.Empty(proposal.Plan.Plan.Unplaced);
    }

    [Fact]
    public async Task What_is_left_of_a_piece_tells_what_it_could_become()
    {
        await Given.Shop.Parts.SaveAsync(Given.Project.Id, [Some.New(Some.Part("20", "B", "1"))], TestShop.Cancel);
        PlanId = (await Given.PlanAsync(Given.Order(replaces: PlanId))).Summary.Id;
        var board = (await Given.Shop.Bench.GetAsync(PlanId, TestShop.Cancel))!;
        var leg = board.Stocks.First(stock => stock.Cuts[0].Cut.FirstPart!.EndsWith('A'));
        var proposal = await ProposeAsync(Spoiled(leg.Number, 1, 0, "29"));
        Assert.Equal(["B Leg"], proposal.Left.Single().CouldBe);
    }

    [Fact]
    public async Task Accepted_the_piece_is_needed_again_and_what_was_cut_stays_cut()
    {
        await TickAsync(1, 1);
        var wrong = Spoiled(2, 2, 1, "");
        var view = await AcceptAsync(wrong with { Pieces = [wrong.Pieces[0] with { Keep = false }] });
        Assert.Equal(PlanState.Withdrawn, (await Given.ReadAsync(PlanId)).Summary.State);
        var rest = await Given.ReadAsync(view.RestPlan!.Value);
        Assert.Equal((2, 1), (rest.Request.Parts.Single().Quantity, rest.CutBefore.Values.Single()));
        Assert.Empty(rest.Changes);
        Assert.Equal(["A3"], view.Marks);
        Assert.Equal(
            [("B2", "35 3/4")],
            view.Stopped.Single().Pieces.Select(one => (one.Tag, LengthFormat.Exact(one.Length, Some.Inch)))
        );
    }

    [Fact]
    public async Task Taken_back_the_shop_is_as_it_was()
    {
        await TickAsync(1, 1);
        var (before, bench) = (await StateAsync(), await BenchAsync(PlanId));
        var view = await AcceptAsync(Spoiled(2, 2, 1, "29"));
        var undone = await Wrong.UndoAsync(view.Id, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.True(undone.Ok, string.Join("; ", undone.Faults));
        Assert.Equal(before, await StateAsync());
        Assert.Equal(bench, await BenchAsync(PlanId));
        Assert.False((await Wrong.FindAsync(view.Id, TestShop.Cancel))!.Standing);
        Assert.Equal(PlanState.Withdrawn, (await Given.ReadAsync(view.RestPlan!.Value)).Summary.State);
        var twice = await Wrong.UndoAsync(view.Id, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, twice.Kind);
    }

    [Fact]
    public async Task With_a_cut_of_the_new_plan_done_it_is_not_taken_back()
    {
        var view = await AcceptAsync(Spoiled(2, 1, 0, "29"));
        var cut = await Given.Shop.Bench.SetCutAsync(
            view.RestPlan!.Value,
            0,
            1,
            1,
            true,
            Some.Device,
            CommandId.New(),
            TestShop.Cancel
        );
        Assert.True(cut.Ok);
        var rows = Given.Shop.CountRows();
        var undone = await Wrong.UndoAsync(view.Id, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, undone.Kind);
        Assert.Contains("cuts done by the new plan", undone.Faults.Single().Message, StringComparison.Ordinal);
        Assert.Equal(rows, Given.Shop.CountRows());
    }

    [Fact]
    public async Task What_changed_meanwhile_is_looked_at_once_more()
    {
        var wrong = Spoiled(2, 1, 0, "29");
        var key = (await ProposeAsync(wrong)).Key;
        await Given.OffcutAsync("60");
        var late = await Wrong.AcceptAsync(wrong, key, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, late.Kind);
        Assert.Contains("look at it once more", late.Faults.Single().Message, StringComparison.Ordinal);
        Assert.Equal(PlanState.Ready, (await Given.ReadAsync(PlanId)).Summary.State);
    }

    // Two tablets look at the same, and both accept.
    [Fact]
    public async Task The_second_to_accept_is_told()
    {
        var wrong = Spoiled(2, 1, 0, "29");
        var (mine, yours) = ((await ProposeAsync(wrong)).Key, (await ProposeAsync(wrong)).Key);
        Assert.True((await Wrong.AcceptAsync(wrong, mine, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        var second = await Wrong.AcceptAsync(wrong, yours, "another tablet", CommandId.New(), TestShop.Cancel);
        Assert.NotEqual(OutcomeKind.Ok, second.Kind);
        Assert.Single(await Given.Shop.Plans.ListAsync(cancel: TestShop.Cancel));
    }

    [Fact]
    public async Task Only_noted_the_board_stays_in_hand_and_the_piece_is_needed_again()
    {
        var noted = await NoteAsync(Spoiled(2, 1, 0, "29"));
        Assert.Equal(["B2"], noted.Left.Select(one => one.Tag));
        var view = (await Given.Shop.Bench.GetAsync(PlanId, TestShop.Cancel))!;
        Assert.Equal((false, true), (view.Stocks[1].Finished, view.Stocks[1].Cuts[0].Made));
        Assert.Equal(3, await WantedAsync());
        var untick = await Given.Shop.Bench.SetCutAsync(PlanId, 1, 1, 1, false, Some.Device, CommandId.New(), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Conflict, untick.Kind);
        Assert.True((await Wrong.UndoAsync(noted.Id, Some.Device, CommandId.New(), TestShop.Cancel)).Ok);
        Assert.DoesNotContain(await Given.Shop.Stock.ListAsync(TestShop.Cancel), piece => piece.Tag == "B2");
        Assert.False((await Given.Shop.Bench.GetAsync(PlanId, TestShop.Cancel))!.Stocks[1].Cuts[0].Made);
    }

    [Theory]
    [InlineData("120", "is larger than what it was cut from, 96″ × 2 ½″; about 30″ × 2 ½″")]
    [InlineData("0", "must be more than zero")]
    [InlineData("-3", "less than zero")]
    [InlineData("762", "if you measured in millimeters, write 762 mm")]
    public async Task A_size_that_cannot_be_is_refused_with_what_would_be_right(string length, string said)
    {
        var rows = Given.Shop.CountRows();
        var outcome = await Wrong.ProposeAsync(Spoiled(2, 1, 0, length), TestShop.Cancel);
        Assert.Equal(OutcomeKind.Faulty, outcome.Kind);
        Assert.Equal("pieces[0].Length", outcome.Faults.Single().Field);
        Assert.Contains(said, outcome.Faults.Single().Message, StringComparison.Ordinal);
        Assert.Equal(rows, Given.Shop.CountRows());
    }

    [Fact]
    public async Task Nothing_wrong_is_no_wrong_cut()
    {
        var none = new WrongCut(PlanId, 2, 1, WrongReason.Other, [], []);
        Assert.Equal(OutcomeKind.Faulty, (await Wrong.ProposeAsync(none, TestShop.Cancel)).Kind);
        var notCut = Spoiled(2, 1, 1, "29");
        Assert.Equal(OutcomeKind.Faulty, (await Wrong.ProposeAsync(notCut, TestShop.Cancel)).Kind);
    }

    // The first cut left less than planned: 60 in, room for one leg less.
    [Fact]
    public async Task A_rest_of_another_size_is_planned_as_it_measures()
    {
        var start = (await Wrong.OfCutAsync(PlanId, 2, 1, TestShop.Cancel))!;
        var wrong = new WrongCut(PlanId, 2, 1, WrongReason.Other, [], [new MeasuredRest(start.Rests.Single(), "29", "2 1/2")]);
        var proposal = await ProposeAsync(wrong);
        Assert.Equal(2, proposal.Plan.Request.Parts.Single().Quantity);
        Assert.Equal(Money.From(6.48m), proposal.Extra);
    }
}
