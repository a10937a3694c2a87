using System.Text;
using System.Text.Json;
using NodaTime;
using ShopPlanner.Scheduling.Formats;
using ShopPlanner.Scheduling.Planning;
using ShopPlanner.Scheduling.Tests.Checking;

namespace ShopPlanner.Scheduling.Tests.Formats;

/// <summary>The open formats: what is read, what is written, what is refused and how.</summary>
public sealed class ScheduleJsonTests
{
    private const string Example = """
        {
          "format": "shop-planner/weekends-request", "version": 1,
          "start": "2027-03-06T00:00", "zone": "America/Chicago",
          "windows": [[540, 1020], [2040, 2400], [10620, 11100]],
          "resources": { "person": 1, "clamps": 4, "bench": 1, "drying": 1 },
          "tasks": [
            { "id": "A.glue", "project": "A", "labour": 60, "hold": 240,
              "labourUses": { "person": 1, "bench": 1, "clamps": 4 }, "holdUses": { "clamps": 4 } },
            { "id": "A.sand", "project": "A", "labour": 600, "splittable": true,
              "labourUses": { "person": 1, "bench": 1 }, "holdUses": {} }
          ],
          "precedences": [ { "before": "A.glue", "after": "A.sand" } ]
        }
        """;

    [Fact]
    public void The_example_is_read()
    {
        var request = Read(Example);
        Assert.Equal(new LocalDateTime(2027, 3, 6, 0, 0), request.Start);
        Assert.Equal(("America/Chicago", 10.0), (request.Zone, request.Seconds));
        Assert.Equal(
            (240, 4, false),
            (request.Tasks[0].Hold, request.Tasks[0].HoldUses["clamps"], request.Tasks[0].IsSplittable)
        );
        Assert.Equal((0, true, 0), (request.Tasks[1].Hold, request.Tasks[1].IsSplittable, request.Precedences[0].Wait));
    }

    [Fact]
    public void A_request_written_out_reads_back_the_same()
    {
        var once = ScheduleRequestJson.Write(Read(Example));
        Assert.Equal(once, ScheduleRequestJson.Write(Read(once)));
    }

    [Fact]
    public void The_example_is_scheduled_and_written()
    {
        var schedule = SchedulePlanner.Plan(Read(Example), new());
        using var written = JsonDocument.Parse(ScheduleJson.Write(schedule));
        var root = written.RootElement;
        Assert.Equal("shop-planner/weekends-plan", root.GetProperty("format").GetString());
        Assert.Equal("proven", root.GetProperty("status").GetString());
        // Glued by 10:00, clamped until 14:00, sanded 3 h before 17:00, 6 h on Sunday and the rest a week later.
        Assert.Equal(
            (540, 840),
            (
                root.GetProperty("starts").GetProperty("A.glue").GetInt32(),
                root.GetProperty("starts").GetProperty("A.sand").GetInt32()
            )
        );
        Assert.Equal(10680, root.GetProperty("finish").GetInt32());
        Assert.Equal(10680, root.GetProperty("finishLowerBound").GetInt32());
    }

    [Fact]
    public void An_impossible_one_has_reasons_and_no_finish()
    {
        var schedule = SchedulePlanner.Plan(Some.Request([], [Some.Labor("a", 1)]), new());
        using var written = JsonDocument.Parse(ScheduleJson.Write(schedule));
        Assert.Equal("impossible", written.RootElement.GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, written.RootElement.GetProperty("finish").ValueKind);
        Assert.Equal(1, written.RootElement.GetProperty("reasons").GetArrayLength());
        Assert.Empty(written.RootElement.GetProperty("starts").EnumerateObject());
    }

    [Theory]
    [InlineData(
        "\"version\": 1",
        "\"version\": 2",
        "version: '2' is a later version than this program reads: it reads version 1"
    )]
    [InlineData(
        "weekends-request",
        "cut-request",
        "format: 'shop-planner/cut-request' is another format: use shop-planner/weekends-request"
    )]
    [InlineData("2027-03-06T00:00", "March 6", "start: 'March 6' is no date and time: write one like 2027-03-06T00:00")]
    [InlineData("America/Chicago", "Chicago", "zone: 'Chicago' is no time zone: write one like America/Chicago")]
    [InlineData("[540, 1020]", "[1020, 540]", "windows[0][1]: '540' is not after the minute that the window opens at, 1020")]
    [InlineData(
        "[540, 1020]",
        "[540]",
        "windows[0]: '[…]' is no pair: write when the window opens and when it closes, like [540, 1020]"
    )]
    [InlineData(
        "[540, 1020]",
        "[540, 3000]",
        "windows[1]: '[…]' begins before the window above it closes, at 3000: list windows one after the other"
    )]
    [InlineData("[540, 1020]", "[-540, 1020]", "windows[0][0]: '-540' is too few: 0 or more")]
    [InlineData("[540, 1020]", "[540, 1020.5]", "windows[0][1]: '1020.5' is not a whole number")]
    [InlineData("\"labour\": 600", "\"labour\": -1", "tasks[1].labour: '-1' is too few: 0 or more")]
    [InlineData("\"labour\": 600,", "", "tasks[1].labour: '' is missing: write a whole number of minutes")]
    [InlineData(
        "\"labourUses\": { \"person\": 1, \"bench\": 1 },",
        "",
        "tasks[1].labourUses: '' is missing: write an object like {\"person\": 1}"
    )]
    [InlineData(
        "\"bench\": 1, \"clamps\": 4 }",
        "\"bench\": 1, \"clamp\": 4 }",
        "tasks[0].labourUses.clamp: '4' is of a resource that is not listed under resources"
    )]
    [InlineData("\"id\": \"A.sand\"", "\"id\": \"A.glue\"", "tasks[1].id: 'A.glue' is the id of two tasks: give each its own")]
    [InlineData("\"after\": \"A.sand\"", "\"after\": \"A.paint\"", "precedences[0].after: 'A.paint' is the id of no task")]
    [InlineData("\"splittable\": true", "\"splittable\": 1", "tasks[1].splittable: '1' is neither true nor false")]
    [InlineData(
        "\"clamps\": 4, \"bench\": 1, \"drying\"",
        "\"clamps\": \"four\", \"bench\": 1, \"drying\"",
        "resources.clamps: 'four' is not a number: write a whole number"
    )]
    public void A_wrong_member_is_named_with_what_would_be_right(string old, string wrong, string fault)
    {
        var (request, faults) = ScheduleRequestJson.Read(
            Encoding.UTF8.GetBytes(Example.Replace(old, wrong, StringComparison.Ordinal))
        );
        Assert.Null(request);
        Assert.Contains(fault, faults.Select(one => one.ToString()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("null")]
    public void What_is_no_request_is_refused(string text)
    {
        var (request, faults) = ScheduleRequestJson.Read(Encoding.UTF8.GetBytes(text));
        Assert.Null(request);
        Assert.NotEmpty(faults);
    }

    private static ScheduleRequest Read(string text)
    {
        var (request, faults) = ScheduleRequestJson.Read(Encoding.UTF8.GetBytes(text));
        Assert.Empty(faults);
        return request!;
    }
}
