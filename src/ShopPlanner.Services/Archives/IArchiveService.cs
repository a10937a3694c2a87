using System.Collections.Immutable;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Archives;

/// <summary>How many of a kind of thing an archive holds.</summary>
/// <param name="Kind">What they are called: <c>projects</c>.</param>
/// <param name="Count">How many.</param>
public sealed record ArchiveCount(string Kind, long Count);

/// <summary>What is in an archive, and what reading it in would do.</summary>
/// <param name="Program">The version of the program that wrote it.</param>
/// <param name="MadeUtc">When.</param>
/// <param name="Hash">The canonical hash of what is in it.</param>
/// <param name="IsAsWritten">Whether nothing was changed in it since it was written.</param>
/// <param name="Counts">What is in it.</param>
/// <param name="Hindrance">Why this shop cannot take it; null where it can.</param>
public sealed record ArchiveView(
    string Program,
    DateTime MadeUtc,
    string Hash,
    bool IsAsWritten,
    ImmutableArray<ArchiveCount> Counts,
    Fault? Hindrance
);

/// <summary>A whole shop out to a file, and out of a file into an empty shop.</summary>
public interface IArchiveService
{
    /// <summary>The largest file that is read, in bytes.</summary>
    const int MostBytes = 50_000_000;

    /// <summary>Writes the shop as one zip file, from one state of it.</summary>
    Task<byte[]> ExportAsync(CancellationToken cancel = default);

    /// <summary>Returns what a file holds and whether this shop can take it; stores nothing. Faulty, with place and reason, where
    /// it cannot be read.</summary>
    Task<Outcome<ArchiveView>> PreviewAsync(ReadOnlyMemory<byte> zip, CancellationToken cancel = default);

    /// <summary>Puts all that a file holds into the shop, or nothing. Refused where the shop is not empty.</summary>
    Task<Outcome<ArchiveView>> ImportAsync(ReadOnlyMemory<byte> zip, CommandId command, CancellationToken cancel = default);
}
