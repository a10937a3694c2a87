using System.Globalization;
using System.Text;
using NodaTime;
using NodaTime.Text;

namespace ShopPlanner.Scheduling.Calendars;

/// <summary>An entry of a calendar.</summary>
/// <param name="Id">Stays while the entry moves, so that a calendar replaces the one it has.</param>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends.</param>
/// <param name="Title">A few words.</param>
/// <param name="Text">More; may be empty.</param>
public sealed record CalendarEntry(string Id, Instant Start, Instant End, string Title, string Text)
{
    /// <summary>Whether somebody is busy meanwhile; glue that dries leaves its owner free.</summary>
    public bool IsBusy { get; init; } = true;
}

/// <summary>Writes entries as iCalendar (RFC 5545). Times are in UTC (form 2 of 3.3.5), so that no zone has to be described and
/// none is misread.</summary>
public static class CalendarFile
{
    // 3.1: lines of more than 75 octets are folded; a fold begins with a space.
    private const int MostOctets = 75;

    private static readonly InstantPattern Utc = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'");

    /// <summary>Returns the file's text.</summary>
    /// <param name="name">Of the calendar.</param>
    /// <param name="entries">In any order.</param>
    /// <param name="stamp">When it was made.</param>
    public static string Write(string name, IEnumerable<CalendarEntry> entries, Instant stamp)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var file = new StringBuilder();
        Line(file, "BEGIN:VCALENDAR");
        Line(file, "VERSION:2.0");
        Line(file, "PRODID:-//Shop Planner//Weekends//EN");
        Line(file, "CALSCALE:GREGORIAN");
        Line(file, "METHOD:PUBLISH");
        Line(file, "X-WR-CALNAME:" + Text(name));
        foreach (var entry in entries)
            Entry(file, entry, stamp);
        Line(file, "END:VCALENDAR");
        return file.ToString();
    }

    private static void Entry(StringBuilder file, CalendarEntry entry, Instant stamp)
    {
        Line(file, "BEGIN:VEVENT");
        Line(file, "UID:" + Text(entry.Id));
        Line(file, "DTSTAMP:" + Utc.Format(stamp));
        Line(file, "DTSTART:" + Utc.Format(entry.Start));
        Line(file, "DTEND:" + Utc.Format(entry.End));
        Line(file, "SUMMARY:" + Text(entry.Title));
        if (entry.Text.Length > 0)
            Line(file, "DESCRIPTION:" + Text(entry.Text));
        Line(file, entry.IsBusy ? "TRANSP:OPAQUE" : "TRANSP:TRANSPARENT");
        Line(file, "END:VEVENT");
    }

    // 3.3.11: what separates values is escaped, a line break is \n, other control characters are not allowed.
    private static string Text(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var c in text.ReplaceLineEndings("\n"))
            switch (c)
            {
                case '\\' or ';' or ',':
                    escaped.Append('\\').Append(c);
                    break;
                case '\n':
                    escaped.Append("\\n");
                    break;
                default:
                    escaped.Append(char.IsControl(c) ? ' ' : c);
                    break;
            }

        return escaped.ToString();
    }

    // A character is never parted: its octets stay on one line.
    private static void Line(StringBuilder file, string content)
    {
        var octets = 0;
        foreach (var rune in content.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                file.Append("\r\n ");
                octets = 1;
            }

            file.Append(CultureInfo.InvariantCulture, $"{rune}");
            octets += rune.Utf8SequenceLength;
        }

        file.Append("\r\n");
    }
}
