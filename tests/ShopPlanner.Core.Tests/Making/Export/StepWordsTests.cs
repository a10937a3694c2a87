using ShopPlanner.Core.Making.Export;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Workings;

namespace ShopPlanner.Core.Tests.Making.Export;

/// <summary>A step in words.</summary>
public sealed class StepWordsTests
{
    // Clamps come off long before the joint may be loaded: nobody has them for a day.
    [Theory]
    [InlineData(1440, 6, 60, "glue sets, at least 1 day, 6 clamps for 60 min")]
    [InlineData(1440, 1, 240, "glue sets, at least 1 day, 1 clamp for 4 h")]
    [InlineData(1440, 6, 1440, "glue sets, at least 1 day, 6 clamps")]
    [InlineData(60, 2, 0, "glue sets, at least 60 min, 2 clamps")]
    [InlineData(30, 0, 0, "glue sets, at least 30 min")]
    public void A_wait_says_how_long_its_clamps_are_held(int minutes, int clamps, int held, string words) =>
        Assert.Equal(
            words,
            StepWords.Of(new WorkWait("glue sets", minutes, SourceNote.CommonPractice) { Clamps = clamps, ClampMinutes = held })
        );
}
