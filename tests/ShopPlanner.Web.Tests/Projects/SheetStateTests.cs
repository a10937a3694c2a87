using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Projects;
using ShopPlanner.Web.Features.Projects;

namespace ShopPlanner.Web.Tests.Projects;

/// <summary>Typing, saving and other devices: nothing typed is lost, nothing of others is overwritten unseen.</summary>
public sealed class SheetStateTests
{
    private readonly FakeParts parts = new();

    [Fact]
    public async Task An_empty_last_row_always_waits()
    {
        var sheet = await OpenAsync();
        Assert.True(Assert.Single(sheet.Rows).IsBlank);
        var first = sheet.Rows[0];
        await sheet.TypeAsync(first, first.Texts with { Name = "Leg" });
        Assert.Same(first, sheet.Rows[0]);
        Assert.NotNull(first.Stored);
        Assert.True(sheet.Rows[1].IsBlank);
    }

    [Fact]
    public async Task What_is_typed_while_a_save_is_under_way_goes_out_with_the_next()
    {
        parts.Add("A", "Leg", "10");
        var sheet = await OpenAsync();
        parts.Gate = new TaskCompletionSource();
        var row = sheet.Rows[0];
        var first = sheet.TypeAsync(row, row.Texts with { Length = "11" });
        var second = sheet.TypeAsync(row, row.Texts with { Length = "12" });
        Assert.Equal(SheetSaving.Saving, sheet.Saving);
        Assert.Single(parts.Saves);
        parts.Gate.SetResult();
        await Task.WhenAll(first, second);
        Assert.Equal("12", parts.Rows[0].Texts.Length);
        Assert.Equal("12", row.Texts.Length);
        Assert.Equal(2, parts.Saves.Count);
        Assert.Equal(SheetSaving.Saved, sheet.Saving);
    }

    [Fact]
    public async Task A_refused_save_keeps_the_typing_and_can_be_repeated()
    {
        parts.Add("A", "Leg", "10");
        var sheet = await OpenAsync();
        parts.Refusal = new Fault("disk", "", "is full");
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "11" });
        Assert.Equal(SheetSaving.NotSaved, sheet.Saving);
        Assert.Equal("is full", Assert.Single(sheet.Faults).Message);
        parts.Refusal = null;
        await sheet.SaveAsync();
        Assert.Equal("11", parts.Rows[0].Texts.Length);
        Assert.Equal(SheetSaving.Saved, sheet.Saving);
    }

    [Fact]
    public async Task Two_devices_in_one_row_show_both_values()
    {
        var (sheet, row, _) = await ContestedAsync();
        Assert.Contains("you typed ‘11’; it is now ‘12’", ConflictWords.Of(row), StringComparison.Ordinal);
        Assert.Equal("12", parts.Rows[0].Texts.Length);
        Assert.Equal(SheetSaving.Saved, sheet.Saving);
    }

    [Fact]
    public async Task My_value_can_be_kept()
    {
        var (sheet, row, _) = await ContestedAsync();
        await sheet.KeepMineAsync(row);
        Assert.Equal("11", parts.Rows[0].Texts.Length);
        Assert.False(row.IsContested);
    }

    [Fact]
    public async Task Their_value_can_be_taken()
    {
        var (sheet, row, _) = await ContestedAsync();
        await sheet.TakeTheirsAsync(row);
        Assert.Equal("12", sheet.Rows[0].Texts.Length);
        Assert.False(sheet.Rows[0].IsContested);
    }

    [Fact]
    public async Task A_conflict_in_one_row_holds_no_other_row_back()
    {
        var (sheet, _, other) = await ContestedAsync();
        await sheet.TypeAsync(other, other.Texts with { Length = "21" });
        Assert.Equal("21", parts.Rows[1].Texts.Length);
    }

    [Fact]
    public async Task A_row_that_another_device_took_out_can_be_put_back()
    {
        var id = parts.Add("A", "Leg", "10").Id;
        var sheet = await OpenAsync();
        var row = sheet.Rows[0];
        parts.RemoveElsewhere(id);
        await sheet.TypeAsync(row, row.Texts with { Length = "11" });
        Assert.True(row.IsGone);
        await sheet.KeepMineAsync(row);
        Assert.Equal("11", Assert.Single(parts.Rows).Texts.Length);
    }

    [Fact]
    public async Task Rows_that_did_not_change_are_not_drawn_again()
    {
        parts.Add("A", "Leg", "10");
        parts.Add("B", "Rail", "20");
        var sheet = await OpenAsync();
        var stamp = sheet.Rows[1].Stamp;
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "11" });
        Assert.Equal(stamp, sheet.Rows[1].Stamp);
    }

    [Fact]
    public async Task Two_quick_presses_take_two_steps_back()
    {
        parts.Add("A", "Leg", "10");
        var sheet = await OpenAsync();
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "11" });
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "12" });
        parts.Gate = new TaskCompletionSource();
        var presses = Task.WhenAll(sheet.UndoAsync(), sheet.UndoAsync());
        parts.Gate.SetResult();
        await presses;
        Assert.Equal("10", sheet.Rows[0].Texts.Length);
        Assert.Empty(sheet.Faults);
    }

    [Fact]
    public async Task What_was_typed_and_is_not_stored_yet_is_the_step_that_is_taken_back()
    {
        parts.Add("A", "Leg", "10");
        var sheet = await OpenAsync();
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "11" });
        parts.Gate = new TaskCompletionSource();
        var typing = sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "12" });
        var press = sheet.UndoAsync();
        parts.Gate.SetResult();
        await Task.WhenAll(typing, press);
        Assert.Equal("11", sheet.Rows[0].Texts.Length);
    }

    [Fact]
    public async Task A_press_behind_one_that_was_refused_takes_nothing_of_another_device_back()
    {
        parts.Add("A", "Leg", "10");
        var sheet = await OpenAsync();
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "11" });
        parts.StepElsewhere();
        parts.Gate = new TaskCompletionSource();
        var presses = Task.WhenAll(sheet.UndoAsync(), sheet.UndoAsync());
        parts.Gate.SetResult();
        await presses;
        Assert.Equal(("11", 1), (sheet.Rows[0].Texts.Length, parts.Undos));
        Assert.Equal("is not the last step", Assert.Single(sheet.Faults).Message);
    }

    private async Task<SheetState> OpenAsync()
    {
        var sheet = new SheetState(parts, parts.Project);
        Assert.True(await sheet.LoadAsync(TestContext.Current.CancellationToken));
        return sheet;
    }

    private async Task<(SheetState Sheet, SheetRow Contested, SheetRow Other)> ContestedAsync()
    {
        var id = parts.Add("A", "Leg", "10").Id;
        parts.Add("B", "Rail", "20");
        var sheet = await OpenAsync();
        parts.ChangeElsewhere(id, "12");
        await sheet.TypeAsync(sheet.Rows[0], sheet.Rows[0].Texts with { Length = "11" });
        Assert.True(sheet.Rows[0].IsContested);
        return (sheet, sheet.Rows[0], sheet.Rows[1]);
    }
}
