using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using NodaTime.Extensions;
using NodaTime.Text;
using ShopPlanner.Core.Measures;
using ShopPlanner.Scheduling.Calendars;
using ShopPlanner.Services.Weekends.Stored;

namespace ShopPlanner.Services.Weekends;

/// <summary>How much there is of what tasks need; null for no limit.</summary>
internal sealed record ShopHands(int People, int? Clamps, int? Drying);

/// <summary>Reads hours, dates and numbers as they are typed, and notes a fault for each that is wrong.</summary>
internal sealed partial class HoursReader(string shopZone)
{
    private const int Noon = 12;
    private const int MostOfAKind = 1000;
    private static readonly char[] Separators = [',', ';', '\n'];

    public List<Fault> Faults { get; } = [];

    /// <summary>When there is time to work.</summary>
    public WorkingCalendar Calendar(WeekendDocument document)
    {
        var week = Enum.GetValues<DayOfWeek>()
            .SelectMany(day =>
                Spans(day.ToString(), document.Hours.GetValueOrDefault(day.ToString(), ""))
                    .Select(span => new WorkingHours(day.ToIsoDayOfWeek(), span.From, span.To))
            );
        return new WorkingCalendar(Zone(document.Zone), [.. week])
        {
            DaysOff = [.. Parts(document.DaysOff).Select(text => Date(nameof(document.DaysOff), text)).OfType<LocalDate>()],
            Extra = [.. Parts(document.ExtraHours).SelectMany(Extra)],
        };
    }

    /// <summary>How much there is.</summary>
    public ShopHands Hands(WeekendDocument document) =>
        new(
            Number(nameof(document.People), document.People) ?? 1,
            Number(nameof(document.Clamps), document.Clamps),
            Number(nameof(document.Drying), document.Drying)
        );

    /// <summary>The date that a project is to be finished by; null for any time.</summary>
    public LocalDate? Due(StoredWish wish) => wish.Due.Trim().Length == 0 ? null : Date($"due:{wish.Project}", wish.Due.Trim());

    private DateTimeZone Zone(string text)
    {
        var name = text.Trim().Length == 0 ? shopZone : text.Trim();
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(name) is { } zone)
            return zone;
        Faults.Add(Fault.Of(nameof(WeekendDocument.Zone), text, "is not a time zone: write one like America/Chicago"));
        return DateTimeZone.Utc;
    }

    private static string[] Parts(string text) =>
        text.Split(Separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private IEnumerable<(LocalTime From, LocalTime To)> Spans(string field, string text) =>
        Parts(text).Select(part => Span(field, part)).OfType<(LocalTime, LocalTime)>();

    private (LocalTime From, LocalTime To)? Span(string field, string text)
    {
        var match = TwoTimes().Match(text);
        if (match.Success && Time(match, 1) is { } from && Time(match, 4) is { } to && (from < to || to == LocalTime.Midnight))
            return (from, to);
        Faults.Add(Fault.Of(field, text, "is not a range of hours: write one like 9:00-17:00 or 7 pm-9 pm, or leave it blank"));
        return null;
    }

    private static LocalTime? Time(Match match, int first)
    {
        var hour = int.Parse(match.Groups[first].ValueSpan, CultureInfo.InvariantCulture);
        var minute = match.Groups[first + 1].Success
            ? int.Parse(match.Groups[first + 1].ValueSpan, CultureInfo.InvariantCulture)
            : 0;
        var half = match.Groups[first + 2].Value.ToUpperInvariant();
        if (half.Length > 0)
        {
            if (hour is < 1 or > Noon)
                return null;
            hour = (hour % Noon) + (half[0] == 'P' ? Noon : 0);
        }

        if (hour == 2 * Noon && minute == 0)
            return LocalTime.Midnight;
        return hour < 2 * Noon && minute < 60 ? new LocalTime(hour, minute) : null;
    }

    private LocalDate? Date(string field, string text)
    {
        if (LocalDatePattern.Iso.Parse(text).TryGetValue(default, out var date))
            return date;
        Faults.Add(Fault.Of(field, text, "is not a date: write one like 2027-03-06"));
        return null;
    }

    private IEnumerable<ExtraHours> Extra(string text)
    {
        var parts = text.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length < 2)
        {
            Faults.Add(
                Fault.Of(nameof(WeekendDocument.ExtraHours), text, "is not a date with hours: write 2027-03-05 19:00-21:00")
            );
            yield break;
        }

        if (
            Date(nameof(WeekendDocument.ExtraHours), parts[0]) is { } date
            && Span(nameof(WeekendDocument.ExtraHours), parts[1]) is { } span
        )
            yield return new ExtraHours(date, span.From, span.To);
    }

    private int? Number(string field, string text)
    {
        if (text.Trim().Length == 0)
            return null;
        if (
            int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number is > 0 and <= MostOfAKind
        )
            return number;
        Faults.Add(Fault.Of(field, text, $"is not a number: write a whole number from 1 to {MostOfAKind}"));
        return null;
    }

    [GeneratedRegex(
        @"^(\d{1,2})(?::(\d{2}))?\s*([ap]m)?\s*(?:-|–|to)\s*(\d{1,2})(?::(\d{2}))?\s*([ap]m)?$",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex TwoTimes();
}
