using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using ShopPlanner.Core.Measures;

namespace ShopPlanner.Services.Storage;

/// <summary>Lengths as 64-bit counts of ticks: exact, and ordered by the database.</summary>
internal sealed class LengthConverter() : ValueConverter<Length, long>(length => length.Ticks, ticks => Length.FromTicks(ticks));

/// <summary>Amounts as 64-bit counts of ten-thousandths.</summary>
internal sealed class MoneyConverter() : ValueConverter<Money, long>(money => money.Count, count => Money.FromCount(count));

/// <summary>Times come back as UTC, which is how they are stored.</summary>
internal sealed class UtcConverter()
    : ValueConverter<DateTime, DateTime>(time => time, time => DateTime.SpecifyKind(time, DateTimeKind.Utc));
