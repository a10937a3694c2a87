using ShopPlanner.Drawing.Lettering;

namespace ShopPlanner.Drawing.Tests;

/// <summary>Text that is read from the right, as it is set from the left.</summary>
public sealed class WritingOrderTests
{
    /// <summary>Oracle: the Unicode Bidirectional Algorithm (UAX #9), worked by hand for short lines.</summary>
    [Theory]
    [InlineData("shelf 12", "shelf 12")]
    [InlineData("אבג", "גבא")]
    [InlineData("אב 12", "12 בא")]
    [InlineData("shelf אב (גד)", "shelf (דג) בא")]
    [InlineData("אב shelf", "shelf בא")]
    public void Letters_stand_in_the_order_of_paper(string line, string set) => Assert.Equal(set, WritingOrder.Visual(line));

    /// <summary>Oracle: The Unicode Standard, Arabic Presentation Forms-B: beh at the beginning U+FE91, in the middle U+FE92, at the
    /// end U+FE90; lam with alef U+FEFB; dal does not join to what follows.</summary>
    [Theory]
    [InlineData("ببب", "\uFE90\uFE92\uFE91")]
    [InlineData("لا", "\uFEFB")]
    [InlineData("دب", "\uFE8F\uFEA9")]
    public void Arabic_letters_take_the_form_of_their_place(string line, string set) =>
        Assert.Equal(set, WritingOrder.Visual(line));
}
