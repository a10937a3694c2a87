using System.Collections.Concurrent;
using Microsoft.AspNetCore.Components;

namespace ShopPlanner.Web.Shared;

/// <summary>The drawings of <c>assets/icons</c>, set into pages so that they take the ink of the text beside them.</summary>
internal sealed class IconShelf(IWebHostEnvironment host)
{
    private readonly ConcurrentDictionary<string, MarkupString> read = new();

    /// <summary>The icon's SVG.</summary>
    /// <exception cref="FileNotFoundException">There is no such icon.</exception>
    public MarkupString Find(string name) => read.GetOrAdd(name, Read);

    private MarkupString Read(string name)
    {
        var file = host.WebRootFileProvider.GetFileInfo($"assets/icons/{name}.svg");
        using var text = new StreamReader(file.CreateReadStream());
        return new MarkupString(text.ReadToEnd());
    }
}
