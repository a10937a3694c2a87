using System.Text;
using Ical.Net;
using NodaTime;
using ShopPlanner.Scheduling.Calendars;

namespace ShopPlanner.Scheduling.Tests.Calendars;

/// <summary>The calendar as another program reads it (Ical.Net), and by the letter of RFC 5545.</summary>
public sealed class CalendarFileTests
{
    private static readonly Instant Nine = Instant.FromUtc(2027, 3, 6, 15, 0);

    [Fact]
    public void Another_program_reads_what_was_written()
    {
        var text = Write(
            new CalendarEntry("a@shop", Nine, Nine + Duration.FromHours(2), "Glue, clamp; wait \\ Küche", "First line\nsecond"),
            new CalendarEntry("b@shop", Nine, Nine + Duration.FromHours(8), "Dries", "") { IsBusy = false }
        );
        var calendar = Calendar.Load(text)!;
        Assert.Equal(2, calendar.Events.Count);
        var glue = calendar.Events["a@shop"]!;
        Assert.Equal(
            ("Glue, clamp; wait \\ Küche", "First line\nsecond"),
            (glue.Summary, glue.Description?.ReplaceLineEndings("\n"))
        );
        Assert.Equal(new DateTime(2027, 3, 6, 15, 0, 0, DateTimeKind.Utc), glue.DtStart!.AsUtc);
        Assert.Equal(new DateTime(2027, 3, 6, 17, 0, 0, DateTimeKind.Utc), glue.DtEnd!.AsUtc);
        Assert.Equal("TRANSPARENT", calendar.Events["b@shop"]!.Transparency);
    }

    [Fact]
    public void Any_title_comes_back_as_it_was()
    {
        string[] titles =
        [
            "",
            " ",
            "\\n",
            "a\\,b",
            "Ende;",
            "“quoted” – ½ × ¾",
            "木工 " + new string('樂', 60),
            "🪚🪵",
            new string('x', 300),
        ];
        var entries = titles.Select((title, n) => new CalendarEntry($"{n}", Nine, Nine + Duration.FromHours(1), title, title));
        var calendar = Calendar.Load(Write([.. entries]))!;
        Assert.Equal(titles, Enumerable.Range(0, titles.Length).Select(n => calendar.Events[$"{n}"]!.Summary ?? ""));
    }

    [Fact]
    public void Lines_end_and_fold_as_the_standard_says()
    {
        var text = Write(new CalendarEntry("a", Nine, Nine, string.Concat(Enumerable.Repeat("Türgriff ", 40)), ""));
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
    }

    private static string Write(params CalendarEntry[] entries) => CalendarFile.Write("Weekends", entries, Nine);
}
