using ShopPlanner.Core.Calculators;
using ShopPlanner.Core.Measures;
using ShopPlanner.Web.Features.Workings;

namespace ShopPlanner.Web.Tests.Workings;

public sealed class WorkingDraftTests
{
    [Fact]
    public void What_is_typed_is_in_the_address_and_the_address_gives_it_again()
    {
        var draft = Draft("board-feet", "");
        Type(draft, "thickness", "1");
        Type(draft, "width", "5 1/2");
        Type(draft, "length", "8 ft & more");
        var again = Draft("board-feet", new Uri(new Uri("http://shop"), draft.Address).Query, LengthUnit.Millimetre);
        Assert.Equal(draft.Texts.OrderBy(pair => pair.Key), again.Texts.OrderBy(pair => pair.Key));
        Assert.Equal(LengthUnit.Inch, again.Unit);
        Assert.Equal(draft.Address, again.Address);
    }

    [Fact]
    public void What_is_not_typed_yet_is_missing_and_not_wrong()
    {
        var draft = Draft("board-feet", "?thickness=1");
        Assert.Null(draft.Answer);
        Assert.Empty(draft.Faults);
        Assert.Equal(["width", "length"], draft.Missing.Select(fault => fault.Field));
    }

    [Fact]
    public void A_value_that_cannot_be_read_leaves_the_last_answer_marked_as_old()
    {
        var draft = Draft("board-feet", "?thickness=1&width=6&length=96");
        Type(draft, "width", "6 1/");
        Assert.True(draft.IsStale);
        Assert.Equal("4 bd ft", draft.Answer!.Results[0].Figure.Text(LengthUnit.Inch));
        Assert.NotNull(draft.FaultOf(draft.Form.Keys.Single(key => key.Name == "width")));
        Type(draft, "width", "12");
        Assert.False(draft.IsStale);
        Assert.Equal("8 bd ft", draft.Answer.Results[0].Figure.Text(LengthUnit.Inch));
    }

    [Fact]
    public void Another_unit_leaves_every_size_and_weight_what_it_was()
    {
        var draft = Draft("stability", "?depth=12&height=3 ft&weight=50&leaning=20 kg");
        var before = draft.Answer!.Results[0].Figure.Number(LengthUnit.Inch);
        draft.Choose(LengthUnit.Millimetre);
        Assert.Equal(["304.8", "3 ft", "20 kg", "50 lb"], draft.Texts.OrderBy(pair => pair.Key).Select(pair => pair.Value));
        Assert.Equal(before, draft.Answer.Results[0].Figure.Number(LengthUnit.Inch));
        draft.Choose(LengthUnit.Inch);
        Assert.Equal("12", draft.Texts["depth"]);
    }

    [Fact]
    public void A_key_that_the_form_does_not_take_is_said_apart()
    {
        var draft = Draft("board-feet", "?thickness=1&width=6&length=96&colour=red");
        Assert.Equal("colour", Assert.Single(draft.Elsewhere).Field);
    }

    [Fact]
    public void An_emptied_field_counts_as_not_given()
    {
        var draft = Draft("board-feet", "?thickness=1&width=6&length=96&count=3");
        Type(draft, "count", " ");
        Assert.DoesNotContain("count", draft.Address, StringComparison.Ordinal);
        Assert.Equal("4 bd ft", draft.Answer!.Results[0].Figure.Text(LengthUnit.Inch));
    }

    private static WorkingDraft Draft(string form, string query, LengthUnit unit = LengthUnit.Inch) =>
        new(WorkingForms.TryFind(form, out var found) ? found : throw new ArgumentException(form), query, unit);

    private static void Type(WorkingDraft draft, string key, string text) =>
        draft.Type(draft.Form.Keys.Single(one => one.Name == key), text);
}
