using System.Collections.Immutable;
using System.IO.Compression;
using ShopPlanner.Core.Designs.Documents;
using ShopPlanner.Core.Making.Model;
using ShopPlanner.Core.Measures;
using ShopPlanner.Services.Common;

namespace ShopPlanner.Services.Publishing;

/// <summary>What is published. Nothing of a shop is in it but what stands here.</summary>
/// <param name="Design">The design, with the values that are set.</param>
/// <param name="License">The terms.</param>
/// <param name="Day">Printed on page and paper.</param>
public sealed record PublishAsked(DesignDocument Design, PublishLicense License, DateOnly Day)
{
    /// <summary>The heading; empty for the design's name.</summary>
    public string Title { get; init; } = "";

    /// <summary>Who made it; empty for nobody named.</summary>
    public string By { get; init; } = "";

    /// <summary>Of the printed packet.</summary>
    public PaperSize Paper { get; init; } = PaperSize.Letter;

    /// <summary>What the builder decided about glue and finish.</summary>
    public WorkChoices Choices { get; init; } = WorkChoices.Usual;

    /// <summary>Pictures of the finished piece, cleaned.</summary>
    public ImmutableArray<CleanPhoto> Photos { get; init; } = [];

    /// <summary>What the builder bought and used, as far as she shows it.</summary>
    public ImmutableArray<OwnShopping> Shopping { get; init; } = [];
}

/// <summary>A line of what the builder bought or took; what she keeps to herself is empty.</summary>
/// <param name="Item">What.</param>
/// <param name="Size">As sold, or as it lay there.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Price">Of one, with its sign.</param>
/// <param name="From">The store, or <c>rack and bin</c>.</param>
public sealed record OwnShopping(string Item, string Size, int Quantity, string Price, string From);

/// <summary>A file of a publication.</summary>
/// <param name="Path">Within the folder, with <c>/</c> between folders.</param>
/// <param name="Bytes">What is in it.</param>
public sealed record PublishedFile(string Path, ReadOnlyMemory<byte> Bytes);

/// <summary>A plan that others can read, build and resize: files that need nothing else.</summary>
/// <param name="Name">The piece's name.</param>
/// <param name="Files">All of them, <c>index.html</c> first.</param>
public sealed record Publication(string Name, ImmutableArray<PublishedFile> Files)
{
    /// <summary>The page to open first.</summary>
    public const string Index = "index.html";

    /// <summary>Returns all files as one zip file.</summary>
    /// <param name="day">The day that its entries carry.</param>
    public byte[] Zip(DateOnly day)
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var one in Files)
            {
                var entry = zip.CreateEntry(one.Path);
                entry.LastWriteTime = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
                using var stream = entry.Open();
                stream.Write(one.Bytes.Span);
            }

        return file.ToArray();
    }
}

/// <summary>What publishing gave.</summary>
/// <param name="Publication">The files; null where the design cannot be worked out.</param>
/// <param name="Faults">Why there are none.</param>
public sealed record PublicationMade(Publication? Publication, ImmutableArray<Fault> Faults);
