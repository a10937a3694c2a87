using ShopPlanner.Web.Shared;

namespace ShopPlanner.Web.Tests.Shared;

public sealed class HelpWordTests
{
    [Fact]
    public void Each_word_has_a_picture_and_two_lines()
    {
        var icons = Path.Combine(AppContext.BaseDirectory, "wwwroot", "assets", "icons");
        Assert.NotEmpty(HelpWord.All);
        Assert.All(
            HelpWord.All.Values,
            word =>
            {
                Assert.True(File.Exists(Path.Combine(icons, word.Picture + ".svg")), word.Picture);
                Assert.InRange(word.Says.Length, 40, 160);
            }
        );
    }
}
