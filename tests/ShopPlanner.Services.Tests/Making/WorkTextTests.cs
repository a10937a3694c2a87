using ShopPlanner.Core.Making.Model;
using ShopPlanner.Services.Common;
using ShopPlanner.Services.Making;
using static ShopPlanner.Services.Tests.Making.WorkProjects;

namespace ShopPlanner.Services.Tests.Making;

/// <summary>What may be typed about the work, and what is refused.</summary>
public sealed class WorkTextTests
{
    [Theory]
    [InlineData("title", "Two\nlines", "has several lines")]
    [InlineData("title", "bell\u0007", "can't be saved")]
    [InlineData("says", "escape\u001B[2J", "can't be saved")]
    [InlineData("note", "nul\0", "can't be saved")]
    [InlineData("width 1", "12 1/0", "12 1/0")]
    [InlineData("height 1", "-3", "-3")]
    public async Task A_text_that_cannot_be_kept_is_refused_with_its_field(string field, string text, string says)
    {
        await using var given = await OfDesignAsync();
        var id = (await given.ReadAsync()).Steps[0].Step.Id;
        var texts = (await given.Work.TextsAsync(given.Project, id, Cancel))!;
        var typed = field switch
        {
            "title" => texts with { Title = text },
            "says" => texts with { Says = text },
            "note" => texts with { Note = text },
            _ => texts with { Measured = texts.Measured.SetItem(field, text) },
        };
        var outcome = await given.Work.SaveTextsAsync(typed, Cancel);
        var fault = Assert.Single(outcome.Faults);
        Assert.Equal((OutcomeKind.Faulty, field), (outcome.Kind, fault.Field));
        Assert.Contains(says, fault.ToString(), StringComparison.Ordinal);
        Assert.Null((await given.ReadAsync()).Undo);
    }

    [Theory]
    [InlineData("<b onclick=alert(1)>Sand</b> & \"wax\"")]
    [InlineData("שלום 🪚 כיסא")]
    [InlineData("'; DROP TABLE ProjectWork; --")]
    public async Task Any_script_and_sign_is_kept_as_typed(string text)
    {
        await using var given = await OfDesignAsync();
        var view = await given.AddAsync(text, text);
        var own = view.Steps.Single(one => one.IsOwn);
        Assert.Equal(text, own.Title);
        Assert.Equal([text], own.Says);
        await given.WriteAsync(own.Step.Id, texts => texts with { Note = text + "\n" + text });
        Assert.Equal(text + "\n" + text, (await given.ReadAsync()).Steps.Single(one => one.IsOwn).Note);
    }

    [Theory]
    [InlineData("", "title")]
    [InlineData("   ", "title")]
    public async Task A_step_needs_a_title(string title, string field)
    {
        await using var given = await OfDesignAsync();
        var outcome = await given.Work.AddStepAsync(given.Project, WorkPage.Build, title, "", CommandId.New(), Cancel);
        Assert.Equal(field, Assert.Single(outcome.Faults).Field);
    }

    [Fact]
    public async Task Texts_longer_than_their_field_are_refused()
    {
        await using var given = await OfDesignAsync();
        var outcome = await given.Work.AddStepAsync(
            given.Project,
            WorkPage.Finish,
            new string('x', 121),
            new string('y', 2001),
            CommandId.New(),
            Cancel
        );
        Assert.Equal(["title", "says"], outcome.Faults.Select(fault => fault.Field));
    }

    [Fact]
    public async Task Choices_are_kept_and_change_nothing_else()
    {
        await using var given = await OfDesignAsync();
        var texts = (await given.Work.ChoicesAsync(given.Project, Cancel))!;
        var finish = WorkLists.Finishes[^1].Id;
        var saved = Value(
            await given.Work.SaveChoicesAsync(
                texts with
                {
                    Choices = texts.Choices with { Finish = finish, PinsBefore = false },
                    Coats = " 4 ",
                    EndGrit = "320",
                    Hours = texts.Hours.SetItem("recoat", "2.5"),
                },
                Cancel
            )
        );
        Assert.Equal(("4", "80", "320", "2.5"), (saved.Coats, saved.StartGrit, saved.EndGrit, saved.Hours["recoat"]));
        var choices = (await given.ReadAsync()).Choices;
        Assert.Equal((finish, false, 4), (choices.Finish, choices.PinsBefore, choices.Coats));
        Assert.Equal(2.5, choices.Hours["recoat"]);
        Assert.Equal(WorkChoices.Usual.HingesBefore, choices.HingesBefore);
        saved = Value(await given.Work.SaveChoicesAsync(saved with { Use = WorkLists.NothingSpecial, Edges = "filler" }, Cancel));
        choices = (await given.ReadAsync()).Choices;
        Assert.Equal((0, "filler"), (choices.Uses!.Value.Length, choices.Edges));
        saved = Value(await given.Work.SaveChoicesAsync(saved with { Use = "food", Edges = WorkLists.AsUsual }, Cancel));
        choices = (await given.ReadAsync()).Choices;
        Assert.Equal((FinishUse.Food, (string?)null), (choices.Uses!.Value.Single(), choices.Edges));
        saved = Value(
            await given.Work.SaveChoicesAsync(saved with { Hours = saved.Hours.SetItem("recoat", ""), Coats = "" }, Cancel)
        );
        Assert.Null((await given.ReadAsync()).Choices.Coats);
        Assert.Empty((await given.ReadAsync()).Choices.Hours);
        Assert.Equal("choices", (await given.ReadAsync()).Undo);
    }

    [Theory]
    [InlineData("coats", "0")]
    [InlineData("coats", "two")]
    [InlineData("coats", "21")]
    [InlineData("startGrit", "12")]
    [InlineData("endGrit", "60")]
    [InlineData("hours.recoat", "-2")]
    [InlineData("hours.cure", "1,5")]
    [InlineData("hours.clamp", "0")]
    [InlineData("hours.moon", "3")]
    [InlineData("finish", "mud")]
    [InlineData("edges", "lace")]
    [InlineData("use", "moon dust")]
    [InlineData("glue", "")]
    public async Task A_choice_that_is_none_is_refused_with_its_field(string field, string text)
    {
        await using var given = await OfDesignAsync();
        var texts = (await given.Work.ChoicesAsync(given.Project, Cancel))!;
        var typed = field switch
        {
            "coats" => texts with { Coats = text },
            "startGrit" => texts with { StartGrit = text },
            "endGrit" => texts with { EndGrit = text },
            "edges" => texts with { Edges = text },
            "use" => texts with { Use = text },
            "finish" => texts with { Choices = texts.Choices with { Finish = text } },
            "glue" => texts with { Choices = texts.Choices with { Glue = text } },
            _ => texts with { Hours = texts.Hours.SetItem(field.Split('.')[1], text) },
        };
        var outcome = await given.Work.SaveChoicesAsync(typed, Cancel);
        Assert.Equal((OutcomeKind.Faulty, field), (outcome.Kind, Assert.Single(outcome.Faults).Field));
        Assert.Equal(WorkChoices.Usual, (await given.ReadAsync()).Choices with { Hours = WorkChoices.Usual.Hours });
    }
}
