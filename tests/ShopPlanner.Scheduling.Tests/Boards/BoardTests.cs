using ShopPlanner.Scheduling.Boards;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;

namespace ShopPlanner.Scheduling.Tests.Boards;

/// <summary>A schedule as it is shown, window by window.</summary>
public sealed class BoardTests
{
    private static readonly ScheduleRequest Request = Some.Request(
        [(0, 100), (1000, 1100), (2000, 2100)],
        [
            Some.Labor("sand", 150) with
            {
                IsSplittable = true,
                Project = "A",
            },
            Some.Coat("coat", 30, 900) with
            {
                Project = "A",
            },
            Some.Labor("hang", 20) with
            {
                Project = "A",
            },
        ],
        ("sand", "coat"),
        ("coat", "hang")
    ) with
    {
        Projects = [new("A", 1) { Due = 1900 }],
    };

    private static readonly Schedule Schedule = SchedulePlanner.Plan(Request, new());

    [Fact]
    public void Labor_is_shown_in_each_of_its_windows()
    {
        var board = Board.Of(Request, Schedule);
        Assert.Equal(
            ["sand 0-100 +", "sand 1000-1050", "coat 1050-1080", "hang 2000-2020"],
            board.SelectMany(one => one.Labor).Select(one => $"{one.Task.Id} {one.From}-{one.To}{(one.GoesOn ? " +" : "")}")
        );
    }

    [Fact]
    public void What_dries_meanwhile_is_shown_with_the_windows_it_lasts_through()
    {
        var board = Board.Of(Request, Schedule);
        Assert.Equal([0, 1, 0], board.Select(one => one.Holds.Length));
        Assert.Equal((1080, 1980), (board[1].Holds[0].From, board[1].Holds[0].To));
    }

    [Fact]
    public void A_project_that_is_late_says_by_how_much()
    {
        var finish = Assert.Single(Board.Finishes(Request, Schedule));
        Assert.Equal((2020, 120), (finish.Finish, finish.Late));
    }
}
