using System.Text;

namespace ShopPlanner.Services.Publishing;

/// <summary>Files that every publication carries: style and letters, with the letters' license.</summary>
internal static class PublishedAssets
{
    private const string Folder = "publishing/";

    private static readonly string[] Fonts =
    [
        "SourceSans3-Regular.woff2",
        "SourceSans3-Medium.woff2",
        "SourceSans3-Bold.woff2",
        "OFL.txt",
    ];

    /// <summary>The style sheet.</summary>
    public static string Style { get; } = Encoding.UTF8.GetString(Read("page.css"));

    /// <summary>The letters.</summary>
    public static IEnumerable<PublishedFile> Letters() => Fonts.Select(name => new PublishedFile("fonts/" + name, Read(name)));

    private static byte[] Read(string name)
    {
        using var stream =
            typeof(PublishedAssets).Assembly.GetManifestResourceStream(Folder + name)
            ?? throw new InvalidOperationException($"the program was built without {name}");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
