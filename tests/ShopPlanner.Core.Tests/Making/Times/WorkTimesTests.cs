using ShopPlanner.Core.Making.Times;

namespace ShopPlanner.Core.Tests.Making.Times;

/// <summary>Estimates that learn from logs.</summary>
public sealed class WorkTimesTests
{
    private const string Groove = "groove";

    [Fact]
    public void Without_logs_every_estimate_is_the_usual_one()
    {
        foreach (var usual in new[] { 0, 1, 20, 21, 60, 61, 500 })
        {
            Assert.Equal(new LearnedTime(usual, usual, 0), WorkTimes.Usual.Estimate(Groove, usual));
            Assert.Equal(new LearnedTime(usual, usual, 0), Of(("sand", 10, 30)).Estimate(Groove, usual));
        }
    }

    [Fact]
    public void Few_logs_move_an_estimate_a_little_and_many_move_it_most_of_the_way()
    {
        var estimates = new[] { 1, 2, 4, 8, 16, 64 }
            .Select(count => Of(Times(count, (Groove, 30, 60))).Estimate(Groove, 30))
            .ToList();
        Assert.Equal([1, 2, 4, 8, 16, 64], estimates.Select(one => one.Logs));
        Assert.Equal(estimates.Select(one => one.Minutes).Order(), estimates.Select(one => one.Minutes));
        // Drawn twice, by kind and by size, each time as if three logs had taken as long as estimated: by hand,
        // 30 × 2^(1/4 × 1 + 3/4 × 1/4) = 40.6 for one log, and 30 × 2^(64/67 + 3/67 × 64/67) = 59.96 for many.
        Assert.Equal((41, 60), (estimates[0].Minutes, estimates[^1].Minutes));
    }

    [Fact]
    public void One_wild_log_moves_an_estimate_less_than_it_would_by_its_own_length()
    {
        var calm = Times(6, (Groove, 30, 33));
        var before = Of(calm).Estimate(Groove, 30).Minutes;
        Assert.InRange(Of([.. calm, (Groove, 30, 6000)]).Estimate(Groove, 30).Minutes, before, before + 2);
        Assert.InRange(Of([.. calm, (Groove, 30, 1)]).Estimate(Groove, 30).Minutes, before - 2, before);
        // Alone it counts as four times as long at most: 30 × 4^(1/4 + 3/16) = 55.
        Assert.Equal(55, Of((Groove, 30, 6000)).Estimate(Groove, 30).Minutes);
    }

    [Fact]
    public void No_estimate_leaves_a_quarter_to_four_times_the_usual()
    {
        Assert.InRange(Of(Times(500, (Groove, 30, 6000))).Estimate(Groove, 30).Minutes, 100, 120);
        Assert.InRange(Of(Times(500, (Groove, 30, 1))).Estimate(Groove, 30).Minutes, 7, 10);
        Assert.Equal(1, Of(Times(500, (Groove, 30, 1))).Estimate(Groove, 1).Minutes);
    }

    [Fact]
    public void The_order_of_logs_does_not_matter()
    {
        var random = new Random(5);
        (string, int, int)[] logs = [.. Enumerable.Range(1, 40).Select(_ => (Groove, random.Next(1, 200), random.Next(1, 400)))];
        var expected = Estimates(Of(logs));
        for (var round = 0; round < 20; round++)
        {
            random.Shuffle(logs);
            Assert.Equal(expected, Estimates(Of(logs)));
        }
    }

    [Fact]
    public void A_longer_log_never_shortens_an_estimate_and_more_work_never_takes_less_time()
    {
        var random = new Random(7);
        for (var round = 0; round < 200; round++)
        {
            (string, int Usual, int Took)[] logs =
            [
                .. Enumerable.Range(1, random.Next(1, 12)).Select(_ => (Groove, random.Next(1, 150), random.Next(1, 300))),
            ];
            var before = Estimates(Of(logs));
            Assert.Equal(before.Order(), before);
            var at = random.Next(logs.Length);
            logs[at].Took += random.Next(1, 200);
            Assert.All(Estimates(Of(logs)).Zip(before), pair => Assert.True(pair.First >= pair.Second));
        }
    }

    [Fact]
    public void Sizes_learn_apart_once_they_have_logs_of_their_own()
    {
        var times = Of([.. Times(9, (Groove, 15, 45)), .. Times(9, (Groove, 90, 90))]);
        var (small, large) = (times.Estimate(Groove, 15), times.Estimate(Groove, 90));
        Assert.True((double)small.Minutes / 15 > 1.5 * large.Minutes / 90);
        Assert.Equal((18, 18), (small.Logs, large.Logs));
    }

    [Fact]
    public void A_log_without_an_estimate_teaches_nothing() =>
        Assert.Equal(new LearnedTime(30, 30, 0), Of((Groove, 0, 45)).Estimate(Groove, 30));

    [Theory]
    [InlineData("45", 45)]
    [InlineData(" 45 min ", 45)]
    [InlineData("90 minutes", 90)]
    [InlineData("1:30", 90)]
    [InlineData("0:05", 5)]
    [InlineData("12:00", 720)]
    [InlineData("2 h", 120)]
    [InlineData("1.5 h", 90)]
    [InlineData("1h30", 90)]
    [InlineData("1 h 30 min", 90)]
    [InlineData("2 Hours", 120)]
    [InlineData("100:00", 6000)]
    public void A_time_is_read_as_people_write_it(string text, int minutes) =>
        Assert.Equal(minutes, WorkTimeText.Parse(text).Value);

    [Theory]
    [InlineData("", "write minutes, like 45, or hours and minutes, like 1:30")]
    [InlineData("1,5", "write minutes, like 45")]
    [InlineData("1:75", "write minutes, like 45")]
    [InlineData("-5", "write minutes, like 45")]
    [InlineData("an hour", "write minutes, like 45")]
    [InlineData("0", "from 1 minute to 100 hours")]
    [InlineData("100:01", "from 1 minute to 100 hours")]
    [InlineData("99999", "from 1 minute to 100 hours")]
    public void What_is_no_time_is_refused(string text, string says)
    {
        var read = WorkTimeText.Parse(text);
        Assert.False(read.Ok);
        Assert.Contains(says, read.Fault.Message, StringComparison.Ordinal);
        Assert.Equal(text, read.Fault.Value);
    }

    private static List<int> Estimates(WorkTimes times) =>
        [.. Enumerable.Range(1, 200).Select(usual => times.Estimate(Groove, usual).Minutes)];

    private static (string, int, int)[] Times(int count, (string, int, int) log) => [.. Enumerable.Repeat(log, count)];

    private static WorkTimes Of(params (string Kind, int Usual, int Took)[] logs) =>
        WorkTimes.Of(logs.Select(log => new LoggedTime(log.Kind, log.Usual, log.Took)));
}
