using System.Globalization;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Storage;

/// <summary>Keeps the last room of the disk for what is entered at the bench: what takes much room is refused before it
/// begins.</summary>
internal sealed class LowDisk(DataFolder folder, FreeSpace space)
{
    private const long Megabyte = 1_000_000;

    /// <summary>With less, backups, imports and planning runs are refused (common practice: half a gigabyte for a computer's own
    /// needs).</summary>
    public const long Least = 512 * Megabyte;

    /// <summary>Refuses what takes much room; null where there is enough.</summary>
    public Outcome<T>? Refuse<T>()
        where T : class => Fault() is { } low ? Outcome.Faulty<T>(new Fault("storage", "the disk", low)) : null;

    /// <summary>Says that the room is low, to be read after the disk's name; null where it is not.</summary>
    public string? Fault() =>
        space.Of(folder.Root) is var free && free >= Least
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"has {free / Megabyte} MB left, at least {Least / Megabyte} MB are needed: make room on it"
            );
}
