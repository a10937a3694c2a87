using ShopPlanner.Core.Measures;
using ShopPlanner.Core.Totals;

namespace ShopPlanner.Core.Tests.Totals;

/// <summary>What has no figure is named and left out, never guessed.</summary>
public sealed class UnknownTests
{
    [Fact]
    public void A_part_of_an_unknown_material_is_named_and_not_weighed()
    {
        var known = Counted.Part("Shelf", 36, 11, "oak-red", 3);
        var total = Counted.Of("weight", Counted.Taken(known, Counted.Part("Rail", 36, 3, null, 2)));
        Assert.Equal(
            Counted.Of("weight", Counted.Taken(known)).Sum!.Figure.Text(LengthUnit.Inch),
            total.Sum!.Figure.Text(LengthUnit.Inch)
        );
        Assert.Contains(
            total.Notes,
            note => note.Contains("Rail × 2", StringComparison.Ordinal) && note.Contains("My own board", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Where_nothing_is_known_there_is_no_weight()
    {
        var total = Counted.Of("weight", Counted.Taken(Counted.Part("Rail", 36, 3, null)));
        Assert.Null(total.Sum);
        Assert.Empty(total.Questions);
        Assert.Contains(total.Notes, note => note.Contains("Rail", StringComparison.Ordinal));
    }

    [Fact]
    public void A_panel_of_an_unknown_wood_is_named_and_not_judged_for_movement()
    {
        var total = Counted.Of(
            "movement",
            Counted.Taken(Counted.Part("Lid", 20, 14, null), Counted.Part("Slat", 20, 3, "oak-red"))
        );
        Assert.Empty(total.Questions);
        Assert.Contains(total.Notes, note => note.Contains("Lid", StringComparison.Ordinal));
    }

    [Theory, InlineData("stability"), InlineData("glue-up"), InlineData("movement"), InlineData("coats"), InlineData("weight")]
    public void Without_parts_it_says_why_there_is_no_answer(string form)
    {
        var total = Counted.Of(form, new TakenParts([], [], null));
        Assert.Empty(total.Questions);
        Assert.Null(total.Sum);
    }

    [Fact]
    public void What_is_entered_besides_comes_before_what_the_parts_say()
    {
        var parts = Counted.Taken(Counted.Part("Lid", 30, 20, "oak-red", board: 5.5m));
        var glued = Assert.Single(Counted.Of("glue-up", parts, more: ["board=7 1/4", "clamp-force=600 lbf"]).Questions);
        Assert.Equal(("7 1/4", "20"), (glued.Given["board"], glued.Given["width"]));
        var damp = Counted.Of("weight", parts, more: ["moisture=20"]).Sum!.Figure.Number(LengthUnit.Inch);
        Assert.True(damp > Counted.Of("weight", parts).Sum!.Figure.Number(LengthUnit.Inch));
    }

    [Fact]
    public void An_input_that_the_form_does_not_take_is_its_fault()
    {
        var total = Counted.Of("coats", Counted.Taken(Counted.Part("Lid", 30, 20, "oak-red")), more: ["span=3"]);
        Assert.Contains(Assert.Single(total.Questions).Outcome.Faults, fault => fault.Field == "span");
    }
}
