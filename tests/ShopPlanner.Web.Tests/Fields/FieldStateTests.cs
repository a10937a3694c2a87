using ShopPlanner.Web.Fields;

namespace ShopPlanner.Web.Tests.Fields;

public sealed class FieldStateTests
{
    private readonly FieldState state = new(FieldKind.Saved);
    private string stored = "1/8";
    private long seq;

    public FieldStateTests() => state.Follow(stored);

    [Fact]
    public async Task What_is_stored_is_shown_and_answered()
    {
        await TypeAsync("3/16", "1/8");
        Assert.Equal(("3/16", "3/16", 1L), (state.Kept, state.Shown, state.Answered));
    }

    [Fact]
    public async Task What_is_refused_is_shown_and_not_called_stored()
    {
        await TypeAsync("thick", "1/8", FieldAnswer.Refused);
        Assert.Equal(("1/8", "thick", 1L), (state.Kept, state.Shown, state.Answered));
        state.Follow(stored);
        Assert.Equal("thick", state.Shown);
    }

    [Fact]
    public async Task A_text_typed_over_what_is_no_longer_there_is_a_conflict_and_stores_nothing()
    {
        stored = "5/32";
        state.Follow(stored);
        await TypeAsync("3/16", "1/8");
        Assert.Equal(("5/32", "3/16", "5/32"), (state.Kept, state.Mine, stored));
        await state.KeepMineAsync(StoreAsync, () => stored);
        Assert.Equal(("3/16", (string?)null, "3/16"), (state.Kept, state.Mine, stored));
    }

    [Fact]
    public async Task Letting_go_shows_the_other_devices_text_and_tells_the_browser()
    {
        stored = "5/32";
        state.Follow(stored);
        await TypeAsync("3/16", "1/8");
        state.TakeTheirs();
        Assert.Equal(("5/32", 1), (state.Shown, state.Round));
    }

    [Fact]
    public async Task A_text_typed_before_the_last_one_was_answered_is_no_conflict()
    {
        await TypeAsync("3/16", "1/8");
        await TypeAsync("3/32", "1/8");
        Assert.Equal(("3/32", (string?)null), (stored, state.Mine));
    }

    [Fact]
    public async Task A_text_that_comes_in_twice_is_stored_once()
    {
        var stores = 0;
        Task Count(FieldChange change)
        {
            stores++;
            return StoreAsync(change);
        }

        var typed = new TypedEventArgs
        {
            Value = "3/16",
            Base = "1/8",
            Seq = 7,
        };
        await state.TakeAsync(typed, Count, () => stored);
        await state.TakeAsync(typed, Count, () => stored);
        Assert.Equal(1, stores);
    }

    [Fact]
    public async Task A_conflict_over_another_field_is_tried_again()
    {
        var tries = 0;
        await state.TakeAsync(
            new TypedEventArgs
            {
                Value = "3/16",
                Base = "1/8",
                Seq = 1,
            },
            change =>
            {
                if (++tries < 3)
                    change.Answer = FieldAnswer.Conflict;
                else
                    stored = change.Value;
                return Task.CompletedTask;
            },
            () => stored
        );
        Assert.Equal((3, "3/16", (string?)null), (tries, state.Kept, state.Mine));
    }

    [Fact]
    public async Task Answers_that_come_in_any_order_leave_the_newest_text()
    {
        var random = new Random(20261127);
        for (var round = 0; round < 300; round++)
        {
            var (field, now) = (new FieldState(FieldKind.Saved), "0");
            field.Follow(now);
            var waiting = new List<(TaskCompletionSource Gate, Task Answer)>();
            for (var i = 1; i <= 6; i++)
            {
                var gate = new TaskCompletionSource();
                var typed = new TypedEventArgs
                {
                    Value = $"{i}",
                    Base = "0",
                    Seq = i,
                };
                waiting.Add(
                    (
                        gate,
                        field.TakeAsync(
                            typed,
                            async change =>
                            {
                                await gate.Task;
                                if (int.Parse(change.Value) > int.Parse(now))
                                    now = change.Value;
                            },
                            () => now
                        )
                    )
                );
            }

            foreach (var one in waiting.OrderBy(_ => random.Next()))
                one.Gate.SetResult();
            await Task.WhenAll(waiting.Select(one => one.Answer));
            Assert.Equal(("6", "6", 6L), (field.Kept, field.Shown, field.Answered));
        }
    }

    private Task TypeAsync(string text, string @base, FieldAnswer answer = FieldAnswer.Stored) =>
        state.TakeAsync(
            new TypedEventArgs
            {
                Value = text,
                Base = @base,
                Seq = ++seq,
            },
            change =>
            {
                change.Answer = answer;
                return answer == FieldAnswer.Stored ? StoreAsync(change) : Task.CompletedTask;
            },
            () => stored
        );

    private Task StoreAsync(FieldChange change)
    {
        stored = change.Value;
        return Task.CompletedTask;
    }
}
